package monochord.shell.verb.keeping;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
import monochord.view.Statement;

/** Lists what is settled for good, and changes it. */
final class SettingsVerb implements Verb {
    private static final String EXAMPLE = "settings tempo 96";

    private final Function<String, Optional<Verb>> verbs;

    SettingsVerb(Function<String, Optional<Verb>> verbs) {
        this.verbs = verbs;
    }

    @Override
    public String word() {
        return "settings";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.KEEPING,
                        Phrase.of("list what is settled for good, or change one of them"))
                .form(may(takes(List.of(Value.TEXT), Setting.names())))
                .examples("settings", EXAMPLE, "settings notes german");
    }

    @Override
    public boolean isAside() {
        return true;
    }

    @Override
    public boolean readsMusic() {
        return false;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        String said = sentence.body().text().strip();
        if (said.isEmpty()) {
            return new SettingsAnswer(sitting.settings());
        }
        Setting setting = Arrays.stream(Setting.values())
                .filter(each -> said.toLowerCase(Locale.ROOT).startsWith(each.word()))
                .findFirst()
                .orElseThrow(() -> unknown(said));
        String value = said.substring(setting.word().length()).strip();
        if (value.isEmpty()) {
            throw Unreadable.because(said, said.length(), "a setting", "its new value is missing", setting.example());
        }
        return setting.verb().isEmpty() ? put(setting, value, sitting) : through(setting, value, sitting);
    }

    /** A setting that has a verb of its own is changed by it. */
    private Answer through(Setting setting, String value, Sitting sitting) {
        Verb verb = verbs.apply(setting.verb()).orElseThrow();
        return new NotebookRemark(verb.run(Sentence.parse(setting.sentence(value), verb.usage()), sitting));
    }

    private static Answer put(Setting setting, String value, Sitting sitting) {
        if (!value.matches("0|[1-9][0-9]{0,2}")) {
            throw Unreadable.because(value, 0, "a number of seconds", "it is 0 to 999", setting.example());
        }
        try {
            sitting.settings().put(setting.key(), value);
            return new NotebookRemark(Statement.of(Phrase.sentence("Settled, from the next sitting on.")));
        } catch (IOException unkept) {
            return new NotebookRemark(Statement.failed(sitting.outside().told(unkept)));
        }
    }

    private static Unreadable unknown(String said) {
        String word = said.split("\\s")[0];
        Clause advice = Nearest.to(word, List.of(Setting.names()))
                .map(near -> Clause.of("did you mean {0}", near))
                .orElseGet(() -> Clause.of("settings alone lists them"));
        return Unreadable.because(word, 0, "a setting", advice, EXAMPLE);
    }
}
