package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.DegreeReading;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/** Judges the degree a chord stands on, answered as a numeral or a number; figures are part of it. */
public final class DegreeRubric extends Rubric<Numeral> {
    private final Key key;
    private final Chord chord;
    private final Phrase way;

    /** @param way a sentence that points the way and stops short of the numeral */
    public DegreeRubric(Chord chord, Key key, Phrase way, Supplier<List<ModelledError<Numeral>>> errors) {
        super(Numeral.onDegree(chord, key), errors);
        this.key = key;
        this.chord = chord;
        this.way = way;
    }

    @Override
    String what() {
        return "a numeral or a number";
    }

    @Override
    String example() {
        return example("bVII", "ii");
    }

    @Override
    Numeral read(String plain) {
        try {
            return DegreeReading.read(plain, key);
        } catch (Unreadable unreadable) {
            boolean name = "ABCDEFG".indexOf(plain.charAt(0)) >= 0;
            Clause why = Clause.of(
                    name
                            ? "it begins like the name of a chord; say the degree"
                            : "numerals are I to VII or i to vii, numbers 1 to 7");
            throw Unreadable.because(plain, 0, what(), why, example());
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
        return a.root().equals(b.root())
                && a.kind().equals(b.kind())
                && (isOtherName(one) || a.bass().equals(b.bass()));
    }

    /** A name of its own that brings its bass along, such as that of the Neapolitan chord. */
    private boolean isOtherName(Numeral given) {
        return given.form() != wanted().form();
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
                Phrase.sentence(
                        "Yes. Some write {0} and leave the seventh to the key; {1} says that it is the major one.",
                        given, wanted()));
    }

    @Override
    Verdict accept(Numeral given) {
        boolean otherName = isOtherName(given)
                || given.alteration() != wanted().alteration()
                || given.target() != null
                || !given.bass().equals(wanted().bass());
        return otherName
                ? verdict(
                        Grade.REMARK,
                        Phrase.sentence("Yes, {0} is another name for it. By its degree it is {1}.", given, wanted()))
                : verdict(Grade.RIGHT, Phrase.sentence("Yes: in {0} {1} is {2}.", key, chord, wanted()));
    }

    @Override
    Verdict otherwise(Numeral given) {
        Chord there = given.in(key);
        ChordDifference difference = ChordDifference.of(there, chord);
        if (!difference.isRootRight()) {
            return verdict(
                    Grade.WRONG,
                    Misconception.WRONG_DEGREE,
                    Phrase.sentence("{0} in {1} is {2}.", given, key, there).then(way));
        } else if (difference.isKindRight()) {
            return verdict(Grade.NEARLY, Misconception.WRONG_BASS, bass(there));
        }
        return isCaseAlone(given) ? ofCase(there) : verdict(Grade.NEARLY, difference.misconception(), kind(difference));
    }

    private Phrase bass(Chord there) {
        return chord.isInverted()
                ? Phrase.sentence(
                        "The degree is right; the figures would put {0} in the bass, and {1} has another.",
                        there.bass(), chord)
                : Phrase.sentence(
                        "The degree is right; the figures put {0} in the bass, and {1} stands on its root.",
                        there.bass(), chord);
    }

    private Phrase kind(ChordDifference difference) {
        Chord there = difference.given();
        return difference.misconception() == Misconception.WRONG_QUALITY
                ? Phrase.sentence("The degree is right. It would be {0}, and here it is {1}.", there, chord)
                : Phrase.sentence("The degree is right.")
                        .then(
                                difference.misconception() == Misconception.MISSING_NOTE
                                        ? Phrase.sentence(
                                                "{0} has {1} besides: say so.",
                                                chord,
                                                ChordDifference.missing(
                                                        chord,
                                                        difference.notes().missing()))
                                        : Phrase.sentence(
                                                "It would be {0}, with {1} too many.",
                                                there,
                                                Phrase.list(difference.notes().strange())));
    }

    /** Whether a capital and a small letter alone tell it from the answer. */
    private boolean isCaseAlone(Numeral given) {
        return given.toString().equalsIgnoreCase(wanted().toString());
    }

    private Verdict ofCase(Chord there) {
        Phrase rule = Character.isLowerCase(
                        wanted().toString().replaceAll("[^IViv]", "").charAt(0))
                ? Phrase.sentence(
                        "The degree is right. Capitals would be {0}; a small third takes small letters.", there)
                : Phrase.sentence(
                        "The degree is right. Small letters would be {0}; a major third takes capitals.", there);
        return verdict(Grade.NEARLY, Misconception.WRONG_QUALITY, rule);
    }

    @Override
    List<Phrase> helpFrom(Numeral given) {
        ChordDifference difference = ChordDifference.of(given.in(key), chord);
        if (!difference.isRootRight()) {
            return List.of();
        } else if (difference.isKindRight()) {
            return List.of(
                    Phrase.sentence("The degree is right. Look at the bass of {0}.", chord),
                    Phrase.sentence("With the third lowest the figure is 6; with the fifth lowest it is 64."),
                    Phrase.sentence("With a seventh in it, they are 65, 43 and 42 from the third up."));
        }
        return List.of(
                Phrase.sentence("The degree is right. Look at the quality of {0}.", chord),
                Phrase.sentence("Capitals say a major third, small letters a minor one."),
                Phrase.sentence(
                        "{0} is {1}: measure its third, and see whether there is a seventh.",
                        chord, Phrase.row(chord.tones())));
    }
}
