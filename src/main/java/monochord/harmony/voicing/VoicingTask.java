package monochord.harmony.voicing;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Progression;
import monochord.harmony.melody.ChordSpan;
import monochord.harmony.melody.Melody;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * What is to be voiced.
 *
 * @param chords at least one
 * @param tops for each chord the note that must lie on top, if there is one
 */
public record VoicingTask(List<Chord> chords, Key key, VoicingStyle style, Reach reach, List<Optional<Pitch>> tops) {
    /** @throws IllegalArgumentException if there are no chords, or not one top for each */
    public VoicingTask {
        chords = List.copyOf(chords);
        tops = List.copyOf(tops);
        if (chords.isEmpty() || tops.size() != chords.size()) {
            throw new IllegalArgumentException(
                    "a task needs chords and a top for each, not " + chords.size() + " and " + tops.size());
        }
    }

    /** With a reach of an octave and nothing said about the top. */
    public static VoicingTask of(List<Chord> chords, Key key, VoicingStyle style) {
        return new VoicingTask(chords, key, style, Reach.OCTAVE, Collections.nCopies(chords.size(), Optional.empty()));
    }

    public static VoicingTask of(Progression progression, VoicingStyle style) {
        return of(progression.chords(), progression.key(), style);
    }

    public VoicingTask within(Reach other) {
        return new VoicingTask(chords, key, style, other, tops);
    }

    public VoicingTask under(List<Optional<Pitch>> line) {
        return new VoicingTask(chords, key, style, reach, line);
    }

    /** With the note of the tune on top that sounds when a chord is struck; where none sounds, the top is free. */
    public static VoicingTask of(Progression progression, VoicingStyle style, Melody tune) {
        List<Optional<Pitch>> tops = ChordSpan.of(progression, Beats.of(progression.beatsPerBar())).stream()
                .map(span -> at(tune, span.start().plus(tune.pickup())))
                .toList();
        return of(progression, style).under(tops);
    }

    private static Optional<Pitch> at(Melody tune, Beats time) {
        return tune.notes().stream()
                .filter(note -> note.start().compareTo(time) <= 0 && note.end().compareTo(time) > 0)
                .map(Melody.Note::pitch)
                .findFirst();
    }

    public VoicingTask in(VoicingStyle other) {
        return new VoicingTask(chords, key, other, reach, tops);
    }

    boolean hasTune() {
        return tops.stream().anyMatch(Optional::isPresent);
    }

    ChordTones tones(int index, int voices) {
        return new ChordTones(chords.get(index), key, style, tops.get(index), voices);
    }
}
