package monochord.shell.verb;

import monochord.shell.answer.Answer;
import monochord.shell.answer.course.LessonsAnswer;
import monochord.shell.sitting.Sitting;

/** Lists the lessons. */
final class LessonsVerb implements Verb {
    @Override
    public Usage usage() {
        return Usage.of("lessons", Usage.Topic.LEARNING, "lessons", "list the lessons")
                .withSmallWords();
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        return new LessonsAnswer(sitting.course().library().entries());
    }
}
