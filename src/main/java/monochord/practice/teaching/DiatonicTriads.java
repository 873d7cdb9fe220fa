package monochord.practice.teaching;

import java.util.List;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** A key's own triads, by degree. */
public final class DiatonicTriads {
    private DiatonicTriads() {}

    /** In minor the fifth degree carries the major chord with the leading note. */
    public static Chord triad(int number, Key key) {
        return BandNumber.parse(Integer.toString(number), key).in(key);
    }

    /** How the key's own triad comes by its notes: in minor, the raised seventh under the fifth degree. */
    public static Phrase gathered(int number, Key key) {
        Chord chord = triad(number, key);
        boolean own = chord.tones().stream().allMatch(key::holds);
        return own
                ? Phrase.sentence("Every other note of the scale from there: {0}.", Phrase.row(chord.tones()))
                : Phrase.sentence(
                        "Every other note of the scale from there, with the seventh raised as it usually is: {0}.",
                        Phrase.row(chord.tones()));
    }

    /** The triad as it stands where a number past 7 begins again. */
    public static Chord next(int number, Key key) {
        return triad(number % 7 + 1, key);
    }

    /** In minor, the other chord in use on that degree: v beside V, vii° beside VII; elsewhere null. */
    public static Chord alternative(int number, Key key) {
        boolean minor = key.mode() == Mode.AEOLIAN;
        return minor && number == 5
                ? new Chord(key.note(5), ChordKind.MINOR)
                : minor && number == 7 ? new Chord(key.note(Degree.of(7, 0)), ChordKind.DIMINISHED) : null;
    }

    /**
     * A degree of the key's own, as {@code 6} or as its numeral.
     *
     * @throws Unreadable if it is none
     */
    public static int degree(String subject, Key key) {
        String text = subject.strip();
        if (text.length() == 1 && text.charAt(0) >= '1' && text.charAt(0) <= '7') {
            return text.charAt(0) - '0';
        }
        return ofNumeral(text, key);
    }

    private static int ofNumeral(String text, Key key) {
        Numeral numeral;
        try {
            numeral = Numeral.parse(text);
        } catch (Unreadable unreadable) {
            throw Unreadable.because(text, 0, "a degree of the key", "expected a number from 1 to 7", "6");
        }
        int number = numeral.degree();
        if (!numeral.in(key).equals(triad(number, key))) {
            throw Unreadable.because(text, 0, "a degree of the key", "it is not one of the key's own chords", "6");
        }
        return number;
    }

    /** The same letters without any accidental: the key forgotten. */
    public static List<NoteName> bare(List<NoteName> notes) {
        return notes.stream().map(DiatonicTriads::bare).toList();
    }

    public static NoteName bare(NoteName note) {
        return NoteName.of(note.letter(), 0);
    }
}
