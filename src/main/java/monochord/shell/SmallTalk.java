package monochord.shell;

import java.util.Optional;
import java.util.Set;
import monochord.shell.line.LineMode;
import monochord.shell.sentence.Everyday;
import monochord.shell.sentence.Sentence;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;
import monochord.view.course.AskAnswer;

/** Answers what people say that is neither music nor a verb, {@link Everyday}: with the next step in the mode of the line. */
final class SmallTalk {
    private static final Phrase WAYS =
            Phrase.of("Type what you think, or: hint helps a step, tell shows the answer, skip leaves it.");
    private static final Phrase FURTHER =
            Phrase.of("hint helps a step further, tell shows the answer, skip leaves it.");
    private static final Phrase FIRST = Phrase.sentence("Type what you think; Enter passes it.");
    private static final Phrase NO_TALK = Phrase.sentence("Questions in words are beyond me.");

    private final Verbs verbs;
    private final Sitting sitting;

    SmallTalk(Verbs verbs, Sitting sitting) {
        this.verbs = verbs;
        this.sitting = sitting;
    }

    /** None if nothing of the kind was said, or nobody converses here. */
    Optional<Answer> meet(String line) {
        return sitting.isSeated() ? Everyday.in(line).map(this::answer) : Optional.empty();
    }

    /** The same for a line that begins with a verb and is none: {@code help me}, {@code show me the answer}. */
    Optional<Answer> meetVerb(String line, String word) {
        return sitting.isSeated()
                        && !line.equalsIgnoreCase(word)
                        && Everyday.in(line)
                                .filter(Set.of(Everyday.LOST, Everyday.GIVES_UP, Everyday.HEARS)::contains)
                                .isPresent()
                ? meet(line)
                : Optional.empty();
    }

    /** What Enter does, for whoever says in words that they would have the next thing. */
    Optional<Answer> goOn(String line) {
        return sitting.isSeated()
                ? Everyday.in(line)
                        .filter(Everyday.NEXT::equals)
                        .map(next -> sitting.teaching().goOn())
                : Optional.empty();
    }

    private Answer answer(Everyday meaning) {
        if (meaning == Everyday.LEAVES || meaning == Everyday.HEARS) {
            return run(meaning == Everyday.LEAVES ? "quit" : sitting.question().isByEar() ? "hear" : "play");
        }
        return sitting.question().isOpen() ? atQuestion(meaning) : elsewhere(meaning);
    }

    private Answer atQuestion(Everyday meaning) {
        boolean first = sitting.mode() == LineMode.FIRST_QUESTION;
        return switch (meaning) {
            case NEXT -> sitting.teaching().goOn();
            case GIVES_UP -> run("tell");
            case LOST -> first ? sitting.teaching().goOn() : Answers.of(run("hint"), quietly(FURTHER));
            default -> Answers.of(new AskAnswer(sitting.question().question()), quietly(first ? FIRST : WAYS));
        };
    }

    private Answer elsewhere(Everyday meaning) {
        LineMode mode = sitting.mode();
        if (meaning == Everyday.NEXT || meaning == Everyday.AGREES && mode != LineMode.NAMES) {
            return sitting.teaching().goOn();
        }
        Phrase where = mode.advice().isEmpty() ? mode.row() : mode.advice();
        return Statement.of(meaning == Everyday.TALKS ? NO_TALK.then(where) : where);
    }

    private static Answer quietly(Phrase advice) {
        return Statement.of(advice.styled(Style.QUIET));
    }

    private Answer run(String verb) {
        return verbs.find(verb).orElseThrow().run(Sentence.parse("", Set.of(), Set.of()), sitting);
    }
}
