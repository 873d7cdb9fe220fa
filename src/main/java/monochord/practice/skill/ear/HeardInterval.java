package monochord.practice.skill.ear;

import java.util.List;
import java.util.Optional;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.answer.EarTask;
import monochord.practice.reading.AnswerReading;
import monochord.practice.reading.IntervalReading;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.note.Interval;

/** The name of an interval that was heard; the two spellings of a tritone count as one. */
final class HeardInterval implements EarTask<Interval> {
    private static final int OCTAVE = Interval.OCTAVE.semitones();

    /** By half steps from the unison to the octave, behind "a third". */
    private static final List<Phrase> FEEL = List.of(
            Phrase.of("is one note"),
            Phrase.of("rubs"),
            Phrase.of("is a plain step"),
            Phrase.of("is dark"),
            Phrase.of("is bright"),
            Phrase.of("is bare and leans on its upper note"),
            Phrase.of("pulls inwards or outwards"),
            Phrase.of("is bare and rests on its lower note"),
            Phrase.of("leans on the fifth a half step below its top"),
            Phrase.of("stands open, a whole step above the fifth"),
            Phrase.of("is wide and mild"),
            Phrase.of("is wide and bites, a half step short of the octave"),
            Phrase.of("melts into one note"));

    private final Interval wanted;
    private final Phrase notes;

    /** @param notes where it lay, for the sentence: {@code F♯ up to D} */
    HeardInterval(Interval wanted, Phrase notes) {
        this.wanted = wanted;
        this.notes = notes;
    }

    @Override
    public Interval read(String text) {
        String example = wanted.equals(Interval.MINOR_THIRD) ? "P5" : "minor third";
        return AnswerReading.read(text, "an interval", example, HeardInterval::readPlain);
    }

    private static Interval readPlain(String plain) {
        String bare = IntervalReading.withoutArticle(plain);
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

    static Phrase name(Interval size) {
        return size.equals(Interval.AUGMENTED_FOURTH) ? Phrase.of("a tritone") : Phrase.one(size);
    }

    @Override
    public Phrase yes() {
        return Phrase.sentence(
                "Yes, {0}: {1}, {2}.", name(wanted), notes, MusicWords.halfStepsInWords(wanted.semitones()));
    }

    @Override
    public Phrase otherName(Interval given) {
        return Phrase.sentence(
                "Yes: {0} sounds the same. It was {1}, and that is written as {2}.", name(given), notes, name(wanted));
    }

    @Override
    public Phrase contrast(Interval given) {
        return Phrase.sentence("You heard {0}; it was {1}, {2}.", name(given), name(wanted), notes)
                .then(size(given))
                .then(feelings(given));
    }

    private Phrase size(Interval given) {
        int wider = given.semitones() - wanted.semitones();
        Phrase by = MusicWords.halfStepsInWords(Math.abs(wider));
        if (isOctaveOff(given)) {
            return wider > 0
                    ? Phrase.sentence("The same two letters, but yours lie an octave further apart.")
                    : Phrase.sentence("The same two letters, but yours lie an octave closer.");
        } else if (isTurnedOver(given)) {
            return wider > 0
                    ? Phrase.sentence("Turned over, the same two notes make yours, wider by {0}.", by)
                    : Phrase.sentence("Turned over, the same two notes make yours, narrower by {0}.", by);
        }
        return wider > 0
                ? Phrase.sentence("Yours is wider by {0}.", by)
                : Phrase.sentence("Yours is narrower by {0}.", by);
    }

    private Phrase feelings(Interval given) {
        return isOctaveOff(given)
                ? Phrase.NOTHING
                : Phrase.sentence("{0} {1}; {2} {3}.", name(wanted), feel(wanted), name(given), feel(given));
    }

    private static Phrase feel(Interval size) {
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

    @Override
    public List<Phrase> help(Interval given) {
        boolean wider = wanted.semitones() > given.semitones();
        if (isOctaveOff(given)) {
            return List.of(
                    Phrase.sentence("The letters are right. Is it within one octave, or beyond?"),
                    Phrase.sentence("Sing the lower note and its octave: does the upper note lie above or below that?"),
                    wider ? Phrase.sentence("It is wider than yours.") : Phrase.sentence("It is narrower than yours."));
        }
        if (given.number() == wanted.number()) {
            return List.of(
                    Phrase.sentence("The number is right. There are two of these, a half step apart."),
                    Phrase.sentence("Sing the one you named and then what sounds: does it give way up or down?"),
                    wider ? Phrase.sentence("It is the wider one.") : Phrase.sentence("It is the narrower one."));
        }
        return List.of(
                wider
                        ? Phrase.sentence("It is wider than {0}. Hum the lower note until it is yours.", name(given))
                        : Phrase.sentence(
                                "It is narrower than {0}. Hum the lower note until it is yours.", name(given)),
                Phrase.sentence(
                        "Sing up the scale from the lower note, counting it as 1, until you meet the upper one."),
                Phrase.sentence(
                        "{0} {1}. Is it darker or brighter, barer or fuller than that?", name(given), feel(given)));
    }
}
