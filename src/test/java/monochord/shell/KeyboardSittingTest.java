package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.SplittableRandom;
import monochord.sound.keyboard.FakeKeyboard;
import monochord.sound.keyboard.FakeKeyboards;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;

/** Sittings in which somebody plays at a MIDI keyboard beside the real line reader. Middle C is 60. */
@ResourceLock("keyboards")
class KeyboardSittingTest {
    @TempDir
    Path home;

    private final SoundingEar ear = new SoundingEar();

    @AfterEach
    void unplug() {
        FakeKeyboards.unplugAll();
    }

    private Typist typist() throws Exception {
        return new Typist(80, 24, home, ear);
    }

    private FakeKeyboard connected(Typist typist) {
        FakeKeyboard keys = FakeKeyboards.plug("Stage piano");
        assertTrue(typist.types("keys").startsWith("Stage piano is connected;"));
        return keys;
    }

    /** Types it and waits until the question stands: what is played before is no answer to it. */
    private static void asks(Typist typist, String line) {
        typist.types(line);
        typist.seesAtThePrompt("");
    }

    @Test
    void keysListsAndConnectsAndLetsGo() throws Exception {
        try (Typist typist = typist()) {
            assertEquals(
                    "No MIDI keyboard is plugged in. Plug one in, switch it on, and type keys again.",
                    typist.types("keys"));
            FakeKeyboards.plug("Stage piano");
            FakeKeyboards.plug("Little keys");
            assertEquals("1 Stage piano 2 Little keys Type keys and a number to connect one.", typist.types("keys"));
            assertTrue(typist.types("keys 2").startsWith("Little keys is connected;"));
            assertEquals("1 Stage piano 2 Little keys connected", typist.types("keys"));
            assertTrue(typist.types("keys stage").startsWith("Stage piano is connected;"));
            assertEquals("Stage piano is let go.", typist.types("keys off"));
            assertEquals("No keyboard is connected.", typist.types("keys off"));
            assertTrue(typist.types("keys 3").startsWith("\"3\" is not a keyboard: its number or name is needed"));
        }
    }

    @Test
    void aBusyKeyboardIsOneLineAndTheLineGoesOn() throws Exception {
        try (Typist typist = typist()) {
            FakeKeyboards.plug("Stage piano").isHeldElsewhere();
            assertEquals(
                    "Stage piano cannot be connected: something else holds it, or it was just unplugged.",
                    typist.types("keys"));
            assertTrue(typist.types("C E G").startsWith("In C major"));
        }
    }

    @Test
    void aChordThatIsHeldIsShownAndNamedInTheKey() throws Exception {
        try (Typist typist = typist()) {
            FakeKeyboard keys = connected(typist);
            typist.press("half a li");
            keys.press(56, 60, 63, 67);
            typist.sees("▸ half a li\nA♭maj7  ♭VImaj7 in C major\n");
            typist.sees("A♭");
            keys.release(67, 63, 60, 56);
            typist.seesAtThePrompt("half a li");
            assertFalse(typist.screen().contains("♭VI"), typist::screen);
        }
    }

    @Test
    void aChordIsPlayedAsAnAnswer() throws Exception {
        try (Typist typist = typist()) {
            FakeKeyboard keys = connected(typist);
            asks(typist, "ask triad-spelling of Abm");
            typist.sees("You can play it, in any octave: together and let go, or one after another");
            typist.sees("\n▸");
            keys.plays(56, 60, 63);
            assertTrue(typist.answer().startsWith("Nearly."), typist::screen);
            typist.sees("\n▸");
            Thread.sleep(3000); // far more than the rest after an answer, in which nothing is heard
            keys.plays(68, 71, 75);
            assertEquals("Yes: A♭ C♭ E♭. Enter asks another.", typist.answer());
            typist.sees("The letters are mine: spelling is not asked of the fingers.\n▸ Ab Cb Eb\n");
        }
    }

    @Test
    void whileAQuestionIsOpenNoChordIsNamed() throws Exception {
        try (Typist typist = typist()) {
            FakeKeyboard keys = connected(typist);
            asks(typist, "ask degree-quality of 3 in Eb");
            keys.press(55, 58, 62);
            typist.sees("B♭");
            Thread.sleep(200);
            assertFalse(typist.screen().contains("Gm"), typist::screen);
        }
    }

    @Test
    void aScaleIsPlayedAsAnAnswer() throws Exception {
        try (Typist typist = typist()) {
            FakeKeyboard keys = connected(typist);
            asks(typist, "ask scale-spelling of Eb major");
            for (int key : new int[] {63, 65, 67, 68, 70, 72, 74, 75}) {
                keys.plays(key);
            }
            assertTrue(typist.answer().startsWith("Yes: E♭ F G A♭ B♭ C D."), typist::screen);
        }
    }

    @Test
    void aVoicingIsPlayedWithBothHands() throws Exception {
        try (Typist typist = typist()) {
            FakeKeyboard keys = connected(typist);
            asks(typist, "ask voicing of bVI in C");
            keys.plays(44, 60, 63, 72);
            assertTrue(typist.answer().startsWith("Yes: A♭2 | C4 E♭4 C5 keeps every rule."), typist::screen);
        }
    }

    @Test
    void aRowOfChordsIsPlayedChordAfterChordAndOneTakenBack() throws Exception {
        try (Typist typist = typist()) {
            FakeKeyboard keys = connected(typist);
            asks(typist, "ask progression-in-key of \"1 6- 4 5\" in Eb");
            keys.plays(51, 63, 67, 70);
            typist.sees("1 of 4: E♭");
            keys.plays(53, 65, 68, 72);
            typist.sees("2 of 4: E♭ Fm");
            keys.plays(36);
            typist.sees("1 of 4: E♭");
            keys.plays(48, 63, 67, 72);
            typist.sees("2 of 4: E♭ Cm");
            keys.plays(56, 60, 63);
            typist.sees("3 of 4: E♭ Cm A♭");
            keys.plays(58, 62, 65);
            assertTrue(typist.answer().startsWith("Yes: E♭ Cm A♭ B♭."), typist::screen);
        }
    }

    @Test
    void unpluggedInTheMiddleNothingIsLost() throws Exception {
        try (Typist typist = typist()) {
            FakeKeyboard keys = connected(typist);
            asks(typist, "ask triad-spelling of Abm");
            typist.press("Ab C");
            keys.press(56, 59);
            FakeKeyboards.unplug(keys);
            typist.sees("Stage piano is gone. Go on by typing; once it is plugged in again: keys.\n▸ Ab C");
            typist.seesAtThePrompt("Ab C");
            typist.pressOn("b Eb" + Typist.ENTER);
            assertTrue(typist.answer().startsWith("Yes: A♭ C♭ E♭."), typist::screen);
            FakeKeyboard again = connected(typist);
            asks(typist, "ask triad-spelling of Fm");
            again.plays(65, 68, 72);
            assertTrue(typist.answer().startsWith("Yes: F A♭ C."), typist::screen);
        }
    }

    @Test
    void garbageFromTheKeyboardNeverReachesTheLine() throws Exception {
        try (Typist typist = typist()) {
            FakeKeyboard keys = connected(typist);
            SplittableRandom chance = new SplittableRandom(11);
            for (int i = 0; i < 3000; i++) {
                keys.send(chance.ints(chance.nextInt(0, 5), 0, 256).toArray());
            }
            keys.send(0xFF);
            typist.seesAtThePrompt("");
            assertTrue(typist.types("key Eb").startsWith("E♭ major"));
            keys.press(63, 67, 70);
            typist.sees("E♭  I in E♭ major");
        }
    }

    @Test
    void whatSoundsHasTheBoardBeforeWhatIsHeld() throws Exception {
        try (Typist typist = typist()) {
            FakeKeyboard keys = connected(typist);
            typist.types("play F C G Ab");
            typist.sees("F  1 of 4, then C");
            keys.press(61, 65, 68);
            Thread.sleep(200);
            typist.sees("F  1 of 4, then C");
            assertEquals(0, ear.stops(), "playing along stops nothing");
            keys.release(61, 65, 68);
            ear.endsByItself();
            typist.seesAtThePrompt("");
        }
    }

    @Test
    void throughAPipeKeyboardsAreOnlyListed() {
        assertEquals(
                "{\"kind\":\"keyboards\",\"keyboards\":[],\"connected\":null}",
                Run.of("--json keys").result(0).strip());
        FakeKeyboards.plug("Stage piano");
        assertEquals(
                "{\"kind\":\"keyboards\",\"keyboards\":[\"Stage piano\"],\"connected\":null}",
                Run.of("--json keys").result(0).strip());
        assertEquals(
                "1  Stage piano\nA keyboard can be played at the prompt: start monochord alone.\n",
                Run.of("keys 1").result(0));
    }
}
