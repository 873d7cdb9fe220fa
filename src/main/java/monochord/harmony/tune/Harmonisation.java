package monochord.harmony.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.key.ChordTable;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;

/**
 * Plain chords under a tune, slot by slot.
 *
 * @param slots in order of time; the first one is the pick-up, if there is one
 */
public record Harmonisation(Melody melody, Key key, HarmonicMetre metre, List<HarmonisedSlot> slots) {
    private static final int OTHERS = 2;

    public Harmonisation {
        slots = List.copyOf(slots);
    }

    /** @throws IllegalArgumentException if the bar lines of the tune are at odds with the metre */
    public static Harmonisation of(Melody melody, Key key, HarmonicMetre metre, ChordTable table) {
        if (!metre.suits(melody)) {
            throw new IllegalArgumentException(
                    "the tune has bars of " + melody.bar().get() + ", not of " + metre.bar());
        }
        List<TuneSlot> slots = metre.slots(melody);
        HarmonySearch search = new HarmonySearch(slots, key, table);
        int[] best = search.best();
        double[][] totals = search.totals();
        List<Chord> chosen = new ArrayList<>();
        for (int t = 0; t < best.length; t++) {
            Chord chord = fuller(search.plain().get(best[t]).chord(), slots.get(t), key);
            chosen.add(keepingSeventh(t == 0 ? null : chosen.get(t - 1), chord));
        }
        List<HarmonisedSlot> harmonised = new ArrayList<>();
        for (int t = 0; t < best.length; t++) {
            List<Offer> others = others(totals[t], search.plain(), chosen.get(t), slots.get(t));
            Offer first = new Offer(
                    chosen.get(t),
                    SlotReasons.ofNotes(chosen.get(t), slots.get(t)),
                    SlotReasons.ofCourse(chosen, t, slots.get(t), key));
            harmonised.add(new HarmonisedSlot(slots.get(t).start(), slots.get(t).beats(), first, others));
        }
        return new Harmonisation(melody, key, metre, harmonised);
    }

    /** With its seventh where the tune sings it for half of the slot or longer; the tonic and its like stay plain. */
    private static Chord fuller(Chord chord, TuneSlot slot, Key key) {
        boolean mayBeFuller = chord.root().equals(key.note(2)) || chord.root().equals(key.note(6));
        Optional<Chord> fuller = mayBeFuller ? PlainChords.withSeventh(chord, key) : Optional.empty();
        return fuller.filter(seventh -> slot.notes().stream()
                                .filter(note -> seventh.holds(note.name()) && !chord.holds(note.name()))
                                .mapToDouble(TuneSlot.SlotNote::beats)
                                .sum()
                        >= slot.length() / 2)
                .orElse(chord);
    }

    /** A seventh that was heard stays until the root moves. */
    private static Chord keepingSeventh(Chord before, Chord chord) {
        boolean isPlainer = before != null
                && before.root().equals(chord.root())
                && before.kind().holds(Interval.MINOR_SEVENTH)
                && before.kind().triad().equals(chord.kind());
        return isPlainer ? before : chord;
    }

    /** The best on other roots. */
    private static List<Offer> others(double[] totals, List<PlainChords> plain, Chord chosen, TuneSlot slot) {
        List<Chord> others = new ArrayList<>();
        IntStream.range(0, totals.length)
                .filter(i -> totals[i] > Double.NEGATIVE_INFINITY)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> totals[i]).reversed())
                .map(i -> plain.get(i).chord())
                .filter(chord -> !chord.root().equals(chosen.root()))
                .filter(chord -> others.stream().noneMatch(other -> other.root().equals(chord.root())))
                .limit(OTHERS)
                .forEach(others::add);
        return others.stream()
                .map(chord -> new Offer(chord, SlotReasons.ofNotes(chord, slot), Optional.empty()))
                .toList();
    }

    /** The chords in bars, from the first full bar on, to be played under the tune. */
    public Progression progression() {
        List<Bar> bars = new ArrayList<>();
        List<ChordEvent> events = new ArrayList<>();
        int slotsOfBar = slotsInBar();
        for (HarmonisedSlot slot : slots) {
            if (slot.start() < 0) {
                continue;
            }
            add(events, slot.offer().chord());
            if (events.stream().mapToInt(ChordEvent::shares).sum() == slotsOfBar) {
                bars.add(new Bar(events, false));
                events.clear();
            }
        }
        while (!events.isEmpty() && events.stream().mapToInt(ChordEvent::shares).sum() < slotsOfBar) {
            add(events, events.get(events.size() - 1).chord());
        }
        if (!events.isEmpty()) {
            bars.add(new Bar(events, false));
        }
        return new Progression(key, bars, true);
    }

    /** The same chord goes on within a bar; a new bar strikes it again. */
    private void add(List<ChordEvent> events, Chord chord) {
        ChordEvent last = events.isEmpty() ? null : events.get(events.size() - 1);
        if (last != null && last.chord().equals(chord)) {
            events.set(events.size() - 1, new ChordEvent(chord, last.numeral(), last.shares() + 1, false));
        } else {
            events.add(new ChordEvent(chord, Numeral.of(chord, key), 1, false));
        }
    }

    private int slotsInBar() {
        Beats slot = metre.slot();
        int count = 1;
        while (slot.times(count).compareTo(metre.bar()) < 0) {
            count++;
        }
        return count;
    }

    /**
     * A chord for a slot.
     *
     * @param notes what it does to the notes there, in sentences
     * @param course what it does between the chords before and behind, a sentence; empty for what else would do
     */
    public record Offer(Chord chord, List<Phrase> notes, Optional<Phrase> course) {
        public Offer {
            notes = List.copyOf(notes);
        }

        /** All that speaks for it. */
        public List<Phrase> why() {
            return Stream.concat(notes.stream(), course.stream()).toList();
        }
    }

    /**
     * One slot.
     *
     * @param start beats from the first full bar, below 0 in the pick-up
     * @param offer what suits best, with its reasons
     * @param others on other roots, the best first
     */
    public record HarmonisedSlot(double start, Beats beats, Offer offer, List<Offer> others) {
        public HarmonisedSlot {
            others = List.copyOf(others);
        }
    }
}
