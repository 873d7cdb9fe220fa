package monochord.practice.answer;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.harmony.melody.Standing;
import monochord.practice.Grade;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.theory.note.Unreadable;

/** Judges how a note stands over a chord: {@code chord tone}, {@code colour}, {@code suspension}, {@code clash}. */
public final class StandingRubric extends Rubric<Standing> {
    private static final Map<String, Standing> NAMES = Map.ofEntries(
            Map.entry("chord tone", Standing.CHORD_TONE),
            Map.entry("chordtone", Standing.CHORD_TONE),
            Map.entry("tone of chord", Standing.CHORD_TONE),
            Map.entry("colour", Standing.COLOUR),
            Map.entry("color", Standing.COLOUR),
            Map.entry("tension", Standing.COLOUR),
            Map.entry("suspension", Standing.SUSPENSION_ONLY),
            Map.entry("clash", Standing.CLASH),
            Map.entry("clashes", Standing.CLASH));
    private static final Pattern DECORATION = Pattern.compile("(?i)^(?:an?|it|only as an?) +|[.]$");
    private static final Pattern SPACES = Pattern.compile("[ -]+");

    private final String reason;
    private final String way;

    /** @param reason one sentence or more that lead to the answer */
    public StandingRubric(Standing wanted, String reason, String way, Supplier<List<Slip<Standing>>> slips) {
        super(wanted, slips);
        this.reason = reason;
        this.way = way;
    }

    @Override
    Standing read(String text) {
        String example = example("colour", "clash");
        String what = "a way to stand over a chord";
        String plain = AnswerText.plain(text, what, example).toLowerCase(Locale.ROOT);
        String name = SPACES.matcher(DECORATION.matcher(plain).replaceAll(""))
                .replaceAll(" ")
                .strip();
        Standing standing = NAMES.get(name);
        if (standing == null) {
            throw Unreadable.because(plain, 0, what, "say chord tone, colour, suspension or clash", example);
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
        return verdict(Grade.RIGHT, "Yes. " + reason);
    }

    @Override
    Verdict otherwise(Standing given) {
        return verdict(Grade.WRONG, way);
    }
}
