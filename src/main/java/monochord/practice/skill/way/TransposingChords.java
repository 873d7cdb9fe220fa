package monochord.practice.skill.way;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.harmony.Progression;
import monochord.harmony.Transposition;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ProgressionRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.teaching.Own;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * A row of chords moved to another key. The subject is the row, perhaps {@code from} a key, and {@code to} another: {@code F
 * C G to Eb}.
 */
public final class TransposingChords implements Skill {
    private static final int LONGEST = 16;
    private static final String EXAMPLE = "F C G to Eb";
    private static final Pattern FORM = Pattern.compile("(?i)\"?(.*?)\"?(?: +from +(.+?))? +to +(.+)");
    private static final List<String> IN_MAJOR = List.of("1 4 5", "1 5 6- 4", "4 1 5 b6");
    private static final List<String> IN_MINOR = List.of("1- 4- 5", "1- 6 7 1-");
    private static final List<Interval> DISTANCES =
            List.of(Interval.MAJOR_SECOND, Interval.MINOR_THIRD, Interval.PERFECT_FOURTH);

    private record Row(List<Chord> chords, Key from, Key to) {
        Interval up() {
            return from.tonic().to(to.tonic());
        }

        List<Chord> moved(Interval by) {
            return chords.stream().map(chord -> chord.plus(by)).toList();
        }

        String text() {
            return String.join(" ", chords.stream().map(Chord::toString).toList()) + " to " + to;
        }

        String names(List<Chord> row) {
            return String.join(" ", row.stream().map(Say::chord).toList());
        }

        String numbers() {
            return String.join(
                    " ",
                    chords.stream()
                            .map(chord -> BandNumber.write(chord, from, Signs.MUSIC))
                            .toList());
        }
    }

    @Override
    public String id() {
        return "transposition";
    }

    @Override
    public String title() {
        return "Transposition";
    }

    @Override
    public List<String> subjects(Key key) {
        List<String> subjects = new ArrayList<>();
        for (Interval distance : DISTANCES) {
            Key to = Transposition.inUse(new Key(key.tonic().plus(distance), key.mode()));
            for (String numbers : key.isMinor() ? IN_MINOR : IN_MAJOR) {
                subjects.add(new Row(Progression.parse(numbers, key).chords(), key, to).text());
            }
        }
        return subjects;
    }

    @Override
    public Question question(Key key, String subject) {
        Row row = row(key, subject.strip());
        List<Chord> wanted = row.moved(row.up());
        String prompt = "These chords are in " + Say.key(row.from) + ": " + row.names(row.chords) + ". Play them in "
                + Say.key(row.to) + ".";
        ProgressionRubric judge = ProgressionRubric.names(wanted, row.to, () -> slips(row));
        return Question.of(new Topic(id(), row.text(), row.from), Form.PROGRESSION, prompt, judge, coaching(row));
    }

    private static Row row(Key key, String subject) {
        Matcher form = FORM.matcher(subject);
        if (subject.length() > 300 || !form.matches()) {
            throw Unreadable.because(subject, 0, "a row to transpose", "it ends in to and a key", EXAMPLE);
        }
        Key from = form.group(2) == null ? key : Key.parse(form.group(2));
        Key to = Key.parse(form.group(3));
        List<Chord> chords = Progression.parse(form.group(1), from).chords();
        boolean still = from.tonic().equals(to.tonic());
        if (chords.size() > LONGEST || still || from.isMinor() != to.isMinor()) {
            Clause why = chords.size() > LONGEST
                    ? Clause.of("at most {0} chords are asked at once", LONGEST)
                    : Clause.of(still ? "both keys have one tonic" : "both keys are major, or both are minor");
            throw Unreadable.because(subject, 0, "a row to transpose", why, EXAMPLE);
        }
        return new Row(chords, from, to);
    }

    private static List<Slip<List<Chord>>> slips(Row row) {
        List<Slip<List<Chord>>> slips = new ArrayList<>();
        List<Chord> wanted = row.moved(row.up());
        String way = distance(row);
        slips.add(new Slip<>(Misconception.WRONG_KEY, row.chords, () -> "That is the row as it was. " + way));
        slips.add(new Slip<>(
                Misconception.WRONG_WAY,
                row.moved(row.up().reversed()),
                () -> "The distance is right, the direction is not. " + way));
        slips.add(new Slip<>(
                Misconception.LETTERS_ONLY,
                wanted.stream()
                        .map(chord -> new Chord(Own.bare(chord.root()), chord.kind()))
                        .toList(),
                () -> "The letters are right; the accidentals of " + Say.key(row.to) + " are missing. "
                        + "Every root moves the whole distance, " + Say.interval(row.up()) + " up."));
        slips.add(new Slip<>(
                Misconception.LETTERS_ONLY,
                letters(row),
                () -> "The letters moved, the accidentals stayed behind. " + way));
        slips.add(new Slip<>(
                Misconception.QUALITY_OF_THE_KEY,
                wanted.stream()
                        .map(chord ->
                                new Chord(chord.root(), Own.triad(1, row.to).kind()))
                        .toList(),
                () -> "The roots are right. Each chord keeps its quality when it moves."));
        otherKeys(row, slips);
        return slips;
    }

    /** Each letter moved by the number of the interval, its accidental kept as it was. */
    private static List<Chord> letters(Row row) {
        List<Chord> letters = new ArrayList<>();
        for (Chord chord : row.chords) {
            NoteName due = chord.root().plus(row.up());
            letters.add(new Chord(NoteName.of(due.letter(), chord.root().alteration()), chord.kind()));
        }
        return letters;
    }

    private static void otherKeys(Row row, List<Slip<List<Chord>>> slips) {
        for (Interval off : List.of(
                Interval.MAJOR_SECOND,
                Interval.MAJOR_SECOND.reversed(),
                Interval.MINOR_SECOND,
                Interval.MINOR_SECOND.reversed())) {
            Key there = new Key(row.to.tonic().plus(off), row.to.mode());
            slips.add(new Slip<>(
                    Misconception.WRONG_KEY,
                    row.moved(row.up().plus(off)),
                    () -> "That is the row in " + Say.key(there) + ". " + distance(row)));
        }
    }

    private static String distance(Row row) {
        return "From " + Say.note(row.from.tonic()) + " up to " + Say.note(row.to.tonic()) + " is "
                + Say.interval(row.up()) + "; every root goes that way.";
    }

    private static Coaching coaching(Row row) {
        List<Chord> wanted = row.moved(row.up());
        Chord first = row.chords.get(0);
        String moved = Say.chord(first) + " becomes " + Say.chord(wanted.get(0)) + ".";
        String byNumber = "By number the row is " + row.numbers() + ".";
        return Coaching.of(
                "Say the row by number first: the numbers do not move.",
                byNumber,
                distance(row) + " " + moved,
                byNumber + " " + distance(row) + " " + moved + " The row: " + row.names(wanted) + ".");
    }
}
