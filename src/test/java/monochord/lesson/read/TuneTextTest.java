package monochord.lesson.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import monochord.harmony.melody.Fit;
import monochord.lesson.LessonPart;
import monochord.lesson.Reading;
import monochord.lesson.TuneExcerpt;
import monochord.song.Section;
import monochord.song.Song;
import monochord.song.SongPlace;
import monochord.song.SongReader;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Blocks that name bars of a tune, and the tunes that come with the lessons. */
class TuneTextTest {
    private static final String HEAD = "---\ntitle: T\ngrade: 1\nneeds: []\nskills: []\n---\n";
    private static final String TUNE = """
            ---
            title: The Short Rope
            by: the Lantern Quay band
            key: G
            metre: 6/8
            tempo: 60
            ---

            ## Verse

            ```chords
            G | D | G
            ```

            ```tune
            D4:1/2 | G4:3/2 B4:3/2 | A4:3 | .:3/2 G4
            ```

            ```words
            Oh, pull~on the rope, _ boys
            ```

            ## Coda

            ```chords
            G
            ```
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.createDirectories(folder.resolve("tunes"));
        Files.createDirectories(folder.resolve("20-mine"));
        Files.writeString(folder.resolve("tunes/the-short-rope.md"), TUNE);
    }

    private Reading lesson(String line) throws IOException {
        Path file = folder.resolve("20-mine/1-one.md");
        Files.writeString(file, HEAD + "~~~tune\n" + line + "\n~~~\n");
        return LessonReader.read(file, Set.of());
    }

    private TuneExcerpt tune(String line) throws IOException {
        Reading reading = lesson(line);
        assertEquals(List.of(), reading.faults());
        return ((LessonPart.TunePart) reading.lesson().orElseThrow().parts().get(0)).tune();
    }

    @Test
    void aBlockHoldsBarsWithTheirChordsAndWords() throws IOException {
        TuneExcerpt whole = tune("the-short-rope verse");
        assertEquals("D4:1/2 | G4:3/2 B4:3/2 | A4:3 | .:3/2 G4", whole.melody().toString());
        assertEquals("G | D | G |", whole.chords().toString());
        assertEquals(List.of("Oh,", "pull on", "the", "rope,", ""), whole.words());
        assertEquals(90, whole.tempo(), "quarters, where the file counts dotted ones");
        TuneExcerpt last = tune("the-short-rope verse bar 3");
        assertEquals("| A4:3/2 G4", last.melody().toString());
        assertEquals(List.of("", ""), last.words(), "a note that goes on takes no word");
        assertEquals(whole, tune("the-short-rope"));
    }

    @Test
    void itMayStandOverOtherChords() throws IOException {
        TuneExcerpt tune = tune("the-short-rope verse bars 1 to 2 over Em | D7");
        assertEquals("Em | D7 |", tune.chords().toString());
    }

    /** The nearer way, at most six half steps; a tune in minor in the relative minor. Source: counted on the keys. */
    @ParameterizedTest(name = "in {0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            G  | G4:3/2 B4:3/2
            C  | C5:3/2 E5:3/2
            Db | Db5:3/2 F5:3/2
            F  | F4:3/2 A4:3/2
            Bb | Bb4:3/2 D5:3/2
            """)
    void aTuneStandsInTheLearnersKey(String key, String notes) throws IOException {
        TuneExcerpt tune = tune("the-short-rope verse bars 1 to 2").in(Key.parse(key));
        assertTrue(tune.melody().toString().contains(notes), tune.melody().toString());
        assertEquals(Key.parse(key), tune.key());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '!', textBlock = """
            the-short-rop verse               ! 8:1: no tune is called "the-short-rop"; write the-short-rope
            xyzzy                             ! 8:1: no tune is called "xyzzy"; write the name of a file in the folder tunes beside the books
            the-short-rope chorus             ! 8:16: no place in the tune is called "chorus"; write Verse or Coda, and bars behind it if need be
            the-short-rope verse bar 9        ! 8:26: "verse bar 9" is not a place in the song: Verse has bars 1 to 3; write for example recolour verse bar 1
            the-short-rope coda               ! 8:16: tune or chords are not written there; write both into its file, or name another place
            the-short-rope verse bar 1 over G | D ! 8:33: the tune has 1 bar there, and the chords over it have not; write as many bars, parted by |
            the-short-rope verse bar 1 over H | ! 8:33: "H" is not a chord: expected a letter from A to G at character 1, found 'H'; write for example Abmaj7
            """)
    void saysWhatIsWrongInABlock(String line, String fault) throws IOException {
        List<String> faults = lesson(line).faults().stream()
                .map(Object::toString)
                .map(said -> said.substring(said.indexOf("1-one.md:") + 9))
                .toList();
        assertEquals(List.of(fault), faults);
    }

    @Test
    void aTuneWithAFaultIsLeftOutAndTheLessonGoesOn() throws IOException {
        Files.writeString(folder.resolve("tunes/the-short-rope.md"), TUNE.replace("A4:3 |", "A4:5 |"));
        Reading reading = lesson("the-short-rope verse");
        assertEquals(List.of(), reading.faults());
        assertEquals(List.of(), reading.lesson().orElseThrow().parts());
    }

    static List<Path> ours() {
        return Library.in(Path.of("lessons")).tunes().files();
    }

    /** What a learner plays first: no note of a beat or more stands against the plain chords of its file. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("ours")
    void eachOfOursFitsItsChords(Path file) throws IOException {
        Song song = SongReader.read(Files.readString(file));
        assertEquals(List.of(), song.faults());
        for (Section section : song.sections()) {
            SongPlace place = SongPlace.whole(section);
            Fit fit = Fit.of(
                    place.melody(song).orElseThrow(), place.progression(song).orElseThrow());
            assertEquals(
                    List.of(),
                    fit.clashes().stream()
                            .filter(note -> note.beats().compareTo(Beats.ONE) >= 0)
                            .map(note -> section.name() + " " + fit.place(note) + " " + note.pitch())
                            .toList());
        }
    }

    /** Nothing of what is sung is left over, and no note is without: a word laid behind all of them comes to stand there. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("ours")
    void eachOfOursHasASyllableForEachNote(Path file) throws IOException {
        Song song = SongReader.read(Files.readString(file));
        for (Section section : song.sections()) {
            if (!section.words().isEmpty()) {
                int notes = SongPlace.whole(section)
                        .melody(song)
                        .orElseThrow()
                        .notes()
                        .size();
                List<String> lines = new ArrayList<>(section.words());
                lines.add("behind");
                assertEquals(notes, Syllables.of(lines, 2 * notes).indexOf("behind"), section.name());
            }
        }
    }

    @Test
    void oursAreInMajorAndMinorInTwoThreeAndFour() throws IOException {
        int printed = 0;
        int minor = 0;
        Set<Integer> beats = new java.util.TreeSet<>();
        for (Path file : ours()) {
            Song song = SongReader.read(Files.readString(file));
            boolean isOurs = song.head().by().contains("Lantern Quay");
            printed += isOurs ? 0 : 1;
            minor += !isOurs && song.head().key().isMinor() ? 1 : 0;
            beats.add(song.head().metre().isCompound() ? 2 : song.head().metre().beats());
        }
        assertTrue(printed >= 12, "printed: " + printed);
        assertTrue(minor >= 4, "minor: " + minor);
        assertEquals(Set.of(2, 3, 4), beats);
    }
}
