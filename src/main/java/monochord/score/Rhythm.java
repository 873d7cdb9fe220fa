package monochord.score;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.note.Beats;

/**
 * When two hands strike, again and again.
 *
 * @param beginsWithChord whether it is counted from the bar in which a chord begins, else from the beginning of the music
 */
record Rhythm(HandRhythm left, HandRhythm right, boolean beginsWithChord) {
    /** One hand. Common practice, no source. */
    record HandRhythm(Beats cycle, List<RhythmStroke> strokes) {
        /**
         * Reads {@code 4: 0 1.5 R, 1.5 .5 F}: the length of the cycle; then when it is struck, how long it sounds, and
         * {@code F} for the fifth of the bass.
         */
        static HandRhythm parse(String text) {
            String[] parts = text.split(": ", 2);
            List<RhythmStroke> strokes = new ArrayList<>();
            for (String one : parts[1].split(", ")) {
                String[] words = one.split(" ");
                strokes.add(new RhythmStroke(beats(words[0]), beats(words[1]), words.length > 2));
            }
            return new HandRhythm(beats(parts[0]), strokes);
        }

        private static Beats beats(String text) {
            return Beats.of(Math.round(Double.parseDouble(text) * 4), 4);
        }

        /** The strokes from a time up to another, the cycle counted from the anchor. */
        List<RhythmStroke> within(Beats anchor, Beats from, Beats to) {
            List<RhythmStroke> found = new ArrayList<>();
            Beats cycles = from.minus(anchor);
            long first = cycles.numerator() * cycle.denominator() / (cycles.denominator() * cycle.numerator());
            for (Beats begin = anchor.plus(cycle.times(first)); begin.compareTo(to) < 0; begin = begin.plus(cycle)) {
                for (RhythmStroke stroke : strokes) {
                    Beats at = begin.plus(stroke.at());
                    if (at.compareTo(from) >= 0 && at.compareTo(to) < 0) {
                        found.add(new RhythmStroke(at, stroke.length(), stroke.isFifth() && !at.equals(from)));
                    }
                }
            }
            return found;
        }
    }

    record RhythmStroke(Beats at, Beats length, boolean isFifth) {}

    static Rhythm of(Pattern pattern, BarGrid metre) {
        return switch (pattern) {
            case WALTZ -> rhythm("6: 0 1, 3 1 F", "3: 1 .5, 2 .5", true);
            case OFF_BEATS -> new Rhythm(strong(metre), HandRhythm.parse("1: .5 .25"), false);
            case BOSSA -> rhythm("4: 0 1.5, 1.5 .5 F, 2 1.5 F, 3.5 .5", "8: 0 .75, 1.5 1, 3 .5, 5 .75, 6.5 1", false);
            case PUSH -> rhythm("4: 0 1.5, 1.5 .5 F, 2 1.5", "4: 1 .5, 2.5 .75", false);
            case WALKING -> rhythm("4: 0 4", "4: 0 1, 1.5 .5", true);
            default -> new Rhythm(every(metre), every(metre), true);
        };
    }

    private static Rhythm rhythm(String left, String right, boolean beginsWithChord) {
        return new Rhythm(HandRhythm.parse(left), HandRhythm.parse(right), beginsWithChord);
    }

    /** Held for a bar. */
    private static HandRhythm every(BarGrid metre) {
        return new HandRhythm(metre.bar(), List.of(new RhythmStroke(Beats.ZERO, metre.bar(), false)));
    }

    /** In even bars each odd beat, else the first. */
    private static HandRhythm strong(BarGrid metre) {
        boolean even = metre.bar().denominator() == 1 && metre.bar().numerator() % 2 == 0;
        Beats cycle = even ? Beats.of(2) : metre.bar();
        return new HandRhythm(cycle, List.of(new RhythmStroke(Beats.ZERO, Beats.ONE, false)));
    }
}
