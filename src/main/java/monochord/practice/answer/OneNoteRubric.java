package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import monochord.practice.reading.NoteReading;
import monochord.theory.note.NoteName;

/** Judges a single note, whatever it is asked for. */
abstract class OneNoteRubric extends Rubric<NoteName> {
    OneNoteRubric(NoteName wanted, Supplier<List<ModelledError<NoteName>>> errors) {
        super(wanted, errors);
    }

    @Override
    final String what() {
        return "a note";
    }

    @Override
    final String example() {
        return example("F#", "Eb");
    }

    @Override
    final NoteName read(String plain) {
        return NoteReading.one(plain, example());
    }

    @Override
    final String write(NoteName answer) {
        return answer.toString();
    }

    @Override
    final boolean same(NoteName one, NoteName other) {
        return one.equals(other);
    }

    @Override
    final boolean soundsRight(NoteName given) {
        return given.soundsLike(wanted());
    }
}
