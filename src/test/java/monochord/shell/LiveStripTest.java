package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import monochord.shell.playback.LiveStrip;
import monochord.text.StyledText;
import monochord.view.Saying;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What moves around the prompt while a line is typed into the real line reader. */
class LiveStripTest {
    private static final String ESCAPE = "\33";

    @TempDir
    Path home;

    private final SoundingEar ear = new SoundingEar();

    private Typist typist(int columns, int rows) throws Exception {
        Typist typist = new Typist(columns, rows, home, ear);
        typist.seesAtThePrompt("");
        return typist;
    }

    private static void show(LiveStrip board, String lines) {
        board.show(look -> StyledText.of(lines));
    }

    @Test
    void theStripStandsUnderTheLineAndGoesWithoutATrace() throws Exception {
        try (Typist typist = typist(80, 24)) {
            LiveStrip board = typist.sitting().stage().board();
            typist.press("show Ab");
            typist.seesAtThePrompt("show Ab");
            show(board, "first\nsecond");
            typist.sees("▸ show Ab\nfirst\nsecond");
            show(board, "third\nfourth");
            typist.sees("▸ show Ab\nthird\nfourth");
            typist.press("maj7");
            typist.sees("▸ show Abmaj7\nthird\nfourth");
            board.clear();
            typist.seesAtThePrompt("show Abmaj7");
            assertFalse(typist.screen().contains("third"), typist::screen);
        }
    }

    @Test
    void theStripIsGoneBeforeAnAnswerAndComesBackBelowIt() throws Exception {
        try (Typist typist = typist(80, 24)) {
            show(typist.sitting().stage().board(), "the strip");
            typist.sees("▸\nthe strip");
            typist.press("key Eb" + Typist.ENTER);
            typist.answer();
            typist.sees("\n▸\nthe strip");
            assertEquals(1, count(typist.screen(), "the strip"), typist::screen);
            assertTrue(typist.screen().contains("▸ key Eb\n"), typist::screen);
        }
    }

    @Test
    void aHundredChangesAtFullSpeedGarbleNothingThatIsTyped() throws Exception {
        try (Typist typist = typist(80, 24)) {
            LiveStrip board = typist.sitting().stage().board();
            Thread mover = new Thread(() -> {
                for (int i = 0; i < 400; i++) {
                    show(board, "move " + i + "\n" + "─".repeat(i % 60));
                }
                board.clear();
            });
            mover.start();
            String line = "IV I V bVI V I in D";
            for (char c : line.toCharArray()) {
                typist.press(Character.toString(c));
                Thread.sleep(2);
            }
            mover.join();
            typist.seesAtThePrompt(line);
            assertFalse(typist.screen().contains("move"), typist::screen);
            assertTrue(typist.types("").contains("G D A B♭ A D"), typist::screen);
        }
    }

    @Test
    void aListOfCompletionsHasThePlaceFirst() throws Exception {
        try (Typist typist = typist(80, 24)) {
            show(typist.sitting().stage().board(), "the strip");
            typist.press("learn " + Typist.TAB);
            typist.sees("6.9");
            assertFalse(typist.screen().contains("the strip"), typist::screen);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 24, 120})
    void aWindowThatChangesItsSizeKeepsOneLineAndOneStrip(int columns) throws Exception {
        try (Typist typist = typist(80, 24)) {
            LiveStrip board = typist.sitting().stage().board();
            board.show(look -> StyledText.of("-".repeat(look.width()) + "\nend"));
            typist.press("show C");
            typist.sees("▸ show C\n" + "-".repeat(80) + "\nend");
            typist.resizes(columns, 20);
            typist.sees("▸ show C\n" + "-".repeat(columns) + "\nend");
            assertEquals(1, count(typist.screen(), "end"), typist::screen);
            assertEquals(1, count(typist.screen(), "show C"), typist::screen);
        }
    }

    @Test
    void onALowOrVeryNarrowScreenTheLineComesFirst() throws Exception {
        try (Typist typist = typist(80, 7)) {
            LiveStrip board = typist.sitting().stage().board();
            show(board, "1\n2\n3\n4\n5");
            typist.press("x");
            typist.seesAtThePrompt("x");
            show(board, "1\n2\n3\n4");
            typist.sees("▸ x\n1\n2\n3\n4");
        }
    }

    @Test
    void whatIsSaidStandsAboveTheLineWhichStays() throws Exception {
        try (Typist typist = typist(80, 24)) {
            LiveStrip board = typist.sitting().stage().board();
            show(board, "the strip");
            typist.press("half a li");
            board.say(Saying.of("The keyboard is gone."));
            typist.sees("The keyboard is gone.\n▸ half a li\nthe strip");
        }
    }

    @Test
    void aLineThatIsEnteredIsAnsweredAndWhatWasTypedWaits() throws Exception {
        try (Typist typist = typist(80, 24)) {
            typist.press("half a li");
            typist.seesAtThePrompt("half a li");
            typist.sitting().stage().board().enter("show Ab");
            assertTrue(typist.answer().startsWith("A♭"), typist::screen);
            assertTrue(typist.screen().contains("▸ show Ab\n"), typist::screen);
            typist.seesAtThePrompt("half a li");
            typist.pressOn("\25" + Typist.UP);
            typist.seesAtThePrompt("show Ab");
        }
    }

    @Test
    void linesEnteredTogetherAreAnsweredInOrder() throws Exception {
        try (Typist typist = typist(80, 24)) {
            LiveStrip board = typist.sitting().stage().board();
            for (String line : new String[] {"key Eb", "key D", "key F"}) {
                board.enter(line);
            }
            assertTrue(typist.answer().startsWith("E♭ major"));
            assertTrue(typist.answer().startsWith("D major"));
            assertTrue(typist.answer().startsWith("F major"));
            typist.seesAtThePrompt("");
            assertTrue(typist.types("4 5").startsWith("In F major"));
        }
    }

    @Test
    void whileItSoundsTheKeysThatAreDownAndTheChordAreSeen() throws Exception {
        try (Typist typist = typist(80, 24)) {
            typist.types("play IV I V bVI V I in D at 84");
            typist.sees("G  1 of 6, then D");
            typist.sees("lh");
            ear.hears(6.5);
            typist.sees("B♭  4 of 6, then A");
            ear.endsByItself();
            typist.seesAtThePrompt("");
            assertFalse(typist.screen().contains("4 of 6"), typist::screen);
        }
    }

    @Test
    void aNarrowWindowSaysTheKeysInWords() throws Exception {
        try (Typist typist = typist(24, 12)) {
            typist.types("play F C G Ab");
            typist.sees("F  1 of 4, then C\nlh F2  rh C4 F4 A4");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r", " ", ESCAPE})
    void onAnEmptyLineEnterSpaceAndEscapeOnlyStop(String key) throws Exception {
        try (Typist typist = typist(80, 24)) {
            typist.types("play F C G Ab");
            typist.sees("1 of 4");
            typist.press(key);
            typist.seesAtThePrompt("");
            assertEquals(1, ear.stops());
            typist.press("C E G" + Typist.ENTER);
            assertTrue(typist.answer().startsWith("In C major"));
        }
    }

    @Test
    void anyOtherKeyStopsAndIsTyped() throws Exception {
        try (Typist typist = typist(80, 24)) {
            typist.types("play F C G Ab");
            typist.sees("1 of 4");
            typist.press("k");
            typist.seesAtThePrompt("k");
            assertEquals(1, ear.stops());
            typist.press("ey Eb ");
            typist.seesAtThePrompt("key Eb");
            assertEquals(1, ear.stops());
            assertTrue(typist.types("").startsWith("E♭ major"));
        }
    }

    @Test
    void enterBehindALineThatWasBegunStopsAndEnters() throws Exception {
        try (Typist typist = typist(80, 24)) {
            typist.press("key Eb");
            typist.seesAtThePrompt("key Eb");
            ear.play(monochord.sound.Performance.of(monochord.score.Score.note(
                    monochord.theory.note.Pitch.parse("C4"), monochord.theory.note.Beats.ONE)));
            typist.press(Typist.ENTER);
            assertTrue(typist.answer().startsWith("E♭ major"));
            assertEquals(1, ear.stops());
        }
    }

    @Test
    void howToStopIsSaidOnce() throws Exception {
        try (Typist typist = typist(80, 24)) {
            assertEquals("Playing F C G A♭ in C major at 84. Any key stops it.", typist.types("play F C G Ab"));
            assertEquals("Playing F C in C major at 84.", typist.types("play F C"));
        }
    }

    @Test
    void anArrowStopsAndBringsBackTheLine() throws Exception {
        try (Typist typist = typist(80, 24)) {
            typist.types("play F C G Ab");
            typist.sees("1 of 4");
            typist.press(Typist.UP);
            typist.seesAtThePrompt("play F C G Ab");
            assertEquals(1, ear.stops());
        }
    }

    private static int count(String text, String part) {
        return (text.length() - text.replace(part, "").length()) / part.length();
    }
}
