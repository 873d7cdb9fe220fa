package monochord.shell;

import java.util.Optional;
import java.util.Set;
import monochord.shell.sentence.Everyday;
import monochord.shell.sentence.Sentence;
import monochord.shell.sitting.Opening;
import monochord.shell.sitting.Sitting;
import monochord.shell.sitting.Teaching;
import monochord.shell.verb.Verbs;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Saying;
import monochord.view.course.AskAnswer;

/** Meets whoever types {@linkplain Everyday everyday words}: with the next step from where they stand. */
final class Host {
    private static final String WAYS =
            "Type what you think, or: hint helps a step, tell shows the answer, skip leaves it.";
    private static final String FURTHER = "hint helps a step further, tell shows the answer, skip leaves it.";
    private static final String FIRST = "Type what you think; Enter passes it.";
    private static final String NAMES = "If you call the white keys A B C D E F G, press Enter."
            + " If one of them is H to you, type german; if they are La Si Do, type latin.";
    private static final String ROOM = "Enter goes on, back goes back, skip ends it.";
    private static final String LESSON =
            "A lesson is open: Enter goes on with it. play hears the last example again, help lists what else there is.";
    private static final String IDLE =
            "Type music, such as Am7, F C G or D major, and see what it is; play F C G sounds it."
                    + " lessons lists what can be learnt, help all the rest.";
    private static final String NO_TALK = "Questions in words are beyond me.";

    private final Verbs verbs;
    private final Sitting sitting;

    Host(Verbs verbs, Sitting sitting) {
        this.verbs = verbs;
        this.sitting = sitting;
    }

    /** None if nothing of the kind was said, or nobody converses here. */
    Optional<Answer> meet(String line) {
        return sitting.isSeated() ? Everyday.in(line).map(this::answer) : Optional.empty();
    }

    /** The same for a line that begins with a verb and is none: {@code help me}, {@code show me the answer}. */
    Optional<Answer> meetVerb(String line, String word) {
        boolean whole = !line.equalsIgnoreCase(word);
        return whole
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
            return run(meaning == Everyday.LEAVES ? "quit" : sitting.desk().isByEar() ? "hear" : "play");
        }
        return sitting.desk().isOpen() ? atQuestion(meaning) : elsewhere(meaning);
    }

    private Answer atQuestion(Everyday meaning) {
        Teaching teaching = sitting.teaching();
        boolean first = teaching.welcome().isPresent();
        return switch (meaning) {
            case NEXT -> run("skip");
            case GIVES_UP -> run("tell");
            case LOST -> first ? run("skip") : Answers.of(run("hint"), quietly(FURTHER));
            default -> Answers.of(new AskAnswer(sitting.desk().question()), quietly(first ? FIRST : WAYS));
        };
    }

    private Answer elsewhere(Everyday meaning) {
        Teaching teaching = sitting.teaching();
        boolean names = teaching.welcome().filter(Opening::asksForNames).isPresent();
        if (meaning == Everyday.NEXT || meaning == Everyday.AGREES && !names) {
            return teaching.goOn();
        }
        String where = names
                ? NAMES
                : teaching.presentation().isPresent() ? ROOM : teaching.course().isOpen() ? LESSON : IDLE;
        return Saying.of(meaning == Everyday.TALKS ? NO_TALK + " " + where : where);
    }

    private static Answer quietly(String advice) {
        return Saying.of(StyledText.of(advice, Style.QUIET));
    }

    private Answer run(String verb) {
        return verbs.find(verb).orElseThrow().run(Sentence.parse("", Set.of(), Set.of()), sitting);
    }
}
