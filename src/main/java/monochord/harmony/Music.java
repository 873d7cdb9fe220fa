package monochord.harmony;

import java.util.List;
import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** What a line of music was understood to be: see {@link MusicText#read}. */
public sealed interface Music {
    /**
     * A chord by symbol, numeral or number.
     *
     * @param numeral the chord as it was read or as the key names it
     */
    record OneChord(Chord chord, Numeral numeral) implements Music {}

    /** A scale by its own name, or by its kind alone on the tonic of the key. */
    record OneScale(Scale scale) implements Music {}

    /**
     * Notes without a chord's name, in the order they were written.
     *
     * @param pitches as many as there are names, or none if the notes were written without octaves
     */
    record Notes(List<NoteName> names, List<Pitch> pitches) implements Music {
        public Notes {
            names = List.copyOf(names);
            pitches = List.copyOf(pitches);
        }
    }

    /**
     * Two chords or more, or one in a bar that was written out.
     *
     * @param oneChord what it would be if its letters were meant as notes: {@code C Eb G}
     */
    record OneProgression(Progression progression, Optional<Chord> oneChord) implements Music {
        public OneProgression(Progression progression) {
            this(progression, Optional.empty());
        }
    }
}
