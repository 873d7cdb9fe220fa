package monochord.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import monochord.theory.note.Beats;

/** Goes through a score once, from a time, with the hand and the label that hold there, and notes what it meets. */
final class ScoreWalk {
    private final List<Sounding> soundings = new ArrayList<>();
    private final List<Caption> captions = new ArrayList<>();
    private final List<Pedal> pedals = new ArrayList<>();

    private ScoreWalk() {}

    static ScoreWalk through(Score score) {
        ScoreWalk walk = new ScoreWalk();
        walk.from(Beats.ZERO, score, Hand.EITHER, "");
        return walk;
    }

    List<Sounding> soundings() {
        return soundings.stream().sorted().toList();
    }

    List<Caption> captions() {
        return captions.stream().sorted(Comparator.comparing(Caption::start)).toList();
    }

    List<Pedal> pedals() {
        return pedals.stream().sorted(Comparator.comparing(Pedal::start)).toList();
    }

    /** The time at which the part is over. */
    private Beats from(Beats start, Score score, Hand hand, String label) {
        if (score instanceof Score.Note note) {
            soundings.add(new Sounding(note.pitch(), start, note.beats(), hand, label));
        } else if (score instanceof Score.InTurn line) {
            return inTurn(start, line, hand, label);
        } else if (score instanceof Score.Together chord) {
            return together(start, chord, hand, label);
        } else if (score instanceof Score.ByHand played) {
            return from(start, played.part(), played.hand(), label);
        } else if (score instanceof Score.Labelled labelled) {
            captions.add(new Caption(labelled.label(), start, labelled.beats()));
            return from(start, labelled.part(), hand, labelled.label());
        } else if (score instanceof Score.Pedalled pedalled) {
            pedals.add(new Pedal(start, start.plus(pedalled.beats())));
            return from(start, pedalled.part(), hand, label);
        }
        return start.plus(score.beats());
    }

    private Beats inTurn(Beats start, Score.InTurn line, Hand hand, String label) {
        Beats now = start;
        for (Score part : line.parts()) {
            now = from(now, part, hand, label);
        }
        return now;
    }

    private Beats together(Beats start, Score.Together chord, Hand hand, String label) {
        Beats end = start;
        for (Score part : chord.parts()) {
            end = end.longerOf(from(start, part, hand, label));
        }
        return end;
    }
}
