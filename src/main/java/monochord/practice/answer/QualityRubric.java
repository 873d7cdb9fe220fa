package monochord.practice.answer;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.ChordReading;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.note.Clause;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Judges a quality, in words ({@code minor}) or signs ({@code m}, {@code -}, {@code °}), or as the chord's own symbol. */
public final class QualityRubric extends Rubric<ChordKind> {
    private static final Map<String, ChordKind> SIGNS = Map.of(
            "M",
            ChordKind.MAJOR,
            "m",
            ChordKind.MINOR,
            "-",
            ChordKind.MINOR,
            "+",
            ChordKind.AUGMENTED,
            "°",
            ChordKind.DIMINISHED,
            "º",
            ChordKind.DIMINISHED,
            "o",
            ChordKind.DIMINISHED,
            "ø",
            ChordKind.HALF_DIMINISHED);
    private static final Map<String, ChordKind> WORDS = Map.of(
            "major",
            ChordKind.MAJOR,
            "maj",
            ChordKind.MAJOR,
            "minor",
            ChordKind.MINOR,
            "min",
            ChordKind.MINOR,
            "diminished",
            ChordKind.DIMINISHED,
            "dim",
            ChordKind.DIMINISHED,
            "augmented",
            ChordKind.AUGMENTED,
            "aug",
            ChordKind.AUGMENTED,
            "half-diminished",
            ChordKind.HALF_DIMINISHED,
            "half diminished",
            ChordKind.HALF_DIMINISHED);
    private static final Pattern DECORATION =
            Pattern.compile("(?i)^an? +(?=[a-z]{3})|[ -]*(?:chord|triad|one)\\.?$|\\.$");
    /** A minor third and a flat fifth, by the fifth alone as well; a major third and a sharp one. */
    private static final Pattern FLAT_FIVE = Pattern.compile(
            "(?i)(?:m|min|minor|-)?[ ,-]*(?:triad )?(?:with )?(?:an? )?\\(?(?:b5|♭5|lowered fifth|diminished fifth)\\)?");

    private static final Pattern SHARP_FIVE = Pattern.compile(
            "(?i)(?:M|maj|major)?[ ,-]*(?:triad )?(?:with )?(?:an? )?\\(?(?:#5|♯5|\\+5|raised fifth|augmented fifth)\\)?");

    private static final Pattern SEVENTH = Pattern.compile("(?i)(?:fully )?dim(?:inished)?[ -](?:7|7th|seventh)");

    private static final String EXAMPLE = "major, minor, diminished or augmented";

    private final Chord chord;
    private final Chord alternative;
    private final Phrase way;

    /**
     * @param alternative a chord on the same degree that is as customary in this key, or null
     * @param way one sentence or more that point the way and stop short of the quality
     */
    public QualityRubric(Chord chord, Chord alternative, Phrase way, Supplier<List<ModelledError<ChordKind>>> errors) {
        super(chord.kind(), errors);
        this.chord = chord;
        this.alternative = alternative;
        this.way = way;
    }

    @Override
    String what() {
        return "a quality";
    }

    @Override
    String example() {
        return EXAMPLE;
    }

    @Override
    ChordKind read(String plain) {
        String bare = DECORATION.matcher(plain).replaceAll("").strip();
        ChordKind bySign = SIGNS.get(bare);
        ChordKind byWord = bySign != null ? bySign : WORDS.get(bare.toLowerCase(Locale.ROOT));
        return byWord != null ? byWord : byFifth(bare).orElseGet(() -> ofChord(plain, bare));
    }

    private static Optional<ChordKind> byFifth(String bare) {
        if (SEVENTH.matcher(bare).matches()) {
            return Optional.of(ChordKind.DIMINISHED_SEVENTH);
        }
        return FLAT_FIVE.matcher(bare).matches()
                ? Optional.of(ChordKind.DIMINISHED)
                : SHARP_FIVE.matcher(bare).matches() ? Optional.of(ChordKind.AUGMENTED) : Optional.empty();
    }

    private ChordKind ofChord(String plain, String bare) {
        Chord given;
        try {
            given = ChordReading.symbol(bare);
        } catch (Unreadable unreadable) {
            throw Unreadable.because(plain, 0, what(), "one word is enough", EXAMPLE);
        }
        if (!given.root().equals(chord.root())) {
            throw Unreadable.because(
                    plain, 0, what(), Clause.of("the chord here stands on {0}", chord.root()), EXAMPLE);
        }
        return given.kind();
    }

    private static boolean isTriad(ChordKind kind) {
        return kind.equals(kind.triad());
    }

    private static Phrase say(ChordKind triad) {
        return MusicWords.quality(triad.quality());
    }

    @Override
    String write(ChordKind answer) {
        return answer.quality().toString();
    }

    @Override
    boolean same(ChordKind one, ChordKind other) {
        return one.equals(other);
    }

    @Override
    Verdict accept(ChordKind given) {
        return verdict(Grade.RIGHT, Phrase.sentence("Yes, {0}: {1}.", say(given), Phrase.row(chord.tones())));
    }

    @Override
    boolean isAlso(ChordKind given) {
        return alternative != null && alternative.kind().equals(given);
    }

    @Override
    Verdict acceptAlso(ChordKind given) {
        Phrase yes = Phrase.sentence("Yes, {0} as in {1}.", say(given), Phrase.row(alternative.tones()));
        Phrase usual = chord.kind().equals(ChordKind.DIMINISHED)
                ? Phrase.sentence("In minor the other form is {0}, {1}.", say(chord.kind()), Phrase.row(chord.tones()))
                : Phrase.sentence(
                        "In minor the more usual form is {0}, {1}.", say(chord.kind()), Phrase.row(chord.tones()));
        return verdict(Grade.REMARK, yes.then(usual));
    }

    @Override
    Verdict otherwise(ChordKind given) {
        if (!isTriad(given) && given.triad().equals(chord.kind())) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.EXTRA_NOTE,
                    Phrase.sentence("That names a chord with a seventh. Here the triad alone is asked."));
        }
        return verdict(Grade.WRONG, Misconception.WRONG_QUALITY, way);
    }

    @Override
    List<Phrase> helpFrom(ChordKind given) {
        NoteName third = chord.tones().get(1);
        NoteName fifth = chord.tones().get(2);
        Phrase notes = Phrase.sentence("The notes are {0}.", Phrase.row(chord.tones()));
        if (!isTriad(given) || given.equals(chord.kind())) {
            return List.of(Phrase.sentence("Three notes are asked, so leave the seventh out."), notes, way);
        }
        if (given.interval(3).equals(chord.kind().interval(3))) {
            return List.of(
                    Phrase.sentence("The third is right. Now the fifth."),
                    notes,
                    Phrase.sentence("From {0} up to {1}: seven half steps, or fewer or more?", chord.root(), fifth));
        }
        return given.interval(5).equals(chord.kind().interval(5))
                ? List.of(
                        Phrase.sentence("The fifth is right. Now the third."),
                        notes,
                        Phrase.sentence("From {0} up to {1}: three half steps, or four?", chord.root(), third))
                : List.of();
    }
}
