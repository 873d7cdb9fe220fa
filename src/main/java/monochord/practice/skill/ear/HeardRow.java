package monochord.practice.skill.ear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.answer.EarTask;
import monochord.practice.reading.AnswerReading;
import monochord.practice.reading.ProgressionReading;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/** A row of chords that was heard, answered in numbers, numerals or names; inversions are left open. */
final class HeardRow implements EarTask<List<Chord>> {
    private static final String WHAT = "a row of chords";
    private static final Pattern NAMES = Pattern.compile("[\\s|]*[A-G].*");

    private final RowSubject about;
    private final List<Chord> wanted;
    private final Key key;
    private final List<Chord> fromRelative;
    private final List<Chord> writtenInRelative;

    HeardRow(RowSubject about) {
        this.about = about;
        this.wanted = about.chords();
        this.key = about.key();
        Interval moved = key.relative().tonic().to(key.tonic());
        this.fromRelative = wanted.stream().map(chord -> chord.plus(moved)).toList();
        this.writtenInRelative = writtenInRelative();
    }

    @Override
    public List<Chord> read(String text) {
        String example = about.toString().startsWith("I ") ? "vi IV I V" : "I IV V I";
        return AnswerReading.read(text, WHAT, example, plain -> read(plain, example));
    }

    private List<Chord> read(String plain, String example) {
        List<Chord> read = NAMES.matcher(plain).matches()
                ? ProgressionReading.symbols(plain, example)
                : ProgressionReading.numbers(plain, key, example);
        List<Chord> given = read.stream()
                .map(chord -> new Chord(chord.root(), chord.kind()))
                .toList();
        boolean withTonic =
                given.size() == wanted.size() + 1 && given.get(0).root().equals(key.tonic());
        List<Chord> row = withTonic ? given.subList(1, given.size()) : given;
        if (row.size() != wanted.size()) {
            throw Unreadable.because(
                    plain,
                    0,
                    WHAT,
                    Clause.of(
                            row.size() == 1
                                    ? "{0} sounded behind the tonic, and here is one"
                                    : "{0} sounded behind the tonic, and here are {1}",
                            Phrase.number(wanted.size()),
                            Phrase.number(row.size())),
                    example);
        }
        return row;
    }

    @Override
    public String write(List<Chord> answer) {
        return about.with(answer).toString();
    }

    @Override
    public boolean same(List<Chord> one, List<Chord> other) {
        return one.equals(other);
    }

    @Override
    public boolean soundsRight(List<Chord> given) {
        return IntStream.range(0, wanted.size()).allMatch(i -> given.get(i).soundsLike(wanted.get(i)));
    }

    @Override
    public Phrase yes() {
        return Phrase.sentence("Yes: {0}, that is {1}.", about.numerals(), Phrase.row(wanted));
    }

    @Override
    public Phrase otherName(List<Chord> given) {
        return Phrase.sentence(
                "Yes, those are the chords. In {0} they are spelled {1}: {2}.",
                key, Phrase.row(wanted), about.numerals());
    }

    @Override
    public Phrase contrast(List<Chord> given) {
        PlaceDifference first = differences(given).get(0);
        return other(given)
                .then(Phrase.sentence("Chord {0}: {1}.", place(given) + 1, first.names()))
                .then(first.inWords())
                .then(Phrase.sentence("All of it: {0}.", about.numerals()));
    }

    private Phrase other(List<Chord> given) {
        if (isFromRelative(given)) {
            return Phrase.sentence(
                    "You counted from {0}, as if that were home; home is {1}, which sounded first.",
                    key.relative().tonic(), key.tonic());
        }
        int off = differences(given).size();
        return off == 1 ? Phrase.NOTHING : Phrase.sentence("{0} differ.", Phrase.number(off));
    }

    private int place(List<Chord> given) {
        return IntStream.range(0, wanted.size())
                .filter(i -> !given.get(i).soundsLike(wanted.get(i)))
                .findFirst()
                .orElseThrow();
    }

    private List<PlaceDifference> differences(List<Chord> given) {
        List<PlaceDifference> differences = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            if (!given.get(i).soundsLike(wanted.get(i))) {
                differences.add(new PlaceDifference(wanted.get(i), given.get(i), key));
            }
        }
        return differences;
    }

    /** What somebody hears who counts from the tonic of the relative key: the same chords, as degrees of this one. */
    List<Chord> fromRelative() {
        return fromRelative;
    }

    /** What such a one writes down: the relative's own numerals, which say other chords here. */
    private List<Chord> writtenInRelative() {
        String numerals = new RowSubject(wanted, key.relative()).toString();
        return ProgressionReading.numbers(numerals, key, "I IV V I");
    }

    private boolean isFromRelative(List<Chord> given) {
        return given.equals(fromRelative) || given.equals(writtenInRelative);
    }

    @Override
    public Grade grade(List<Chord> given) {
        return differences(given).size() == 1 && wanted.size() > 2 ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    public Optional<Misconception> misconception(List<Chord> given) {
        return isFromRelative(given)
                ? Optional.of(Misconception.WRONG_KEY)
                : differences(given).get(0).misconception();
    }

    @Override
    public List<Phrase> help(List<Chord> given) {
        int first = place(given);
        Chord due = wanted.get(first);
        boolean bass = due.root().soundsLike(given.get(first).root());
        Phrase right = first == 0
                ? Phrase.sentence("Listen to the first chord behind the tonic.")
                : first == 1
                        ? Phrase.sentence("The first chord is right. Listen to the next.")
                        : Phrase.sentence("The first {0} chords are right. Listen to the next.", Phrase.number(first));
        return List.of(
                right,
                bass
                        ? Phrase.sentence("Its bass is right. Now its third: bright or dark?")
                        : Phrase.sentence("Sing the tonic, {0}, then that bass note, and count up to it.", key.tonic()),
                bass
                        ? Phrase.sentence(
                                "Sing the bass, then the third above it: four half steps are bright, three dark.")
                        : Phrase.sentence(
                                "The bass is not {0}: does it lie higher or lower?",
                                given.get(first).root()));
    }
}
