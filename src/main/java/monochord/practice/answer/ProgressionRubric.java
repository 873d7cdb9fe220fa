package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.ProgressionReading;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/**
 * Judges a row of chords in a key, answered by name or by number. Where a chord of the row has a bass of its own, that is
 * part of the answer; else the bass is left open.
 */
public final class ProgressionRubric extends Rubric<List<Chord>> {
    private final Key key;
    private final boolean byNumber;

    private ProgressionRubric(
            List<Chord> wanted, Key key, boolean byNumber, Supplier<List<ModelledError<List<Chord>>>> errors) {
        super(wanted, errors);
        this.key = key;
        this.byNumber = byNumber;
    }

    public static ProgressionRubric names(
            List<Chord> wanted, Key key, Supplier<List<ModelledError<List<Chord>>>> errors) {
        return new ProgressionRubric(wanted, key, false, errors);
    }

    public static ProgressionRubric numbers(
            List<Chord> wanted, Key key, Supplier<List<ModelledError<List<Chord>>>> errors) {
        return new ProgressionRubric(wanted, key, true, errors);
    }

    @Override
    String what() {
        return byNumber ? "a row of numbers" : "a row of chord names";
    }

    @Override
    String example() {
        return byNumber ? example("1 6- 4 5", "1 5 6- 4") : example("Eb Cm Ab Bb", "D Bm G A");
    }

    @Override
    List<Chord> read(String plain) {
        return byNumber
                ? ProgressionReading.numbers(plain, key, example())
                : ProgressionReading.symbols(plain, example());
    }

    @Override
    String write(List<Chord> answer) {
        return answer.stream()
                .map(chord -> byNumber ? BandNumber.write(chord, key, Signs.ASCII) : chord.write(Signs.ASCII))
                .collect(Collectors.joining(" "));
    }

    private Phrase say(Chord chord) {
        return byNumber ? number(chord) : Phrase.of("{0}", chord);
    }

    private Phrase number(Chord chord) {
        return Phrase.of("{0}", BandNumber.of(chord, key));
    }

    private Phrase row() {
        return Phrase.row(wanted().stream().map(this::say).toList());
    }

    @Override
    boolean same(List<Chord> one, List<Chord> other) {
        return one.size() == other.size()
                && IntStream.range(0, one.size()).allMatch(i -> same(one.get(i), other.get(i), wantsBass(other, i)));
    }

    /** The right chords on another bass are told of their bass, whatever else leads there. */
    @Override
    boolean fits(List<Chord> given, List<Chord> error) {
        return same(given, error) && !isBassAlone(given);
    }

    private boolean isBassAlone(List<Chord> given) {
        return given.size() == wanted().size()
                && IntStream.range(0, given.size()).allMatch(i -> same(given.get(i), wanted().get(i), false));
    }

    private boolean wantsBass(List<Chord> row, int place) {
        return row.get(place).isInverted()
                || place < wanted().size() && wanted().get(place).isInverted();
    }

    private static boolean same(Chord one, Chord other, boolean withBass) {
        return one.root().equals(other.root())
                && one.kind().equals(other.kind())
                && (!withBass || one.bass().equals(other.bass()));
    }

    @Override
    Verdict accept(List<Chord> given) {
        return verdict(Grade.RIGHT, Phrase.sentence("Yes: {0}.", row()));
    }

    @Override
    Optional<List<Chord>> bySound() {
        return byNumber
                ? Optional.empty()
                : Optional.of(wanted().stream()
                        .map(chord -> OtherSpelling.inCharts(chord).orElse(chord))
                        .toList());
    }

    @Override
    boolean soundsRight(List<Chord> given) {
        return !byNumber
                && given.size() == wanted().size()
                && IntStream.range(0, given.size()).allMatch(i -> soundAlike(given.get(i), wanted().get(i)))
                && IntStream.range(0, given.size())
                        .anyMatch(
                                i -> !given.get(i).root().equals(wanted().get(i).root()));
    }

    private static boolean soundAlike(Chord given, Chord due) {
        boolean bass = !due.isInverted() || given.bass().soundsLike(due.bass());
        return bass && given.over(given.root()).soundsLike(due.over(due.root()));
    }

    private List<Integer> off(List<Chord> given) {
        return IntStream.range(0, given.size())
                .filter(i -> !ChordDifference.of(given.get(i), wanted().get(i)).isNothing())
                .boxed()
                .toList();
    }

    @Override
    Grade grade(List<Chord> given) {
        boolean one = given.size() == wanted().size() && off(given).size() == 1;
        return one && given.size() > 1 && (given.size() > 2 || isRoot(given)) ? Grade.NEARLY : Grade.WRONG;
    }

    private boolean isRoot(List<Chord> given) {
        int place = off(given).get(0);
        return given.get(place).root().equals(wanted().get(place).root());
    }

    @Override
    Verdict otherwise(List<Chord> given) {
        if (given.size() != wanted().size()) {
            boolean few = given.size() < wanted().size();
            return verdict(
                    Grade.WRONG,
                    few ? Misconception.MISSING_NOTE : Misconception.EXTRA_NOTE,
                    Phrase.sentence(
                            "There are {0} chords in the row, and you gave {1}.",
                            Phrase.number(wanted().size()), Phrase.number(given.size())));
        }
        return soundsRight(given)
                ? verdict(Grade.NEARLY, Misconception.SPELLED_BY_SOUND, respelled(given))
                : off(given, off(given).get(0));
    }

    private Phrase respelled(List<Chord> given) {
        List<Integer> off = off(given);
        Chord due = wanted().get(off.get(0));
        Phrase chart = OtherSpelling.inCharts(due)
                .map(printed -> Phrase.sentence("A chart may well print {0}.", printed))
                .orElse(Phrase.NOTHING);
        return Phrase.counted(
                        off.size(),
                        "The right keys; one name has another letter.",
                        "The right keys; {0} names have other letters.",
                        Phrase.number(off.size()))
                .then(Phrase.sentence(
                        "In {0} the {1} is some kind of {2}.",
                        key, number(due), NoteName.of(due.root().letter(), 0)))
                .then(chart);
    }

    private Verdict off(List<Chord> given, int first) {
        ChordDifference difference = ChordDifference.of(given.get(first), wanted().get(first));
        boolean bassAlone = difference.isRootRight() && difference.isKindRight();
        boolean oneAlone = grade(given) == Grade.NEARLY && given.size() > 2;
        if (bassAlone) {
            Phrase chord = oneAlone
                    ? Phrase.sentence("All but one are right. Look at chord {0}.", first + 1)
                    : Phrase.sentence("Look first at chord {0}.", first + 1);
            return verdict(grade(given), difference.misconception(), chord.then(half(difference)));
        }
        Phrase where = oneAlone
                ? Phrase.sentence("All but one are right. Look at chord {0}: {1}.", first + 1, isNot(difference))
                : Phrase.sentence("Look first at chord {0}: {1}.", first + 1, isNot(difference));
        return verdict(grade(given), difference.misconception(), where.then(half(difference)));
    }

    private Phrase isNot(ChordDifference difference) {
        Chord found = difference.given();
        return byNumber
                ? Phrase.of("{0} in {1} is not {2}", difference.due(), key, say(found))
                : Phrase.of("the {0} of {1} is not {2}", number(difference.due()), key, found);
    }

    private Phrase half(ChordDifference difference) {
        if (!difference.isRootRight()) {
            return Phrase.NOTHING;
        }
        return difference.misconception() == Misconception.WRONG_QUALITY
                ? byNumber
                        ? Phrase.sentence(
                                "The degree is right, the quality is not: a minus or small letters say minor.")
                        : Phrase.sentence("The degree is right, the quality is not.")
                : difference.said();
    }

    @Override
    List<Phrase> helpFrom(List<Chord> given) {
        if (given.size() != wanted().size() || soundsRight(given)) {
            return List.of();
        }
        int first = off(given).get(0);
        ChordDifference difference = ChordDifference.of(given.get(first), wanted().get(first));
        Phrase before = first == 0
                ? Phrase.sentence("Look at the first chord.")
                : Phrase.counted(
                        first,
                        "The first chord is right. Look at the next.",
                        "The first {0} chords are right. Look at the next.",
                        Phrase.number(first));
        return difference.isRootRight()
                ? List.of(
                        before,
                        Phrase.sentence("Its root is right. Look at its quality and its bass."),
                        tones(difference))
                : List.of(before, Phrase.sentence("Its root is not right."), counted(difference.due()));
    }

    private Phrase tones(ChordDifference difference) {
        return difference.isKindRight()
                ? Phrase.sentence("Its lowest note is not its root.")
                : Phrase.sentence("Measure its third from the root: three half steps are minor, four are major.");
    }

    private Phrase counted(Chord due) {
        Degree degree = key.degreeOf(due.root());
        int change = degree.alteration() - key.mode().degree(degree.number()).alteration();
        Phrase ordinal = MusicWords.ordinal(degree.number());
        if (byNumber) {
            return Phrase.sentence(
                    "Count letters from {0} as 1 up to {1}, then compare with the key.", key.tonic(), due.root());
        }
        return change == 0
                ? Phrase.sentence("Count from {0} as 1 up to the {1}.", key.tonic(), ordinal)
                : change < 0
                        ? Phrase.sentence(
                                "Count from {0} as 1 up to the {1}, then a half step down.", key.tonic(), ordinal)
                        : Phrase.sentence(
                                "Count from {0} as 1 up to the {1}, then a half step up.", key.tonic(), ordinal);
    }
}
