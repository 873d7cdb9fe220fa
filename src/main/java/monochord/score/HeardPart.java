package monochord.score;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.harmony.voicing.Voicing;
import monochord.text.Phrase;
import monochord.theory.note.Pitch;

/**
 * Part of a piece, to be heard alone.
 *
 * <p>Text form: in small letters, {@code left hand}; {@link #named} reads other names that players use too.
 */
public enum HeardPart {
    BOTH_HANDS("all"),
    LEFT_HAND("left"),
    RIGHT_HAND("right"),
    /** The lowest key of each chord. */
    BASS(),
    /** The second key from the bottom. */
    TENOR(),
    /** The second key from the top. */
    ALTO(),
    /** The highest key of each chord. */
    SOPRANO("top"),
    /** The tune without its chords. */
    TUNE("melody"),
    /** The chords without their tune. */
    CHORDS("accompaniment");

    private final List<String> alsoCalled;

    HeardPart(String... alsoCalled) {
        this.alsoCalled = List.of(alsoCalled);
    }

    /** {@code left hand}, as a reader has it. */
    public Phrase inWords() {
        return switch (this) {
            case BOTH_HANDS -> Phrase.of("both hands");
            case LEFT_HAND -> Phrase.of("left hand");
            case RIGHT_HAND -> Phrase.of("right hand");
            case BASS -> Phrase.of("bass");
            case TENOR -> Phrase.of("tenor");
            case ALTO -> Phrase.of("alto");
            case SOPRANO -> Phrase.of("soprano");
            case TUNE -> Phrase.of("tune");
            case CHORDS -> Phrase.of("chords");
        };
    }

    /** The part of this name, if there is one. */
    public static Optional<HeardPart> named(String text) {
        String wanted = text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return Arrays.stream(values())
                .filter(part -> part.toString().equals(wanted) || part.alsoCalled.contains(wanted))
                .findFirst();
    }

    /** What this part plays of a piece; nothing if the piece has no such part. */
    public Optional<Piece> of(Piece piece) {
        return switch (this) {
            case BOTH_HANDS -> Optional.of(piece);
            case TUNE -> piece.line().map(tune -> new Piece(List.of(), Optional.of(tune), piece.metre()));
            default -> piece.voicings().isEmpty() ? Optional.empty() : ofChords(piece);
        };
    }

    private Optional<Piece> ofChords(Piece piece) {
        List<TimedVoicing> own = piece.voicings().stream().map(this::of).toList();
        return Optional.of(Piece.of(own, piece.metre()))
                .filter(found -> own.stream().anyMatch(HeardPart::isPlayed));
    }

    private static boolean isPlayed(TimedVoicing one) {
        return !one.hands().pitches().isEmpty();
    }

    private TimedVoicing of(TimedVoicing whole) {
        Voicing hands = whole.hands();
        int keys = hands.pitches().size();
        return switch (this) {
            case LEFT_HAND -> whole.with(new Voicing(hands.left(), List.of()));
            case RIGHT_HAND -> whole.with(new Voicing(List.of(), hands.right()));
            case BASS -> voice(0, whole);
            case TENOR -> voice(Math.min(1, keys - 1), whole);
            case ALTO -> voice(Math.max(0, keys - 2), whole);
            case SOPRANO -> voice(keys - 1, whole);
            default -> whole;
        };
    }

    /** The key of that number, counted from the bottom, in the hand that plays it. */
    private static TimedVoicing voice(int number, TimedVoicing whole) {
        Voicing hands = whole.hands();
        if (hands.pitches().isEmpty()) {
            return whole;
        }
        List<Pitch> one = List.of(hands.pitches().get(number));
        boolean inLeft = number < hands.left().size();
        return whole.with(new Voicing(inLeft ? one : List.of(), inLeft ? List.of() : one));
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
