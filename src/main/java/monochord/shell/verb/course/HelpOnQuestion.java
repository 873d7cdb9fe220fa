package monochord.shell.verb.course;

import java.util.Locale;
import java.util.Optional;
import monochord.course.OpenQuestion;
import monochord.shell.line.LineMode;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.HomeworkTeaching;
import monochord.shell.sitting.Sitting;
import monochord.shell.sitting.Teaching;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Refusal;
import monochord.view.Statement;

/** The verbs beside Enter: what they do hangs on the mode of the line. */
enum HelpOnQuestion implements Verb {
    HINT {
        @Override
        Answer help(Sitting sitting) {
            return Optional.of(sitting.teaching())
                    .filter(teaching -> sitting.mode() != LineMode.CONSENT)
                    .flatMap(Teaching::hint)
                    .orElseGet(() -> nothing(Phrase.sentence("There is nothing to help with just now."), sitting));
        }
    },
    TELL {
        @Override
        Answer help(Sitting sitting) {
            return sitting.question().isOpen() ? sitting.teaching().tell() : noQuestion(sitting);
        }
    },
    WHY {
        @Override
        Answer help(Sitting sitting) {
            OpenQuestion question = sitting.question();
            if (sitting.teaching()
                    .homework()
                    .filter(HomeworkTeaching::isJudgedLater)
                    .isPresent()) {
                return new Refusal(
                        Phrase.sentence("The verdicts come with the marking."),
                        1,
                        sitting.mode().row());
            }
            if (question.lastVerdict() != null) {
                return Statement.of(question.lastQuestion().explain(question.lastVerdict()));
            }
            return question.isOpen()
                    ? new Refusal(
                            Phrase.sentence("Nothing has been judged yet."),
                            1,
                            Phrase.of("why explains the verdict on an answer; hint helps to one."))
                    : noQuestion(sitting);
        }
    },
    SKIP {
        @Override
        Answer help(Sitting sitting) {
            return sitting.teaching()
                    .skip()
                    .orElseGet(() -> nothing(Phrase.sentence("There is nothing to skip just now."), sitting));
        }
    },
    BACK {
        @Override
        Answer help(Sitting sitting) {
            return Optional.of(sitting.teaching())
                    .filter(teaching -> sitting.mode() != LineMode.CONSENT)
                    .flatMap(Teaching::back)
                    .orElseGet(() -> nothing(Phrase.sentence("There is nothing to go back to just now."), sitting));
        }
    };

    private static Answer noQuestion(Sitting sitting) {
        return new Refusal(
                Phrase.sentence("No question is open just now."),
                1,
                sitting.mode() == LineMode.LESSON_PAGE
                        ? LineMode.LESSON_PAGE.row()
                        : Phrase.of("ask puts one, as in ask interval."));
    }

    private static Answer nothing(Phrase said, Sitting sitting) {
        return new Refusal(said, 1, sitting.mode().row());
    }

    abstract Answer help(Sitting sitting);

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    @Override
    public Usage usage() {
        return Usage.of(word(), Usage.VerbTopic.LEARNING, purpose());
    }

    private Phrase purpose() {
        return switch (this) {
            case HINT -> Phrase.of("be helped one step further with the open question");
            case TELL -> Phrase.of("be told the answer to the open question and the way to it");
            case WHY -> Phrase.of("hear the reason for the last verdict");
            case SKIP -> Phrase.of("leave the open question, the page of a lesson, or the run of questions");
            case BACK -> Phrase.of("go back a page in a lesson, or a step before a class");
        };
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
