package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Verdict;
import monochord.text.Phrase;

/** Judges a name for something heard: whatever sounds the same is right, and a wrong one is held against it. */
public final class EarRubric<A> extends Rubric<A> {
    private final EarTask<A> task;

    /** @param errors what ears that are not yet sure give */
    public EarRubric(A wanted, EarTask<A> task, Supplier<List<A>> errors) {
        super(
                wanted,
                () -> errors.get().stream()
                        .flatMap(error -> task.misconception(error).stream()
                                .map(known -> new ModelledError<>(known, error, () -> task.contrast(error))))
                        .toList());
        this.task = task;
    }

    /** The ear has a reader of its own, for its answers are heard as well. */
    @Override
    A reading(String answer) {
        return task.read(answer);
    }

    @Override
    A read(String plain) {
        return task.read(plain);
    }

    @Override
    String what() {
        throw new UnsupportedOperationException("the ear's own reader says it");
    }

    @Override
    String example() {
        throw new UnsupportedOperationException("the ear's own reader says it");
    }

    @Override
    String write(A answer) {
        return task.write(answer);
    }

    @Override
    boolean same(A one, A other) {
        return task.same(one, other);
    }

    @Override
    Verdict accept(A given) {
        return verdict(Grade.RIGHT, task.yes());
    }

    @Override
    boolean isAlso(A given) {
        return task.soundsRight(given);
    }

    @Override
    Verdict acceptAlso(A given) {
        return verdict(Grade.REMARK, task.otherName(given));
    }

    @Override
    Grade grade(A given) {
        return task.grade(given);
    }

    @Override
    Verdict otherwise(A given) {
        return task.misconception(given)
                .map(known -> verdict(grade(given), known, task.contrast(given)))
                .orElseGet(() -> verdict(grade(given), task.contrast(given)));
    }

    @Override
    List<Phrase> helpFrom(A given) {
        return task.help(given);
    }
}
