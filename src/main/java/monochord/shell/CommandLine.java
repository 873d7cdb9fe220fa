package monochord.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.text.Phrase;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Refusal;

/** Runs the program on its arguments: one verb, many sentences from standard input, or the prompt. */
final class CommandLine {
    private static final String MANY = "-";
    private static final String OF = "of";
    private static final String NAMES = "--notes";

    private final Surroundings around;
    private final Verbs verbs = new Verbs();
    private final Sitting sitting;
    private final LineReading reading;
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
    }

    /** @return the exit status */
    int run(String... arguments) {
        List<String> words = new ArrayList<>();
        boolean help = false;
        for (int i = 0; i < arguments.length; i++) {
            String argument = arguments[i];
            switch (argument) {
                case NAMES -> {
                    Optional<Answer> unknown = names(++i < arguments.length ? arguments[i] : "");
                    if (unknown.isPresent()) {
                        return say(unknown.get());
                    }
                }
                case "--json" -> json = true;
                case "--plain" -> look = look.asPlain();
                case "--ascii" -> look = look.inAscii();
                case "--help", "-h" -> help = true;
                default -> words.add(argument);
            }
        }
        try {
            return help ? help(words) : words.isEmpty() ? converse() : once(words);
        } finally {
            sitting.cells().close();
        }
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

    private int help(List<String> words) {
        return say(reading.read("help " + (words.isEmpty() ? "" : words.get(0))));
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
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null && !sitting.hasEnded(); line = lines.readLine()) {
                String said = line.isEmpty() || after.isEmpty() ? line + after : line + " " + after;
                String text = before.isEmpty() ? said : before + " " + said;
                worst = Math.max(
                        worst, say(verb.isPresent() ? reading.runSafely(verb.get(), text) : reading.read(text)));
                if (!lines.ready()) {
                    around.out().flush();
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
            Json object = new Json();
            answer.json(object);
            object.writeTo(around.out());
        } else {
            boolean wrong = answer.status() >= Answer.UNREADABLE;
            Look here = look.naming(sitting.naming());
            (wrong ? around.err() : around.out()).append(Ansi.of(answer.text(here), here));
        }
        return answer.status();
    }
}
