package monochord.practice.skill;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.harmony.melody.NoteChange;
import monochord.harmony.melody.Standing;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Clause;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/**
 * A note over a chord as a subject, both counted in the key.
 *
 * @param mend whether another note is asked for
 */
record TuneSubject(boolean mend, NoteName note, Chord chord, Key key) {
    private static final Pattern TEXT = Pattern.compile("\\s*(mend\\s+)?(\\S+)\\s+over\\s+(\\S+)\\s*");
    private static final String WHAT = "a note over a chord";
    private static final String EXAMPLE = "3 over bVI";

    /** @throws Unreadable if it is none, or a note to mend does not clash */
    static TuneSubject parse(String subject, Key key) {
        Matcher text = TEXT.matcher(subject);
        if (!text.matches()) {
            throw Unreadable.because(subject, 0, WHAT, "expected a degree or a note, over, and a chord", EXAMPLE);
        }
        boolean mend = text.group(1) != null;
        NoteName note = within(subject, text.start(2), () -> note(text.group(2), key));
        Chord chord = within(subject, text.start(3), () -> chord(text.group(3), key));
        TuneSubject about = new TuneSubject(mend, note, chord, key);
        if (mend && (about.standing() != Standing.CLASH || about.changes().isEmpty())) {
            throw Unreadable.because(
                    subject,
                    0,
                    "a note to mend",
                    Clause.of("{0} does not clash with {1}", note, chord),
                    "mend " + EXAMPLE);
        }
        return about;
    }

    private static <T> T within(String whole, int place, java.util.function.Supplier<T> reading) {
        try {
            return reading.get();
        } catch (Unreadable unreadable) {
            throw unreadable.within(whole, place);
        }
    }

    private static NoteName note(String text, Key key) {
        boolean letter = "ABCDEFGacdefg".indexOf(text.charAt(0)) >= 0;
        return letter ? NoteName.parse(text) : key.note(Degree.parse(text));
    }

    private static Chord chord(String text, Key key) {
        try {
            return Numeral.parse(text).in(key);
        } catch (Unreadable asNumeral) {
            return symbol(text, asNumeral);
        }
    }

    private static Chord symbol(String text, Unreadable asNumeral) {
        try {
            return Chord.parse(text);
        } catch (Unreadable asSymbol) {
            throw asSymbol.place() >= asNumeral.place() ? asSymbol : asNumeral;
        }
    }

    Standing standing() {
        return Standing.of(note, chord);
    }

    /** Whether the tune goes on a step down: what is told of it, so that a suspension is known by where it goes. */
    boolean falls() {
        return standing() == Standing.CHORD_TONE || standing() == Standing.SUSPENSION_ONLY;
    }

    /** The note a step below: the third where a fourth is suspended over it, else the key's own. */
    NoteName below() {
        int under = (key.degreeOf(note).number() + 5) % 7 + 1;
        NoteName own = key.note(under);
        return chord.tones().stream()
                .filter(tone -> tone.letter() == own.letter())
                .findFirst()
                .orElse(own);
    }

    /** Every near note that fits, the nearest first. */
    List<NoteChange> changes() {
        return NoteChange.all(new Pitch(note, 4), chord, key);
    }

    /** The tone of the chord with the note's letter and another accidental. */
    Optional<NoteName> sameLetter() {
        return chord.tones().stream()
                .filter(tone -> tone.letter() == note.letter() && !tone.equals(note))
                .findFirst();
    }

    String text() {
        return (mend ? "mend " : "") + key.degreeOf(note) + " over " + Numeral.onDegree(chord, key);
    }
}
