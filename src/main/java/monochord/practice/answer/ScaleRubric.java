package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.NoteReading;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** Judges a scale spelled note by note; the tonic may stand at the top again. */
public final class ScaleRubric extends Rubric<List<NoteName>> {
    private final Scale scale;

    public ScaleRubric(Scale scale, Supplier<List<Slip<List<NoteName>>>> slips) {
        super(scale.tones(), slips);
        this.scale = scale;
    }

    @Override
    List<NoteName> read(String text) {
        String example = example("C D E F G A B", "G A B C D E F#");
        List<NoteName> notes = NoteReading.read(AnswerText.plain(text, "a row of notes", example), example);
        int last = notes.size() - 1;
        boolean tonicOnTop = last > 0 && notes.get(last).equals(notes.get(0));
        return tonicOnTop ? notes.subList(0, last) : notes;
    }

    @Override
    String write(List<NoteName> answer) {
        return answer.stream().map(NoteName::toString).collect(Collectors.joining(" "));
    }

    @Override
    boolean same(List<NoteName> one, List<NoteName> other) {
        return one.size() == other.size() && one.containsAll(other) && other.containsAll(one);
    }

    /** The note it starts on tells a scale from its relatives, which have the same notes. */
    @Override
    boolean fits(List<NoteName> given, List<NoteName> slip) {
        return same(given, slip) && given.get(0).equals(slip.get(0));
    }

    @Override
    Verdict accept(List<NoteName> given) {
        String row = Say.row(wanted());
        return given.equals(wanted())
                ? verdict(Grade.RIGHT, "Yes: " + row + ".")
                : verdict(Grade.REMARK, "Yes, these are the notes. From the tonic up it reads " + row + ".");
    }

    @Override
    Optional<List<NoteName>> bySound() {
        Interval away = scale.tonic().to(scale.tonic().respelled());
        boolean hasTwin = Math.abs(scale.tonic().fifths()) > 4;
        return hasTwin
                ? Optional.of(wanted().stream().map(note -> note.plus(away)).toList())
                : Optional.empty();
    }

    @Override
    boolean soundsRight(List<NoteName> given) {
        return given.size() == wanted().size() && Difference.keys(given).containsAll(Difference.keys(wanted()));
    }

    @Override
    Grade grade(List<NoteName> given) {
        boolean oneOff = given.size() == wanted().size()
                && Difference.without(wanted(), given).size() == 1;
        return oneOff ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict otherwise(List<NoteName> given) {
        boolean alike = soundsRight(given);
        if (Difference.letterTwice(given) && !Difference.letterTwice(wanted())) {
            return verdict(
                    alike ? Grade.NEARLY : Grade.WRONG, Misconception.LETTER_REPEATED, letterTwice(given, alike));
        } else if (alike) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.SPELLED_BY_SOUND,
                    "The right keys under other letters. Begin on " + Say.note(scale.tonic())
                            + " and take each letter once.");
        }
        return known(given).map(other -> otherScale(given, other)).orElseGet(() -> compare(given));
    }

    private String letterTwice(List<NoteName> given, boolean alike) {
        List<NoteName> strange = Difference.without(given, wanted());
        List<NoteName> due = Difference.without(wanted(), given);
        String what = alike ? "The keys are right, the letters are not." : "Each letter comes once in this scale.";
        return strange.isEmpty() || due.isEmpty()
                ? what
                : what + " Where you have " + Say.note(strange.get(0)) + ", the letter "
                        + due.get(0).letter() + " is due.";
    }

    private Optional<ScaleKind> known(List<NoteName> given) {
        return ScaleKind.all().stream()
                .filter(kind -> same(given, new Scale(scale.tonic(), kind).tones()))
                .findFirst();
    }

    private Verdict otherScale(List<NoteName> given, ScaleKind other) {
        return verdict(
                grade(given),
                Misconception.OTHER_SCALE,
                "That is " + Say.note(scale.tonic()) + " " + other + ". " + firstOff(given));
    }

    private Verdict compare(List<NoteName> given) {
        List<NoteName> missing = Difference.without(wanted(), given);
        List<NoteName> strange = Difference.without(given, wanted());
        if (strange.isEmpty() && !missing.isEmpty()) {
            return verdict(
                    missing.size() == 1 ? Grade.NEARLY : Grade.WRONG,
                    Misconception.MISSING_NOTE,
                    "No note is wrong, and " + Say.count(missing.size()) + (missing.size() == 1 ? " is" : " are")
                            + " missing. " + firstOff(given));
        } else if (missing.isEmpty()) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.EXTRA_NOTE,
                    "The scale is all there. Too many: "
                            + (strange.isEmpty() ? "a note written twice" : Say.list(strange)) + ".");
        }
        Grade grade = grade(given);
        return verdict(grade, (grade == Grade.NEARLY ? "All but one are right. " : "") + firstOff(given));
    }

    /** The lowest degree that is not right, measured from the note below it. */
    private String firstOff(List<NoteName> given) {
        NoteName due = Difference.without(wanted(), given).stream().findFirst().orElse(scale.tonic());
        int place = wanted().indexOf(due);
        if (place == 0) {
            return "Begin on " + Say.note(due) + ".";
        }
        NoteName below = wanted().get(place - 1);
        return "After " + Say.note(below) + " the scale goes up "
                + Say.step(below.to(due).semitones()) + ".";
    }
}
