package monochord.practice.skill;

import java.util.List;
import java.util.stream.Stream;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Clause;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** A borrowed chord as a subject: a numeral ({@code bVI}) or a number ({@code b6}) that is not the key's own. */
record BorrowedSubject(Numeral numeral, Chord chord, Key key) {
    private static final List<String> IN_MAJOR = List.of("bVI", "bVII", "iv", "bIII", "i", "iio", "bII", "v");
    private static final List<String> IN_MINOR = List.of("I", "IV", "bII");

    /** @throws Unreadable if it is no numeral, or the key's own chord */
    static BorrowedSubject parse(String subject, Key key) {
        Numeral numeral = numeral(subject.strip(), key);
        Chord chord = numeral.in(key);
        if (key.isOwn(chord)) {
            throw Unreadable.because(
                    subject, 0, "a borrowed chord", Clause.of("it is the key's own chord in {0}", key), "bVI");
        }
        return new BorrowedSubject(numeral, chord, key);
    }

    private static Numeral numeral(String subject, Key key) {
        try {
            return Numeral.parse(subject);
        } catch (Unreadable unreadable) {
            return number(subject, key, unreadable);
        }
    }

    private static Numeral number(String subject, Key key, Unreadable asNumeral) {
        try {
            return BandNumber.parse(subject, key);
        } catch (Unreadable unreadable) {
            throw asNumeral;
        }
    }

    static List<String> all(Key key) {
        return key.isMinor() ? IN_MINOR : IN_MAJOR;
    }

    /** Keys in which borrowing needs no double flats first, those where they pile up last. */
    static List<Key> keys() {
        return Stream.of("E", "A", "D", "G", "C", "B", "F", "F#", "C#", "Bb", "Eb", "Ab", "Db", "Gb", "Cb")
                .map(Key::parse)
                .toList();
    }

    String text() {
        return numeral.toString();
    }

    /** The root seen from the major scale. */
    Degree degree() {
        return key.degreeOf(chord.root());
    }

    /** Half steps by which the root leaves the key's own degree of that number. */
    int change() {
        return degree().alteration() - key.mode().degree(degree().number()).alteration();
    }

    /** The key's own chord on that degree. */
    Chord own() {
        return DiatonicTriads.triad(degree().number(), key);
    }

    /** The same kind of chord on the key's own degree. */
    Chord onNaturalRoot() {
        return new Chord(key.note(degree().number()), chord.kind());
    }

    /** The root moved, the other tones left where the key has them. */
    List<NoteName> rootOnly() {
        int number = degree().number();
        return Stream.iterate(0, third -> third + 1)
                .limit(chord.tones().size())
                .map(third -> third == 0 ? chord.root() : key.note((number - 1 + 2 * third) % 7 + 1))
                .toList();
    }

    /** {@code major} for a triad, for a chord with a seventh what stands behind its root: {@code m7♭5}. */
    Phrase kind() {
        return isTriad() ? MusicWords.quality(chord.kind().quality()) : Phrase.of("{0}", chord.kind());
    }

    boolean isTriad() {
        ChordKind kind = chord.kind();
        return kind.equals(kind.triad()) && kind.intervals().size() == 3;
    }

    /** As it is said of a chord: {@code major}, {@code of the m7♭5 kind}. */
    Phrase kindInWords() {
        return isTriad() ? kind() : Phrase.of("of the {0} kind", kind());
    }

    /** {@code the major chord on the lowered sixth}; where another note than the root lies lowest, that too. */
    Phrase inWords() {
        return chord.isInverted()
                ? Phrase.of("the {0} chord on the {1}, its bass as the figures say", kind(), degreeInWords())
                : Phrase.of("the {0} chord on the {1}", kind(), degreeInWords());
    }

    /** {@code lowered sixth}. */
    Phrase degreeInWords() {
        Phrase plain = MusicWords.ordinal(degree().number());
        return change() == 0 ? plain : change() < 0 ? Phrase.of("lowered {0}", plain) : Phrase.of("raised {0}", plain);
    }

    Phrase named() {
        return Phrase.of("{0} in {1}", numeral, key);
    }
}
