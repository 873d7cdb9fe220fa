package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.DegreeReading;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Clause;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** Judges the degree a chord stands on, answered as a numeral or a number. */
public final class DegreeRubric extends Rubric<Numeral> {
    private static final String WHAT = "a numeral or a number";

    /** The six-four chord before a cadence, read as a delayed dominant. */
    private static final Pattern CADENTIAL = Pattern.compile("^V6/?4 ?[-–] ?5/?3$");

    private final Key key;
    private final Chord chord;
    private final String way;

    /** @param way a sentence that points the way and stops short of the numeral */
    public DegreeRubric(Chord chord, Key key, String way, Supplier<List<Slip<Numeral>>> slips) {
        super(Numeral.onDegree(chord, key), slips);
        this.key = key;
        this.chord = chord;
        this.way = way;
    }

    @Override
    Numeral read(String text) {
        String example = example("bVII", "ii");
        String plain = AnswerText.plain(text, WHAT, example);
        try {
            return DegreeReading.read(CADENTIAL.matcher(plain).replaceFirst("Cad64"), key);
        } catch (Unreadable unreadable) {
            boolean name = "ABCDEFG".indexOf(plain.charAt(0)) >= 0;
            Clause why = Clause.of(
                    name ? "it begins like the name of a chord" : "numerals are I to VII or i to vii, numbers 1 to 7");
            throw Unreadable.because(plain, 0, WHAT, why, example);
        }
    }

    @Override
    String write(Numeral answer) {
        return answer.toString();
    }

    @Override
    boolean same(Numeral one, Numeral other) {
        Chord a = one.in(key);
        Chord b = other.in(key);
        return a.root().equals(b.root()) && (a.kind().equals(b.kind()));
    }

    /** {@code I7} is often written for the key's own {@code Imaj7}. */
    @Override
    boolean isAlso(Numeral given) {
        return wanted().kind().equals(ChordKind.MAJOR_SEVENTH)
                && given.kind().equals(ChordKind.DOMINANT_SEVENTH)
                && given.in(key).root().equals(chord.root());
    }

    @Override
    Verdict acceptAlso(Numeral given) {
        return verdict(
                Grade.REMARK,
                "Yes. Some write " + given.write(Signs.MUSIC) + " and leave the seventh to the key; "
                        + wanted().write(Signs.MUSIC) + " says that it is the major one.");
    }

    @Override
    Verdict accept(Numeral given) {
        String wanted = wanted().write(Signs.MUSIC);
        boolean otherName = given.form() != wanted().form()
                || given.alteration() != wanted().alteration()
                || given.target() != null;
        return otherName || !given.bass().equals(wanted().bass())
                ? verdict(
                        Grade.REMARK,
                        "Yes, " + given.write(Signs.MUSIC) + " is another name for it. By its degree it is " + wanted
                                + ".")
                : verdict(Grade.RIGHT, "Yes: in " + Say.key(key) + " " + Say.chord(chord) + " is " + wanted + ".");
    }

    @Override
    Verdict otherwise(Numeral given) {
        Chord there = given.in(key);
        if (there.root().equals(chord.root())) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.WRONG_QUALITY,
                    "The degree is right. " + given.write(Signs.MUSIC) + " would be " + Say.chord(there)
                            + ", and here it is " + Say.chord(chord) + ".");
        }
        return verdict(
                Grade.WRONG,
                Misconception.WRONG_DEGREE,
                given.write(Signs.MUSIC) + " in " + Say.key(key) + " is " + Say.chord(there) + ". " + way);
    }
}
