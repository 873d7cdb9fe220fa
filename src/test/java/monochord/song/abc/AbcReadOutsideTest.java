package monochord.song.abc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.song.Section;
import monochord.song.SectionMusic;
import monochord.song.Song;
import monochord.song.SongMusic;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The tunes of the tests as we write them in ABC, read by an independent player of it: the same notes, bars and chords.
 * Source: abc2midi 4.84 from Debian's {@code abcmidi}; what it made of {@code written-again.abc} stands in {@code
 * written-read-elsewhere.tsv}, which says how. What we write is held to that file letter by letter.
 */
class AbcReadOutsideTest {
    private static final Path FOLDER = Path.of("src/test/resources/monochord/song/abc");
    private static final int TICKS = 480;
    /** That player counts in whole ticks. */
    private static final int ROUNDED = 3;

    /** One tune, and what was read elsewhere of what we wrote. */
    record ReadElsewhere(String name, Song song, List<String> notes, List<String> chords, List<String> bars) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static List<String> rows(String file) throws IOException {
        try (Stream<String> rows = Files.lines(FOLDER.resolve(file))) {
            return rows.filter(row -> !row.startsWith("#")).toList();
        }
    }

    private static List<String> words(String cell) {
        return cell.equals("-") ? List.of() : List.of(cell.split(" "));
    }

    private static Song song(String row) throws IOException {
        String[] cells = row.split("\t");
        AbcBook book = AbcBook.of(Files.readString(FOLDER.resolve(cells[0])));
        return AbcReader.read(book, book.find(cells[1]).orElseThrow());
    }

    static List<ReadElsewhere> tunes() throws IOException {
        List<String> tunes = rows("played-elsewhere.tsv");
        List<String> elsewhere = rows("written-read-elsewhere.tsv");
        List<ReadElsewhere> all = new ArrayList<>();
        for (int i = 0; i < tunes.size(); i++) {
            Song song = song(tunes.get(i));
            String[] cells = elsewhere.get(i).split("\t");
            all.add(new ReadElsewhere(song.head().title(), song, words(cells[1]), words(cells[2]), words(cells[3])));
        }
        return all;
    }

    @Test
    void whatIsWrittenIsWhatWasReadElsewhere() throws IOException {
        List<String> written = new ArrayList<>();
        for (String row : rows("played-elsewhere.tsv")) {
            written.add(AbcWriter.write(song(row)));
        }
        assertEquals(Files.readString(FOLDER.resolve("written-again.abc")), String.join("\n", written));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tunes")
    void theNotesAreTheSame(ReadElsewhere read) {
        List<SongMusic.SungNote> ours = read.song().music().played().notes();
        assertEquals(read.notes().size(), ours.size());
        for (int i = 0; i < ours.size(); i++) {
            List<Integer> parts = Arrays.stream(read.notes().get(i).split("[@-]"))
                    .map(Integer::valueOf)
                    .toList();
            assertEquals(parts.get(0), ours.get(i).pitch().midiNumber(), i + " in " + read);
            near(parts.get(1), ours.get(i).start());
            near(parts.get(2), ours.get(i).start().plus(ours.get(i).beats()));
        }
    }

    private static void near(int told, Beats ours) {
        assertTrue(isNear(told, ours), () -> told + ", not " + ours.ticks(TICKS));
    }

    private static boolean isNear(int told, Beats ours) {
        return Math.abs(told - ours.ticks(TICKS)) <= ROUNDED;
    }

    /** By the keys that sound: one and the same chord a second time is no change elsewhere. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("tunes")
    void theChordsAreTheSame(ReadElsewhere read) {
        NavigableMap<Integer, Set<Integer>> elsewhere = new TreeMap<>();
        for (String change : read.chords()) {
            String[] parts = change.split("[=,]");
            elsewhere.put(
                    Integer.valueOf(parts[0]),
                    Arrays.stream(parts).skip(1).map(Integer::valueOf).collect(Collectors.toCollection(TreeSet::new)));
        }
        List<SongMusic.ChordChange> ours = read.song().music().played().chords();
        assertEquals(elsewhere.isEmpty(), ours.isEmpty());
        for (SongMusic.ChordChange change : ours) {
            int at = (int) change.start().ticks(TICKS);
            assertEquals(
                    classes(change.chord()), elsewhere.floorEntry(at + ROUNDED).getValue(), change + " of " + read);
        }
        Set<Integer> places =
                ours.stream().map(change -> (int) change.start().ticks(TICKS)).collect(Collectors.toSet());
        for (int at : elsewhere.keySet()) {
            assertTrue(places.stream().anyMatch(place -> Math.abs(place - at) <= ROUNDED), at + " of " + read);
        }
    }

    private static Set<Integer> classes(Chord chord) {
        return chord.tones().stream().map(NoteName::pitchClass).collect(Collectors.toCollection(TreeSet::new));
    }

    /** A short bar, such as a pick-up in the middle, may belong elsewhere to the bar before. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("tunes")
    void theBarsAreTheSame(ReadElsewhere read) {
        if (read.bars().isEmpty()) {
            return;
        }
        List<Integer> told = read.bars().stream().map(Integer::valueOf).toList();
        Beats first = read.song().music().played().chords().get(0).start();
        List<Beats> starts = new ArrayList<>();
        Beats now = Beats.ZERO;
        for (SectionMusic.SongBar bar : bars(read.song())) {
            starts.add(now);
            boolean isFull = bar.beats().compareTo(read.song().head().metre().bar()) >= 0;
            if (isFull && now.compareTo(first) >= 0) {
                Beats start = now;
                assertTrue(told.stream().anyMatch(at -> isNear(at, start)), () -> start + " is no bar of " + told);
            }
            now = now.plus(bar.beats());
        }
        for (int at : told) {
            assertTrue(starts.stream().anyMatch(start -> isNear(at, start)), at + " is no bar of " + starts);
        }
    }

    private static List<SectionMusic.SongBar> bars(Song song) {
        List<SectionMusic.SongBar> bars = new ArrayList<>();
        for (Section section : song.sections()) {
            SectionMusic music = SectionMusic.of(song.written(section), song.head());
            music.order().forEach(index -> bars.add(music.bars().get(index)));
        }
        return bars;
    }
}
