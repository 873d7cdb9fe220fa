package monochord.shell.verb.course;

import java.util.Locale;
import monochord.practice.Question;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Desk;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Refusal;
import monochord.view.Saying;

/** The four verbs for the question on the desk. */
enum HelpOnQuestion implements Verb {
    HINT {
        @Override
        Answer help(Sitting sitting) {
            Desk desk = sitting.desk();
            return desk.isOpen() ? Saying.of(desk.hint()) : notNow(sitting);
        }
    },
    TELL {
        @Override
        Answer help(Sitting sitting) {
            if (!sitting.desk().isOpen()) {
                return notNow(sitting);
            }
            Question question = sitting.desk().question();
            sitting.teaching().leaveQuestion();
            return Answers.of(
                    Saying.of(question.derivation()), sitting.teaching().goOn());
        }
    },
    WHY {
        @Override
        Answer help(Sitting sitting) {
            Desk desk = sitting.desk();
            if (desk.lastVerdict() == null) {
                return desk.isOpen()
                        ? new Refusal(
                                Phrase.of("Nothing has been judged yet."),
                                1,
                                Phrase.of("why explains the verdict on an answer; hint helps to one."))
                        : notNow(sitting);
            }
            return Saying.of(desk.lastQuestion().explain(desk.lastVerdict()));
        }
    },
    SKIP {
        @Override
        Answer help(Sitting sitting) {
            if (sitting.teaching().presentation().isPresent()) {
                return sitting.teaching().endPresentation();
            }
            if (sitting.teaching().isDrilling()) {
                return sitting.teaching().endDrill();
            }
            if (!sitting.desk().isOpen() && !sitting.course().isOpen()) {
                return notNow(sitting);
            }
            if (sitting.desk().isOpen()) {
                sitting.teaching().leaveQuestion();
            } else {
                sitting.course().passCodeBy();
            }
            return sitting.teaching().goOn();
        }
    };

    private static Answer notNow(Sitting sitting) {
        Phrase next = Phrase.of(
                sitting.course().isOpen() ? "Enter goes on with the lesson." : "ask puts one, as in ask interval.");
        return new Refusal(Phrase.of("No question is open just now."), 1, next);
    }

    abstract Answer help(Sitting sitting);

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    @Override
    public Usage usage() {
        return Usage.of(
                word(),
                Usage.Topic.LEARNING,
                Phrase.of(
                        switch (this) {
                            case HINT -> "be helped one step further with the open question";
                            case TELL -> "be told the answer to the open question and the way to it";
                            case WHY -> "hear the reason for the last verdict";
                            case SKIP -> "leave the open question, this part of the lesson, or the run of questions";
                        }));
    }

    @Override
    public boolean isAside() {
        return true;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        return help(sitting);
    }
}
