package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Verdict;

/** Judges a name for something heard: whatever sounds the same is right, and a wrong one is held against it. */
public final class EarRubric<A> extends Rubric<A> {
    private final Sense<A> sense;

    /** @param slips what ears that are not yet sure give */
    public EarRubric(A wanted, Sense<A> sense, Supplier<List<A>> slips) {
        super(
                wanted,
                () -> slips.get().stream()
                        .flatMap(slip -> sense.misconception(slip).stream()
                                .map(known -> new Slip<>(known, slip, () -> sense.contrast(slip))))
                        .toList());
        this.sense = sense;
    }

    @Override
    A read(String text) {
        return sense.read(text);
    }

    @Override
    String write(A answer) {
        return sense.write(answer);
    }

    @Override
    boolean same(A one, A other) {
        return sense.same(one, other);
    }

    @Override
    Verdict accept(A given) {
        return verdict(Grade.RIGHT, sense.yes());
    }

    @Override
    boolean isAlso(A given) {
        return sense.soundsRight(given);
    }

    @Override
    Verdict acceptAlso(A given) {
        return verdict(Grade.REMARK, sense.otherName(given));
    }

    @Override
    Grade grade(A given) {
        return sense.grade(given);
    }

    @Override
    Verdict otherwise(A given) {
        return sense.misconception(given)
                .map(known -> verdict(grade(given), known, sense.contrast(given)))
                .orElseGet(() -> verdict(grade(given), sense.contrast(given)));
    }
}
