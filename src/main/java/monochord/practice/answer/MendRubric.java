package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import monochord.harmony.melody.NoteChange;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.text.Phrase;
import monochord.theory.note.NoteName;

/** Judges the note that a tune sings in place of one that clashes: the nearest, or another near one that fits. */
public final class MendRubric extends OneNoteRubric {
    private final List<NoteName> fitting;
    private final Phrase reason;
    private final Phrase way;
    private final Function<NoteName, List<Phrase>> help;

    /**
     * @param changes every near note that fits, the nearest first; not empty
     * @param reason one sentence or more that lead to the nearest
     * @param help how to go on from each wrong answer
     */
    public MendRubric(
            List<NoteChange> changes,
            Phrase reason,
            Phrase way,
            Function<NoteName, List<Phrase>> help,
            Supplier<List<ModelledError<NoteName>>> errors) {
        super(changes.get(0).to().name(), errors);
        this.fitting = changes.stream().map(change -> change.to().name()).toList();
        this.reason = reason;
        this.way = way;
        this.help = help;
    }

    @Override
    boolean isAlso(NoteName given) {
        return fitting.contains(given);
    }

    @Override
    Verdict accept(NoteName given) {
        return verdict(Grade.RIGHT, Phrase.sentence("Yes: {0}.", given).then(reason));
    }

    @Override
    Verdict acceptAlso(NoteName given) {
        return verdict(Grade.REMARK, Phrase.sentence("Yes, {0} fits too. {1} is nearer to the tune.", given, wanted()));
    }

    @Override
    Optional<NoteName> bySound() {
        return Optional.of(wanted().respelled());
    }

    @Override
    Verdict otherwise(NoteName given) {
        return soundsRight(given)
                ? verdict(
                        Grade.NEARLY,
                        Misconception.SPELLED_BY_SOUND,
                        Phrase.sentence("That is the right key on the piano; over this chord it has another letter."))
                : verdict(
                        Grade.WRONG,
                        Phrase.sentence("{0} is not near, or it does not fit.", given)
                                .then(way));
    }

    @Override
    List<Phrase> helpFrom(NoteName given) {
        return help.apply(given);
    }
}
