package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A notebook that opened a song keeps it, and is typed again wherever it is. */
class SongNotebookTest {
    private static final String WALTZ = """
            ---
            title: Quay Waltz
            key: C
            metre: 3/4
            ---

            ## Verse

            ```chords
            C | F | G | C
            ```
            """;

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void writeTheSong() throws IOException {
        file = Files.writeString(folder.resolve("waltz.md"), WALTZ);
    }

    private String typed(String... lines) {
        Run run = new Run.Outside()
                .inFolder(folder)
                .typing(String.join("\n", lines) + "\n")
                .run();
        return run.out() + run.err();
    }

    @Test
    void itReplaysWhereTheSongHasChangedOrGone() throws IOException {
        typed("song waltz.md", "change verse bar 2 to Dm because it sinks", "song", "save evening.md");
        assertTrue(Files.readString(folder.resolve("evening.md")).contains("````song waltz.md\n" + WALTZ + "````\n"));
        assertTrue(Files.readString(file).contains("C | Dm | G | C"));
        String replayed =
                new Run.Outside().inFolder(folder).run("replay", "evening.md").out();
        assertEquals("evening.md: holds, 3 lines.", replayed.strip());
        Files.delete(file);
        assertEquals(
                replayed,
                new Run.Outside().inFolder(folder).run("replay", "evening.md").out());
    }

    @Test
    void otherFormatsAreKeptToo() throws IOException {
        Files.writeString(folder.resolve("a.abc"), "X:1\nT:One\nM:4/4\nL:1/4\nK:D\n\"D\"d4|\n");
        Files.writeString(
                folder.resolve("s.musicxml"),
                "<score-partwise><part id='a'><measure><note><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration></note></measure></part></score-partwise>");
        typed("song a.abc", "song s.musicxml", "song a.abc", "save evening.md");
        Files.delete(folder.resolve("a.abc"));
        Files.delete(folder.resolve("s.musicxml"));
        assertEquals(
                "evening.md: holds, 3 lines.",
                new Run.Outside()
                        .inFolder(folder)
                        .run("replay", "evening.md")
                        .out()
                        .strip());
    }

    @Test
    void aSongBegunAtTheLineReplays() throws IOException {
        try (Typist typist = new Typist(80, 24, folder)) {
            for (String line : List.of(
                    "song lamp.md", "The Lamp", "Bm", "3/4", "", "", "Bm | G", "", "", "", "song", "save evening.md")) {
                typist.types(line);
            }
        }
        assertEquals(
                "evening.md: holds, 11 lines.",
                new Run.Outside()
                        .inFolder(folder)
                        .run("replay", "evening.md")
                        .out()
                        .strip());
    }

    /** Opened again, the line goes on with the song; its file is saved only while it holds what the line has come to. */
    @Test
    void theLineGoesOnWithTheSongOfAnOpenedNotebook() throws IOException {
        typed("song waltz.md", "change verse bar 2 to Dm", "save evening.md");
        String out = typed("open evening.md", "change verse bar 3 to G7", "song");
        assertTrue(out.contains("Changed: Verse, bar 3: G to G7."), out);
        assertTrue(Files.readString(file).contains("C | Dm | G7 | C"), Files.readString(file));
        writeTheSong();
        assertTrue(typed("open evening.md", "change verse bar 3 to G7").contains("It is not saved yet"), out);
        assertEquals(WALTZ, Files.readString(file));
    }

    @Test
    void aFileThatWasChangedElsewhereIsNotWrittenOver() throws IOException {
        try (Typist typist = new Typist(80, 24, folder)) {
            typist.types("song waltz.md");
            String other = WALTZ.replace("G | C", "G7 | C");
            Files.writeString(file, other);
            String said = typist.types("change verse bar 2 to Dm");
            assertTrue(
                    said.contains("It is not saved, for its file was changed elsewhere since it was opened: song"),
                    said);
            assertEquals(other, Files.readString(file));
        }
    }

    /** The line offers the song of the last sitting. */
    @Test
    void theSongIsRemembered() throws IOException {
        try (Typist typist = new Typist(80, 24, folder)) {
            typist.types("song waltz.md");
        }
        try (Typist typist = new Typist(80, 24, folder)) {
            String said = typist.types("song");
            assertTrue(said.startsWith("No song is open. Your song is Quay Waltz; song waltz.md opens it."), said);
        }
        Files.delete(file);
        try (Typist typist = new Typist(80, 24, folder)) {
            assertTrue(typist.types("song").startsWith("No song is open. song my-song.md opens one."));
        }
    }
}
