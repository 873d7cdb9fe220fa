package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.ProgressionReading;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Signs;

/** Judges a row of chords in a key, answered by name or by number; the bass is left open. */
public final class ProgressionRubric extends Rubric<List<Chord>> {
    private final Key key;
    private final boolean byNumber;

    private ProgressionRubric(List<Chord> wanted, Key key, boolean byNumber, Supplier<List<Slip<List<Chord>>>> slips) {
        super(wanted, slips);
        this.key = key;
        this.byNumber = byNumber;
    }

    public static ProgressionRubric names(List<Chord> wanted, Key key, Supplier<List<Slip<List<Chord>>>> slips) {
        return new ProgressionRubric(wanted, key, false, slips);
    }

    public static ProgressionRubric numbers(List<Chord> wanted, Key key, Supplier<List<Slip<List<Chord>>>> slips) {
        return new ProgressionRubric(wanted, key, true, slips);
    }

    @Override
    List<Chord> read(String text) {
        String example = byNumber ? example("1 6- 4 5", "1 5 6- 4") : example("Eb Cm Ab Bb", "D Bm G A");
        String plain = AnswerText.plain(text, byNumber ? "a row of numbers" : "a row of chord names", example);
        return byNumber ? ProgressionReading.numbers(plain, key, example) : ProgressionReading.symbols(plain, example);
    }

    @Override
    String write(List<Chord> answer) {
        return write(answer, Signs.ASCII);
    }

    private String write(List<Chord> answer, Signs signs) {
        return answer.stream().map(chord -> write(chord, signs)).collect(Collectors.joining(" "));
    }

    private String write(Chord chord, Signs signs) {
        return byNumber ? BandNumber.write(chord, key, signs) : chord.write(signs);
    }

    @Override
    boolean same(List<Chord> one, List<Chord> other) {
        return one.size() == other.size()
                && IntStream.range(0, one.size()).allMatch(i -> same(one.get(i), other.get(i)));
    }

    private static boolean same(Chord one, Chord other) {
        return one.root().equals(other.root()) && one.kind().equals(other.kind());
    }

    @Override
    Verdict accept(List<Chord> given) {
        return verdict(Grade.RIGHT, "Yes: " + write(wanted(), Signs.MUSIC) + ".");
    }

    @Override
    Optional<List<Chord>> bySound() {
        return byNumber
                ? Optional.empty()
                : Optional.of(wanted().stream()
                        .map(chord -> Chart.print(chord).orElse(chord))
                        .toList());
    }

    @Override
    boolean soundsRight(List<Chord> given) {
        return !byNumber
                && given.size() == wanted().size()
                && IntStream.range(0, given.size()).allMatch(i -> soundAlike(given.get(i), wanted().get(i)));
    }

    private static boolean soundAlike(Chord given, Chord due) {
        return given.over(given.root()).soundsLike(due);
    }

    @Override
    Grade grade(List<Chord> given) {
        long off = given.size() != wanted().size()
                ? 2
                : IntStream.range(0, given.size())
                        .filter(i -> !same(given.get(i), wanted().get(i)))
                        .count();
        return off == 1 && given.size() > 2 ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict otherwise(List<Chord> given) {
        if (given.size() != wanted().size()) {
            boolean few = given.size() < wanted().size();
            return verdict(
                    Grade.WRONG,
                    few ? Misconception.MISSING_NOTE : Misconception.EXTRA_NOTE,
                    "There are " + Say.count(wanted().size()) + " chords in the row, and you gave "
                            + Say.count(given.size()) + ".");
        }
        int first = IntStream.range(0, given.size())
                .filter(i -> !same(given.get(i), wanted().get(i)))
                .findFirst()
                .orElse(0);
        return soundsRight(given)
                ? verdict(Grade.NEARLY, Misconception.SPELLED_BY_SOUND, spelled(wanted().get(first)))
                : off(given, first);
    }

    private String spelled(Chord due) {
        return "The right keys; one name has another letter. In " + Say.key(key) + " the " + number(due)
                + " is some kind of " + due.root().letter() + "."
                + Chart.print(due)
                        .map(printed -> " A chart may well print " + Say.chord(printed) + ".")
                        .orElse("");
    }

    private Verdict off(List<Chord> given, int first) {
        Chord due = wanted().get(first);
        Chord found = given.get(first);
        boolean root = due.root().equals(found.root());
        String all = grade(given) == Grade.NEARLY ? "All but one are right. Look at chord " : "Look first at chord ";
        String what = byNumber
                ? Say.chord(due) + " in " + Say.key(key) + " is not " + write(found, Signs.MUSIC)
                : "the " + number(due) + " of " + Say.key(key) + " is not " + Say.chord(found);
        String half = root ? ". The degree is right, the quality is not." : ".";
        return verdict(
                grade(given),
                root ? Misconception.WRONG_QUALITY : Misconception.WRONG_DEGREE,
                all + (first + 1) + ": " + what + half);
    }

    private String number(Chord chord) {
        return BandNumber.write(chord, key, Signs.MUSIC);
    }
}
