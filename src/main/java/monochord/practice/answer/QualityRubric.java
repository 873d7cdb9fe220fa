package monochord.practice.answer;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.ChordReading;
import monochord.theory.Chord;
import monochord.theory.TriadQuality;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/** Judges a quality, in words ({@code minor}) or signs ({@code m}, {@code -}, {@code °}), or as the chord's own symbol. */
public final class QualityRubric extends Rubric<TriadQuality> {
    private static final Map<String, TriadQuality> SIGNS = Map.of(
            "M",
            TriadQuality.MAJOR,
            "m",
            TriadQuality.MINOR,
            "-",
            TriadQuality.MINOR,
            "+",
            TriadQuality.AUGMENTED,
            "°",
            TriadQuality.DIMINISHED,
            "º",
            TriadQuality.DIMINISHED,
            "o",
            TriadQuality.DIMINISHED);
    private static final Map<String, TriadQuality> WORDS = Map.of(
            "major",
            TriadQuality.MAJOR,
            "maj",
            TriadQuality.MAJOR,
            "minor",
            TriadQuality.MINOR,
            "min",
            TriadQuality.MINOR,
            "diminished",
            TriadQuality.DIMINISHED,
            "dim",
            TriadQuality.DIMINISHED,
            "augmented",
            TriadQuality.AUGMENTED,
            "aug",
            TriadQuality.AUGMENTED);
    private static final Pattern DECORATION = Pattern.compile("(?i)^an? +(?=[a-z]{3})|[ -]*(?:chord|triad)\\.?$|\\.$");
    private static final String WHAT = "a quality";
    private static final String EXAMPLE = "major, minor, diminished or augmented";

    private final Chord chord;
    private final Chord alternative;
    private final String way;

    /**
     * @param alternative a chord on the same degree that is as customary in this key, or null
     * @param way one sentence or more that point the way and stop short of the quality
     */
    public QualityRubric(Chord chord, Chord alternative, String way, Supplier<List<Slip<TriadQuality>>> slips) {
        super(chord.kind().quality(), slips);
        this.chord = chord;
        this.alternative = alternative;
        this.way = way;
    }

    @Override
    TriadQuality read(String text) {
        String plain = AnswerText.plain(text, WHAT, EXAMPLE);
        String bare = DECORATION.matcher(plain).replaceAll("").strip();
        TriadQuality bySign = SIGNS.get(bare);
        TriadQuality byWord = WORDS.get(bare.toLowerCase(Locale.ROOT));
        return bySign != null ? bySign : byWord != null ? byWord : ofChord(text, bare);
    }

    private TriadQuality ofChord(String text, String bare) {
        Chord given;
        try {
            given = ChordReading.symbol(bare);
        } catch (Unreadable unreadable) {
            throw Unreadable.because(text, 0, WHAT, "one word is enough", EXAMPLE);
        }
        if (!given.root().equals(chord.root())) {
            throw Unreadable.because(text, 0, WHAT, Clause.of("the chord here stands on {0}", chord.root()), EXAMPLE);
        }
        return given.kind().quality();
    }

    @Override
    String write(TriadQuality answer) {
        return answer.toString();
    }

    @Override
    boolean same(TriadQuality one, TriadQuality other) {
        return one == other;
    }

    @Override
    Verdict accept(TriadQuality given) {
        return verdict(Grade.RIGHT, "Yes, " + given + ": " + Say.row(chord.tones()) + ".");
    }

    @Override
    boolean isAlso(TriadQuality given) {
        return alternative != null && alternative.kind().quality() == given;
    }

    @Override
    Verdict acceptAlso(TriadQuality given) {
        return verdict(
                Grade.REMARK,
                "Yes, " + given + " as in " + Say.row(alternative.tones()) + ". In minor the "
                        + (chord.kind().quality() == TriadQuality.DIMINISHED ? "other" : "more usual")
                        + " form is " + chord.kind().quality() + ", " + Say.row(chord.tones()) + ".");
    }

    @Override
    Verdict otherwise(TriadQuality given) {
        return verdict(Grade.WRONG, Misconception.WRONG_QUALITY, way);
    }
}
