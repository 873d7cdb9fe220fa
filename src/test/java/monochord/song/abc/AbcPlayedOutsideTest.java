package monochord.song.abc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import monochord.song.Song;
import monochord.song.SongMusic;
import monochord.song.SongReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole tunes, with every feature that tune books use, sound as an independent player of ABC plays them, pitch for pitch and
 * length for length, repeats played out. Source: abc2midi 4.84 from Debian's {@code abcmidi}; what it played stands in
 * {@code played-elsewhere.tsv}, which says what was left out.
 */
class AbcPlayedOutsideTest {
    private static final Path FOLDER = Path.of("src/test/resources/monochord/song/abc");
    private static final int TICKS = 480;

    /** That player counts in whole ticks, from one note to the next, so that its sevenths of a beat are up to two off. */
    private static final int ROUNDED = 2;

    /** What was played elsewhere of one tune. */
    record Played(String file, String number, List<String> notes) {}

    static List<Played> played() throws IOException {
        try (Stream<String> rows = Files.lines(FOLDER.resolve("played-elsewhere.tsv"))) {
            return rows.filter(row -> !row.startsWith("#"))
                    .map(row -> row.split("\t"))
                    .map(cells -> new Played(cells[0], cells[1], List.of(cells[2].split(" "))))
                    .toList();
        }
    }

    @Test
    void thereAreTheTunesOfTheCourseAndFortyMore() throws IOException {
        assertTrue(played().size() > 60, "tunes");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("played")
    void aTuneSoundsAsElsewhere(Played played) throws IOException {
        AbcBook book = AbcBook.of(Files.readString(FOLDER.resolve(played.file())));
        Song song = AbcReader.read(book, book.find(played.number()).orElseThrow());
        same(played.notes(), song);
        same(played.notes(), SongReader.read(song.toString()));
        AbcBook written = AbcBook.of(AbcWriter.write(song));
        same(played.notes(), AbcReader.read(written, written.tunes().get(0)));
    }

    private static void same(List<String> played, Song song) {
        List<SongMusic.SungNote> ours = song.music().played().notes();
        assertEquals(played.size(), ours.size(), song::toString);
        for (int i = 0; i < ours.size(); i++) {
            String[] parts = played.get(i).split("[@-]");
            SongMusic.SungNote note = ours.get(i);
            long start = note.start().ticks(TICKS);
            long end = note.start().plus(note.beats()).ticks(TICKS);
            assertEquals(Integer.parseInt(parts[0]), note.pitch().midiNumber(), i + ": " + song);
            assertTrue(
                    Math.abs(start - Integer.parseInt(parts[1])) <= ROUNDED
                            && Math.abs(end - Integer.parseInt(parts[2])) <= ROUNDED,
                    () -> start + " to " + end + ", not " + parts[1] + " to " + parts[2] + ": " + song);
        }
    }
}
