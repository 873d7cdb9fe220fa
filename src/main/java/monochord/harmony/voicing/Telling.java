package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.harmony.motion.Move;
import monochord.harmony.voicing.Explanation.Change;
import monochord.theory.Chord;
import monochord.theory.Interval;
import monochord.theory.NoteName;
import monochord.theory.Pitch;
import monochord.theory.Signs;

/** Puts an {@link Explanation} into sentences, as a teacher would say it at the keyboard, with the signs of print. */
public final class Telling {
    private static final int WHOLE_STEP = 2;

    private final Explanation explanation;

    public Telling(Explanation explanation) {
        this.explanation = explanation;
    }

    /** One sentence for each change; a change that comes again is told once. */
    public List<String> changes() {
        LinkedHashSet<String> told = new LinkedHashSet<>();
        explanation.changes().forEach(change -> told.add(change(change)));
        return List.copyOf(told);
    }

    private static String change(Change change) {
        String names = sign(change.from()) + " to " + sign(change.to()) + ": ";
        List<Move> all =
                Stream.concat(change.left().stream(), change.right().stream()).toList();
        if (all.stream().allMatch(Move::isStill)) {
            return names + "nothing moves.";
        }
        List<String> parts = new ArrayList<>();
        held(change, all).ifPresent(parts::add);
        parts.addAll(hand("left hand", change.left(), true));
        parts.addAll(hand("right hand", change.right(), false));
        return names + String.join("; ", parts) + ".";
    }

    private static Optional<String> held(Change change, List<Move> all) {
        List<Move> still = all.stream().filter(Move::isStill).toList();
        if (!change.right().isEmpty() && still.containsAll(change.right())) {
            List<Move> below = change.left().stream().filter(Move::isStill).toList();
            return Optional.of("the right hand does not move" + (below.isEmpty() ? "" : ", " + stay(below) + " too"));
        }
        return still.isEmpty() ? Optional.empty() : Optional.of(stay(still));
    }

    private static String stay(List<Move> still) {
        List<String> names =
                still.stream().map(move -> sign(move.to())).distinct().toList();
        return listed(names) + (names.size() == 1 ? " stays" : " stay");
    }

    private static List<String> hand(String name, List<Move> hand, boolean left) {
        List<Move> moving = hand.stream().filter(move -> !move.isStill()).toList();
        boolean together = moving.size() > 1
                && moving.size() == hand.size()
                && moving.stream().mapToInt(Move::semitones).distinct().count() == 1;
        if (together) {
            return List.of("the " + name + " slides " + way(moving.get(0)));
        }
        List<String> parts = new ArrayList<>();
        boolean bass = left && !moving.isEmpty() && moving.get(0) == hand.get(0);
        if (bass) {
            parts.add("the bass goes " + way(moving.get(0)));
        }
        String others = moving.stream()
                .skip(bass ? 1 : 0)
                .map(move -> sign(move.from()) + " to " + sign(move.to()))
                .collect(Collectors.joining(", "));
        if (!others.isEmpty()) {
            parts.add(others);
        }
        return parts;
    }

    private static String way(Move move) {
        return (move.direction() > 0 ? "up " : "down ") + distance(move);
    }

    private static String distance(Move move) {
        int halfSteps = Math.abs(move.semitones());
        if (halfSteps <= WHOLE_STEP) {
            return halfSteps == 1 ? "a half step" : "a whole step";
        }
        String words = move.interval().size().inWords();
        String number = words.substring(words.lastIndexOf(' ') + 1);
        return (number.startsWith("o") || number.startsWith("e") ? "an " : "a ") + number;
    }

    /** The numbers next to those of the plain version, and where the plain version is flattest. */
    public List<String> comparison() {
        List<String> said = new ArrayList<>();
        said.add("In all " + numbers(explanation.tally()) + ". Every chord in root position: "
                + numbers(explanation.plainTally()) + ".");
        flattest().ifPresent(change -> said.add(avoided(change)));
        return said;
    }

    private static String numbers(MovementCount tally) {
        String left = tally.inLeftHand() == 0
                ? ""
                : tally.inLeftHand() == tally.parallels()
                        ? ", all in the left hand"
                        : ", " + tally.inLeftHand() + " of them in the left hand";
        return counted(tally.moved(), "half step") + " moved, "
                + counted(tally.parallels(), "parallel fifth or octave", "parallel fifths or octaves") + left + ", "
                + counted(tally.held(), "note") + " held";
    }

    /** The change at which the plain version has most parallels more than this one. */
    private Optional<Change> flattest() {
        return explanation.changes().stream()
                .max(Comparator.comparingInt(Telling::saved).thenComparing(this::isBorrowed))
                .filter(change -> saved(change) > 0);
    }

    private static int saved(Change change) {
        return change.plainTally().parallels() - change.tally().parallels();
    }

    private static String avoided(Change change) {
        int left = change.tally().parallels();
        return "Avoided from " + sign(change.from()) + " to " + sign(change.to()) + ": in root position "
                + counted(change.plainTally().parallels(), "pair") + " of voices would go in parallel, here "
                + (left == 0 ? "none does" : left == 1 ? "one does" : left + " do") + ".";
    }

    /** Why most can stay at one change: what each held note is in either chord. */
    public Optional<String> reason() {
        return explanation.changes().stream()
                .filter(change -> !change.from().equals(change.to()))
                .max(Comparator.<Change>comparingInt(change -> change.tally().held())
                        .thenComparing(this::isBorrowed))
                .filter(change -> change.tally().held() > 0)
                .map(Telling::reason);
    }

    /** Whether the change leads out of the key: where two are as telling, that one is told. */
    private boolean isBorrowed(Change change) {
        return !explanation.way().task().key().isOwn(change.to());
    }

    private static String reason(Change change) {
        List<String> roles = Stream.concat(change.left().stream(), change.right().stream())
                .filter(Move::isStill)
                .map(move -> move.to().name())
                .distinct()
                .map(name -> sign(name) + " is the " + role(name, change.from()) + " of " + sign(change.from())
                        + " and the " + role(name, change.to()) + " of " + sign(change.to()))
                .toList();
        return "Why " + (roles.size() == 1 ? "it stays" : "they stay") + ": " + String.join("; ", roles) + ".";
    }

    private static String role(NoteName name, Chord chord) {
        return chord.kind().intervals().stream()
                .filter(interval -> chord.root().plus(interval).soundsLike(name))
                .map(Telling::role)
                .findFirst()
                .orElse("bass");
    }

    private static String role(Interval interval) {
        String words = interval.inWords();
        return interval.number() == 1 ? "root" : words.substring(words.lastIndexOf(' ') + 1);
    }

    private static String counted(int count, String one) {
        return counted(count, one, one + "s");
    }

    private static String counted(int count, String one, String more) {
        return (count == 0 ? "no" : Integer.toString(count)) + " " + (count == 1 ? one : more);
    }

    private static String listed(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    private static String sign(Chord chord) {
        return chord.write(Signs.MUSIC);
    }

    private static String sign(Pitch pitch) {
        return pitch.write(Signs.MUSIC);
    }

    private static String sign(NoteName name) {
        return name.write(Signs.MUSIC);
    }
}
