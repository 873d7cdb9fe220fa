package monochord.sound;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import monochord.score.Hand;
import monochord.score.Sounding;

/**
 * A key pressed and let go.
 *
 * @param channel from 0, one for each hand and one for the tune
 * @param note MIDI number, from 0 to 127
 * @param on tick of the press
 * @param off tick of the release, after {@code on}
 * @param velocity from 1 to 127
 */
record NoteEvent(int channel, int note, long on, long off, int velocity) {
    static final int TICKS_PER_BEAT = 480;
    static final int RIGHT_CHANNEL = 0;
    static final int LEFT_CHANNEL = 1;
    static final int TUNE_CHANNEL = 2;

    /** A thirty-second of a beat: enough for a hammer to come back, too short to be heard as a gap. */
    private static final long GAP = TICKS_PER_BEAT / 32;

    /** The presses of one hand after another, by time, each key let go before it is struck again. */
    static List<NoteEvent> of(List<Sounding> soundings) {
        List<NoteEvent> presses = touched(soundings);
        Map<List<Integer>, TreeMap<Long, NoteEvent>> byKey = new LinkedHashMap<>();
        presses.forEach(press -> byKey.computeIfAbsent(List.of(press.channel, press.note), key -> new TreeMap<>())
                .merge(press.on, press, NoteEvent::longer));
        return byKey.values().stream()
                .flatMap(key -> key.values().stream().map(press -> press.before(key.higherKey(press.on))))
                .sorted(Comparator.comparingLong(NoteEvent::on)
                        .thenComparingInt(NoteEvent::channel)
                        .thenComparingInt(NoteEvent::note))
                .toList();
    }

    private static List<NoteEvent> touched(List<Sounding> soundings) {
        List<Integer> velocities = Velocities.of(soundings);
        return IntStream.range(0, soundings.size())
                .mapToObj(i -> of(soundings.get(i), velocities.get(i)))
                .toList();
    }

    private static NoteEvent of(Sounding sounding, int velocity) {
        int note = sounding.pitch().midiNumber();
        if (note < 0 || note > 127) {
            throw new IllegalArgumentException(sounding.pitch() + " lies outside the notes from C-1 to G9 of MIDI");
        }
        long on = onset(sounding);
        long off = Math.max(on + 1, sounding.end().ticks(TICKS_PER_BEAT));
        return new NoteEvent(channel(sounding.hand()), note, on, off, velocity);
    }

    private static int channel(Hand hand) {
        return switch (hand) {
            case LEFT -> LEFT_CHANNEL;
            case RIGHT, EITHER -> RIGHT_CHANNEL;
            case TUNE -> TUNE_CHANNEL;
        };
    }

    private static long onset(Sounding sounding) {
        return sounding.start().ticks(TICKS_PER_BEAT);
    }

    private NoteEvent longer(NoteEvent other) {
        return new NoteEvent(channel, note, on, Math.max(off, other.off), Math.max(velocity, other.velocity));
    }

    /** This press, over in time for the same key to be struck at {@code next}; null for never again. */
    private NoteEvent before(Long next) {
        if (next == null || off < next - GAP) {
            return this;
        }
        long latest = next - Math.min(GAP, (next - on) / 4);
        return new NoteEvent(channel, note, on, Math.max(on + 1, Math.min(off, Math.min(latest, next))), velocity);
    }
}
