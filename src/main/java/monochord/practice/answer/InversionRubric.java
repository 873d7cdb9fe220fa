package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.ChordReading;
import monochord.practice.reading.DegreeReading;
import monochord.practice.reading.NoteReading;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** Judges a chord named with its bass: {@code C/E}, {@code C first inversion}, or by its numeral in the key. */
public final class InversionRubric extends Rubric<Chord> {
    private final Key key;

    /**
     * @param chord with one of its own tones in the bass
     * @param key in which a numeral is read
     */
    public InversionRubric(Chord chord, Key key, Supplier<List<ModelledError<Chord>>> errors) {
        super(chord, errors);
        this.key = key;
    }

    /** A slash chord that is not the answer. */
    public static Chord exampleFor(Chord chord) {
        Chord first = Chord.parse("F/A");
        return chord.equals(first) ? Chord.parse("G/B") : first;
    }

    @Override
    String what() {
        return "a chord with its bass";
    }

    @Override
    String example() {
        return exampleFor(wanted()).write(Signs.ASCII);
    }

    @Override
    Chord read(String plain) {
        try {
            return DegreeReading.isNumeral(plain)
                    ? DegreeReading.read(plain, key).in(key)
                    : ChordReading.symbol(plain);
        } catch (Unreadable unreadable) {
            Clause why = Clause.of(
                    isNotes(plain)
                            ? "those are notes; name the chord, and its lowest note behind a slash"
                            : "name the chord, and its lowest note behind a slash");
            throw Unreadable.because(plain, 0, what(), why, example());
        }
    }

    private boolean isNotes(String plain) {
        try {
            return NoteReading.read(plain, example()).size() > 1;
        } catch (Unreadable unreadable) {
            return false;
        }
    }

    @Override
    String write(Chord answer) {
        return answer.toString();
    }

    @Override
    boolean same(Chord one, Chord other) {
        return one.equals(other);
    }

    /** The same notes under another root, such as a sixth chord for a seventh chord. */
    @Override
    boolean isAlso(Chord given) {
        return given.soundsLike(wanted())
                && given.bass().equals(wanted().bass())
                && given.tones().containsAll(wanted().tones());
    }

    @Override
    Verdict acceptAlso(Chord given) {
        return verdict(
                Grade.REMARK,
                Phrase.sentence(
                        "Yes, {0} has these notes. In thirds they stand on {1}: {2}.",
                        given, wanted().root(), wanted()));
    }

    @Override
    Verdict accept(Chord given) {
        return verdict(
                Grade.RIGHT, Phrase.sentence("Yes: {0}, {1} with {2} in the bass.", given, given.root(), given.bass()));
    }

    @Override
    Grade grade(Chord given) {
        boolean near = given.root().equals(wanted().root()) || given.tones().equals(wanted().tones());
        return near ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    boolean soundsRight(Chord given) {
        return given.soundsLike(wanted()) && !given.root().equals(wanted().root());
    }

    @Override
    Verdict otherwise(Chord given) {
        Phrase thirds = Phrase.sentence("Stacked in thirds the notes are {0}.", Phrase.row(wanted().tones()));
        if (soundsRight(given)) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.SPELLED_BY_SOUND,
                    Phrase.sentence("The right keys under other names.").then(thirds));
        }
        ChordDifference difference = ChordDifference.of(given, wanted());
        return difference.isRootRight()
                ? verdict(
                        grade(given),
                        difference.misconception(),
                        Phrase.sentence("The root is right.").then(thirds))
                : verdict(
                        grade(given),
                        Misconception.WRONG_DEGREE,
                        Phrase.sentence("{0} has other notes.", given).then(thirds));
    }

    @Override
    List<Phrase> helpFrom(Chord given) {
        ChordDifference difference = ChordDifference.of(given, wanted());
        if (!difference.isRootRight()) {
            return List.of();
        }
        return difference.isKindRight()
                ? List.of(
                        Phrase.sentence("The chord is right. Look at the first note of the row."),
                        Phrase.sentence("The row is read from the bass up."),
                        Phrase.sentence("Behind the slash stands the note that comes first."))
                : List.of(
                        Phrase.sentence("The root is right. Count the notes of the row."),
                        Phrase.sentence("Measure them from the root, one by one."),
                        Phrase.sentence("Stacked in thirds they are {0}.", Phrase.row(wanted().tones())));
    }
}
