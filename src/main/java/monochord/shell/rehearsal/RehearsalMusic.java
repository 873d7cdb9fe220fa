package monochord.shell.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import monochord.course.rehearsal.DueChange;
import monochord.course.rehearsal.Round;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.harmony.voicing.Voicing;
import monochord.score.Arrangement;
import monochord.score.BarGrid;
import monochord.score.Comping;
import monochord.score.Hand;
import monochord.score.Piece;
import monochord.score.Score;
import monochord.score.TimedVoicing;
import monochord.sound.Directions;
import monochord.sound.Performance;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;

/**
 * The music of a rehearsal, round by round.
 *
 * @param title what is rehearsed
 * @param chords in written bars
 * @param tune for bars from one to another, where there is one
 * @param metre of the bars, without a pick-up
 * @param played which hands the machine plays
 * @param directions how it plays them
 */
public record RehearsalMusic(
        Phrase title, Progression chords, TuneInBars tune, BarGrid metre, Set<Hand> played, Directions directions) {
    /** A tune in parts. */
    @FunctionalInterface
    public interface TuneInBars {
        /** For bars from one to another, from 0 and both included, in the key of the chords. */
        Optional<Melody> bars(int first, int last);
    }

    public RehearsalMusic {
        played = Set.copyOf(played);
    }

    /** The same progression in bars: where none are written, two chords in each. */
    public static Progression inBars(Progression progression) {
        if (progression.barred()) {
            return progression;
        }
        List<Bar> bars = new ArrayList<>();
        List<ChordEvent> all = progression.slots();
        for (int i = 0; i < all.size(); i += 2) {
            bars.add(new Bar(all.subList(i, Math.min(i + 2, all.size())), false));
        }
        return new Progression(progression.key(), bars, true);
    }

    public int bars() {
        return chords.bars().size();
    }

    /** What is left for the player. */
    public DueChange.PlayersPart yours() {
        if (played.contains(Hand.LEFT)) {
            return played.contains(Hand.RIGHT) ? DueChange.PlayersPart.TUNE : DueChange.PlayersPart.CHORDS;
        }
        return played.contains(Hand.RIGHT) ? DueChange.PlayersPart.BASS : DueChange.PlayersPart.HANDS;
    }

    /** The chords of a round, in its key. */
    Progression chords(Round round) {
        List<Bar> some = new ArrayList<>(chords.bars().subList(round.first(), round.last() + 1));
        return new Progression(chords.key(), struck(some), true).in(round.key());
    }

    /** A chord held from a bar that is not played is struck. */
    private static List<Bar> struck(List<Bar> some) {
        ChordEvent first = some.get(0).slots().get(0);
        if (first.held()) {
            List<ChordEvent> slots = new ArrayList<>(some.get(0).slots());
            slots.set(0, new ChordEvent(first.chord(), first.numeral(), first.shares(), false));
            some.set(0, new Bar(slots, false));
        }
        return some;
    }

    private Optional<Melody> melody(Round round) {
        Key from = chords.key();
        Interval up = from.tonic().to(round.key().tonic()).withinOctave();
        Interval move = up.semitones() > 6 ? up.minus(Interval.OCTAVE) : up;
        return tune.bars(round.first(), round.last())
                .map(melody -> from.equals(round.key()) ? melody : melody.plus(move));
    }

    /** What the player has to play in a round. */
    public List<DueChange> due(Round round) {
        return yours() == DueChange.PlayersPart.TUNE
                ? melody(round)
                        .map(melody -> DueChange.tune(melody, metre.bar()))
                        .orElse(List.of())
                : DueChange.chords(chords(round), metre.bar(), yours());
    }

    /** What sounds in a round, counted in, with soft clicks below it. */
    public Performance performance(Round round) {
        Optional<Melody> melody = melody(round).filter(any -> played.contains(Hand.TUNE));
        BarGrid bars = metre.after(melody.map(Melody::pickup).orElse(Beats.ZERO));
        List<TimedVoicing> voicings = Comping.voicings(Arrangement.changes(chords(round), metre.bar())).stream()
                .map(this::played)
                .toList();
        boolean hands = played.contains(Hand.LEFT) || played.contains(Hand.RIGHT);
        Beats length = bars.pickup().plus(metre.bar().times(round.bars()));
        Score silence = Score.rest(length);
        Optional<Score> line = melody.flatMap(one -> Piece.of(one).line());
        Score under = line.map(silence::with).orElse(silence);
        Piece piece = new Piece(hands ? voicings : List.of(), Optional.of(under), bars);
        return directions
                .at(round.tempo())
                .countedIn(true)
                .perform(piece, round.key())
                .clicked(true);
    }

    private TimedVoicing played(TimedVoicing whole) {
        Voicing hands = whole.hands();
        return new TimedVoicing(
                new Voicing(
                        played.contains(Hand.LEFT) ? hands.left() : List.of(),
                        played.contains(Hand.RIGHT) ? hands.right() : List.of()),
                whole.beats(),
                whole.label());
    }
}
