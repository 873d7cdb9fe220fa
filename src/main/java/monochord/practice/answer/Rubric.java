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
import monochord.practice.reading.AnswerReading;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;

/**
 * Judges one kind of answer: reads it, compares it with the right one, then with what each wrong procedure gives, and
 * last looks at what is off.
 *
 * @param <A> the kind of answer, as music
 */
abstract class Rubric<A> implements Judge {
    private final A wanted;
    private final Supplier<List<ModelledError<A>>> errors;

    /** @param errors worked out only when an answer is not right */
    Rubric(A wanted, Supplier<List<ModelledError<A>>> errors) {
        this.wanted = wanted;
        this.errors = errors;
    }

    final A wanted() {
        return wanted;
    }

    /** What is to be read, with its article: {@code a row of notes}. */
    abstract String what();

    /** An answer of this kind that is not the right one. */
    abstract String example();

    /**
     * @param plain the answer without the talk around it
     * @throws Unreadable if it is not an answer of this kind
     */
    abstract A read(String plain);

    abstract String write(A answer);

    /** Whether both are the same music, however written. */
    abstract boolean same(A one, A other);

    /** What is said to a right answer. */
    abstract Verdict accept(A given);

    /** Whether a wrong answer is what a wrong procedure gives. */
    boolean fits(A given, A error) {
        return same(given, error);
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

    /** @throws Unreadable if the text is not an answer of this kind */
    A reading(String answer) {
        return AnswerReading.read(answer, what(), example(), this::read);
    }

    @Override
    public final Verdict judge(String answer) {
        A given;
        try {
            given = reading(answer);
        } catch (Unreadable unreadable) {
            return Verdict.unreadable(unreadable, expected());
        }
        return same(given, wanted) ? accept(given) : isAlso(given) ? acceptAlso(given) : diagnose(given);
    }

    private Verdict diagnose(A given) {
        if (soundsRight(given)) {
            return otherwise(given);
        }
        for (ModelledError<A> error : errors.get()) {
            if (fits(given, error.answer())) {
                return verdict(grade(given), error.misconception(), error.said().get());
            }
        }
        return otherwise(given);
    }

    @Override
    public final List<Phrase> help(String answer) {
        A given;
        try {
            given = reading(answer);
        } catch (Unreadable unreadable) {
            return List.of();
        }
        return isRight(given) ? List.of() : helpFrom(given);
    }

    /** How to go on from a wrong answer, narrower each time; nothing where the question's own hints serve. */
    List<Phrase> helpFrom(A given) {
        return List.of();
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

    /** The errors that lead to something wrong, the likeliest where several lead to the same. */
    private List<ModelledError<A>> differing() {
        List<ModelledError<A>> differing = new ArrayList<>();
        for (ModelledError<A> error : errors.get()) {
            boolean known = differing.stream().anyMatch(other -> fits(error.answer(), other.answer()));
            if (!known && !isRight(error.answer()) && !soundsRight(error.answer())) {
                differing.add(error);
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
        differing().forEach(error -> mistakes.add(new Mistake(error.misconception(), write(error.answer()))));
        bySound()
                .filter(respelled -> !isRight(respelled))
                .ifPresent(respelled -> mistakes.add(new Mistake(Misconception.SPELLED_BY_SOUND, write(respelled))));
        return mistakes;
    }

    final Verdict verdict(Grade grade, Phrase said) {
        return Verdict.of(grade, null, said, expected());
    }

    final Verdict verdict(Grade grade, Misconception misconception, Phrase said) {
        return Verdict.of(grade, misconception, said, expected());
    }

    /** The first example that is not the answer. */
    final String example(String first, String second) {
        return first.equals(expected()) ? second : first;
    }
}
