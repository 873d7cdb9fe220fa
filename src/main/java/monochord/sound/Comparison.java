package monochord.sound;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import monochord.score.Piece;
import monochord.score.Score;
import monochord.theory.Key;
import monochord.theory.note.Beats;

/**
 * Versions of some music, to be heard one after the other: at one tempo and equally loud, whatever they are made of.
 *
 * @param sides how each is played alone, at least one
 */
public record Comparison(List<Performance> sides) {
    private static final Beats BREATH = Beats.of(2);
    /** Before a side begins its loudness is set, while nothing is struck. */
    private static final Beats AHEAD = Beats.of(1, 4);

    public Comparison {
        sides = List.copyOf(sides);
    }

    /**
     * What would be louder is made softer. Where the synthesizer fails, all stay as they are: it will say so itself.
     *
     * @throws IllegalArgumentException if the tempo is out of range
     */
    public static Comparison of(List<Piece> pieces, Directions directions, Key key) {
        List<Performance> plain =
                pieces.stream().map(piece -> directions.perform(piece, key)).toList();
        List<Double> loudness = new ArrayList<>();
        try {
            for (Performance side : plain) {
                loudness.add(Loudness.of(side.countedIn(false)));
            }
        } catch (IOException | RuntimeException | LinkageError silent) {
            return new Comparison(plain);
        }
        double softest =
                loudness.stream().filter(Double::isFinite).min(Double::compare).orElse(0.0);
        List<Performance> level = new ArrayList<>();
        for (int i = 0; i < plain.size(); i++) {
            double down = Double.isFinite(loudness.get(i)) ? softest - loudness.get(i) : 0;
            level.add(plain.get(i).levelled(List.of(new LevelChange(Beats.ZERO, down))));
        }
        return new Comparison(level);
    }

    /** All of them, with a breath between. */
    public Performance inTurn() {
        List<Score> parts = new ArrayList<>();
        List<LevelChange> levels = new ArrayList<>();
        Beats now = Beats.ZERO;
        for (Performance side : sides) {
            if (!parts.isEmpty()) {
                parts.add(Score.rest(BREATH));
                now = now.plus(BREATH);
            }
            Beats set = parts.isEmpty() ? now : now.minus(AHEAD);
            side.levels().forEach(level -> levels.add(new LevelChange(set, level.decibels())));
            parts.add(side.score());
            now = now.plus(side.score().beats());
        }
        return sides.get(0).of(new Score.InTurn(parts), levels);
    }
}
