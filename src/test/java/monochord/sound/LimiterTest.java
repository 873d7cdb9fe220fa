package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.junit.jupiter.api.Test;

class LimiterTest {
    private static final int SECOND = 44_100;

    /** One second on both channels. */
    private static int[] limited(IntUnaryOperator wave) {
        Limiter limiter = new Limiter();
        return IntStream.range(0, SECOND + Limiter.AHEAD)
                .map(i -> limiter.next((short) wave.applyAsInt(i), (short) wave.applyAsInt(i)))
                .skip(Limiter.AHEAD)
                .map(frame -> (short) frame)
                .toArray();
    }

    private static IntUnaryOperator sine(double size) {
        return i -> (int) Math.round(size * Math.sin(2 * Math.PI * 220 * i / SECOND));
    }

    @Test
    void whatIsSoftEnoughPassesBitForBit() {
        int[] out = limited(sine(Limiter.CEILING));
        for (int i = 0; i < out.length; i++) {
            assertEquals(sine(Limiter.CEILING).applyAsInt(i), out[i], "frame " + i);
        }
    }

    @Test
    void whatIsTooLoudStaysUnderTheCeilingWithoutABreak() {
        IntUnaryOperator wave = i -> i > SECOND / 3 && i < SECOND / 2
                ? sine(32_767).applyAsInt(i)
                : sine(3000).applyAsInt(i);
        int[] out = limited(wave);
        for (int i = 0; i < out.length; i++) {
            assertTrue(Math.abs(out[i]) <= Limiter.CEILING, "frame " + i + " is " + out[i]);
        }
        assertTrue(IntStream.of(out).map(Math::abs).max().orElseThrow() > Limiter.CEILING * 9 / 10, "it is still loud");
    }

    /** The gain moves by less than one part in two hundred from frame to frame. */
    @Test
    void theGainNeverJumps() {
        int[] out = limited(i -> i == SECOND / 2 ? 32_767 : 20_000);
        for (int i = 1; i < SECOND; i++) {
            if (i != SECOND / 2 && i != SECOND / 2 + 1) {
                assertTrue(Math.abs(out[i] - out[i - 1]) < 100, "frame " + i + ": " + out[i - 1] + " to " + out[i]);
            }
        }
        assertEquals(20_000, out[100]);
        assertTrue(out[SECOND - 1] > 19_900, "it comes back: " + out[SECOND - 1]);
    }

    private static Sequence pile(int notes, int velocity) throws InvalidMidiDataException {
        Sequence sequence = new Sequence(Sequence.PPQ, 480);
        Track track = sequence.createTrack();
        track.add(new MidiEvent(new ShortMessage(ShortMessage.PROGRAM_CHANGE, 0, 19, 0), 0));
        track.add(new MidiEvent(new ShortMessage(ShortMessage.CONTROL_CHANGE, 0, 7, 127), 0));
        for (int note = 48; note < 48 + notes; note++) {
            track.add(new MidiEvent(new ShortMessage(ShortMessage.NOTE_ON, 0, note, velocity), 0));
            track.add(new MidiEvent(new ShortMessage(ShortMessage.NOTE_OFF, 0, note, 0), 1920));
        }
        return sequence;
    }

    private static byte[] raw(Sequence sequence) throws IOException {
        try (var sound = JavaSound.render(sequence, Optional.empty())) {
            return sound.readNBytes(SECOND * 4);
        }
    }

    private static byte[] rendered(Sequence sequence) throws IOException {
        try (Rendering rendering = Rendering.of(sequence, Optional.empty())) {
            byte[] piece = new byte[SECOND * 4];
            rendering.read(piece);
            return piece;
        }
    }

    private static double peak(byte[] sound) {
        int peak = 0;
        for (int i = 0; i < sound.length; i += 2) {
            peak = Math.max(peak, Math.abs((short) (sound[i + 1] << 8 | sound[i] & 0xFF)));
        }
        return peak;
    }

    @Test
    void twelveNotesStruckAsHardAsCanBeStayUnderTheCeiling() throws Exception {
        assertTrue(peak(raw(pile(12, 127))) > Limiter.CEILING, "it would have been too loud");
        assertTrue(peak(rendered(pile(12, 127))) <= Limiter.CEILING);
    }

    @Test
    void aQuietChordIsUntouched() throws Exception {
        org.junit.jupiter.api.Assertions.assertArrayEquals(raw(pile(3, 40)), rendered(pile(3, 40)));
    }
}
