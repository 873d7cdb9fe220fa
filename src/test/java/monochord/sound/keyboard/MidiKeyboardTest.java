package monochord.sound.keyboard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;

@ResourceLock("keyboards")
class MidiKeyboardTest {
    private final BlockingQueue<KeyEvent> strokes = new LinkedBlockingQueue<>();

    @AfterEach
    void unplug() {
        FakeKeyboards.unplugAll();
    }

    private static List<String> names() {
        return MidiKeyboard.all().stream().map(MidiKeyboard::name).toList();
    }

    private List<KeyEvent> heard() {
        List<KeyEvent> all = new java.util.ArrayList<>();
        strokes.drainTo(all);
        return all;
    }

    @Test
    void whatIsPluggedInIsListedAndTwoOfOneNameAreNumbered() {
        assertEquals(List.of(), names());
        FakeKeyboards.plug("Stage piano");
        FakeKeyboards.plug("Stage piano");
        FakeKeyboards.plug(" ");
        assertEquals(List.of("Stage piano", "Stage piano (2)", "keyboard"), names());
    }

    @Test
    void keysGoingDownAndUpAreHeard() throws Exception {
        FakeKeyboard keys = FakeKeyboards.plug("Stage piano");
        Connection connection = MidiKeyboard.all().get(0).connect(strokes::add);
        keys.press(60, 64);
        keys.release(60);
        keys.send(0x93, 64, 0);
        assertEquals(
                List.of(new KeyEvent.Down(60), new KeyEvent.Down(64), new KeyEvent.Up(60), new KeyEvent.Up(64)),
                heard());
        connection.close();
        keys.press(60);
        assertEquals(List.of(), heard());
    }

    @Test
    void whatIsNoKeyIsPassedOver() throws Exception {
        FakeKeyboard keys = FakeKeyboards.plug("Stage piano");
        try (Connection connection = MidiKeyboard.all().get(0).connect(strokes::add)) {
            keys.send(0xF8); // clock
            keys.send(0xFE); // active sensing
            keys.send(0xF0, 0x7E, 0x7F, 0x09, 0x01, 0xF7);
            keys.send(0xF7, 1, 2, 3);
            keys.send(0xB0, 64, 127); // pedal
            keys.send(0xE0, 0, 64);
            keys.send(0x99, 38, 100); // a drum pad
            keys.send(0x90);
            keys.send(0x90, 60);
            keys.send(0x90, 200, 90);
            keys.send(0x90, 60, 200);
            keys.send(60, 64, 67);
            keys.send();
            assertEquals(List.of(), heard());
            keys.send(0xFF);
            keys.send(0xB0, 123, 0);
            keys.send(0xB5, 120, 0);
            assertEquals(List.of(new KeyEvent.AllUp(), new KeyEvent.AllUp(), new KeyEvent.AllUp()), heard());
            assertEquals("Stage piano", connection.name());
        }
    }

    @Test
    void noBytesWhateverBreakTheWire() throws Exception {
        FakeKeyboard keys = FakeKeyboards.plug("Stage piano");
        SplittableRandom chance = new SplittableRandom(3);
        try (Connection connection = MidiKeyboard.all().get(0).connect(strokes::add)) {
            for (int i = 0; i < 20_000; i++) {
                keys.send(chance.ints(chance.nextInt(0, 6), 0, 256).toArray());
            }
            heard().forEach(stroke -> assertFalse(stroke instanceof KeyEvent.Gone, connection.name()));
        }
    }

    @Test
    void aKeyboardThatIsUnpluggedSaysSoOnce() throws Exception {
        FakeKeyboard keys = FakeKeyboards.plug("Stage piano");
        try (Connection connection = MidiKeyboard.all().get(0).connect(strokes::add)) {
            FakeKeyboards.unplug(keys);
            assertEquals(new KeyEvent.Gone(), strokes.take(), connection.name());
            keys.press(60);
            assertEquals(null, strokes.poll(700, TimeUnit.MILLISECONDS));
        }
    }

    @Test
    void aBusyAVanishedAndASilentKeyboardAreRefusedInOneSentence() {
        FakeKeyboard busy = FakeKeyboards.plug("Busy");
        busy.isHeldElsewhere();
        FakeKeyboard silent = FakeKeyboards.plug("Silent");
        silent.doesNotAnswer();
        FakeKeyboard gone = FakeKeyboards.plug("Gone");
        List<MidiKeyboard> there = MidiKeyboard.all();
        FakeKeyboards.unplug(gone);
        assertEquals(
                "Busy cannot be connected: something else holds it, or it was just unplugged.", refusal(there.get(0)));
        assertEquals("Silent cannot be connected: it does not answer.", refusal(there.get(1)));
        assertEquals("Gone cannot be connected: it is not there any more.", refusal(there.get(2)));
    }

    private String refusal(MidiKeyboard keyboard) {
        return assertThrows(KeyboardTrouble.class, () -> keyboard.connect(strokes::add))
                .getMessage();
    }
}
