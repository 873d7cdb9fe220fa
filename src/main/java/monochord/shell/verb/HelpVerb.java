package monochord.shell.verb;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.course.SkillsVerb;
import monochord.sound.HearingCaution;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/** Says what can be typed. */
public final class HelpVerb implements Verb {
    private static final int WORD = 11;
    private static final Set<String> ASKING = Set.of("ask", "practise");

    private final Verbs verbs;

    HelpVerb(Verbs verbs) {
        this.verbs = verbs;
    }

    @Override
    public String word() {
        return "help";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.LEAVING,
                        Phrase.of("list the verbs, tell about one, or how music is typed"))
                .form(may(takes(
                        List.of(Value.VERB, Value.TOPIC),
                        "enter",
                        "music",
                        "song-file",
                        "java",
                        "ears",
                        "hands",
                        "band")))
                .examples("help play", "help music");
    }

    @Override
    public boolean isAside() {
        return true;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        String about = sentence.body().text().toLowerCase(Locale.ROOT);
        return switch (about) {
            case "" -> overview();
            case "enter" -> new ModesAnswer(sitting.mode());
            case "music", "notation" -> HelpPages.music();
            case "song-file", "song file" -> HelpPages.songFile();
            case "ears", "hearing" -> new Statement(HearingCaution.EARS, Answer.DONE);
            case "java", "code" -> HelpPages.java();
            case "hands" -> HelpPages.hands();
            case "band" -> HelpPages.band();
            default -> about(about, sitting);
        };
    }

    private Answer about(String word, Sitting sitting) {
        Optional<Verb> verb = verbs.find(word);
        if (ASKING.contains(word)) {
            return Answers.of(of(verb.orElseThrow().usage()), SkillsVerb.all(sitting.course()));
        }
        if (verb.isPresent()) {
            return of(verb.get().usage());
        }
        return Arrays.stream(Usage.VerbTopic.values())
                .filter(topic -> topic.toString().equals(word))
                .findFirst()
                .<Answer>map(this::of)
                .orElseThrow(() -> unknown(word));
    }

    private Unreadable unknown(String word) {
        Clause advice = Nearest.to(word, verbs.words())
                .map(near -> Clause.of("did you mean {0}", near))
                .orElseGet(() -> Clause.of("help alone lists them"));
        return Unreadable.because(word, 0, "a verb", advice, "help play");
    }

    /** Short enough for one screen: the verbs of each topic in a line. */
    private Statement overview() {
        List<Phrase> lines = new ArrayList<>();
        for (Usage.VerbTopic topic : Usage.VerbTopic.values()) {
            List<Phrase> words = usages(topic).stream()
                    .map(usage -> Phrase.verb(usage.word()))
                    .toList();
            lines.add(Phrase.of("{0} {1}", padded(topic.toString()), Phrase.row(words)));
        }
        lines.add(Phrase.NOTHING);
        lines.add(Phrase.sentence(
                        "Music needs no verb: type {0}, or IV I V bVI, or {1}.",
                        Phrase.toType("F C G Ab"), Phrase.toType("D major"))
                .then(Phrase.sentence("Enter goes on.")));
        lines.add(quiet(Phrase.of("help VERB tells about one, help exploring about these, and so on.")));
        lines.add(quiet(Phrase.of("help enter: what Enter, skip, back, hint and quit do where you are.")
                .then(Phrase.of("help music: how it is typed."))));
        lines.add(quiet(Phrase.of("help song-file: how a song is written. help java: lines of code.")));
        lines.add(quiet(Phrase.of("help ears, help hands, help band: take care.")));
        return new Statement(lines, Answer.DONE);
    }

    private static Phrase quiet(Phrase line) {
        return line.styled(Style.QUIET);
    }

    private static Phrase padded(String word) {
        return Phrase.typed(word + " ".repeat(WORD - word.length()));
    }

    private List<Usage> usages(Usage.VerbTopic topic) {
        return verbs.all().stream()
                .map(Verb::usage)
                .filter(usage -> usage.topic() == topic)
                .toList();
    }

    private Statement of(Usage.VerbTopic topic) {
        List<Phrase> lines = new ArrayList<>();
        for (Usage usage : usages(topic)) {
            String gap = " ".repeat(WORD - usage.word().length());
            lines.add(Phrase.joined(gap, List.of(Phrase.verb(usage.word()), usage.purpose())));
        }
        return new Statement(lines, Answer.DONE);
    }

    /** How one verb is used. */
    public static Statement of(Usage usage) {
        List<Phrase> lines = new ArrayList<>();
        lines.add(usage.form().styled(Style.STRONG));
        lines.add(Phrase.of("{0}.", usage.purpose()));
        usage.examples()
                .forEach(example ->
                        lines.add(Phrase.of("  {0}", Phrase.toType(example)).styled(Style.TYPED)));
        return new Statement(lines, Answer.DONE);
    }
}
