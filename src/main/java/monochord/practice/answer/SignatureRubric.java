package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.Signature;
import monochord.practice.reading.SignatureReading;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/** Judges a key signature, answered as a count or as the signs themselves. */
public final class SignatureRubric extends Rubric<Signature> {
    private final Phrase way;

    /** @param way a sentence that points the way and stops short of the signs */
    public SignatureRubric(Key key, Phrase way, Supplier<List<ModelledError<Signature>>> errors) {
        super(Signature.of(key.signature()), errors);
        this.way = way;
    }

    @Override
    String what() {
        return "a key signature";
    }

    @Override
    String example() {
        return example("2 sharps", "3 flats");
    }

    @Override
    Signature read(String plain) {
        return SignatureReading.read(plain, example());
    }

    @Override
    String write(Signature answer) {
        return answer.toString();
    }

    @Override
    boolean same(Signature one, Signature other) {
        return one.notes().size() == other.notes().size() && one.notes().containsAll(other.notes());
    }

    @Override
    Verdict accept(Signature given) {
        return given.inOrder()
                ? verdict(Grade.RIGHT, Phrase.sentence("Yes: {0}.", inWords(wanted())))
                : verdict(
                        Grade.REMARK,
                        Phrase.sentence("Yes. They are written in this order: {0}.", Phrase.row(wanted().notes())));
    }

    @Override
    Grade grade(Signature given) {
        return Math.abs(given.count() - wanted().count()) == 1 ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict otherwise(Signature given) {
        if (!given.isRegular()) {
            return verdict(
                    Grade.WRONG,
                    Phrase.sentence(
                            "Signs come in a fixed order, sharps {0}, flats {1}, and none is skipped.",
                            order(1), order(-1)));
        }
        boolean few = Math.abs(given.count()) < Math.abs(wanted().count());
        if (given.count() * wanted().count() > 0 && grade(given) == Grade.NEARLY) {
            return verdict(
                    Grade.NEARLY,
                    few ? Misconception.MISSING_NOTE : Misconception.EXTRA_NOTE,
                    (few ? Phrase.sentence("One too few.") : Phrase.sentence("One too many.")).then(way));
        }
        return verdict(
                Grade.WRONG,
                Phrase.sentence("Those signs belong to {0}.", owner(given)).then(way));
    }

    /** {@code two sharps, F♯ and C♯}. */
    private static Phrase inWords(Signature signature) {
        int size = Math.abs(signature.count());
        Phrase signs = Phrase.list(signature.notes());
        if (size == 0) {
            return Phrase.of("no sharps and no flats");
        }
        return signature.count() > 0
                ? Phrase.counted(size, "{0} sharp, {1}", "{0} sharps, {1}", Phrase.number(size), signs)
                : Phrase.counted(size, "{0} flat, {1}", "{0} flats, {1}", Phrase.number(size), signs);
    }

    private static Phrase order(int direction) {
        return Phrase.row(Signature.of(7 * direction).notes().stream()
                .map(note -> NoteName.of(note.letter(), 0))
                .toList());
    }

    private static Phrase owner(Signature given) {
        Key major = Key.major(NoteName.at(given.count()));
        return Phrase.of("{0} and {1}", major, major.relative());
    }

    @Override
    List<Phrase> helpFrom(Signature given) {
        boolean sameSide = given.count() * wanted().count() > 0 && given.isRegular();
        if (!sameSide) {
            return List.of();
        }
        boolean few = Math.abs(given.count()) < Math.abs(wanted().count());
        return List.of(
                Phrase.sentence("The kind of sign is right; count again."),
                way,
                few ? Phrase.sentence("There are more.") : Phrase.sentence("There are fewer."));
    }
}
