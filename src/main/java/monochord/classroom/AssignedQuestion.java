package monochord.classroom;

import java.util.Optional;
import monochord.practice.Question;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/**
 * One question of an assignment. Its words stand in the file, so that what was asked can be told from what a later version
 * would ask.
 *
 * @param item its number, from 1
 * @param skill the skill's id
 * @param subject in its canonical text; empty where it would give the answer away, and the seed alone says it
 * @param seed with which it was drawn
 * @param words as the pupil reads it
 */
public record AssignedQuestion(int item, String skill, String subject, Key key, long seed, String words) {
    /** @throws IllegalArgumentException if the number is below 1 */
    public AssignedQuestion {
        if (item < 1) {
            throw new IllegalArgumentException("questions are numbered from 1, not " + item);
        }
    }

    /** The question as it goes into an assignment; the subject is kept to oneself where it is the answer. */
    public static AssignedQuestion of(int item, Question question) {
        boolean tells =
                question.isByEar() || question.judge(question.subject()).grade().isRight();
        return new AssignedQuestion(
                item,
                question.skillId(),
                tells ? "" : question.subject(),
                question.key(),
                question.seed(),
                question.prompt().toString());
    }

    /** The question that is asked by its skill, subject, key and seed; nothing if there is none. */
    public Optional<Question> question() {
        try {
            return Skills.find(skill)
                    .map(known -> subject.isEmpty() ? known.question(key, seed) : known.question(key, subject, seed));
        } catch (Unreadable nothingToAsk) {
            return Optional.empty();
        }
    }

    /** Whether this version would ask it in the same words, whatever quotation marks and spaces an editor made of them. */
    public boolean isAskedAs(Question question) {
        return PlainWords.of(words).equals(PlainWords.of(question.prompt().toString()));
    }
}
