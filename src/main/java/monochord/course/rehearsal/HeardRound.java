package monochord.course.rehearsal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/**
 * What was played in a round against what was due.
 *
 * <p>A key belongs to the change whose time is nearest before it, or after it by no more than half a beat. Keys that come
 * within a moment of each other are one stroke; of the strokes in its time the first that holds two notes of the chord, or
 * all it needs, is the change, and its time is that of its middle key. What was held from before counts as heard, what is
 * played after the change is the player's own affair. The tolerances are common practice, no source.
 */
public record HeardRound(List<HeardChange> changes, double tolerance) {
    /** Keys of one stroke follow each other within so many milliseconds. */
    private static final double TOGETHER = 90;
    /** A tone of a stroke may come so many milliseconds behind it. */
    private static final double BEHIND = 120;

    private static final double LEAST_TOLERANCE = 90;
    private static final double MOST_TOLERANCE = 160;
    private static final double TOLERANCE_BEATS = 0.16;

    public HeardRound {
        changes = List.copyOf(changes);
    }

    /**
     * @param due in order of time
     * @param quarter milliseconds of a quarter
     * @param key in which wrong keys are named
     */
    public static HeardRound of(List<DueChange> due, List<KeyPress> keys, double quarter, Key key) {
        return new RoundJudge(due, keys, quarter, key).round();
    }

    private static final class RoundJudge {
        private final List<DueChange> due;
        private final List<KeyPress> keys;
        private final double quarter;
        private final Key key;
        private final double tolerance;

        RoundJudge(List<DueChange> due, List<KeyPress> keys, double quarter, Key key) {
            this.due = due;
            this.keys = keys.stream()
                    .sorted(Comparator.comparingDouble(KeyPress::down))
                    .toList();
            this.quarter = quarter;
            this.key = key;
            this.tolerance = Math.max(LEAST_TOLERANCE, Math.min(MOST_TOLERANCE, TOLERANCE_BEATS * quarter));
        }

        HeardRound round() {
            List<HeardChange> heard = new ArrayList<>();
            for (int i = 0; i < due.size(); i++) {
                heard.add(change(i));
            }
            return new HeardRound(heard, tolerance);
        }

        private double time(int i) {
            return (double) due.get(i).at().numerator() / due.get(i).at().denominator() * quarter;
        }

        /** From when a key may be meant for this change. */
        private double from(int i) {
            if (i >= due.size()) {
                return Double.MAX_VALUE;
            }
            return time(i) - (i == 0 ? quarter : Math.min(quarter, time(i) - time(i - 1)) / 2);
        }

        private HeardChange change(int i) {
            List<List<KeyPress>> strokes = strokes(i);
            Optional<List<KeyPress>> stroke = strokes.stream()
                    .filter(one -> isMeant(one, due.get(i)))
                    .findFirst()
                    .or(() -> strokes.stream().findFirst());
            return stroke.map(keysOfIt -> struck(i, keysOfIt)).orElseGet(() -> notStruck(i));
        }

        private List<List<KeyPress>> strokes(int i) {
            List<List<KeyPress>> strokes = new ArrayList<>();
            double last = Double.NEGATIVE_INFINITY;
            for (KeyPress press : keys) {
                if (press.down() >= from(i) && press.down() < from(i + 1)) {
                    if (press.down() - last > TOGETHER) {
                        strokes.add(new ArrayList<>());
                    }
                    strokes.get(strokes.size() - 1).add(press);
                    last = press.down();
                }
            }
            return strokes;
        }

        private boolean isMeant(List<KeyPress> stroke, DueChange change) {
            long own = stroke.stream()
                    .filter(press -> belongs(press, change.allowed()))
                    .mapToInt(KeyPress::pitchClass)
                    .distinct()
                    .count();
            return own >= Math.min(2, change.needed().size());
        }

        private static boolean belongs(KeyPress press, List<NoteName> names) {
            return names.stream().anyMatch(name -> name.pitchClass() == press.pitchClass());
        }

        private HeardChange struck(int i, List<KeyPress> stroke) {
            DueChange change = due.get(i);
            double late = stroke.get(stroke.size() / 2).down() - time(i);
            Optional<KeyPress> wrong = stroke.stream()
                    .filter(press -> !belongs(press, change.allowed()))
                    .findFirst();
            if (wrong.isPresent()) {
                return heard(
                        i, HeardChange.What.WRONG_NOTE, late, named(wrong.get().key()));
            }
            double first = stroke.get(0).down();
            Optional<NoteName> missing =
                    missing(change, first, stroke.get(stroke.size() - 1).down() + BEHIND);
            if (missing.isPresent()) {
                return heard(i, HeardChange.What.MISSING_NOTE, late, missing.get());
            }
            return heard(i, Math.abs(late) <= tolerance ? HeardChange.What.CLEAN : lateOrEarly(late), late, null);
        }

        private static HeardChange.What lateOrEarly(double late) {
            return late > 0 ? HeardChange.What.LATE : HeardChange.What.EARLY;
        }

        private Optional<NoteName> missing(DueChange change, double from, double to) {
            return change.needed().stream()
                    .filter(name -> keys.stream()
                            .noneMatch(
                                    press -> press.pitchClass() == name.pitchClass() && press.isDownBetween(from, to)))
                    .findFirst();
        }

        /** Where all of it is held from before nothing needs to be struck. */
        private HeardChange notStruck(int i) {
            boolean held = missing(due.get(i), time(i), time(i) + tolerance).isEmpty();
            return heard(i, held ? HeardChange.What.CLEAN : HeardChange.What.NOT_PLAYED, 0, null);
        }

        private HeardChange heard(int i, HeardChange.What what, double late, NoteName note) {
            return new HeardChange(due.get(i), what, late, note, quarter);
        }

        /** By the name a key most likely has in the key: from the lowered second to the raised fourth. */
        private NoteName named(int midiNumber) {
            int flattest = key.tonic().fifths() - 5;
            return NoteName.at(flattest
                    + Math.floorMod(7 * (midiNumber - NoteName.at(flattest).pitchClass()), 12));
        }
    }
}
