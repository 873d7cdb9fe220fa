package monochord.shell.verb.music;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.harmony.key.KeyFinding;
import monochord.harmony.melody.Melody;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/** A word to whoever has music read in a key, where it clearly stands in another: in doubt nothing is said. */
public final class KeyRemark {
    private static final int FEWEST_CHORDS = 4;
    private static final int FEWEST_FOREIGN = 2;
    private static final int FEWEST_NOTES = 12;
    private static final double SURE = 0.9;
    private static final double RULED_OUT = 0.02;
    private static final Set<Value> READ_AS_CHORDS = Set.of(Value.PROGRESSION, Value.NUMERAL, Value.MUSIC);
    private static final String IN = "in";
    private static final String FROM = "from";

    private KeyRemark() {}

    /** What there is to say about the chords of a sentence that was carried out, whatever its verb. */
    public static Optional<Phrase> of(Sentence sentence, Usage usage, Sitting sitting) {
        return chords(sentence, usage).flatMap(part -> {
            try {
                Key key = Stream.of(IN, FROM)
                        .flatMap(word -> sentence.clause(word).stream())
                        .findFirst()
                        .map(named -> Key.parse(named.text()))
                        .orElseGet(sitting::key);
                Progression progression = Progression.parse(part.text(), key);
                return isOdd(progression) && !MusicHeard.hangsOnKey(progression, part.text())
                        ? of(progression)
                        : Optional.empty();
            } catch (Unreadable otherMusic) {
                return Optional.empty();
            }
        });
    }

    /** The part of a sentence that is read as chords in a key. */
    private static Optional<Sentence.SentencePart> chords(Sentence sentence, Usage usage) {
        boolean isInKey = usage.clauses().containsKey(IN) || usage.clauses().containsKey(FROM);
        if (!isInKey) {
            return Optional.empty();
        }
        boolean isBody = usage.values().stream().anyMatch(READ_AS_CHORDS::contains);
        Optional<Sentence.SentencePart> body = isBody ? Optional.of(sentence.body()) : Optional.empty();
        return body.or(() -> usage.clauses().entrySet().stream()
                        .filter(clause -> clause.getValue() == Value.PROGRESSION)
                        .flatMap(clause -> sentence.clause(clause.getKey()).stream())
                        .findFirst())
                .filter(part -> mayHoldEnough(part.text()));
    }

    /** Chords stand apart from each other; most lines have too few of them, and need not be read again. */
    private static boolean mayHoldEnough(String text) {
        return text.chars()
                        .filter(c -> c == '|' || c == ',' || Character.isWhitespace(c))
                        .count()
                >= FEWEST_CHORDS - 1;
    }

    /** Whether it is worth a closer look, which most lines are not. */
    private static boolean isOdd(Progression progression) {
        Key key = progression.key();
        List<Chord> chords = progression.chords();
        return chords.size() >= FEWEST_CHORDS
                && chords.stream()
                                .map(chord ->
                                        new Chord(chord.root(), chord.kind().triad()))
                                .distinct()
                                .filter(triad -> !key.isOwn(triad))
                                .count()
                        >= FEWEST_FOREIGN;
    }

    private static Optional<Phrase> of(Progression progression) {
        Key key = progression.key();
        return of(KeyFinding.of(progression, Counts.KEYS), key)
                .map(other -> Phrase.sentence("Read in {0}, though these chords seem to stand in {1}.", key, other));
    }

    /** The same for a tune. */
    static Optional<Phrase> of(Melody tune, Key key) {
        return tune.notes().size() < FEWEST_NOTES
                ? Optional.empty()
                : of(KeyFinding.of(tune, Counts.KEYS), key)
                        .map(other ->
                                Phrase.sentence("Read in {0}, though this tune seems to stand in {1}.", key, other));
    }

    /** Another key, on another tonic and of another signature. */
    private static Optional<Key> of(KeyFinding finding, Key key) {
        boolean isSure = finding.keys().get(0).share() >= SURE
                && finding.spans().size() <= 1
                && finding.ofTune().size() <= 1;
        boolean mayBe = finding.keys().stream()
                .anyMatch(likely -> likely.share() >= RULED_OUT
                        && (likely.key().tonic().equals(key.tonic())
                                || likely.key().signature() == key.signature()));
        return isSure && !mayBe ? Optional.of(finding.key()) : Optional.empty();
    }
}
