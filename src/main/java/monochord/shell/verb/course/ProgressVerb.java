package monochord.shell.verb.course;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;

import monochord.practice.mastery.Knowledge;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.storage.LearnerRecord;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.course.ProgressAnswer;
import monochord.view.course.ProgressTable;

/** Shows what is known in which key, and what is next. */
final class ProgressVerb implements Verb {
    @Override
    public String word() {
        return "progress";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.LEARNING,
                        Phrase.of("see what is known in which key, and what comes next"))
                .form(may(option("csv")))
                .examples("progress", "progress --csv");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (!sentence.body().isEmpty()) {
            throw Unreadable.because(
                    sentence.body().text(), 0, "wanted here", "progress shows all skills in all keys", "progress");
        }
        LearnerRecord study = sitting.study();
        Knowledge knowledge = study.knowledge();
        Answer answer = sentence.has("csv")
                ? new ProgressTable(knowledge, study.now())
                : new ProgressAnswer(
                        knowledge, study.now(), sitting.teaching().opening().nextLesson());
        return study.withNotices(answer);
    }
}
