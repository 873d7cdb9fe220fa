package monochord.shell.manual;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Refusal;

/** The options of the command line that belong to no verb. */
public enum ProgramOption {
    JSON("--json", Phrase.of("answer for programs: one object a line")),
    PLAIN("--plain", Phrase.of("answer in words alone, one fact a line")),
    ASCII("--ascii", Phrase.of("answer in ASCII alone")),
    NOTES("--notes", Phrase.of("by which names notes are typed and told"), namings()),
    HELP("--help", Phrase.of("tell what can be typed; behind a verb, about that verb")),
    VERSION("--version", Phrase.of("tell which version this is")),
    COMPLETION("--completion", Phrase.of("print what a shell needs to complete a sentence"), ShellCompletion.names()),
    MANUAL("--manual", Phrase.of("print the manual page"));

    private final String word;
    private final Phrase purpose;
    private final List<String> values;

    ProgramOption(String word, Phrase purpose) {
        this(word, purpose, List.of());
    }

    ProgramOption(String word, Phrase purpose, List<String> values) {
        this.word = word;
        this.purpose = purpose;
        this.values = values;
    }

    private static List<String> namings() {
        return Arrays.stream(NoteNaming.values())
                .map(naming -> naming.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** The option of that word, if there is one; {@code -h} is short for help. */
    public static Optional<ProgramOption> of(String written) {
        String word = written.equals("-h") ? HELP.word : written;
        return Arrays.stream(values())
                .filter(option -> option.word.equals(word))
                .findFirst();
    }

    /** Whether it goes with a verb; the others stand alone. */
    public boolean isWithAVerb() {
        return compareTo(VERSION) < 0;
    }

    /** As it is typed, with its hyphens. */
    public String word() {
        return word;
    }

    /** What it does, in one line without a full stop. */
    public Phrase purpose() {
        return purpose;
    }

    /** What can stand behind it; nothing where it stands alone. */
    public List<String> choices() {
        return values;
    }

    /** What is said to an option that is none. */
    public static Answer unknown(String written) {
        List<String> words = Arrays.stream(values()).map(ProgramOption::word).toList();
        Phrase advice = Nearest.to(written, words)
                .map(near -> Phrase.of("Did you mean {0}?", Phrase.verb(near)))
                .orElse(Phrase.of("{0} lists them.", Phrase.verb("--help")));
        return new Refusal(Phrase.of("There is no option {0}.", Phrase.typed(written)), 1, advice);
    }

    /** As a form writes it: {@code --notes english, german or latin}. */
    public Phrase form() {
        return values.isEmpty()
                ? Phrase.verb(word)
                : Phrase.verb(word)
                        .then(Phrase.either(values.stream().map(Phrase::typed).toList()));
    }
}
