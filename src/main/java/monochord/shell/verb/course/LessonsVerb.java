package monochord.shell.verb.course;

import monochord.shell.answer.Answer;
import monochord.shell.answer.course.LessonsAnswer;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
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
