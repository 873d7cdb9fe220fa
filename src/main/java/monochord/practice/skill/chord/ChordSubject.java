package monochord.practice.skill.chord;

import java.util.List;
import java.util.Locale;
import monochord.practice.Topic;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Clause;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/**
 * A chord to spell: a suffix stands for it on the tonic of the key ({@code maj7}), a symbol or a numeral names its root.
 *
 * @param text its canonical text
 * @param key the key asked in, or the one on the root that a symbol names
 */
record ChordSubject(Chord chord, String text, Key key) {
    private static final int LONGEST_SUFFIX = 8;

    /**
     * @param suffixes what is read as a suffix
     * @param what what is asked here, with its article
     * @throws Unreadable if the text is no chord
     */
    static ChordSubject parse(String subject, Key key, List<String> suffixes, String what, String example) {
        String text = subject.strip();
        if (text.length() <= LONGEST_SUFFIX && suffixes.contains(text.toLowerCase(Locale.ROOT))) {
            String suffix = text.toLowerCase(Locale.ROOT);
            return new ChordSubject(new Chord(key.tonic(), ChordKind.parse(suffix)), suffix, key);
        }
        try {
            Chord chord = Chord.parse(text);
            return new ChordSubject(chord, chord.toString(), keyOn(chord));
        } catch (Unreadable asSymbol) {
            return numeral(text, key, asSymbol, what, example);
        }
    }

    private static ChordSubject numeral(String text, Key key, Unreadable asSymbol, String what, String example) {
        try {
            Numeral numeral = Numeral.parse(text);
            return new ChordSubject(numeral.in(key), numeral.toString(), key);
        } catch (Unreadable asNumeral) {
            boolean symbol = asSymbol.place() > 0;
            throw Unreadable.because(
                    text,
                    0,
                    what,
                    symbol ? asSymbol.trouble() : Clause.of("name it by its symbol or its numeral"),
                    example);
        }
    }

    private static Key keyOn(Chord chord) {
        return chord.kind().holds(Interval.MINOR_THIRD) ? Key.minor(chord.root()) : Key.major(chord.root());
    }

    Topic topic(String skill) {
        return new Topic(skill, text, key);
    }
}
