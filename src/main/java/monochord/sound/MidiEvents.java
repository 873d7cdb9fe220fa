package monochord.sound;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.Receiver;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;

/** The messages of a sequence, sent in the order of time, those of the first track first. The tempo is that of its start. */
final class MidiEvents {
    private static final int TEMPO = 0x51;
    private static final long USUAL_TEMPO = 500_000;
    private static final long MICROSECONDS = 1_000_000;
    /** A little more than the synthesizer renders at a time, in microseconds: a look at its envelopes. */
    private static final long MARGIN = 100_000;

    private final List<MidiEvent> events;
    private final Receiver receiver;
    private final IntUnaryOperator playing;
    private final int ticksPerBeat;
    private final long microsecondsPerBeat;
    private int next;

    /** @param playing for a program that is asked for, from 0, the one that plays it */
    MidiEvents(Sequence sequence, Receiver receiver, IntUnaryOperator playing) {
        this.events = sounding(sequence)
                .sorted(Comparator.comparingLong(MidiEvent::getTick))
                .toList();
        this.receiver = receiver;
        this.playing = playing;
        this.ticksPerBeat = sequence.getResolution();
        this.microsecondsPerBeat = tempo(sequence);
    }

    private static Stream<MidiEvent> all(Sequence sequence) {
        return Arrays.stream(sequence.getTracks()).flatMap(MidiEvents::all);
    }

    private static Stream<MidiEvent> all(Track track) {
        return IntStream.range(0, track.size()).mapToObj(track::get);
    }

    private static Stream<MidiEvent> sounding(Sequence sequence) {
        return all(sequence).filter(event -> event.getMessage() instanceof ShortMessage);
    }

    private static long tempo(Sequence sequence) {
        return all(sequence)
                .filter(event -> event.getTick() == 0 && event.getMessage() instanceof MetaMessage)
                .map(event -> (MetaMessage) event.getMessage())
                .filter(meta -> meta.getType() == TEMPO)
                .map(MetaMessage::getData)
                .map(data -> (long) (data[0] & 0xFF) << 16 | (data[1] & 0xFF) << 8 | data[2] & 0xFF)
                .findFirst()
                .orElse(USUAL_TEMPO);
    }

    /** The programs that a sequence asks for, from 0; and 0, for what asks for none. */
    static Set<Integer> programs(Sequence sequence) {
        Stream<Integer> changed = sounding(sequence)
                .map(event -> (ShortMessage) event.getMessage())
                .filter(message -> message.getCommand() == ShortMessage.PROGRAM_CHANGE)
                .map(ShortMessage::getData1);
        return Stream.concat(Stream.of(0), changed).collect(Collectors.toSet());
    }

    /** Sends whatever begins until then, and a little more. */
    void sendUntil(double seconds) {
        long until = (long) (seconds * MICROSECONDS) + MARGIN;
        while (next < events.size() && time(next) <= until) {
            receiver.send(played((ShortMessage) events.get(next).getMessage()), time(next));
            next++;
        }
    }

    private ShortMessage played(ShortMessage message) {
        if (message.getCommand() != ShortMessage.PROGRAM_CHANGE) {
            return message;
        }
        try {
            int program = playing.applyAsInt(message.getData1());
            return new ShortMessage(ShortMessage.PROGRAM_CHANGE, message.getChannel(), program, 0);
        } catch (InvalidMidiDataException impossible) {
            throw new IllegalStateException("a program that MIDI does not know", impossible);
        }
    }

    private long time(int event) {
        return events.get(event).getTick() * microsecondsPerBeat / ticksPerBeat;
    }
}
