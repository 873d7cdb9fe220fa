package monochord.practice.skill.ear;

import java.util.List;
import java.util.stream.Collectors;
import monochord.harmony.Progression;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Clause;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * A row of chords to be heard in a key.
 *
 * <p>Text form: any progression without bars; {@link #toString} writes numerals, such as {@code I bVI bVII I}.
 *
 * @param chords each over its root
 */
record RowSubject(List<Chord> chords, Key key) {
    private static final int LONGEST = 16;
    private static final int MOST_TONES = 4;

    /** From easy to awkward: the key's own chords first, then borrowed ones among them. */
    private static final List<String> IN_MAJOR = List.of(
            "I IV V I",
            "I V IV I",
            "I vi IV V",
            "I V vi IV",
            "I ii V I",
            "vi IV I V",
            "I iii IV V",
            "I bVII IV I",
            "I IV iv I",
            "I bVI bVII I",
            "I bIII IV I",
            "I V bVI V",
            "I vi iv I",
            "IV I bVI V",
            "I bVII bVI V",
            "I iii iv V");

    private static final List<String> IN_MINOR = List.of(
            "i iv V i",
            "i VII VI V",
            "i VI VII i",
            "i VI III VII",
            "i v iv i",
            "i iv VII III",
            "i iio V i",
            "i IV VI V");

    RowSubject {
        chords = chords.stream()
                .map(chord -> new Chord(chord.root(), chord.kind()))
                .toList();
    }

    /** @throws Unreadable if it is no progression, or too long to keep in mind */
    static RowSubject parse(String subject, Key key) {
        List<Chord> chords = Progression.parse(subject, key).chords();
        if (chords.size() > LONGEST || chords.size() < 2) {
            throw Unreadable.because(
                    subject,
                    0,
                    "a row of chords to hear",
                    Clause.of("from two to {0} are played", LONGEST),
                    "I bVI bVII I");
        }
        if (chords.stream().anyMatch(chord -> chord.kind().intervals().size() > MOST_TONES)) {
            throw Unreadable.because(
                    subject, 0, "a row of chords to hear", "triads and sevenths are heard", "I bVI bVII I");
        }
        return new RowSubject(chords, key);
    }

    static List<String> all(Key key) {
        return key.isMinor() ? IN_MINOR : IN_MAJOR;
    }

    RowSubject with(List<Chord> others) {
        return new RowSubject(others, key);
    }

    /** The same for a sentence. */
    Phrase numerals() {
        return Phrase.row(
                chords.stream().map(chord -> Numeral.onDegree(chord, key)).toList());
    }

    String numerals(Signs signs) {
        return chords.stream().map(chord -> numeral(chord, key, signs)).collect(Collectors.joining(" "));
    }

    static String numeral(Chord chord, Key key, Signs signs) {
        return Numeral.onDegree(chord, key).write(signs);
    }

    @Override
    public String toString() {
        return numerals(Signs.ASCII);
    }
}
