package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
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
        assertTrue(words.contains("Gsus4 to A♭maj7: G3 and C5 stay; the bass goes up a half step; D4 to C4."), out);
        assertTrue(
                words.contains("G is the root of Gsus4 and the seventh of A♭maj7; "
                        + "C is the fourth of Gsus4 and the third of A♭maj7."),
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
        assertTrue(plain.contains("C: left hand C3, right hand C4 E4 G4. C4 stays."), plain);
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
                Form: voice PROGRESSION [in KEY] [close, spread, shell, choir or alone] [with
                bass] [under tune] [drop 2] [five or six] [reach KEYS] [melody TUNE] [--wav
                FILE] [--midi FILE] [--over] [staff --svg OUT [--over]]
                """, Run.of("voice F C13b9 in C choir").message(2));
    }

    /** Common practice, no source. */
    @Test
    void saysWhoElsePlays() {
        String out = Run.of("voice Dm7 G7 Cmaj7 in C with bass").result(0);
        assertTrue(out.startsWith("In C major, with a bass player, each hand within an octave\n"), out);
        assertTrue(out.contains("\nThe bass player has the roots of Dm7, G7 and Cmaj7.\n"), out);
        assertTrue(out.contains("\nA ninth of the key is added to Dm7, G7 and Cmaj7.\n"), out);
        assertTrue(out.contains("\nAnother way: it has the bass, where nobody else plays it; say alone.\n"), out);
        assertTrue(out.contains("\nAnother way: it is opened out, one voice an octave lower; say drop 2.\n"), out);
        assertFalse(out.contains("the bass goes"), out);
        for (String style :
                List.of("alone", "under tune", "under a tune", "drop 2", "drop-2", "with a bass player", "five")) {
            assertEquals(0, Run.of("voice Dm7 G7 Cmaj7 in C " + style).status(), style);
        }
    }

    @Test
    void otherWaysAreNamedByWhatDiffersAndNothingCostsOnTheScreen() {
        String out = Run.of("voice Dm7 G7 Cmaj7 in C").result(0);
        assertTrue(out.contains("""
                        Another way: it begins with the seventh of Dm7 on top; say melody C5.
                        Another way: it begins with the fifth of Dm7 on top; say melody A4.
                        Another way: it is opened out, with two notes in the left hand; say spread.
                        Another way: it leaves roots to a bass player; say with bass.
                        """), out);
        assertTrue(
                Run.of("voice Dm7 G7 Cmaj7 in C spread")
                        .result(0)
                        .contains("\nAnother way: it is closed up, with the bass alone in the left hand; say close.\n"),
                out);
        assertFalse(out.toLowerCase(Locale.ROOT).contains("cost"), out);
    }

    /** What the screen says of another way is what comes of saying it. */
    @Test
    void whatIsSaidToGiveAnotherWayGivesIt() {
        String json = Run.of("voice Dm7 G7 Cmaj7 in C --json").result(0);
        String others = json.substring(json.indexOf("\"others\":"), json.indexOf("\"plain\":"));
        assertTrue(others.contains("\"differs\":\"It begins with the seventh of Dm7 on top.\""), others);
        String first = others.substring(others.indexOf("\"voicings\":"), others.indexOf(",\"cost\""));
        String said = Run.of("voice Dm7 G7 Cmaj7 in C melody C5 --json").result(0);
        assertEquals(first, said.substring(said.indexOf("\"voicings\":"), said.indexOf(",\"cost\"")));
    }

    @Test
    void saysWhatAnAlteredChordGoesWithout() {
        String words = Run.of("voice G7alt Cmaj7 in C").result(0).replaceAll("\\s+", " ");
        assertTrue(words.contains(" G7♭5♯5♭9♯9 sounds without D♭ and A♯. "), words);
    }

    @Test
    void refusesStylesAndNumbersThatDoNotGoTogether() {
        assertEquals(
                "\"F C in C choir five\" is not a sentence: 4 notes at most here, and one number. Example: voice IV I V"
                        + " bVI V I in C spread",
                refusal("voice F C in C choir five"));
        String styles = "one style stands alone: close, spread, shell, choir, alone, with bass, under tune, drop 2."
                + " Example: voice IV I V bVI V I in C spread";
        assertEquals("\"F C close alone\" is not a sentence: " + styles, refusal("voice F C close alone"));
        assertEquals("\"F C with drums\" is not a sentence: " + styles, refusal("voice F C with drums"));
        assertEquals(2, Run.of("voice F C five six").status());
    }

    private static String refusal(String sentence) {
        Run run = Run.of(sentence);
        assertEquals(2, run.status());
        return run.err().replaceAll("\\s+", " ").replaceFirst(" Form: .*", "").strip();
    }

    @Test
    void whatWasVoicedIsPlayedAgain() {
        Run run = new Run.Outside()
                .typing("voice F C in C spread at\nvoice F C in C spread\nplay\n")
                .run();
        assertTrue(run.out().contains("Playing F C in C major voiced spread at 84."), run.out());
    }
}
