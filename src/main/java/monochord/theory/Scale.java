package monochord.theory;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import monochord.theory.note.Cursor;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.theory.note.ToneSet;
import monochord.theory.note.Unreadable;

/**
 * A scale on a tonic, such as E harmonic minor.
 *
 * <p>Text form: {@code tonic kind}, such as {@code E harmonic minor} or {@code Bb major}. {@link #parse} reads all that
 * {@link #toString} writes.
 */
public record Scale(NoteName tonic, ScaleKind kind) {
    /** @throws Unreadable if the text is not a scale */
    public static Scale parse(String text) {
        Cursor cursor = new Cursor(text, "a scale", "E harmonic minor");
        NoteName tonic = NoteName.read(cursor);
        if (!cursor.take(' ') && !cursor.take('-')) {
            throw cursor.unexpected("a space and the kind of scale");
        }
        int start = cursor.place();
        try {
            return new Scale(tonic, ScaleKind.parse(cursor.takeRest()));
        } catch (Unreadable unreadable) {
            throw unreadable.within(text, start);
        }
    }

    /** The notes from the tonic up, the octave left out. */
    public List<NoteName> tones() {
        return kind.degrees().stream().map(degree -> degree.above(tonic)).toList();
    }

    public boolean holds(NoteName name) {
        return (kind.tones() & ToneSet.bit(name.fifths() - tonic.fifths())) != 0;
    }

    /** Whether all tones of the chord are in the scale; a bass note from outside the chord does not count. */
    public boolean holds(Chord chord) {
        long tones = ToneSet.shifted(chord.kind().tones(), chord.root().fifths() - tonic.fifths());
        return tones != 0 && (tones & ~kind.tones()) == 0;
    }

    /**
     * Sharps of the key signature the scale is written with, flats counted below zero; from −7 to 7 for the keys in use,
     * past that for tonics such as G sharp major, and none for the scales that divide the octave evenly.
     */
    public OptionalInt signature() {
        return kind.signatureOf().stream()
                .mapToInt(mode -> new Key(tonic, mode).signature())
                .findFirst();
    }

    /** The pitches up from the tonic at or above {@code floor}, with the octave at the top. */
    public List<Pitch> pitches(Pitch floor) {
        Pitch low = Pitch.atOrAbove(tonic, floor);
        return Stream.concat(
                        kind.degrees().stream().map(degree -> low.plus(degree.interval())),
                        Stream.of(low.plus(Interval.OCTAVE)))
                .toList();
    }

    public String write(Signs signs) {
        return tonic.write(signs) + " " + kind;
    }

    @Override
    public String toString() {
        return write(Signs.ASCII);
    }
}
