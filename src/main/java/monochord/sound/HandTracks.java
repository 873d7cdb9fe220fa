package monochord.sound;

import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import monochord.score.Pedal;

/** Writes what each hand plays, and the tune: one track and one channel each. */
final class HandTracks {
    private static final int VOLUME_CONTROLLER = 7;
    private static final int EXPRESSION_CONTROLLER = 11;
    private static final int PEDAL_CONTROLLER = 64;
    private static final int DOWN = 127;
    private static final int UP = 0;
    /** Below MIDI's usual 100: moderate for ears, and room for full chords before anything has to be held back. */
    private static final int VOLUME = 80;

    /**
     * How long before a chord the pedal is up, and after it down again, at most: late enough for the old chord to be
     * gone, early enough for the fingers still to hold the new one. Common practice of the legato pedal, no source.
     */
    private static final long PEDAL_TICKS = NoteEvent.TICKS_PER_BEAT / 16;

    private final Performance performance;
    private final long begin;
    private final List<Pedal> pedals;

    HandTracks(Performance performance, long begin) {
        this.performance = performance;
        this.begin = begin;
        this.pedals = performance.score().pedals();
    }

    void write(Sequence sequence) throws InvalidMidiDataException {
        List<NoteEvent> presses = NoteEvent.of(performance.score().soundings());
        write(sequence, presses, NoteEvent.RIGHT_CHANNEL, performance.right());
        write(sequence, presses, NoteEvent.LEFT_CHANNEL, performance.left());
        write(sequence, presses, NoteEvent.TUNE_CHANNEL, performance.right());
    }

    private void write(Sequence sequence, List<NoteEvent> all, int channel, Patch patch)
            throws InvalidMidiDataException {
        List<NoteEvent> own =
                all.stream().filter(press -> press.channel() == channel).toList();
        if (own.isEmpty()) {
            return;
        }
        Track track = sequence.createTrack();
        Sequencing.add(track, 0, Sequencing.message(ShortMessage.PROGRAM_CHANGE, channel, patch.number() - 1, 0));
        Sequencing.add(track, 0, volume(channel));
        writeLevels(track, channel);
        if (channel != NoteEvent.TUNE_CHANNEL) {
            writePedals(track, channel);
        }
        for (NoteEvent press : own) {
            add(track, press.on(), Sequencing.message(ShortMessage.NOTE_ON, channel, press.note(), press.velocity()));
            add(track, press.off(), Sequencing.message(ShortMessage.NOTE_OFF, channel, press.note(), 0));
        }
    }

    static ShortMessage volume(int channel) throws InvalidMidiDataException {
        return controller(channel, VOLUME_CONTROLLER, VOLUME);
    }

    private void writeLevels(Track track, int channel) throws InvalidMidiDataException {
        for (LevelChange level : performance.levels()) {
            long tick = Sequencing.ticks(level.start());
            add(track, tick, controller(channel, EXPRESSION_CONTROLLER, level.expression()));
        }
    }

    private void writePedals(Track track, int channel) throws InvalidMidiDataException {
        for (Pedal pedal : pedals) {
            long down = Sequencing.ticks(pedal.start());
            long up = Sequencing.ticks(pedal.end());
            long margin = Math.min(PEDAL_TICKS, (up - down) / 4);
            add(track, down + margin, controller(channel, PEDAL_CONTROLLER, DOWN));
            add(track, up - margin, controller(channel, PEDAL_CONTROLLER, UP));
        }
    }

    private static ShortMessage controller(int channel, int number, int value) throws InvalidMidiDataException {
        return Sequencing.message(ShortMessage.CONTROL_CHANGE, channel, number, value);
    }

    private void add(Track track, long tick, ShortMessage message) {
        Sequencing.add(track, begin + tick, message);
    }
}
