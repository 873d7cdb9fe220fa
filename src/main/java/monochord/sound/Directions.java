package monochord.sound;

import java.util.Optional;
import monochord.score.Pattern;
import monochord.score.Piece;
import monochord.score.Score;
import monochord.score.Swing;
import monochord.theory.Key;
import monochord.theory.note.Beats;

/**
 * How a piece is to be played, before there is a score of it.
 *
 * @param tempo beats a minute, from {@value Performance#SLOWEST} to {@value Performance#FASTEST}
 * @param times how often, without a break, from 1 to {@value #MOST_TIMES}
 */
public record Directions(
        int tempo,
        Patch right,
        Patch left,
        Pattern pattern,
        boolean swung,
        int times,
        boolean countedIn,
        Optional<Bank> bank) {
    public static final int MOST_TIMES = 99;
    /** The longest that is played or written at once. */
    public static final int MOST_MINUTES = 120;

    /** On the piano, at an easy walking pace, once, all keys of a chord at a time. */
    public static final Directions USUAL = new Directions(
            Performance.USUAL_TEMPO, Patch.PIANO, Patch.PIANO, Pattern.BLOCK, false, 1, false, Optional.empty());

    public Directions at(int beatsPerMinute) {
        return new Directions(beatsPerMinute, right, left, pattern, swung, times, countedIn, bank);
    }

    public Directions with(Patch leftHand, Patch rightHand) {
        return new Directions(tempo, rightHand, leftHand, pattern, swung, times, countedIn, bank);
    }

    public Directions as(Pattern strokes) {
        return new Directions(tempo, right, left, strokes, swung, times, countedIn, bank);
    }

    public Directions inSwing(boolean swing) {
        return new Directions(tempo, right, left, pattern, swing, times, countedIn, bank);
    }

    public Directions times(int count) {
        return new Directions(tempo, right, left, pattern, swung, count, countedIn, bank);
    }

    public Directions countedIn(boolean counted) {
        return new Directions(tempo, right, left, pattern, swung, times, counted, bank);
    }

    public Directions from(Optional<Bank> sounds) {
        return new Directions(tempo, right, left, pattern, swung, times, countedIn, sounds);
    }

    /** @throws IllegalArgumentException if the tempo or the number of times is out of range */
    public Performance perform(Piece piece, Key key) {
        Score plain = piece.as(pattern, times);
        Score score = swung ? Swing.of(plain, piece.metre().pickup()) : plain;
        return Performance.of(score)
                .at(quarters(tempo, piece))
                .with(left, right)
                .in(key)
                .in(piece.metre())
                .countedIn(countedIn)
                .from(bank);
    }

    /** Quarters a minute: in 6/8 and its kin a tempo counts dotted quarters. */
    private static int quarters(int beatsPerMinute, Piece piece) {
        Beats counted = piece.metre().counted();
        return (int) Math.min(Performance.FASTEST, beatsPerMinute * counted.numerator() / counted.denominator());
    }

    /** How long a piece would last, in minutes rounded up; nothing is laid out for it. */
    public long minutes(Piece piece) {
        Beats once = piece.beats();
        double beats = (double) once.numerator() / once.denominator() * times;
        return (long) Math.ceil(beats / quarters(tempo, piece));
    }
}
