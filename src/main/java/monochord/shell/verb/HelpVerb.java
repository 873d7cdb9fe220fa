package monochord.shell.verb;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.sound.Care;
import monochord.text.Nearest;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Unreadable;
import monochord.view.Answer;
import monochord.view.Saying;

/** Says what can be typed. */
public final class HelpVerb implements Verb {
    private static final int WORD = 11;

    private static final String MUSIC = """
            Notes: letters with b or #, bb or x for doubles; an octave behind them, C4 is middle C.
            Chords: as bands write them, Abmaj7 G7sus4 Bb2 F/A Am7b5 Co7 C6/9 E7#9.
            Numerals: IV bVI V7/V viiø7 I64; capitals are major, small letters minor, o diminished.
            Numbers: 4 1 5 b6; a number alone is the key's own chord, 6- says minor, 1/3 has the third in the bass.
            Scales: D major, E harmonic minor, G mixolydian; without a tonic, on the tonic of the key.
            Progressions: any of these in a row. Bars between | share alike, a dot holds, % repeats the bar before.
            Small words: in KEY, at BPM, with PATCH. Options: --plain, --ascii; on a command line also --json.
            """;

    private static final List<String> JAVA = List.of(
            "What is neither a verb nor music is Java, over as many lines as it needs:",
            "  var verse = progression(\"4 1 5 b6\", \"D\")",
            "  for (var k : List.of(\"C\", \"Eb\")) show(numeral(\"bVI\", k), k)",
            "Short words, each with the key of the line where none is said:",
            "  key(\"D\")  chord(\"Bbmaj7\")  scale(\"E dorian\")  numeral(\"bVI\", \"D\")",
            "  notes(\"C Eb G\")  pitches(\"C4 Eb4\")  progression(\"F C G Ab\")",
            "  borrowed(key(\"D\"))  voice(verse)  show(verse)  play(verse, 84)",
            "Text stands in quotation marks, notes go by their English names.",
            "Behind a dollar sign a name stands in a verb:",
            "  play $verse in D",
            "Tab completes. Ctrl-C stops what runs; after ten seconds it stops by itself.",
            "A line cell-seconds=30 in settings.properties, beside your record, gives it thirty; 0 turns Java off.");

    private static final String HANDS = """
            Warm up, sit well, and take regular breaks; begin no long practice all at once. See a doctor when worried.
            So far the student sheet of NASM and PAMA. What follows is common practice, no source.
            Five minutes off every half hour; shoulders and wrists loose.
            Stop at pain, tingling or numbness; do not play through it. If it comes back, see a doctor.
            voice lays out nothing wider than an octave in one hand, unless you say reach 9 or more.
            Roll or split what does not lie well.
            """;

    private static final String BAND = """
            A changed chord is agreed with the band before anyone plays it: which bar, which bass note, whose note it meets.
            Say it aloud and mark it on the chart. Then play the two bars round it three times, and only then the song.
            Whether the tune may change is for the singer to say.
            Common practice, no source.
            """;

    private final Verbs verbs;

    HelpVerb(Verbs verbs) {
        this.verbs = verbs;
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        "help",
                        Usage.Topic.LEAVING,
                        "help [VERB, TOPIC, enter, music, java, ears, hands or band]",
                        "list the verbs, tell about one, or how music is typed",
                        "help play",
                        "help music")
                .withSmallWords();
    }

    @Override
    public boolean isAside() {
        return true;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        String about = sentence.body().text().toLowerCase(Locale.ROOT);
        return switch (about) {
            case "" -> Saying.of(overview());
            case "enter" -> new ModesAnswer(sitting.mode());
            case "music", "notation" -> Saying.of(StyledText.of(MUSIC.strip()));
            case "ears", "hearing" -> Saying.of(StyledText.of(Care.EARS.strip()));
            case "java", "code" -> Saying.of(java());
            case "hands" -> Saying.of(StyledText.of(HANDS.strip()));
            case "band" -> Saying.of(StyledText.of(BAND.strip()));
            default -> about(about);
        };
    }

    private static StyledText java() {
        StyledText.Builder text = StyledText.builder();
        JAVA.forEach(line -> text.line(line, line.startsWith(" ") ? Style.JAVA : Style.PLAIN));
        return text.build();
    }

    private Answer about(String word) {
        Optional<Verb> verb = verbs.find(word);
        if (verb.isPresent()) {
            return Saying.of(of(verb.get().usage()));
        }
        return Arrays.stream(Usage.Topic.values())
                .filter(topic -> topic.toString().equals(word))
                .findFirst()
                .<Answer>map(topic -> Saying.of(of(topic)))
                .orElseThrow(() -> unknown(word));
    }

    private Unreadable unknown(String word) {
        String advice = Nearest.to(word, verbs.words())
                .map(near -> "did you mean " + near)
                .orElse("help alone lists them");
        return Unreadable.because(word, 0, "a verb", advice, "help play");
    }

    /** Short enough for one screen: the verbs of each topic in a line. */
    private StyledText overview() {
        StyledText.Builder text = StyledText.builder();
        for (Usage.Topic topic : Usage.Topic.values()) {
            StyledLine line =
                    StyledLine.of(topic + " ".repeat(WORD - topic.toString().length()));
            for (Usage usage : usages(topic)) {
                line = line.plus(" " + usage.word(), Style.TYPED);
            }
            text.line(line);
        }
        return text.gap()
                .line("Music needs no verb: type F C G Ab, or IV I V bVI, or D major. Enter goes on.")
                .line("help VERB tells about one, help exploring about these, and so on.", Style.QUIET)
                .line(
                        "help enter: what Enter, skip, back, hint and quit do where you are. help music: how it is typed.",
                        Style.QUIET)
                .line("help java: lines of code. help ears, help hands, help band: take care.", Style.QUIET)
                .build();
    }

    private List<Usage> usages(Usage.Topic topic) {
        return verbs.all().stream()
                .map(Verb::usage)
                .filter(usage -> usage.topic() == topic)
                .toList();
    }

    private StyledText of(Usage.Topic topic) {
        StyledText.Builder text = StyledText.builder();
        for (Usage usage : usages(topic)) {
            text.line(StyledLine.of(usage.word(), Style.TYPED)
                    .plus(" ".repeat(WORD - usage.word().length()) + usage.purpose()));
        }
        return text.build();
    }

    /** How one verb is used. */
    public static StyledText of(Usage usage) {
        StyledText.Builder text =
                StyledText.builder().line(usage.form(), Style.STRONG).line(usage.purpose() + ".");
        usage.examples().forEach(example -> text.line("  " + example, Style.TYPED));
        return text.build();
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return List.copyOf(verbs.words());
    }
}
