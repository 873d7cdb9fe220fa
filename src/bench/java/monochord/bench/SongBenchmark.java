package monochord.bench;

import java.util.concurrent.TimeUnit;
import monochord.score.Pattern;
import monochord.score.Score;
import monochord.score.SongScore;
import monochord.song.Song;
import monochord.song.SongPlace;
import monochord.song.SongReader;
import monochord.song.abc.AbcBook;
import monochord.song.abc.AbcReader;
import monochord.view.Look;
import monochord.view.music.SongAnswer;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long a song of 200 bars takes to be read and shown (within 50 ms), a book of a thousand tunes in ABC to be read
 * (within 2 s), and a section to be laid out for the hands (of the 150 ms until it sounds).
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class SongBenchmark {
    private static final int SECTIONS = 10;
    private static final int LINES = 5;
    private static final int TUNES = 1000;
    private static final String CHORDS = "D | G . A . | Bm7 | Asus4 . A7 .\n";
    private static final String TUNE = "D4 E4 F#4 A4 | B4:3/2 A4:1/2 G4 E4 | F#4:2 D5 B4 | A4:3 r\n";
    private static final String ABC =
            "X:%d\nT:Tune %d\nM:6/8\nL:1/8\nK:G\n|: \"G\"G>AG BcB | \"C\"A>Bc B2 B | (3dcd B2 d | \"D7\"cBA G2 B :|\n"
                    + "d | \"G\"d>BG \"C\"e2 c | \"D\"fdf \"G\"{f}g2 d |1 d>cB c2 e :|2 \"D\"d>cA \"G\"G2 ||\n\n";

    private String file;
    private String book;
    private Song song;

    @Setup
    public void write() {
        StringBuilder text = new StringBuilder("---\ntitle: Long\nkey: D\nmetre: 4/4\n---\n\n");
        for (int i = 1; i <= SECTIONS; i++) {
            text.append("## Verse ").append(i).append("\n\n```chords\n").append(CHORDS.repeat(LINES));
            text.append("```\n\n```tune\n").append(TUNE.repeat(LINES)).append("```\n\n");
        }
        file = text.toString();
        song = SongReader.read(file);
        StringBuilder tunes = new StringBuilder();
        for (int i = 1; i <= TUNES; i++) {
            tunes.append(String.format(ABC, i, i));
        }
        book = tunes.toString();
    }

    @Benchmark
    public String openAndShow() {
        return new SongAnswer(SongReader.read(file)).text(Look.ofPipe()).plain();
    }

    @Benchmark
    public int readBook() {
        AbcBook read = AbcBook.of(book);
        return read.tunes().stream()
                .mapToInt(tune ->
                        AbcReader.read(read, tune).music().played().notes().size())
                .sum();
    }

    @Benchmark
    public Score layOutSection() {
        SongPlace place = SongPlace.whole(song.sections().get(0));
        return SongScore.of(place.played(song), song.head().metre()).piece().as(Pattern.BALLAD, 1);
    }
}
