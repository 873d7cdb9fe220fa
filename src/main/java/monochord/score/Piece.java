package monochord.score;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Progression;
import monochord.harmony.melody.Fit;
import monochord.harmony.melody.Melody;
import monochord.theory.note.Beats;

/**
 * Music before it is decided how the hands strike it: chords as they are held, a line that is played as it stands, or a
 * line over chords.
 *
 * @param voicings one after another from the first full bar on; none for a line alone
 * @param line from the beginning, its pick-up included
 */
public record Piece(List<TimedVoicing> voicings, Optional<Score> line, BarGrid metre) {
    /** @throws IllegalArgumentException if there is nothing in it */
    public Piece {
        voicings = List.copyOf(voicings);
        if (voicings.isEmpty() && line.isEmpty()) {
            throw new IllegalArgumentException("a piece needs chords or a line");
        }
    }

    /** What is already written out. */
    public static Piece of(Score written) {
        return new Piece(List.of(), Optional.of(written), BarGrid.COMMON);
    }

    public static Piece of(List<TimedVoicing> voicings, BarGrid metre) {
        return new Piece(voicings, Optional.empty(), metre);
    }

    public static Piece of(Melody melody) {
        return new Piece(List.of(), Optional.of(line(melody)), metre(melody, BarGrid.COMMON.bar()));
    }

    /** A tune over chords, as {@link Fit} lays them: the tune's pick-up first, the chords again until the tune is over. */
    public static Piece of(Melody melody, Progression progression) {
        Beats bar = Fit.bar(melody, progression);
        List<TimedVoicing> once = Comping.voicings(Arrangement.changes(progression, bar));
        Beats length = once.stream().map(TimedVoicing::beats).reduce(Beats.ZERO, Beats::plus);
        Beats wanted = melody.beats().minus(melody.pickup());
        List<TimedVoicing> voicings = new ArrayList<>(once);
        for (int rounds = 1; rounds < Fit.MOST_ROUNDS && length.times(rounds).compareTo(wanted) < 0; rounds++) {
            voicings.addAll(once);
        }
        Beats felt = progression.barred() ? bar : BarGrid.COMMON.bar();
        return new Piece(voicings, Optional.of(line(melody)), metre(melody, felt));
    }

    private static BarGrid metre(Melody melody, Beats otherwise) {
        return new BarGrid(melody.bar().orElse(otherwise), melody.pickup());
    }

    private static Score line(Melody melody) {
        List<Score> parts = new ArrayList<>();
        Beats now = Beats.ZERO;
        for (Melody.MelodyNote note : melody.notes()) {
            rest(note.start().minus(now), parts);
            parts.add(Score.note(note.pitch(), note.beats()));
            now = note.end();
        }
        rest(melody.beats().minus(now), parts);
        return new Score.InTurn(parts).by(Hand.TUNE);
    }

    private static void rest(Beats beats, List<Score> parts) {
        if (!beats.isZero()) {
            parts.add(Score.rest(beats));
        }
    }

    /** How long it lasts when it is played once. */
    public Beats beats() {
        Beats chords = metre.pickup().plus(chordBeats());
        return voicings.isEmpty()
                ? line.orElseThrow().beats()
                : line.map(tune -> chords.longerOf(tune.beats())).orElse(chords);
    }

    private Beats chordBeats() {
        return voicings.stream().map(TimedVoicing::beats).reduce(Beats.ZERO, Beats::plus);
    }

    public Piece in(BarGrid other) {
        return new Piece(voicings, line, other);
    }

    /**
     * All of it so many times without a break. A pick-up that comes again falls into the end of the time before.
     *
     * @throws IllegalArgumentException if {@code times} is below 1
     */
    public Score as(Pattern pattern, int times) {
        if (times < 1) {
            throw new IllegalArgumentException("a piece is played at least once, not " + times + " times");
        }
        if (voicings.isEmpty()) {
            return times == 1 ? line.orElseThrow() : new Score.InTurn(Collections.nCopies(times, line.orElseThrow()));
        }
        Score chords = chords(pattern, times);
        return line.map(tune -> chords.with(tune(tune, times))).orElse(chords);
    }

    private Score chords(Pattern pattern, int times) {
        Score once = pattern.of(voicings, metre);
        Score all = times == 1 ? once : new Score.InTurn(Collections.nCopies(times, once));
        return metre.pickup().isZero() ? all : Score.rest(metre.pickup()).then(all);
    }

    private Score tune(Score tune, int times) {
        Beats round = chordBeats();
        List<Score> rounds = new ArrayList<>(List.of(tune));
        for (int i = 1; i < times; i++) {
            rounds.add(Score.rest(round.times(i)).then(tune));
        }
        return times == 1 ? tune : new Score.Together(rounds);
    }
}
