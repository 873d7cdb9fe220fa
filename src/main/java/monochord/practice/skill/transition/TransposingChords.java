package monochord.practice.skill.transition;

import static monochord.practice.Misconception.LETTERS_ONLY;
import static monochord.practice.Misconception.QUALITY_OF_THE_KEY;
import static monochord.practice.Misconception.WRONG_KEY;
import static monochord.practice.Misconception.WRONG_WAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.harmony.Instrument;
import monochord.harmony.Progression;
import monochord.harmony.Transposition;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.ProgressionRubric;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * A row of chords moved to another key. The subject is the row, perhaps {@code from} a key, and {@code to} another: {@code F
 * C G to Eb}, or {@code for} players whose instrument reads elsewhere: {@code F C G for alto}.
 */
public final class TransposingChords implements Skill {
    private static final int LONGEST = 16;
    private static final String EXAMPLE = "F C G to Eb";
    private static final Pattern FORM =
            Pattern.compile("(?i)\"?(.*?)\"?(?: +from +(.+?))? +(?:to +(.+)|(?:written +)?for +(.+))");
    private static final List<String> IN_MAJOR = List.of("1 4 5", "1 5 6- 4", "4 1 5 b6");
    private static final List<String> IN_MINOR = List.of("1- 4- 5", "1- 6 7 1-");
    private static final List<Interval> DISTANCES =
            List.of(Interval.MAJOR_SECOND, Interval.MINOR_THIRD, Interval.PERFECT_FOURTH);

    /** @param reader whose part it is, if it is to be written for somebody */
    private record Row(List<Chord> chords, Key from, Key to, Optional<Instrument> reader) {
        Interval up() {
            return from.tonic().to(to.tonic());
        }

        /** The right answer. */
        List<Chord> moved() {
            return moved(up());
        }

        List<Chord> moved(Interval by) {
            return each(chord -> chord.plus(by));
        }

        List<Chord> each(UnaryOperator<Chord> change) {
            return chords.stream().map(change).toList();
        }

        String text() {
            String row = String.join(" ", chords.stream().map(Chord::toString).toList());
            return row
                    + reader.map(Instrument::text).map(name -> " for " + name).orElse(" to " + to);
        }

        Phrase numbers() {
            return Phrase.row(
                    chords.stream().map(chord -> BandNumber.of(chord, from)).toList());
        }
    }

    @Override
    public String id() {
        return "transposition";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Transposition");
    }

    @Override
    public List<String> subjects(Key key) {
        List<String> subjects = new ArrayList<>();
        for (Interval distance : DISTANCES) {
            Key to = Transposition.inUse(new Key(key.tonic().plus(distance), key.mode()));
            for (String numbers : key.isMinor() ? IN_MINOR : IN_MAJOR) {
                subjects.add(new Row(Progression.parse(numbers, key).chords(), key, to, Optional.empty()).text());
            }
        }
        return subjects;
    }

    @Override
    public Question question(Key key, String subject) {
        Row row = row(key, subject.strip());
        List<Chord> wanted = row.moved();
        Phrase chords = Phrase.row(row.chords);
        Phrase prompt = row.reader
                .map(reader -> Phrase.sentence(
                        "These chords sound in {0}: {1}. What do you write for {2}?", row.from, chords, reader.title()))
                .orElseGet(() ->
                        Phrase.sentence("These chords are in {0}: {1}. Play them in {2}.", row.from, chords, row.to));
        ProgressionRubric judge = ProgressionRubric.names(wanted, row.to, () -> errors(row));
        return Question.of(new Topic(id(), row.text(), row.from), AnswerForm.PROGRESSION, prompt, judge, coaching(row));
    }

    private static Row row(Key key, String subject) {
        Matcher form = FORM.matcher(subject);
        if (subject.length() > 300 || !form.matches()) {
            throw Unreadable.because(
                    subject, 0, "a row to transpose", "it ends in to and a key, or in for and an instrument", EXAMPLE);
        }
        Key from = form.group(2) == null ? key : Key.parse(form.group(2));
        Optional<Instrument> reader = Optional.ofNullable(form.group(4)).map(Instrument::parse);
        Key to = reader.map(instrument -> Transposition.written(from, instrument))
                .orElseGet(() -> Key.parse(form.group(3)));
        List<Chord> chords = Progression.parse(form.group(1), from).chords();
        boolean still = from.tonic().equals(to.tonic());
        if (chords.size() > LONGEST || still || from.isMinor() != to.isMinor()) {
            Clause why = chords.size() > LONGEST
                    ? Clause.of("at most {0} chords are asked at once", LONGEST)
                    : Clause.of(still ? "both keys have one tonic" : "both keys are major, or both are minor");
            throw Unreadable.because(subject, 0, "a row to transpose", why, EXAMPLE);
        }
        return new Row(chords, from, to, reader);
    }

    private static List<ModelledError<List<Chord>>> errors(Row row) {
        List<ModelledError<List<Chord>>> errors = new ArrayList<>(List.of(
                elsewhere(WRONG_KEY, row, row.chords, Phrase.sentence("That is the row as it was.")),
                elsewhere(
                        WRONG_WAY,
                        row,
                        row.moved(row.up().reversed()),
                        Phrase.sentence("The distance is right, the direction is not.")),
                bareLetters(row),
                elsewhere(
                        LETTERS_ONLY,
                        row,
                        row.each(chord -> letterMoved(chord, row.up())),
                        Phrase.sentence("The letters moved, the accidentals stayed behind.")),
                qualitiesOfTheTonic(row)));
        for (Interval second : List.of(Interval.MAJOR_SECOND, Interval.MINOR_SECOND)) {
            errors.add(neighbour(row, second));
            errors.add(neighbour(row, second.reversed()));
        }
        return errors;
    }

    /** Roots that went another way than the key did; the way is told behind what happened. */
    private static ModelledError<List<Chord>> elsewhere(
            Misconception misconception, Row row, List<Chord> chords, Phrase happened) {
        return new ModelledError<>(misconception, chords, () -> happened.then(distance(row)));
    }

    private static ModelledError<List<Chord>> neighbour(Row row, Interval off) {
        Key there = new Key(row.to.tonic().plus(off), row.to.mode());
        return elsewhere(
                WRONG_KEY, row, row.moved(row.up().plus(off)), Phrase.sentence("That is the row in {0}.", there));
    }

    private static ModelledError<List<Chord>> bareLetters(Row row) {
        return new ModelledError<>(
                LETTERS_ONLY,
                row.each(chord ->
                        new Chord(DiatonicTriads.bare(chord.plus(row.up()).root()), chord.kind())),
                () -> Phrase.sentence(
                        "The letters are right; the accidentals of {0} are missing. Every root moves the whole distance, {1} up.",
                        row.to, Phrase.one(row.up())));
    }

    /** The letter moved by the number of the interval, its accidental kept as it was. */
    private static Chord letterMoved(Chord chord, Interval up) {
        NoteName due = chord.root().plus(up);
        return new Chord(NoteName.of(due.letter(), chord.root().alteration()), chord.kind());
    }

    private static ModelledError<List<Chord>> qualitiesOfTheTonic(Row row) {
        ChordKind tonic = DiatonicTriads.triad(1, row.to).kind();
        return new ModelledError<>(
                QUALITY_OF_THE_KEY,
                row.each(chord -> new Chord(chord.root().plus(row.up()), tonic)),
                () -> Phrase.sentence("The roots are right. Each chord keeps its quality when it moves."));
    }

    private static Phrase distance(Row row) {
        return Phrase.sentence(
                "From {0} up to {1} is {2}; every root goes that way.",
                row.from.tonic(), row.to.tonic(), Phrase.one(row.up()));
    }

    private static Coaching coaching(Row row) {
        List<Chord> wanted = row.moved();
        Chord first = row.chords.get(0);
        Phrase moved = Phrase.sentence("{0} becomes {1}.", first, wanted.get(0));
        Phrase byNumber = Phrase.sentence("By number the row is {0}.", row.numbers());
        return Coaching.of(
                Phrase.sentence("Say the row by number first: the numbers do not move."),
                byNumber,
                distance(row).then(moved),
                Phrase.sentence("{0} {1} {2} The row: {3}.", byNumber, distance(row), moved, Phrase.row(wanted)));
    }
}
