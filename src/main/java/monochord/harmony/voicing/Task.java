package monochord.harmony.voicing;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.harmony.melody.Span;
import monochord.theory.Beats;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Pitch;

/**
 * What is to be voiced.
 *
 * @param chords at least one
 * @param tops for each chord the note that must lie on top, if there is one
 */
public record Task(List<Chord> chords, Key key, Style style, Reach reach, List<Optional<Pitch>> tops) {
    /** @throws IllegalArgumentException if there are no chords, or not one top for each */
    public Task {
        chords = List.copyOf(chords);
        tops = List.copyOf(tops);
        if (chords.isEmpty() || tops.size() != chords.size()) {
            throw new IllegalArgumentException(
                    "a task needs chords and a top for each, not " + chords.size() + " and " + tops.size());
        }
    }

    /** With a reach of an octave and nothing said about the top. */
    public static Task of(List<Chord> chords, Key key, Style style) {
        return new Task(chords, key, style, Reach.OCTAVE, Collections.nCopies(chords.size(), Optional.empty()));
    }

    public static Task of(Progression progression, Style style) {
        return of(progression.chords(), progression.key(), style);
    }

    public Task within(Reach other) {
        return new Task(chords, key, style, other, tops);
    }

    public Task under(List<Optional<Pitch>> line) {
        return new Task(chords, key, style, reach, line);
    }

    /** With the note of the tune on top that sounds when a chord is struck; where none sounds, the top is free. */
    public static Task of(Progression progression, Style style, Melody tune) {
        List<Optional<Pitch>> tops = Span.of(progression, Beats.of(progression.beatsPerBar())).stream()
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

    public Task in(Style other) {
        return new Task(chords, key, other, reach, tops);
    }

    boolean hasTune() {
        return tops.stream().anyMatch(Optional::isPresent);
    }

    ChordTones tones(int index, int voices) {
        return new ChordTones(chords.get(index), key, style, tops.get(index), voices);
    }
}
