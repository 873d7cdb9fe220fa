package monochord.shell;

import java.util.Optional;
import java.util.Set;
import monochord.shell.sentence.Everyday;
import monochord.shell.sentence.Sentence;
import monochord.shell.sitting.Opening;
import monochord.shell.sitting.Sitting;
import monochord.shell.sitting.Teaching;
import monochord.shell.verb.Verbs;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;
import monochord.view.course.AskAnswer;

/** Meets whoever types {@linkplain Everyday everyday words}: with the next step from where they stand. */
final class Host {
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
            case LOST ->
                first
                        ? run("skip")
                        : Answers.of(
                                run("hint"),
                                quietly(Phrase.of(
                                        "hint helps a step further, tell shows the answer, skip leaves it.")));
            default ->
                Answers.of(
                        new AskAnswer(sitting.desk().question()),
                        quietly(
                                Phrase.of(
                                        first
                                                ? "Type what you think; Enter passes it."
                                                : "Type what you think, or: hint helps a step, tell shows the answer, skip leaves it.")));
        };
    }

    private Answer elsewhere(Everyday meaning) {
        Teaching teaching = sitting.teaching();
        boolean names = teaching.welcome().filter(Opening::asksForNames).isPresent();
        if (meaning == Everyday.NEXT || meaning == Everyday.AGREES && !names) {
            return teaching.goOn();
        }
        Phrase where = names ? whiteKeys() : here(teaching);
        return Statement.of(
                meaning == Everyday.TALKS
                        ? Phrase.sentence("Questions in words are beyond me.").then(where)
                        : where);
    }

    private static Phrase whiteKeys() {
        return Phrase.sentence("If you call the white keys {0}, press Enter.", Phrase.typed("A B C D E F G"))
                .then(Phrase.sentence(
                        "If one of them is {0} to you, type german; if they are {1}, type latin.",
                        Phrase.typed("H"), Phrase.typed("La Si Do")));
    }

    /** What can be done where nothing is asked. */
    private static Phrase here(Teaching teaching) {
        if (teaching.presentation().isPresent()) {
            return Phrase.of("Enter goes on, back goes back, skip ends it.");
        } else if (teaching.course().isOpen()) {
            return Phrase.sentence("A lesson is open: Enter goes on with it.")
                    .then(Phrase.of("play hears the last example again, help lists what else there is."));
        }
        return Phrase.sentence(
                        "Type music, such as {0}, {1} or {2}, and see what it is; play {1} sounds it.",
                        Phrase.toType("Am7"), Phrase.toType("F C G"), Phrase.toType("D major"))
                .then(Phrase.of("lessons lists what can be learnt, help all the rest."));
    }

    private static Answer quietly(Phrase advice) {
        return Statement.of(advice.styled(Style.QUIET));
    }

    private Answer run(String verb) {
        return verbs.find(verb).orElseThrow().run(Sentence.parse("", Set.of(), Set.of()), sitting);
    }
}
