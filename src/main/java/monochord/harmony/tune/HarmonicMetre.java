package monochord.harmony.tune;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.melody.Melody;
import monochord.harmony.melody.Melody.MelodyNote;
import monochord.harmony.tune.TuneSlot.SlotNote;
import monochord.theory.note.Beats;

/**
 * How a tune is cut into slots that get a chord each: half a bar where a bar has an even number of beats, three beats in
 * 6/8, 9/8 and 12/8, else the bar. Common practice, no source.
 *
 * <p>Text form: {@code beats/value}, such as {@code 3/4}; lengths are in quarters all the same.
 *
 * @param bar quarters in a bar
 * @param slot quarters in a slot
 */
public record HarmonicMetre(Beats bar, Beats slot) {
    private static final int QUARTERS_IN_A_WHOLE = 4;
    private static final int THREE = 3;
    private static final int PHRASE = 4;
    private static final double ALMOST = 1e-9;

    /** @throws NumberFormatException if the text is not two whole numbers with a slash between */
    public static HarmonicMetre parse(String text) {
        String[] parts = text.strip().split("/", 2);
        return of(Integer.parseInt(parts[0]), Integer.parseInt(parts[parts.length - 1]));
    }

    private static HarmonicMetre of(long beats, long value) {
        long slot = beats > THREE && beats % THREE == 0 ? THREE : beats % 2 == 0 ? beats / 2 : beats;
        return new HarmonicMetre(
                Beats.of(beats * QUARTERS_IN_A_WHOLE, value), Beats.of(slot * QUARTERS_IN_A_WHOLE, value));
    }

    /** The metre that a tune shows by its bar lines, read in quarters; without them four quarters. */
    public static HarmonicMetre of(Melody melody) {
        Beats bar = melody.bar().orElse(Beats.of(QUARTERS_IN_A_WHOLE));
        return bar.denominator() == 1 ? of(bar.numerator(), QUARTERS_IN_A_WHOLE) : new HarmonicMetre(bar, bar);
    }

    /** Whether the bar lines of a tune agree with it. */
    public boolean suits(Melody melody) {
        return melody.bar().map(bar::equals).orElse(true);
    }

    /** Bars that a tune fills, the last one perhaps in part. */
    public long bars(Melody melody) {
        return (long) Math.ceil(number(melody.beats()) / number(bar));
    }

    /** The length of a slot as a part of a whole note. */
    static double wholeNotes(TuneSlot slot) {
        return slot.length() / QUARTERS_IN_A_WHOLE;
    }

    /** The slots of a tune; one for the pick-up, if there is one. */
    List<TuneSlot> slots(Melody melody) {
        List<TuneSlot> slots = new ArrayList<>();
        Beats pickup = melody.pickup();
        Cutting cutting = new Cutting(melody);
        if (!pickup.isZero()) {
            slots.add(cutting.slot(Beats.ZERO, pickup));
        }
        Beats now = pickup;
        while (now.compareTo(melody.beats()) < 0) {
            Beats end = now.plus(slot);
            slots.add(cutting.slot(now, end.compareTo(melody.beats()) > 0 ? melody.beats() : end));
            now = end;
        }
        return slots;
    }

    /** Goes through a tune once. */
    private final class Cutting {
        private final Melody melody;
        private int next;

        Cutting(Melody melody) {
            this.melody = melody;
        }

        TuneSlot slot(Beats from, Beats to) {
            List<MelodyNote> all = melody.notes();
            while (next < all.size() && all.get(next).end().compareTo(from) <= 0) {
                next++;
            }
            List<SlotNote> sounding = new ArrayList<>();
            for (int i = next; i < all.size() && all.get(i).start().compareTo(to) < 0; i++) {
                sounding.add(sounding(all.get(i), number(from), number(to)));
            }
            double start = number(from) - number(melody.pickup());
            double bars = start / number(bar);
            boolean isAtBar = Math.abs(bars - Math.rint(bars)) < ALMOST;
            return new TuneSlot(start, to.minus(from), isAtBar, isRest(start, from), sounding);
        }

        private SlotNote sounding(MelodyNote note, double from, double to) {
            double start = Math.max(from, number(note.start()));
            double end = Math.min(to, number(note.end()));
            return new SlotNote(note.pitch().name(), end - start, start - from < ALMOST);
        }

        /** The fourth bar of four, with a note in it that begins with the slot and lasts as long. */
        private boolean isRest(double start, Beats from) {
            long barNumber = (long) Math.floor(start / number(bar) + ALMOST);
            return start >= 0
                    && barNumber % PHRASE == PHRASE - 1
                    && next < melody.notes().size()
                    && melody.notes().get(next).start().equals(from)
                    && melody.notes().get(next).beats().compareTo(slot) >= 0;
        }
    }

    static double number(Beats beats) {
        return (double) beats.numerator() / beats.denominator();
    }
}
