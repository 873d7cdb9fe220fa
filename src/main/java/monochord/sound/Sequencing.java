package monochord.sound;

import java.nio.charset.StandardCharsets;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import monochord.score.Caption;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Signs;

/**
 * Turns a performance into the tracks of a Standard MIDI File.
 *
 * <p>Source: Standard MIDI-File Format Spec. 1.1, International MIDI Association: text 01, tempo 51 (microseconds a
 * quarter), time signature 58, key signature 59. Controller 7 is the channel's volume, 11 its expression, 64 the sustain
 * pedal, down from 64 up: MIDI 1.0 Detailed Specification, from memory.
 */
final class Sequencing {
    private static final int TEXT = 0x01;
    private static final int TRACK_END = 0x2F;
    private static final int TEMPO = 0x51;
    private static final int TIME_SIGNATURE = 0x58;
    private static final int KEY_SIGNATURE = 0x59;
    private static final double MICROSECONDS_PER_MINUTE = 60_000_000;
    private static final int CLOCKS_PER_CLICK = 24;
    private static final int THIRTYSECONDS_PER_QUARTER = 8;
    private static final int QUARTER = 4;
    private static final int SMALLEST_VALUE = 64;

    private final Performance performance;
    private final long begin;

    Sequencing(Performance performance) {
        this.performance = performance;
        this.begin = ticks(performance.countIn());
    }

    Sequence sequence() {
        try {
            Sequence sequence = new Sequence(Sequence.PPQ, NoteEvent.TICKS_PER_BEAT);
            writeFrame(sequence.createTrack());
            new HandTracks(performance, begin).write(sequence);
            if (performance.countedIn() || performance.clicked()) {
                CountIn.write(performance, sequence.createTrack());
            }
            return sequence;
        } catch (InvalidMidiDataException impossible) {
            throw new IllegalStateException("a message that MIDI does not know", impossible);
        }
    }

    private void writeFrame(Track track) throws InvalidMidiDataException {
        add(track, 0, meta(TEMPO, bytes(Math.round(MICROSECONDS_PER_MINUTE / performance.tempo()))));
        writeMetre(track);
        if (performance.key().filter(Key::isInUse).isPresent()) {
            Key key = performance.key().get();
            add(track, 0, meta(KEY_SIGNATURE, new byte[] {(byte) key.signature(), (byte) (key.isMinor() ? 1 : 0)}));
        }
        for (Caption caption : performance.score().captions()) {
            byte[] text = Signs.toAscii(caption.text()).getBytes(StandardCharsets.UTF_8);
            add(track, begin + ticks(caption.start()), meta(TEXT, text));
        }
        add(track, begin + ticks(performance.score().beats()), meta(TRACK_END, new byte[0]));
    }

    /** A pick-up that nobody counts in is a short bar of its own, so that the bar lines fall where they should. */
    private void writeMetre(Track track) throws InvalidMidiDataException {
        Beats pickup = performance.metre().pickup();
        boolean alone = !performance.countedIn() && !pickup.isZero();
        if (alone) {
            writeMetre(track, 0, pickup);
        }
        writeMetre(track, alone ? ticks(pickup) : 0, performance.metre().bar());
    }

    /** Bars that no value from quarters to sixty-fourths measures are left out. */
    private static void writeMetre(Track track, long tick, Beats bar) throws InvalidMidiDataException {
        for (int value = QUARTER, power = 2; value <= SMALLEST_VALUE; value *= 2, power++) {
            Beats count = bar.times(value / QUARTER);
            if (count.denominator() == 1 && count.numerator() <= Byte.MAX_VALUE) {
                byte[] signature = {(byte) count.numerator(), (byte) power, CLOCKS_PER_CLICK, THIRTYSECONDS_PER_QUARTER
                };
                add(track, tick, meta(TIME_SIGNATURE, signature));
                return;
            }
        }
    }

    static long ticks(Beats beats) {
        return beats.ticks(NoteEvent.TICKS_PER_BEAT);
    }

    static void add(Track track, long tick, MidiMessage message) {
        track.add(new MidiEvent(message, tick));
    }

    static ShortMessage message(int kind, int channel, int first, int second) throws InvalidMidiDataException {
        return new ShortMessage(kind, channel, first, second);
    }

    private static MetaMessage meta(int type, byte[] content) throws InvalidMidiDataException {
        return new MetaMessage(type, content, content.length);
    }

    private static byte[] bytes(long threeBytes) {
        return new byte[] {(byte) (threeBytes >> 16), (byte) (threeBytes >> 8), (byte) threeBytes};
    }
}
