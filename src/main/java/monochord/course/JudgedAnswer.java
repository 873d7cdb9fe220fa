package monochord.course;

import monochord.practice.AnswerForm;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Verdict;
import monochord.text.naming.AsTyped;
import monochord.theory.note.NoteNaming;

/**
 * An answer to a question, by the note names a learner goes by, and the verdict on it.
 *
 * @param text as typed and in English
 */
public record JudgedAnswer(Question question, AsTyped text, Verdict verdict) {
    /** Judges what was typed. Where intervals and steps are asked for, H is a half step and A4 no note. */
    public static JudgedAnswer of(String typed, Question question, NoteNaming naming) {
        AsTyped text = AsTyped.of(typed, question.form() == AnswerForm.INTERVAL ? NoteNaming.ENGLISH : naming);
        return new JudgedAnswer(question, text, question.judge(text.english()).asTyped(text));
    }

    /** The same with another verdict. */
    public JudgedAnswer saying(Verdict other) {
        return new JudgedAnswer(question, text, other);
    }

    /**
     * The same without the answer in it: where to listen once more, for a first wrong answer by ear.
     *
     * @param sounds whether it is played once more
     */
    public JudgedAnswer listeningAgain(boolean sounds) {
        return saying(verdict.saying(ListenAgain.to(question, text.english(), sounds)));
    }

    /** Whether it could be read as an answer at all. */
    public boolean isRead() {
        return verdict.grade() != Grade.UNREADABLE;
    }
}
