package monochord.practice.answer;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.harmony.melody.Standing;
import monochord.practice.Grade;
import monochord.practice.Verdict;
import monochord.practice.reading.OneOfWords;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;

/** Judges how a note stands over a chord: {@code chord tone}, {@code colour}, {@code suspension}, {@code clash}. */
public final class StandingRubric extends Rubric<Standing> {
    private static final Map<String, Standing> NAMES = Map.ofEntries(
            Map.entry("chord tone", Standing.CHORD_TONE),
            Map.entry("chordtone", Standing.CHORD_TONE),
            Map.entry("tone of chord", Standing.CHORD_TONE),
            Map.entry("chord note", Standing.CHORD_TONE),
            Map.entry("chord", Standing.CHORD_TONE),
            Map.entry("part of chord", Standing.CHORD_TONE),
            Map.entry("in chord", Standing.CHORD_TONE),
            Map.entry("colour", Standing.COLOUR),
            Map.entry("color", Standing.COLOUR),
            Map.entry("tension", Standing.COLOUR),
            Map.entry("suspension", Standing.SUSPENSION_ONLY),
            Map.entry("suspended", Standing.SUSPENSION_ONLY),
            Map.entry("sus", Standing.SUSPENSION_ONLY),
            Map.entry("clash", Standing.CLASH),
            Map.entry("clashes", Standing.CLASH));
    private static final Map<String, Standing> WORDS = Map.of(
            "chord tone", Standing.CHORD_TONE,
            "colour", Standing.COLOUR,
            "color", Standing.COLOUR,
            "tension", Standing.COLOUR,
            "suspension", Standing.SUSPENSION_ONLY,
            "clash", Standing.CLASH,
            "clashes", Standing.CLASH);

    private static final Pattern DECORATION = Pattern.compile("^\\s*(?:an?|it|only as an?) +");
    private static final Pattern SPACES = Pattern.compile("[ -]+");

    private final Phrase reason;
    private final Phrase way;
    private final Function<Standing, List<Phrase>> help;

    /**
     * @param reason one sentence or more that lead to the answer
     * @param help how to go on from each wrong answer
     */
    public StandingRubric(
            Standing wanted,
            Phrase reason,
            Phrase way,
            Function<Standing, List<Phrase>> help,
            Supplier<List<ModelledError<Standing>>> errors) {
        super(wanted, errors);
        this.reason = reason;
        this.way = way;
        this.help = help;
    }

    @Override
    String what() {
        return "a way to stand over a chord";
    }

    @Override
    String example() {
        return example("colour", "clash");
    }

    @Override
    Standing read(String plain) {
        String bare = DECORATION.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll("");
        String name = SPACES.matcher(bare).replaceAll(" ").strip();
        Standing standing = NAMES.get(name);
        if (standing == null) {
            return OneOfWords.in(WORDS, bare)
                    .orElseThrow(() -> Unreadable.because(
                            plain, 0, what(), "say chord tone, colour, suspension or clash", example()));
        }
        return standing;
    }

    @Override
    String write(Standing answer) {
        return switch (answer) {
            case CHORD_TONE -> "chord tone";
            case COLOUR, TENSE -> "colour";
            case SUSPENSION_ONLY -> "suspension";
            case CLASH -> "clash";
        };
    }

    @Override
    boolean same(Standing one, Standing other) {
        return write(one).equals(write(other));
    }

    @Override
    Verdict accept(Standing given) {
        return verdict(Grade.RIGHT, Phrase.sentence("Yes.").then(reason));
    }

    @Override
    Verdict otherwise(Standing given) {
        return verdict(Grade.WRONG, way);
    }

    @Override
    List<Phrase> helpFrom(Standing given) {
        return help.apply(given);
    }
}
