package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import monochord.shell.line.LineMode;
import monochord.sound.keyboard.FakeKeyboard;
import monochord.sound.keyboard.FakeKeyboards;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rehearsals at the line: with a keyboard, with one key, through a pipe. Middle C is 60. */
@ResourceLock("keyboards")
class RehearseTest {
    private static final String SONG = """
            ---
            title: Quay Waltz
            key: C
            metre: 3/4
            tempo: 96
            ---

            ## Verse

            ```chords
            C | F | G | C
            ```

            ```tune
            E4:3 | F4:2 A4 | G4:3 | E4:3
            ```
            """;

    @TempDir
    Path folder;

    @AfterEach
    void unplug() {
        FakeKeyboards.unplugAll();
    }

    private String piped(String... lines) throws Exception {
        Files.writeString(folder.resolve("waltz.md"), SONG);
        Run run = new Run.Outside()
                .inFolder(folder)
                .typing(String.join("\n", lines) + "\n")
                .run();
        return (run.out() + run.err()).replaceAll("\\s+", " ").strip();
    }

    @Test
    void throughAPipeEachRoundIsAskedAboutAtOnce() throws Exception {
        assertEquals(
                "C | F | G | C | in C major, from 70 towards 100, for 5 minutes. You play the chords, I play the bass."
                        + " How did it go? Enter says clean, a bar's number says it stumbled there, 0 that most went astray."
                        + " Begin with the volume low and the shoulders loose; if anything hurts or rings, stop for today."
                        + " Now bars 2 and 3 alone, slower, at 60. Clean; once more, at 63."
                        + " That stands. Now the whole again, at 67."
                        + " Tomorrow: go on in C major at 67.",
                piped("rehearse | C | F | G | C | in C at 100 for 5", "3", "", "", "skip"));
    }

    @Test
    void aPlaceOfTheSongIsRehearsedWithItsTuneMetreAndTempo() throws Exception {
        String said = piped("song waltz.md", "rehearse verse bars 2 to 3", "3", "skip");
        assertTrue(
                said.contains("Verse, bars 2 to 3 in C major, from 67 towards 96, for 10 minutes."
                        + " You play the chords, I play the bass and the tune."),
                said);
        assertTrue(said.contains("Now bars 2 and 3 alone, slower, at 57."), said);
        assertTrue(said.endsWith("Tomorrow: first bars 2 and 3 in C major, each hand alone, then both at 57."), said);
        assertTrue(piped("rehearse chorus").contains("No song is open"));
    }

    @Test
    void theBandsKeysAreSettledByAWord() throws Exception {
        assertEquals(
                "The band plays in C, G, F, D, B♭, E♭ and A; what stands in one key is rehearsed in the next."
                        + " The band plays in F and B♭; what stands in one key is rehearsed in the next.",
                piped("rehearse keys", "rehearse keys F Bb"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            rehearse C G with tune   | "tune" is not what I play with you: no tune is written there. Example: with bass
            rehearse C G with hands  | "hands" is not what I play with you: nothing is left for you. Example: with bass
            rehearse C G with drums  | "drums" is not what I play with you: expected bass, chords, hands, tune or click. Example: with bass and tune
            rehearse C G for 99      | "99" is not a time: expected whole minutes from 1 to 30. Example: for 10
            rehearse C G as waltz metre 4/4 | "C G as waltz metre 4/4" is not a way to play chords: waltz goes in bars of three quarters. Example: as ballad
            rehearse                 | "" is not a rehearsal: a place of the open song or chords are wanted. Example: rehearse ; C ; Am ; F ; G ; in C at 96
            rehearse keys Q          | "Q" is not a note name
            """)
    void refusesWithAReason(String line, String message) throws Exception {
        String said = piped(line);
        assertTrue(said.startsWith(message.replace(';', '|')), said);
    }

    @Test
    void aBarThatTheRoundHasNotIsRefused() throws Exception {
        assertTrue(piped("rehearse | C | F |", "9")
                .contains("\"9\" is not a bar of this round: it has bars 1 to 2. Example: 1"));
    }

    @Test
    void oneVerbAsJson() {
        assertEquals(
                "{\"kind\":\"rehearse\",\"title\":\"C | F |\",\"key\":\"C major\",\"tempo\":59,\"goal\":84,\"bars\":2,"
                        + "\"minutes\":10,\"yours\":\"chords\"}",
                Run.of("--json rehearse | C | F |").result(0).strip());
        assertTrue(Run.of("--json bass walking Dm7 G7 C in C")
                .result(0)
                .startsWith("{\"kind\":\"bass\",\"key\":\"C major\",\"lines\":[{\"style\":\"walking\",\"symbols\":"
                        + "[\"Dm7\",\"G7\",\"C\"],\"notes\":[\"D2\",\"F#2\",\"G2\",\"B2\",\"C3\"]"));
    }

    /** The keyboard is listened to, and goes on by itself; any key stops it. */
    @Test
    void aKeyboardIsListenedTo() throws Exception {
        try (Typist typist = new Typist(80, 24, folder)) {
            FakeKeyboard keys = FakeKeyboards.plug("Stage piano");
            assertTrue(typist.types("keys").startsWith("Stage piano is connected;"));
            assertTrue(typist.types("rehearse | C | G | in C at 300")
                    .contains("I listen to Stage piano; any key here stops."));
            typist.sees("1 of 2   at 210");
            typist.sees("G in ");
            typist.sees("Bar 1, beat 1: C was not heard. Now bar 1 alone, slower, at 179.");
            typist.sees("counting in   at 179");
            while (typist.sitting().teaching().rehearsing().isRunning()) {
                typist.pressOn(" ");
            }
            assertEquals(LineMode.REHEARSAL, typist.sitting().mode());
            assertEquals("Tomorrow: first bar 1 in C major, each hand alone, then both at 179.", typist.types("skip"));
            keys.press(60, 64, 67);
            typist.sees("C  I in C major");
        }
    }

    /** The second bar has a note that does not belong, and that is said, however late the hand of this test comes. */
    @Test
    void aWrongNoteIsNamed() throws Exception {
        try (Typist typist = new Typist(80, 24, folder)) {
            FakeKeyboard keys = FakeKeyboards.plug("Stage piano");
            typist.types("keys");
            typist.types("rehearse | C | in C at 120");
            typist.sees("bar 1 of 1");
            keys.plays(60, 63, 67);
            typist.sees("Bar 1, beat 1: E♭ does not belong to C. Now bar 1 alone, slower, at 71.");
        }
    }

    /** Without a keyboard one key says how it went. */
    @Test
    void oneKeySaysHowItWent() throws Exception {
        try (Typist typist = new Typist(80, 24, folder)) {
            assertTrue(typist.types("rehearse | C | G | in C at 300").contains("Any key stops. How did it go?"));
            typist.sees("\nHow did it go? Enter says clean");
            typist.pressOn("2");
            assertEquals("Now bars 1 and 2 alone, slower, at 179.", typist.answer());
            typist.sees("at 179");
            assertFalse(typist.screen()
                    .contains("How did it go? Enter says clean, a bar's number says it stumbled there,\n0"));
        }
    }
}
