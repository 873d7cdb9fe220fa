package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.Signature;
import monochord.practice.reading.SignatureReading;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/** Judges a key signature, answered as a count or as the signs themselves. */
public final class SignatureRubric extends Rubric<Signature> {
    private final String way;

    /** @param way a sentence that points the way and stops short of the signs */
    public SignatureRubric(Key key, String way, Supplier<List<Slip<Signature>>> slips) {
        super(Signature.of(key.signature()), slips);
        this.way = way;
    }

    @Override
    Signature read(String text) {
        String example = example("2 sharps", "3 flats");
        return SignatureReading.read(AnswerText.plain(text, "a key signature", example), example);
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
                ? verdict(Grade.RIGHT, "Yes: " + inWords(wanted()) + ".")
                : verdict(Grade.REMARK, "Yes. They are written in this order: " + Say.row(wanted().notes()) + ".");
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
                    "Signs come in a fixed order, sharps " + order(1) + ", flats " + order(-1)
                            + ", and none is skipped.");
        }
        boolean few = Math.abs(given.count()) < Math.abs(wanted().count());
        if (given.count() * wanted().count() > 0 && grade(given) == Grade.NEARLY) {
            return verdict(
                    Grade.NEARLY,
                    few ? Misconception.MISSING_NOTE : Misconception.EXTRA_NOTE,
                    "One " + (few ? "too few" : "too many") + ". " + way);
        }
        return verdict(Grade.WRONG, "Those signs belong to " + owner(given) + ". " + way);
    }

    /** {@code two sharps, F♯ and C♯}. */
    private static String inWords(Signature signature) {
        int size = Math.abs(signature.count());
        String name = signature.count() < 0 ? "flat" : "sharp";
        return size == 0
                ? "no sharps and no flats"
                : Say.count(size) + " " + name + (size == 1 ? "" : "s") + ", " + Say.list(signature.notes());
    }

    private static String order(int direction) {
        return String.join(
                " ",
                Signature.of(7 * direction).notes().stream()
                        .map(note -> "" + note.letter())
                        .toList());
    }

    private static String owner(Signature given) {
        Key major = Key.major(NoteName.at(given.count()));
        return Say.key(major) + " and " + Say.key(major.relative());
    }
}
