package monochord.sound;

import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.Sequence;
import monochord.score.Caption;
import monochord.theory.note.Signs;

/** Markers in a Standard MIDI File. Source: Standard MIDI-File Format Spec. 1.1: marker 06, such as "First Verse". */
public final class Markers {
    private static final int MARKER = 0x06;

    private Markers() {}

    /** Puts the name of each section where it begins, into track 0. */
    public static Sequence add(Sequence sequence, List<Caption> sections) {
        try {
            for (Caption section : sections) {
                byte[] name = Signs.toAscii(section.text()).getBytes(StandardCharsets.UTF_8);
                long tick = section.start().ticks(sequence.getResolution());
                sequence.getTracks()[0].add(new MidiEvent(new MetaMessage(MARKER, name, name.length), tick));
            }
            return sequence;
        } catch (InvalidMidiDataException impossible) {
            throw new IllegalStateException("a message that MIDI does not know", impossible);
        }
    }
}
