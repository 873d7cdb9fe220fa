package monochord.practice.skill.ear;

import java.util.List;
import java.util.Optional;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.answer.Say;
import monochord.practice.answer.Sense;
import monochord.practice.reading.IntervalReading;
import monochord.theory.note.Interval;

/** The name of an interval that was heard; the two spellings of a tritone count as one. */
final class IntervalSense implements Sense<Interval> {
    private static final int OCTAVE = Interval.OCTAVE.semitones();

    /** By half steps from the unison to the octave, behind "a third". */
    private static final List<String> FEEL = List.of(
            "is one note",
            "rubs",
            "is a plain step",
            "is dark",
            "is bright",
            "is bare and leans on its upper note",
            "pulls inwards or outwards",
            "is bare and rests on its lower note",
            "leans on the fifth a half step below its top",
            "stands open, a whole step above the fifth",
            "is wide and mild",
            "is wide and bites, a half step short of the octave",
            "melts into one note");

    private final Interval wanted;
    private final String notes;

    /** @param notes where it lay, for the sentence: {@code F♯ up to D} */
    IntervalSense(Interval wanted, String notes) {
        this.wanted = wanted;
        this.notes = notes;
    }

    @Override
    public Interval read(String text) {
        String example = wanted.equals(Interval.MINOR_THIRD) ? "P5" : "minor third";
        String bare = IntervalReading.bare(text, example);
        if (IntervalReading.isTritone(bare)) {
            return Interval.AUGMENTED_FOURTH;
        }
        return bare.matches("(?i)(fourth|fifth|4th|5th|4|5)")
                ? IntervalReading.read("perfect " + bare)
                : IntervalReading.read(bare);
    }

    @Override
    public String write(Interval answer) {
        return IntervalSubject.write(answer);
    }

    @Override
    public boolean same(Interval one, Interval other) {
        return one.equals(other) || IntervalSubject.isTritone(one) && IntervalSubject.isTritone(other);
    }

    @Override
    public boolean soundsRight(Interval given) {
        return given.semitones() == wanted.semitones();
    }

    static String name(Interval size) {
        return size.equals(Interval.AUGMENTED_FOURTH) ? "a tritone" : Say.interval(size);
    }

    @Override
    public String yes() {
        return "Yes, " + name(wanted) + ": " + notes + ", " + Say.halfSteps(wanted.semitones()) + ".";
    }

    @Override
    public String otherName(Interval given) {
        return "Yes: " + name(given) + " sounds the same. It was " + notes + ", and that is written as " + name(wanted)
                + ".";
    }

    @Override
    public String contrast(Interval given) {
        return "You heard " + name(given) + "; it was " + name(wanted) + ", " + notes + ". " + size(given)
                + feelings(given);
    }

    private String size(Interval given) {
        int wider = given.semitones() - wanted.semitones();
        if (isOctaveOff(given)) {
            return "The same two letters, but yours lie an octave " + (wider > 0 ? "further apart." : "closer.");
        }
        String turned = isTurnedOver(given) ? "Turned over, the same two notes make yours, " : "Yours is ";
        return turned + (wider > 0 ? "wider by " : "narrower by ") + Say.halfSteps(Math.abs(wider)) + ".";
    }

    private String feelings(Interval given) {
        if (isOctaveOff(given)) {
            return "";
        }
        String first = name(wanted);
        return " " + Character.toUpperCase(first.charAt(0)) + first.substring(1) + " " + feel(wanted) + "; "
                + name(given) + " " + feel(given) + ".";
    }

    private static String feel(Interval size) {
        int within = size.semitones() > OCTAVE ? (size.semitones() - 1) % OCTAVE + 1 : size.semitones();
        return FEEL.get(Math.max(0, within));
    }

    private boolean isOctaveOff(Interval given) {
        return given.withinOctave().equals(wanted.withinOctave());
    }

    private boolean isTurnedOver(Interval given) {
        return given.equals(wanted.inverted());
    }

    @Override
    public Grade grade(Interval given) {
        return isOctaveOff(given) || given.number() == wanted.number() ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    public Optional<Misconception> misconception(Interval given) {
        if (isOctaveOff(given)) {
            return Optional.of(Misconception.OCTAVE_OFF);
        } else if (isTurnedOver(given)) {
            return Optional.of(Misconception.TURNED_OVER);
        } else if (given.number() == wanted.number() || isBesideTritone(given)) {
            return Optional.of(Misconception.SIZE_MISHEARD);
        }
        return Math.abs(given.number() - wanted.number()) == 1
                ? Optional.of(Misconception.STEPS_MISCOUNTED)
                : Optional.empty();
    }

    /** A perfect fourth or fifth and a tritone, either for the other. */
    private boolean isBesideTritone(Interval given) {
        boolean tritone = IntervalSubject.isTritone(given) || IntervalSubject.isTritone(wanted);
        return tritone && Math.abs(given.semitones() - wanted.semitones()) == 1;
    }
}
