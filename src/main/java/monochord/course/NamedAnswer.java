package monochord.course;

import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Verdict;
import monochord.text.naming.AsTyped;
import monochord.theory.note.NoteNaming;

/** An answer by the note names a learner goes by. */
public final class NamedAnswer {
    private NamedAnswer() {}

    /** The answer as typed and in English; where intervals and steps are asked for, H is a half step and A4 no note. */
    public static AsTyped answer(String text, Question question, NoteNaming naming) {
        return AsTyped.of(text, question.form() == Form.INTERVAL ? NoteNaming.ENGLISH : naming);
    }

    /** The verdict on it; a refusal quotes what was typed. */
    public static Verdict judge(AsTyped answer, Question question) {
        return question.judge(answer.english()).asTyped(answer);
    }
}
