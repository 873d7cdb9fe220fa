package monochord.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;

/**
 * A sequence as messages with the moment each is due, all tracks in one line, releases before presses.
 *
 * @param end microseconds until the last track ends
 */
record Schedule(List<Due> messages, long end) {
    private static final int TEMPO = 0x51;
    private static final int USUAL_QUARTER = 500_000;

    /** A message for the synthesizer, so many microseconds after the start. */
    record Due(long microseconds, MidiMessage message) {}

    static Schedule of(Sequence sequence) {
        List<Due> due = new ArrayList<>();
        double quarter = USUAL_QUARTER;
        double now = 0;
        long tick = 0;
        for (MidiEvent event : inOrder(sequence)) {
            now += (event.getTick() - tick) * quarter / sequence.getResolution();
            tick = event.getTick();
            if (event.getMessage() instanceof MetaMessage meta) {
                quarter = meta.getType() == TEMPO ? quarterOf(meta) : quarter;
            } else {
                due.add(new Due(Math.round(now), event.getMessage()));
            }
        }
        return new Schedule(List.copyOf(due), Math.round(now));
    }

    private static List<MidiEvent> inOrder(Sequence sequence) {
        List<MidiEvent> events = new ArrayList<>();
        for (Track track : sequence.getTracks()) {
            IntStream.range(0, track.size()).mapToObj(track::get).forEach(events::add);
        }
        events.sort(Comparator.comparingLong(MidiEvent::getTick).thenComparing(event -> isPress(event.getMessage())));
        return events;
    }

    private static boolean isPress(MidiMessage message) {
        return message instanceof ShortMessage sent && sent.getCommand() == ShortMessage.NOTE_ON;
    }

    private static int quarterOf(MetaMessage tempo) {
        byte[] bytes = tempo.getData();
        return (bytes[0] & 0xFF) << 16 | (bytes[1] & 0xFF) << 8 | bytes[2] & 0xFF;
    }
}
