package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.harmony.melody.NoteChange;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.NoteReading;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Judges the note that a tune sings in place of one that clashes: the nearest, or another near one that fits. */
public final class MendRubric extends Rubric<NoteName> {

    private final List<NoteName> fitting;
    private final String reason;
    private final String way;

    /**
     * @param changes every near note that fits, the nearest first; not empty
     * @param reason one sentence or more that lead to the nearest
     */
    public MendRubric(List<NoteChange> changes, String reason, String way, Supplier<List<Slip<NoteName>>> slips) {
        super(changes.get(0).to().name(), slips);
        this.fitting = changes.stream().map(change -> change.to().name()).toList();
        this.reason = reason;
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
    boolean isAlso(NoteName given) {
        return fitting.contains(given);
    }

    @Override
    Verdict accept(NoteName given) {
        return verdict(Grade.RIGHT, "Yes: " + Say.note(given) + ". " + reason);
    }

    @Override
    Verdict acceptAlso(NoteName given) {
        return verdict(
                Grade.REMARK,
                "Yes, " + Say.note(given) + " fits too. " + Say.note(wanted()) + " is nearer to the tune.");
    }

    @Override
    Optional<NoteName> bySound() {
        return Optional.of(wanted().respelled());
    }

    @Override
    boolean soundsRight(NoteName given) {
        return given.soundsLike(wanted());
    }

    @Override
    Verdict otherwise(NoteName given) {
        return soundsRight(given)
                ? verdict(
                        Grade.NEARLY,
                        Misconception.SPELLED_BY_SOUND,
                        "That is the right key on the piano; over this chord it has another letter.")
                : verdict(Grade.WRONG, Say.note(given) + " is not near, or it does not fit. " + way);
    }
}
