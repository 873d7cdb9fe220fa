package monochord.score;

import java.util.List;
import java.util.stream.Stream;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * What is played: a note, a rest, parts in turn, parts together, and parts that say their hand or carry a label.
 *
 * <p>Two scores are equal when their trees are, not when they sound alike; for that compare {@link #soundings()}.
 */
public sealed interface Score {
    /** How long it lasts, rests at the end included. */
    Beats beats();

    /** One note. */
    record Note(Pitch pitch, Beats beats) implements Score {
        /** @throws IllegalArgumentException if the note has no length */
        public Note {
            if (beats.isZero()) {
                throw new IllegalArgumentException("a note must have a length, but " + pitch + " has none");
            }
        }
    }

    /** Silence. */
    record Rest(Beats beats) implements Score {}

    /** One part after another. */
    record InTurn(List<Score> parts) implements Score {
        public InTurn {
            parts = List.copyOf(parts);
        }

        @Override
        public Beats beats() {
            return parts.stream().map(Score::beats).reduce(Beats.ZERO, Beats::plus);
        }
    }

    /** All parts from the same moment; it lasts as long as the longest. */
    record Together(List<Score> parts) implements Score {
        public Together {
            parts = List.copyOf(parts);
        }

        @Override
        public Beats beats() {
            return parts.stream().map(Score::beats).reduce(Beats.ZERO, Beats::longerOf);
        }
    }

    /** A part for one hand. A part inside that names its own hand keeps it. */
    record ByHand(Hand hand, Score part) implements Score {
        @Override
        public Beats beats() {
            return part.beats();
        }
    }

    /** A part under a chord symbol or a word. */
    record Labelled(String label, Score part) implements Score {
        @Override
        public Beats beats() {
            return part.beats();
        }
    }

    /** A part during which the sustain pedal is down: it goes down just after the part begins and up when it is over. */
    record Pedalled(Score part) implements Score {
        @Override
        public Beats beats() {
            return part.beats();
        }
    }

    static Score note(Pitch pitch, Beats beats) {
        return new Note(pitch, beats);
    }

    static Score rest(Beats beats) {
        return new Rest(beats);
    }

    /** Notes one after another, all of one length: a scale, a line. */
    static Score inTurn(List<Pitch> pitches, Beats each) {
        return new InTurn(notes(pitches, each));
    }

    /** Notes struck and held together: a chord. */
    static Score together(List<Pitch> pitches, Beats beats) {
        return new Together(notes(pitches, beats));
    }

    private static List<Score> notes(List<Pitch> pitches, Beats beats) {
        return pitches.stream().map(pitch -> note(pitch, beats)).toList();
    }

    default Score by(Hand hand) {
        return new ByHand(hand, this);
    }

    default Score labelled(String label) {
        return new Labelled(label, this);
    }

    default Score pedalled() {
        return new Pedalled(this);
    }

    /** This, and {@code next} when it is over. */
    default Score then(Score next) {
        return this instanceof InTurn line
                ? new InTurn(Stream.concat(line.parts.stream(), Stream.of(next)).toList())
                : new InTurn(List.of(this, next));
    }

    /** This and {@code other} from the same moment. */
    default Score with(Score other) {
        return new Together(List.of(this, other));
    }

    /** Every note with its place in time, in order. */
    default List<Sounding> soundings() {
        return ScoreWalk.through(this).soundings();
    }

    /** Every label with the stretch it stands over, in order of its start. */
    default List<Caption> captions() {
        return ScoreWalk.through(this).captions();
    }

    /** Every stretch with the pedal down, in order of its start. */
    default List<Pedal> pedals() {
        return ScoreWalk.through(this).pedals();
    }
}
