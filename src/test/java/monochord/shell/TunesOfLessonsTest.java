package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tunes of the lessons at the line: opened by their name, checked with the lessons, shown and played in one. */
class TunesOfLessonsTest {
    private static final String LESSON = """
            ---
            title: A rope
            grade: 1
            needs: []
            skills: [interval]
            ---

            Listen.

            ```tune
            the-short-rope verse bars 1 to 2
            ```

            ```ask
            skill: interval
            subject: M2
            keys: C
            ```
            """;

    private static final String TUNE = """
            ---
            title: The Short Rope
            by: the Lantern Quay band
            key: G
            metre: 3/4
            tempo: 84
            ---

            ## Verse

            ```chords
            G | D
            ```

            ```tune
            B4:2 G4 | A4:3
            ```

            ```words
            Pull the rope
            ```
            """;

    @TempDir
    Path lessons;

    @BeforeEach
    void write() throws IOException {
        Files.createDirectories(lessons.resolve("tunes"));
        Files.createDirectories(lessons.resolve("20-mine"));
        Files.writeString(lessons.resolve("20-mine/1-a-rope.md"), LESSON);
        Files.writeString(lessons.resolve("tunes/the-short-rope.md"), TUNE);
    }

    private String run(String... arguments) {
        Run run = new Run.Outside().withLessons(lessons).run(arguments);
        return (run.out() + run.err()).replace(lessons.toString(), "").replaceAll("\\s+", " ");
    }

    @Test
    void aTuneOpensByItsName() {
        String said = run("song", "the-short-rope");
        assertTrue(said.startsWith("The Short Rope (the Lantern Quay band) G major, 3/4, 84 to the minute"), said);
        assertEquals("the-long-rope: there is no such file ", run("song", "the-long-rope"));
    }

    /** What is changed goes into no file of the lessons. */
    @Test
    void aChangeLeavesTheTunesOfTheLessonsAlone() throws IOException {
        Run run = new Run.Outside()
                .withLessons(lessons)
                .typing("song the-short-rope\nchange verse bar 2 to D7\n")
                .run();
        assertTrue(
                run.out().replaceAll("\\s+", " ").contains("It is not saved yet: song --out my-song.md does."),
                run.out());
        assertEquals(TUNE, Files.readString(lessons.resolve("tunes/the-short-rope.md")));
    }

    @Test
    void aLessonShowsItAndPlaysIt() {
        Run run = new Run.Outside()
                .withLessons(lessons)
                .typing("learn 20.1 in F\n\n")
                .run();
        String shown = """
                The Short Rope: Verse, bars 1 to 2, in F major
                  F             C
                  A4:2  F4   |  G4:3
                  3     1       2
                  Pull  the     rope

                Playing The Short Rope at 84.
                """;
        assertTrue(run.out().contains(shown), run.out());
    }

    @Test
    void checkTellsTheFaultsOfATuneAndTheLessonGoesOn() throws IOException {
        Files.writeString(lessons.resolve("tunes/the-short-rope.md"), TUNE.replace("B4:2 G4", "B4:2 H4"));
        String said = run("check");
        assertTrue(said.contains("/20-mine/1-a-rope.md: no faults."), said);
        assertTrue(said.contains("/tunes/the-short-rope.md:16:6: "), said);
        Run run = new Run.Outside()
                .withLessons(lessons)
                .typing("learn 20.1 in F\n\n")
                .run();
        assertTrue(run.out().contains("Which note lies a major second above"), run.out());
        assertFalse(run.out().contains("The Short Rope"), run.out());
    }

    @Test
    void aFileThatIsNoSongIsTold() throws IOException {
        Files.writeString(lessons.resolve("tunes/letter.md"), "Dear Odile,\n");
        String said = run("check");
        assertTrue(
                said.contains(
                        "/tunes/letter.md:1:1: this is no song; write a head with key: and metre:, and a section"),
                said);
    }
}
