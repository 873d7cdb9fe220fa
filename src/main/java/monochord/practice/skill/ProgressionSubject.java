package monochord.practice.skill;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import monochord.harmony.Progression;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** A row of chords as a subject, by number, numeral or name; its canonical text is in numbers. */
record ProgressionSubject(List<Chord> chords, Key key) {
    private static final int LONGEST = 16;
    private static final List<String> IN_MAJOR = List.of(
            "1 4 5 1",
            "4 1 5 6-",
            "1 6- 4 5",
            "1 4 2- 5 1",
            "1 3- 4 5 1",
            "1 b7 4 1",
            "4 1 5 b6 5 1",
            "1 b6 b7 1",
            "1 b3 4 4- 1");
    private static final List<String> IN_MINOR = List.of("1- 4- 5 1-", "1- 6 7 1-", "1- 6 3 7");

    /** @throws Unreadable if it is no progression, or too long for one question */
    static ProgressionSubject parse(String subject, Key key) {
        List<Chord> chords = Progression.parse(subject, key).chords();
        if (chords.size() > LONGEST) {
            throw Unreadable.because(
                    subject,
                    0,
                    "a row of chords to ask",
                    Clause.of("at most {0} are asked at once", LONGEST),
                    "4 1 5 b6 5 1");
        }
        return new ProgressionSubject(
                chords.stream()
                        .map(chord -> new Chord(chord.root(), chord.kind()))
                        .toList(),
                key);
    }

    static List<String> all(Key key) {
        return key.isMinor() ? IN_MINOR : IN_MAJOR;
    }

    String numbers(Signs signs) {
        return write(chord -> BandNumber.write(chord, key, signs));
    }

    /** The same for a sentence. */
    Phrase numbers() {
        return Phrase.row(
                chords.stream().map(chord -> BandNumber.of(chord, key)).toList());
    }

    String names(Signs signs) {
        return write(chord -> chord.write(signs));
    }

    private String write(Function<Chord, String> name) {
        return chords.stream().map(name).collect(Collectors.joining(" "));
    }

    private List<Chord> each(UnaryOperator<Chord> change) {
        return chords.stream().map(change).toList();
    }

    /** Every chord moved by the same interval. */
    List<Chord> moved(Interval by) {
        return each(chord -> chord.plus(by));
    }

    /** The roots without their accidentals. */
    List<Chord> letters() {
        return each(chord -> new Chord(DiatonicTriads.bare(chord.root()), chord.kind()));
    }

    /** Altered roots back on the key's own degree, with the key's own chord. */
    List<Chord> unaltered() {
        return each(chord -> key.holds(chord.root())
                ? chord
                : DiatonicTriads.triad(degree(chord).number(), key));
    }

    /** Altered roots back on the key's own degree, the quality kept. */
    List<Chord> unalteredRoots() {
        return each(chord -> new Chord(key.note(degree(chord).number()), chord.kind()));
    }

    /** These chords as numbers without a quality say them: the key's own chord wherever the root belongs to the key. */
    List<Chord> plain(List<Chord> others) {
        return others.stream()
                .map(chord -> key.holds(chord.root())
                        ? DiatonicTriads.triad(degree(chord).number(), key)
                        : chord)
                .toList();
    }

    /** The quality of the tonic chord on every root. */
    List<Chord> alike() {
        ChordKind kind = DiatonicTriads.triad(1, key).kind();
        return each(chord -> new Chord(chord.root(), kind));
    }

    /** Each chord one degree further. */
    List<Chord> oneFurther() {
        List<Chord> further = new ArrayList<>();
        for (Chord chord : chords) {
            int change = degree(chord).alteration()
                    - key.mode().degree(degree(chord).number()).alteration();
            Chord next = DiatonicTriads.next(degree(chord).number(), key);
            NoteName root = NoteName.at(next.root().fifths() + 7 * change);
            further.add(change == 0 ? next : new Chord(root, chord.kind()));
        }
        return further;
    }

    Degree degree(Chord chord) {
        return key.degreeOf(chord.root());
    }

    /** The chord that is hardest to find: the last one from outside the key, else the last that is not the tonic's. */
    Chord hardest() {
        Chord hardest = chords.get(chords.size() - 1);
        for (Chord chord : chords) {
            boolean outside = !key.holds(chord.root())
                    || key.holds(hardest.root()) && !chord.root().equals(key.tonic());
            hardest = outside ? chord : hardest;
        }
        return hardest;
    }
}
