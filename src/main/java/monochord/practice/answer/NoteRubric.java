package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.text.Phrase;
import monochord.theory.note.NoteName;

/** Judges a single note. */
public final class NoteRubric extends OneNoteRubric {
    private final NoteName from;
    private final Phrase way;

    /**
     * @param from the note it is counted from
     * @param way a sentence that points the way and stops short of the note
     */
    public NoteRubric(NoteName wanted, NoteName from, Phrase way, Supplier<List<ModelledError<NoteName>>> errors) {
        super(wanted, errors);
        this.from = from;
        this.way = way;
    }

    @Override
    Verdict accept(NoteName given) {
        return verdict(Grade.RIGHT, Phrase.sentence("Yes: {0}.", given));
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
    Grade grade(NoteName given) {
        return given.letter() == wanted().letter() ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict otherwise(NoteName given) {
        if (soundsRight(given)) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.SPELLED_BY_SOUND,
                    Phrase.sentence(
                                    "The right key on the piano, under the wrong letter: some kind of {0} is due.",
                                    NoteName.of(wanted().letter(), 0))
                            .then(chart(given)));
        } else if (given.letter() == wanted().letter()) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.WRONG_QUALITY,
                    Phrase.sentence("The letter is right.").then(distance(given)));
        }
        return verdict(Grade.WRONG, Misconception.WRONG_DEGREE, way);
    }

    private Phrase chart(NoteName given) {
        boolean farFetched = given.alteration() == 0 && given.equals(wanted().simplest());
        return farFetched
                ? Phrase.sentence("A chart may print {0}; spelled out, the letter stays.", given)
                : Phrase.NOTHING;
    }

    private Phrase distance(NoteName given) {
        return Phrase.sentence(
                "From {0} up to {1} is {2}: count the half steps again.", from, given, Phrase.one(from.to(given)));
    }

    @Override
    List<Phrase> helpFrom(NoteName given) {
        boolean letter = given.letter() == wanted().letter();
        if (!letter || soundsRight(given)) {
            return List.of();
        }
        boolean high = given.alteration() > wanted().alteration();
        return List.of(
                Phrase.sentence("The letter is right. Now the half steps."),
                distance(given),
                high
                        ? Phrase.sentence("{0} lies too high; the letter stays.", given)
                        : Phrase.sentence("{0} lies too low; the letter stays.", given));
    }
}
