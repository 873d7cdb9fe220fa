package monochord.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import monochord.shell.manual.ManualPage;
import monochord.shell.manual.ProgramHelp;
import monochord.shell.manual.ProgramOption;
import monochord.shell.manual.ShellCompletion;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.shell.verb.keeping.Version;
import monochord.text.Phrase;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Look;
import monochord.view.Refusal;
import monochord.view.Statement;

/** Runs the program on its arguments: one verb, many sentences from standard input, or the prompt. */
final class CommandLine {
    private static final String MANY = "-";
    private static final String OF = "of";
    /** The version of what JSON promises; it grows only when a field is renamed or dropped, never when one is added. */
    private static final int SCHEMA_VERSION = 1;
    /** How many answers may wait to be seen, and how soon it is noticed that nobody reads them. */
    private static final int UNSEEN = 100;

    private final Surroundings around;
    private final Verbs verbs = new Verbs();
    private final Sitting sitting;
    private final LineReading reading;
    private ToIntFunction<List<String>> task = words -> words.isEmpty() ? converse() : once(words);
    private NoteNaming naming;
    private boolean json;
    private Look look;

    CommandLine(Surroundings around) {
        this.around = around;
        this.sitting = around.sitting();
        this.reading = new LineReading(verbs, sitting);
        this.look = around.look();
        sitting.stage()
                .ear()
                .tells(line -> around.err().println(line.in(look.reader()).plain()));
        if (around.watching()) {
            sitting.outside()
                    .watch(how -> around.err().println(how.in(look.reader()).plain()));
        }
    }

    /** @return the exit status */
    int run(String... arguments) {
        Deque<String> rest = new ArrayDeque<>(List.of(arguments));
        List<String> words = new ArrayList<>();
        while (!rest.isEmpty()) {
            String argument = rest.pop();
            ProgramOption.of(argument)
                    .ifPresentOrElse(
                            option -> take(option, option.choices().isEmpty() || rest.isEmpty() ? "" : rest.pop()),
                            () -> words.add(argument));
        }
        try {
            return task.applyAsInt(words);
        } finally {
            sitting.cells().close();
        }
    }

    /** Does as an option says, or makes it the task. */
    private void take(ProgramOption option, String value) {
        switch (option) {
            case NOTES -> names(value).ifPresent(unknown -> task = words -> say(unknown));
            case JSON -> json = true;
            case PLAIN -> look = look.asPlain();
            case ASCII -> look = look.inAscii();
            case HELP -> task = this::help;
            case VERSION -> task = words -> say(Statement.of(Version.told()));
            case MANUAL -> task = words -> print(ManualPage.of(verbs));
            case COMPLETION -> task = words -> completion(value);
        }
    }

    private int print(String text) {
        around.out().append(text);
        return Answer.DONE;
    }

    private int completion(String shell) {
        return ShellCompletion.of(shell)
                .map(found -> print(found.script(verbs)))
                .orElseGet(() -> say(new Refusal(
                        Phrase.of("\"{0}\" is no shell I know.", Phrase.typed(shell)),
                        1,
                        Phrase.of("Write {0}.", ProgramOption.COMPLETION.form()))));
    }

    /** By what names notes go in this run: said here, never taken from the settings of whoever converses. */
    private Optional<Answer> names(String said) {
        naming = NoteNaming.of(said).orElse(null);
        if (naming == null) {
            return Optional.of(new Refusal(
                    Phrase.of("\"{0}\" are no note names I know.", Phrase.typed(said)),
                    1,
                    Phrase.of("Write {0}, or german or latin.", Phrase.verb("--notes english"))));
        }
        sitting.goBy(naming);
        return Optional.empty();
    }

    /** About one verb; else about all of them, and the options that go with each. */
    private int help(List<String> words) {
        Answer about = reading.read("help " + (words.isEmpty() ? "" : words.get(0)));
        return say(words.isEmpty() ? Answers.of(about, ProgramHelp.ANSWER) : about);
    }

    /** A person converses; JSON is for programs, to which notes go by their English names. */
    private int converse() {
        if (!json && naming == null) {
            sitting.startInteractive();
        } else if (!json) {
            sitting.startInteractive(naming);
        }
        return around.typing() && around.watching()
                ? new Prompt(around, verbs, sitting, reading, look).run()
                : new PipedConversation(around, sitting, reading, this::say).run();
    }

    private int once(List<String> words) {
        if (words.get(0).startsWith("--")) {
            return say(ProgramOption.unknown(words.get(0)));
        }
        Optional<Verb> verb = verbs.find(words.get(0));
        List<String> sentence = verb.isPresent() ? words.subList(1, words.size()) : words;
        int place = !sentence.isEmpty() && sentence.get(0).equals(OF) ? 1 : 0;
        if (sentence.indexOf(MANY) == place && sentence.lastIndexOf(MANY) == place) {
            String before = String.join(" ", sentence.subList(0, place));
            return many(verb, before, String.join(" ", sentence.subList(place + 1, sentence.size())));
        }
        String text = String.join(" ", sentence);
        int status = say(verb.isPresent() ? reading.runSafely(verb.get(), text) : reading.read(text));
        around.out().flush();
        sitting.stage().ear().listenToTheEnd();
        return status;
    }

    /**
     * Answers each line of standard input in place of the {@code -} that begins a sentence, or stands behind {@code of}, in
     * order. A hyphen farther on parts chords: {@code C - F - G}.
     */
    private int many(Optional<Verb> verb, String before, String after) {
        int worst = Answer.DONE;
        int unseen = 0;
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null && !sitting.hasEnded(); line = lines.readLine()) {
                String said = line.isEmpty() || after.isEmpty() ? line + after : line + " " + after;
                String text = before.isEmpty() ? said : before + " " + said;
                worst = Math.max(
                        worst, say(verb.isPresent() ? reading.runSafely(verb.get(), text) : reading.read(text)));
                if ((!lines.ready() || ++unseen % UNSEEN == 0) && around.out().checkError()) {
                    return worst;
                }
                sitting.stage().ear().listenToTheEnd();
            }
            return worst;
        } catch (IOException unreadable) {
            around.err()
                    .println(Phrase.of(
                            "Standard input cannot be read: {0}",
                            Phrase.typed(String.valueOf(unreadable.getMessage()))));
            return Answer.FAILED;
        }
    }

    /** Results go to standard output, what went wrong to standard error; as JSON everything is a result. */
    private int say(Answer answer) {
        if (json) {
            answer.jsonLines(
                    object -> object.put("schemaVersion", SCHEMA_VERSION).writeTo(around.out()));
        } else {
            boolean wrong = answer.status() >= Answer.UNREADABLE;
            Look here = look.naming(sitting.naming());
            (wrong ? around.err() : around.out()).append(Ansi.of(answer.text(here), here));
        }
        return answer.status();
    }
}
