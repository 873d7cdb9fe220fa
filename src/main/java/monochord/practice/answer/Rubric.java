package monochord.practice.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Judge;
import monochord.practice.Misconception;
import monochord.practice.Mistake;
import monochord.practice.Verdict;
import monochord.theory.note.Unreadable;

/**
 * Judges one kind of answer: reads it, compares it with the right one, then with what each wrong procedure gives, and
 * last looks at what is off.
 *
 * @param <A> the kind of answer, as music
 */
abstract class Rubric<A> implements Judge {
    private final A wanted;
    private final Supplier<List<Slip<A>>> slips;

    /** @param slips worked out only when an answer is not right */
    Rubric(A wanted, Supplier<List<Slip<A>>> slips) {
        this.wanted = wanted;
        this.slips = slips;
    }

    final A wanted() {
        return wanted;
    }

    /** @throws Unreadable if the text is not an answer of this kind */
    abstract A read(String text);

    abstract String write(A answer);

    /** Whether both are the same music, however written. */
    abstract boolean same(A one, A other);

    /** What is said to a right answer. */
    abstract Verdict accept(A given);

    /** Whether a wrong answer is what a wrong procedure gives. */
    boolean fits(A given, A slip) {
        return same(given, slip);
    }

    /** Whether the answer is another customary one, so that it is right with a remark. */
    boolean isAlso(A given) {
        return false;
    }

    /** What is said to another customary answer. */
    Verdict acceptAlso(A given) {
        return accept(given);
    }

    /** What is said to an answer that no procedure of the skill gives. */
    abstract Verdict otherwise(A given);

    /** The right answer as it only sounds, if that has another spelling. */
    Optional<A> bySound() {
        return Optional.empty();
    }

    @Override
    public final Verdict judge(String answer) {
        A given;
        try {
            given = read(answer);
        } catch (Unreadable unreadable) {
            return verdict(Grade.UNREADABLE, unreadable.getMessage() + ".");
        }
        return same(given, wanted) ? accept(given) : isAlso(given) ? acceptAlso(given) : diagnose(given);
    }

    private Verdict diagnose(A given) {
        if (soundsRight(given)) {
            return otherwise(given);
        }
        for (Slip<A> slip : slips.get()) {
            if (fits(given, slip.answer())) {
                return verdict(grade(given), slip.misconception(), slip.said().get());
            }
        }
        return otherwise(given);
    }

    /** Whether a wrong answer has the right keys of the keyboard, so that only its spelling is to be talked about. */
    boolean soundsRight(A given) {
        return false;
    }

    /** How far off an answer is that a wrong procedure gives. */
    Grade grade(A given) {
        return Grade.WRONG;
    }

    private boolean isRight(A answer) {
        return same(answer, wanted) || isAlso(answer);
    }

    /** The slips that lead to something wrong, the likeliest where several lead to the same. */
    private List<Slip<A>> differing() {
        List<Slip<A>> differing = new ArrayList<>();
        for (Slip<A> slip : slips.get()) {
            boolean known = differing.stream().anyMatch(other -> fits(slip.answer(), other.answer()));
            if (!known && !isRight(slip.answer()) && !soundsRight(slip.answer())) {
                differing.add(slip);
            }
        }
        return differing;
    }

    @Override
    public String expected() {
        return write(wanted);
    }

    @Override
    public final List<Mistake> mistakes() {
        List<Mistake> mistakes = new ArrayList<>();
        differing().forEach(slip -> mistakes.add(new Mistake(slip.misconception(), write(slip.answer()))));
        bySound()
                .filter(respelled -> !isRight(respelled))
                .ifPresent(respelled -> mistakes.add(new Mistake(Misconception.SPELLED_BY_SOUND, write(respelled))));
        return mistakes;
    }

    final Verdict verdict(Grade grade, String message) {
        return new Verdict(grade, null, opening(grade) + message, expected());
    }

    final Verdict verdict(Grade grade, Misconception misconception, String message) {
        return new Verdict(grade, misconception.id(), opening(grade) + message, expected());
    }

    private static String opening(Grade grade) {
        return grade == Grade.NEARLY ? "Nearly. " : "";
    }

    /** The first example that is not the answer. */
    final String example(String first, String second) {
        return first.equals(expected()) ? second : first;
    }
}
