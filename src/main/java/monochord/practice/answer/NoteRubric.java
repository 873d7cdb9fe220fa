package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.NoteReading;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Judges a single note. */
public final class NoteRubric extends Rubric<NoteName> {
    private final NoteName from;
    private final String way;

    /**
     * @param from the note it is counted from
     * @param way a sentence that points the way and stops short of the note
     */
    public NoteRubric(NoteName wanted, NoteName from, String way, Supplier<List<Slip<NoteName>>> slips) {
        super(wanted, slips);
        this.from = from;
        this.way = way;
    }

    @Override
    NoteName read(String text) {
        String example = example("F#", "Eb");
        List<NoteName> notes = NoteReading.read(AnswerText.plain(text, "a note", example), example);
        if (notes.size() > 1) {
            throw Unreadable.because(text, 0, "a note", "one note is asked for, and several stand here", example);
        }
        return notes.get(0);
    }

    @Override
    String write(NoteName answer) {
        return answer.toString();
    }

    @Override
    boolean same(NoteName one, NoteName other) {
        return one.equals(other);
    }

    @Override
    Verdict accept(NoteName given) {
        return verdict(Grade.RIGHT, "Yes: " + Say.note(given) + ".");
    }

    /** The black key's other name, or the plain name of a white one. */
    @Override
    Optional<NoteName> bySound() {
        NoteName plain = wanted().simplest();
        boolean isPlain = plain.equals(wanted());
        return isPlain && wanted().alteration() == 0
                ? Optional.empty()
                : Optional.of(isPlain ? wanted().respelled() : plain);
    }

    @Override
    boolean soundsRight(NoteName given) {
        return given.soundsLike(wanted());
    }

    @Override
    Grade grade(NoteName given) {
        return given.letter() == wanted().letter() ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict otherwise(NoteName given) {
        if (soundsRight(given)) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.SPELLED_BY_SOUND,
                    "The right key on the piano, under the wrong letter: some kind of " + wanted().letter() + " is due."
                            + chart(given));
        } else if (given.letter() == wanted().letter()) {
            return verdict(Grade.NEARLY, Misconception.WRONG_QUALITY, "The letter is right. " + distance(given));
        }
        return verdict(Grade.WRONG, Misconception.WRONG_DEGREE, way);
    }

    private String chart(NoteName given) {
        boolean farFetched = given.alteration() == 0 && given.equals(wanted().simplest());
        return farFetched ? " A chart may print " + Say.note(given) + "; spelled out, the letter stays." : "";
    }

    private String distance(NoteName given) {
        return "From " + Say.note(from) + " up to " + Say.note(given) + " is " + Say.interval(from.to(given))
                + ": count the half steps again.";
    }
}
