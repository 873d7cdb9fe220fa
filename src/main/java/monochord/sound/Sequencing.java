package monochord.sound;

import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import monochord.score.Caption;
import monochord.theory.Key;
import monochord.theory.Signs;

/**
 * Turns a performance into the tracks of a Standard MIDI File.
 *
 * <p>Source: Standard MIDI-File Format Spec. 1.1, International MIDI Association: text 01, tempo 51 (microseconds a
 * quarter), key signature 59. Controller 7 is the channel's volume: from memory.
 */
final class Sequencing {
    private static final int TEXT = 0x01;
    private static final int TRACK_END = 0x2F;
    private static final int TEMPO = 0x51;
    private static final int KEY_SIGNATURE = 0x59;
    private static final double MICROSECONDS_PER_MINUTE = 60_000_000;
    private static final int VOLUME_CONTROLLER = 7;
    /** Below MIDI's usual 100: moderate for ears, and room for full chords before the synthesizer has to hold back. */
    private static final int VOLUME = 80;

    private final Performance performance;

    Sequencing(Performance performance) {
        this.performance = performance;
    }

    Sequence sequence() {
        try {
            Sequence sequence = new Sequence(Sequence.PPQ, Press.TICKS_PER_BEAT);
            List<Press> presses = Press.of(performance.score().soundings());
            writeFrame(sequence.createTrack());
            writeHand(sequence, presses, Press.RIGHT_CHANNEL, performance.right());
            writeHand(sequence, presses, Press.LEFT_CHANNEL, performance.left());
            return sequence;
        } catch (InvalidMidiDataException impossible) {
            throw new IllegalStateException("a message that MIDI does not know", impossible);
        }
    }

    private void writeFrame(Track track) throws InvalidMidiDataException {
        add(track, 0, meta(TEMPO, bytes(Math.round(MICROSECONDS_PER_MINUTE / performance.tempo()))));
        if (performance.key().filter(Key::isInUse).isPresent()) {
            Key key = performance.key().get();
            add(track, 0, meta(KEY_SIGNATURE, new byte[] {(byte) key.signature(), (byte) (key.isMinor() ? 1 : 0)}));
        }
        for (Caption caption : performance.score().captions()) {
            byte[] text = Signs.toAscii(caption.text()).getBytes(StandardCharsets.UTF_8);
            add(track, caption.start().ticks(Press.TICKS_PER_BEAT), meta(TEXT, text));
        }
        long end = performance.score().beats().ticks(Press.TICKS_PER_BEAT);
        add(track, end, meta(TRACK_END, new byte[0]));
    }

    private static void writeHand(Sequence sequence, List<Press> presses, int channel, Patch patch)
            throws InvalidMidiDataException {
        List<Press> hand =
                presses.stream().filter(press -> press.channel() == channel).toList();
        if (hand.isEmpty()) {
            return;
        }
        Track track = sequence.createTrack();
        add(track, 0, new ShortMessage(ShortMessage.PROGRAM_CHANGE, channel, patch.number() - 1, 0));
        add(track, 0, new ShortMessage(ShortMessage.CONTROL_CHANGE, channel, VOLUME_CONTROLLER, VOLUME));
        for (Press press : hand) {
            add(track, press.on(), new ShortMessage(ShortMessage.NOTE_ON, channel, press.note(), press.velocity()));
            add(track, press.off(), new ShortMessage(ShortMessage.NOTE_OFF, channel, press.note(), 0));
        }
    }

    private static void add(Track track, long tick, MidiMessage message) {
        track.add(new MidiEvent(message, tick));
    }

    private static MetaMessage meta(int type, byte[] content) throws InvalidMidiDataException {
        return new MetaMessage(type, content, content.length);
    }

    private static byte[] bytes(long threeBytes) {
        return new byte[] {(byte) (threeBytes >> 16), (byte) (threeBytes >> 8), (byte) threeBytes};
    }
}
