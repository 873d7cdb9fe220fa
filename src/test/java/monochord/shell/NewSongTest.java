package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A song is begun at the line: it asks for what it needs, and each answer is in the file before the next question. */
class NewSongTest {
    @TempDir
    Path folder;

    private String typed(String... lines) throws IOException {
        try (Typist typist = new Typist(80, 24, folder)) {
            StringBuilder said = new StringBuilder();
            for (String line : lines) {
                said.append(typist.typesAndReads(line)).append(' ');
            }
            return said.toString();
        }
    }

    private void says(String wanted, String out) {
        String flat = wanted.replaceAll("\\s+", " ").strip();
        assertTrue(out.replaceAll("\\s+", " ").contains(flat), () -> "expected\n" + flat + "\nin\n" + out);
    }

    @Test
    void aSongIsAskedForLineByLine() throws IOException {
        String out = typed(
                "song lamp.md",
                "The Lamp",
                "Bm",
                "3/4",
                "96",
                "",
                "Bm | G |",
                "A | F#",
                "",
                "F#4 | B4:2 C#5",
                "",
                "Chorus",
                "VI | VII",
                "",
                "",
                "verse",
                "",
                "song");
        says("""
                lamp.md is not there yet: a song is begun in it. skip leaves off at any time.
                What is the song called?
                Enter goes on.
                In which key?
                In which metre? Enter takes 4/4.
                How many beats a minute? Enter leaves that open.
                What is its first section? Enter takes Verse.
                The chords of Verse, with bar lines, such as D | G . A . | D?
                The next line of its chords? Enter says that is all.
                The next line of its chords? Enter says that is all.
                Its tune, such as A3:1 | D4:2 E4 F#4? Enter leaves it out.
                The next line of the tune? Enter says that is all.
                Which section comes next? One that stands already is played again; Enter says
                that is all.
                """, out);
        says("It is kept in lamp.md. recolour verse proposes a change, play verse sounds it.", out);
        assertEquals("""
                ---
                title: The Lamp
                key: B minor
                metre: 3/4
                tempo: 96
                ---

                ## Verse

                ```chords
                Bm | G |
                A | F#
                ```

                ```tune
                F#4 | B4:2 C#5 ...
                ```

                ## Chorus

                ```chords
                VI | VII
                ```

                ## Verse
                """, Files.readString(folder.resolve("lamp.md")));
        assertFalse(out.contains("Not read"), out);
        says(
                "lamp.md: no faults.",
                new Run.Outside().inFolder(folder).run("check", "lamp.md").out());
    }

    @Test
    void whatCannotBeReadIsAskedForAgain() throws IOException {
        String out = typed(
                "song lamp.md",
                "Lamp",
                "Bn",
                "D",
                "4/5",
                "4/4",
                "fast",
                "80",
                "Changes",
                "Verse",
                "D | Gq",
                "D | G",
                "skip");
        says("\"Bn\" is not a key", out);
        says("\"4/5\" is not a metre: expected beats and their value, such as 3/4 or 6/8.", out);
        says("\"fast\" is not a tempo: expected beats in a minute, 1 to 400. Example: 84", out);
        says("\"Changes\" is not a section: under that name changes are kept. Example: Verse", out);
        says("\"Gq\" is not a chord", out);
        says("```chords\nD | G\n```", Files.readString(folder.resolve("lamp.md")));
    }

    /** As after a kill: what was answered stands in the file, and the line goes on there. */
    @Test
    void aSongThatWasBrokenOffGoesOn() throws IOException {
        typed("song lamp.md", "The Lamp", "D");
        says("title: The Lamp\nkey: D\n", Files.readString(folder.resolve("lamp.md")));
        String out = typed("song lamp.md", "Chorus", "D | A", "skip", "song");
        says("lamp.md is begun and has no section yet.\nWhat is its first section? Enter takes Verse.\n", out);
        says("## Chorus\n\n```chords\nD | A\n```", Files.readString(folder.resolve("lamp.md")));
    }

    @Test
    void nothingIsWrittenBeforeSomethingIsSaid() throws IOException {
        says("Nothing was begun.", typed("song lamp.md", "", "", "skip"));
        assertFalse(Files.exists(folder.resolve("lamp.md")));
    }

    @Test
    void aStepBackAsksAgain() throws IOException {
        typed("song lamp.md", "Lampe", "back", "The Lamp", "D", "skip");
        says("title: The Lamp\nkey: D\n", Files.readString(folder.resolve("lamp.md")));
    }

    /** A script has no answers to give, and its next lines are none. */
    @Test
    void nobodyIsAskedWhereNobodySits() {
        String told = "lamp.md is not there. At the prompt song lamp.md begins a song in it; help\n"
                + "song-file says how one is written.";
        Run sentence = new Run.Outside().inFolder(folder).run("song", "lamp.md");
        assertEquals(3, sentence.status());
        assertEquals(told, sentence.err().strip());
        Run piped = new Run.Outside()
                .inFolder(folder)
                .typing("song lamp.md\nshow C\n")
                .run();
        assertTrue((piped.out() + piped.err()).contains(told), piped.out() + piped.err());
        assertTrue(piped.out().contains("C E G"), piped.out());
        assertFalse(Files.exists(folder.resolve("lamp.md")));
    }
}
