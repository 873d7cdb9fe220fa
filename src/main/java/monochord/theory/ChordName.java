package monochord.theory;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import monochord.theory.note.Degree;
import monochord.theory.note.Signs;
import monochord.theory.note.ToneSet;

/**
 * The name of a set of tones: the customary kind nearest to it, and what was altered, added or left out.
 *
 * @param suffix the chord symbol without its root
 * @param oddity 0 for a customary kind, and more for each change
 */
record ChordName(String suffix, int oddity) {
    private static final int ALTERED = 2;
    private static final int ADDED = 3;
    private static final int ADDED_ALTERED = 4;
    private static final int LEFT_OUT = 4;
    private static final int USUALLY_LEFT_OUT = 2;
    private static final int BOTH_LEFT_OUT = 8;

    /** Each customary kind and its degrees, the plainest first, so that it wins where two names cost the same. */
    private static final List<Base> BASES = List.of(
            base("", "1 3 5"),
            base("m", "1 b3 5"),
            base("dim", "1 b3 b5"),
            base("aug", "1 3 #5"),
            base("sus4", "1 4 5"),
            base("sus2", "1 2 5"),
            base("5", "1 5"),
            base("7", "1 3 5 b7"),
            base("m7", "1 b3 5 b7"),
            base("maj7", "1 3 5 7"),
            base("6", "1 3 5 6"),
            base("m6", "1 b3 5 6"),
            base("m7b5", "1 b3 b5 b7"),
            base("dim7", "1 b3 b5 bb7"),
            base("m(maj7)", "1 b3 5 7"),
            base("dim(maj7)", "1 b3 b5 7"),
            base("7sus4", "1 4 5 b7"),
            base("7sus2", "1 2 5 b7"),
            base("maj7sus4", "1 4 5 7"),
            base("maj7sus2", "1 2 5 7"),
            base("6sus4", "1 4 5 6"),
            base("9", "1 3 5 b7 2"),
            base("m9", "1 b3 5 b7 2"),
            base("maj9", "1 3 5 7 2"),
            base("m(maj9)", "1 b3 5 7 2"),
            base("add9", "1 3 5 2"),
            base("m(add9)", "1 b3 5 2"),
            base("6/9", "1 3 5 6 2"),
            base("m6/9", "1 b3 5 6 2"),
            base("9sus4", "1 4 5 b7 2"),
            base("maj9sus4", "1 4 5 7 2"),
            base("11", "1 3 5 b7 2 4"),
            base("m11", "1 b3 5 b7 2 4"),
            base("maj11", "1 3 5 7 2 4"),
            base("13", "1 3 5 b7 2 4 6"),
            base("m13", "1 b3 5 b7 2 4 6"),
            base("maj13", "1 3 5 7 2 4 6"),
            base("m(maj13)", "1 b3 5 7 2 4 6"),
            base("13sus4", "1 4 5 b7 2 6"));

    private record Base(String suffix, long tones) {}

    private static Base base(String suffix, String degrees) {
        long tones = 0;
        for (String degree : degrees.split(" ")) {
            tones |= ToneSet.bit(Degree.parse(degree).fifths());
        }
        return new Base(suffix, tones);
    }

    /** The name of the tones, or none if there is no root, no second tone, or no customary kind near enough. */
    static Optional<ChordName> of(long tones) {
        ChordName best = null;
        for (Base base : BASES) {
            ChordName name = Changes.name(base.suffix, base.tones, tones);
            best = best == null || name != null && name.oddity < best.oddity ? name : best;
        }
        return Optional.ofNullable(best);
    }

    /** What has to change for one customary kind to become a set of tones. */
    private static final class Changes {
        private final String base;
        private final long wanted;
        private long missing;
        private final List<String> alterations = new ArrayList<>();
        private final List<String> others = new ArrayList<>();
        private int cost;

        private Changes(String base, long from, long wanted) {
            this.base = base;
            this.wanted = wanted;
            this.missing = from & ~wanted;
        }

        /** The name, or nothing if the kinds differ in a third, a seventh or a suspension. */
        static ChordName name(String base, long from, long wanted) {
            Changes changes = new Changes(base, from, wanted);
            boolean nameable = (wanted & ToneSet.ROOT) != 0
                    && Long.bitCount(wanted) > 1
                    && changes.addAll(wanted & ~from)
                    && changes.leaveOutTheRest();
            return nameable ? new ChordName(changes.suffix(), changes.cost) : null;
        }

        private boolean addAll(long extra) {
            for (Degree degree : inOrder(extra)) {
                if (!add(degree)) {
                    return false;
                }
            }
            return true;
        }

        private static List<Degree> inOrder(long tones) {
            List<Degree> degrees = new ArrayList<>();
            for (int fifths : ToneSet.fifths(tones)) {
                degrees.add(Degree.ofFifths(fifths));
            }
            degrees.sort(Comparator.<Degree>comparingInt(degree -> place(degree.number()))
                    .thenComparingInt(Degree::alteration));
            return degrees;
        }

        /** The order in which changes are written: fifth, sixth, ninth, eleventh, thirteenth. */
        private static int place(int number) {
            return number == 2 || number == 4 ? number + 7 : number;
        }

        private boolean add(Degree degree) {
            int number = degree.number();
            boolean plainFifth = number == 5 && degree.alteration() == 0;
            boolean known =
                    Math.abs(degree.alteration()) <= 1 && number != 1 && number != 3 && number != 7 && !plainFifth;
            boolean stands = number != 4 && number != 2
                    || has(3, 0)
                    || has(3, -1)
                    || degree.alteration() != 0
                    || number == 2 && has(4, 0);
            if (known && stands) {
                change(number, degree.alteration());
            }
            return known && stands;
        }

        private void change(int number, int alteration) {
            int written = written(number, alteration);
            boolean alters =
                    isAlteration(number, alteration) && !has(number, 0) && (number == 5 || written > 7 && seventh());
            String text = Signs.ASCII.accidental(alteration) + written;
            (alters ? alterations : others).add(alters ? text : "add" + text);
            cost += alters ? ALTERED : alteration == 0 ? ADDED : ADDED_ALTERED;
            missing &= alters ? ~ToneSet.tone(number, 0) : ~0L;
        }

        /** An eleventh is only raised and a thirteenth only lowered; the other way round they are added. */
        private static boolean isAlteration(int number, int alteration) {
            return number == 4 ? alteration > 0 : number == 6 ? alteration < 0 : alteration != 0;
        }

        private int written(int number, int alteration) {
            boolean raisedSixth = has(6, 1);
            return switch (number) {
                case 2 -> 9;
                case 4 -> !raisedSixth && (seventh() || alteration != 0) ? 11 : 4;
                case 6 -> seventh() ? 13 : 6;
                default -> number;
            };
        }

        private boolean leaveOutTheRest() {
            for (Degree degree : inOrder(missing)) {
                int number = degree.number();
                boolean mayGo = !hasAny(number)
                        && (number == 3 || number == 5 || number == 2 && seventh() || number == 4 && hasThird());
                if (!mayGo) {
                    return false;
                }
                others.add("no" + place(number));
                cost += number == 4 ? USUALLY_LEFT_OUT : number == 5 && !hasThird() ? BOTH_LEFT_OUT : LEFT_OUT;
            }
            return true;
        }

        private boolean hasAny(int number) {
            return has(number, -1) || has(number, 0) || has(number, 1);
        }

        private boolean hasThird() {
            return has(3, 0) || has(3, -1);
        }

        private boolean seventh() {
            return has(7, 0) || has(7, -1) || has(7, -2);
        }

        private boolean has(int number, int alteration) {
            return (wanted & ToneSet.tone(number, alteration)) != 0;
        }

        private String suffix() {
            String altered = String.join("", alterations);
            String other = String.join(",", others);
            boolean bare = base.isEmpty() && altered.isEmpty() && others.size() == 1 && other.startsWith("add");
            return base
                    + (base.isEmpty() && !altered.isEmpty() ? "(" + altered + ")" : altered)
                    + (other.isEmpty() || bare ? other : "(" + other + ")");
        }
    }
}
