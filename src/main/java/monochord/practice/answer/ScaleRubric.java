package monochord.practice.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.NoteReading;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** Judges a scale spelled note by note, upwards, downwards, or up and down; the tonic may stand at the top again. */
public final class ScaleRubric extends Rubric<List<NoteName>> {
    private static final int SIGNS_WITH_A_TWIN = 4;

    private final Scale scale;

    public ScaleRubric(Scale scale, Supplier<List<ModelledError<List<NoteName>>>> errors) {
        super(scale.tones(), errors);
        this.scale = scale;
    }

    @Override
    String what() {
        return "a row of notes";
    }

    @Override
    String example() {
        return example("C D E F G A B", "G A B C D E F#");
    }

    @Override
    List<NoteName> read(String plain) {
        List<NoteName> notes = NoteReading.read(plain, example());
        int last = notes.size() - 1;
        if (last < 1 || !notes.get(last).equals(notes.get(0))) {
            return notes;
        }
        int top = notes.subList(1, last).indexOf(notes.get(0)) + 1;
        return top > 1 && isWayDown(notes.subList(1, top), notes.subList(top + 1, last))
                ? notes.subList(0, top)
                : notes.subList(0, last);
    }

    /** Whether it comes down as it went up; melodic minor comes down as natural minor as well. */
    private boolean isWayDown(List<NoteName> up, List<NoteName> down) {
        List<NoteName> back = new ArrayList<>(down);
        Collections.reverse(back);
        List<NoteName> natural = new Scale(scale.tonic(), ScaleKind.MINOR).tones();
        return back.equals(up)
                || scale.kind().equals(ScaleKind.MELODIC_MINOR) && back.equals(natural.subList(1, natural.size()));
    }

    @Override
    String write(List<NoteName> answer) {
        return answer.stream().map(NoteName::toString).collect(Collectors.joining(" "));
    }

    @Override
    boolean same(List<NoteName> one, List<NoteName> other) {
        return one.size() == other.size()
                && one.containsAll(other)
                && other.containsAll(one)
                && relative(one).equals(relative(other));
    }

    /** The major or minor scale with the same notes from another tonic, if it is spelled from that tonic up. */
    private Optional<Scale> relative(List<NoteName> given) {
        if (given.isEmpty() || given.get(0).equals(scale.tonic()) || !given.containsAll(wanted())) {
            return Optional.empty();
        }
        return Stream.of(ScaleKind.MAJOR, ScaleKind.MINOR)
                .map(kind -> new Scale(given.get(0), kind))
                .filter(other -> other.tones().equals(given))
                .findFirst();
    }

    /** The note it starts on tells a scale from its relatives, which have the same notes. */
    @Override
    boolean fits(List<NoteName> given, List<NoteName> error) {
        return same(given, error) && given.get(0).equals(error.get(0));
    }

    @Override
    Verdict accept(List<NoteName> given) {
        Phrase row = Phrase.row(wanted());
        return given.equals(wanted())
                ? verdict(Grade.RIGHT, Phrase.sentence("Yes: {0}.", row))
                : verdict(
                        Grade.REMARK,
                        Phrase.sentence("Yes, these are the notes. From the tonic up it reads {0}.", row));
    }

    /** The blue note may be a raised fourth as well as a lowered fifth. Common practice, no source. */
    @Override
    boolean isAlso(List<NoteName> given) {
        return scale.kind().equals(ScaleKind.MINOR_BLUES) && same(given, withRaisedFourth());
    }

    private List<NoteName> withRaisedFourth() {
        return wanted().stream()
                .map(note -> note.equals(blueNote()) ? raisedFourth() : note)
                .toList();
    }

    private NoteName blueNote() {
        return scale.tonic().plus(Interval.DIMINISHED_FIFTH);
    }

    private NoteName raisedFourth() {
        return scale.tonic().plus(Interval.AUGMENTED_FOURTH);
    }

    @Override
    Verdict acceptAlso(List<NoteName> given) {
        return verdict(
                Grade.REMARK,
                Phrase.sentence(
                        "Yes. {0}, the raised fourth, is written there too; I had {1} in mind, the lowered fifth.",
                        raisedFourth(), blueNote()));
    }

    @Override
    Optional<List<NoteName>> bySound() {
        Interval away = scale.tonic().to(scale.tonic().respelled());
        boolean hasTwin = Math.abs(scale.tonic().fifths()) > SIGNS_WITH_A_TWIN;
        return hasTwin
                ? Optional.of(wanted().stream().map(note -> note.plus(away)).toList())
                : Optional.empty();
    }

    @Override
    boolean soundsRight(List<NoteName> given) {
        return given.size() == wanted().size()
                && NoteDifference.keys(given).containsAll(NoteDifference.keys(wanted()))
                && !given.containsAll(wanted());
    }

    private NoteDifference difference(List<NoteName> given) {
        return NoteDifference.of(given, wanted());
    }

    @Override
    Grade grade(List<NoteName> given) {
        boolean oneOff =
                given.size() == wanted().size() && difference(given).missing().size() == 1;
        return oneOff ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict otherwise(List<NoteName> given) {
        Optional<Scale> relative = relative(given);
        if (relative.isPresent()) {
            return verdict(
                    Grade.WRONG,
                    Misconception.RELATIVE_FOR_PARALLEL,
                    Phrase.sentence(
                            "That is {0}: the same notes from another tonic. Begin {1} on {2}.",
                            relative.get(), scale, scale.tonic()));
        }
        boolean alike = soundsRight(given);
        if (NoteDifference.letterTwice(given) && !NoteDifference.letterTwice(wanted())) {
            return verdict(
                    alike ? Grade.NEARLY : Grade.WRONG, Misconception.LETTER_REPEATED, letterTwice(given, alike));
        } else if (alike) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.SPELLED_BY_SOUND,
                    Phrase.sentence(
                            "The right keys under other letters. Begin on {0} and take each letter once.",
                            scale.tonic()));
        }
        return known(given).map(other -> otherScale(given, other)).orElseGet(() -> compare(given));
    }

    private Phrase letterTwice(List<NoteName> given, boolean alike) {
        Phrase what = alike
                ? Phrase.sentence("The keys are right, the letters are not.")
                : Phrase.sentence("Each letter comes once in this scale.");
        return replaced(difference(given), given, alike)
                .map(two -> what.then(Phrase.sentence(
                        "Where you have {0}, the letter {1} is due.",
                        two.get(0), NoteName.of(two.get(1).letter(), 0))))
                .orElse(what);
    }

    /**
     * A note, and the one whose letter is due in its place: the first of each where only the letters are wrong, else one
     * whose letter was there already and one whose letter is not there at all.
     */
    private Optional<List<NoteName>> replaced(NoteDifference notes, List<NoteName> given, boolean alike) {
        Optional<NoteName> second = notes.strange().stream()
                .filter(note -> alike || letters(given, note) > 1)
                .findFirst();
        return notes.missing().stream()
                .filter(note -> alike || letters(given, note) == 0)
                .findFirst()
                .flatMap(due -> second.map(note -> List.of(note, due)));
    }

    private static long letters(List<NoteName> notes, NoteName one) {
        return notes.stream().filter(note -> note.letter() == one.letter()).count();
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
                Phrase.sentence("That is {0}.", asBegun(given).orElse(new Scale(scale.tonic(), other)))
                        .then(firstOff(given)));
    }

    /** The scale as it was typed, where it begins on another note than the tonic. */
    private Optional<Scale> asBegun(List<NoteName> given) {
        NoteName first = given.get(0);
        return ScaleKind.all().stream()
                .map(kind -> new Scale(first, kind))
                .filter(begun -> begun.tones().equals(given) && !first.equals(scale.tonic()))
                .findFirst();
    }

    private Verdict compare(List<NoteName> given) {
        NoteDifference notes = difference(given);
        List<NoteName> missing = notes.missing();
        if (notes.strange().isEmpty() && !missing.isEmpty()) {
            return verdict(
                    missing.size() == 1 ? Grade.NEARLY : Grade.WRONG,
                    Misconception.MISSING_NOTE,
                    Phrase.counted(
                                    missing.size(),
                                    "No note is wrong, and one is missing.",
                                    "No note is wrong, and {0} are missing.",
                                    Phrase.number(missing.size()))
                            .then(firstOff(given)));
        } else if (missing.isEmpty()) {
            return verdict(Grade.NEARLY, Misconception.EXTRA_NOTE, tooMany(notes.strange()));
        }
        Grade grade = grade(given);
        Phrase most = grade == Grade.NEARLY ? Phrase.sentence("All but one are right.") : Phrase.NOTHING;
        return verdict(grade, most.then(firstOff(given)));
    }

    private static Phrase tooMany(List<NoteName> strange) {
        return strange.isEmpty()
                ? Phrase.sentence("The scale is all there. Too many: a note written twice.")
                : Phrase.sentence("The scale is all there. Too many: {0}.", Phrase.list(strange));
    }

    private int firstMissing(List<NoteName> given) {
        return difference(given).missing().stream()
                .findFirst()
                .map(wanted()::indexOf)
                .orElse(0);
    }

    /** The lowest degree that is not right, measured from the note below it. */
    private Phrase firstOff(List<NoteName> given) {
        int place = firstMissing(given);
        return place == 0 ? Phrase.sentence("Begin on {0}.", scale.tonic()) : step(place);
    }

    private Phrase step(int place) {
        NoteName below = wanted().get(place - 1);
        int up = below.to(wanted().get(place)).semitones();
        return Phrase.sentence("After {0} the scale goes up {1}.", below, MusicWords.steps(up));
    }

    @Override
    List<Phrase> helpFrom(List<NoteName> given) {
        int place = firstMissing(given);
        if (place == 0) {
            return List.of();
        }
        NoteName below = wanted().get(place - 1);
        boolean begun = given.size() >= place && given.subList(0, place).equals(wanted().subList(0, place));
        Phrase right = begun
                ? Phrase.sentence("Up to {0} it is right. Look at what comes next.", below)
                : Phrase.sentence("Look at what follows {0}.", below);
        return List.of(
                right,
                Phrase.sentence("After {0} comes the next letter; none is left out and none comes twice.", below),
                step(place));
    }
}
