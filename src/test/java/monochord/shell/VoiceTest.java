package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A progression voiced at the line. */
class VoiceTest {
    private static final String CARE = "more than an octave";

    @Test
    void showsWhatIsHeldAndSaysWhy() {
        String out = Run.of("voice IV I Vsus4 bVImaj7 Vsus4 I in C spread").result(0);
        assertTrue(out.startsWith("In C major, spread, each hand within an octave\n"), out);
        assertTrue(out.contains("A♭maj7"), out);
        String words = out.replaceAll("\\s+", " ");
        assertTrue(
                words.contains("Gsus4 to A♭maj7: the right hand does not move; the left hand slides up a half step."),
                out);
        assertTrue(
                words.contains("C is the fourth of Gsus4 and the third of A♭maj7; "
                        + "G is the root of Gsus4 and the seventh of A♭maj7."),
                out);
        assertFalse(words.contains(CARE), out);
        assertTrue(out.lines().allMatch(line -> line.codePointCount(0, line.length()) <= 80), out);
    }

    @Test
    void aWideHandIsToldToTakeCareOnce() {
        String out = Run.of("voice F C G C in C spread reach 10").result(0);
        assertEquals(2, out.replaceAll("\\s+", " ").split(CARE, -1).length, out);
    }

    /** Who asks for a tenth is told to take care, whether a tenth comes of it or not. */
    @Test
    void aWideReachIsCautionedThoughNothingNeedsIt() {
        String words = Run.of("voice F C G C in C close reach 10").result(0).replaceAll("\\s+", " ");
        assertTrue(
                words.endsWith("Many grown hands do not reach a tenth. Nothing here asks for more than an octave; "
                        + "if the hand aches, stop. "),
                words);
        assertFalse(Run.of("voice F C G C in C close reach 9").result(0).contains("ache"));
    }

    @Test
    void theTuneStaysOnTop() {
        String out = Run.of("voice Dm7 G7 C in C melody A4:2 B4:2 G4:2 --json").result(0);
        assertTrue(out.contains("\"A4\"]},{\"symbol\":\"G7\""), out);
        assertTrue(out.contains("\"B4\"]},{\"symbol\":\"C\""), out);
        assertTrue(out.contains("\"G4\"]}],\"cost\""), out);
    }

    @Test
    void plainAndAsciiSayTheSame() {
        String plain = Run.of("voice F C in C --plain").result(0);
        assertTrue(plain.contains("C: left hand C2, right hand C4 E4 G4. C4 stays."), plain);
        String ascii = Run.of("voice bVI I in C --ascii --keys").result(0);
        assertTrue(ascii.chars().allMatch(c -> c < 128), ascii);
    }

    @Test
    void refusesWhatItCannotVoice() {
        assertEquals(2, Run.of("voice F C in C close spread").status());
        assertEquals(2, Run.of("voice F C in C reach 20").status());
        assertEquals(2, Run.of("voice C13b9 in C choir").status());
        assertEquals(2, Run.of("voice").status());
        assertEquals("""
                "F C13b9 in C choir" is not a task for two hands: C13♭9 has no choir voicing
                within an octave. Example: voice F C G in C shell
                Form: voice PROGRESSION [in KEY] [close, spread, shell or choir] [reach KEYS]
                [melody TUNE] [--wav FILE] [--midi FILE]
                """, Run.of("voice F C13b9 in C choir").message(2));
    }

    @Test
    void whatWasVoicedIsPlayedAgain() {
        Run run = new Run.Outside()
                .typing("voice F C in C spread at\nvoice F C in C spread\nplay\n")
                .run();
        assertTrue(run.out().contains("Playing F C in C major voiced spread at 84."), run.out());
    }
}
