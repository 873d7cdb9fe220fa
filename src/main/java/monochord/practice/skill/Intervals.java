package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.SIGNATURE_FORGOTTEN;
import static monochord.practice.Misconception.WRONG_QUALITY;
import static monochord.practice.Misconception.WRONG_WAY;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.IntervalRubric;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.NoteRubric;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * Intervals both ways: {@code m3} asks for the note so far above the tonic ({@code -m3} below, {@code m3 above F} from
 * another note), two notes ask for the name of what lies between them.
 */
final class Intervals implements Skill {
    private static final List<String> SUBJECTS =
            List.of("P5", "P4", "M2", "M3", "m3", "m2", "M6", "m6", "m7", "M7", "A4", "d5");
    private static final int LARGEST = 15;
    private static final Pattern DOWN = Pattern.compile("(?i) (?:below|under|beneath|down)\\b");
    private static final Pattern WAY =
            Pattern.compile("(?i) (?:(?:up|down)(?: from)?|above|from|on|over|below|under|beneath)(?: |$)");

    @Override
    public String id() {
        return "interval";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Intervals");
    }

    @Override
    public List<String> subjects(Key key) {
        return SUBJECTS;
    }

    @Override
    public Question question(Key key, String subject) {
        String text = subject.strip();
        if (text.matches("[A-Ga-g][b#x♭♯]*[ ,-]+[A-Ga-g][b#x♭♯]*")) {
            String[] notes = text.split("[ ,-]+");
            return name(NoteName.parse(notes[0]), NoteName.parse(notes[1]), key);
        }
        boolean down = DOWN.matcher(text).find();
        String[] parts = WAY.split(text, 2);
        boolean fromTonic = parts.length == 1 || parts[1].isBlank();
        NoteName from = fromTonic ? key.tonic() : NoteName.parse(parts[1].strip());
        Interval interval = Interval.parse(parts[0].strip());
        return note(down && !interval.goesDown() ? interval.reversed() : interval, from, fromTonic, key);
    }

    private Question note(Interval interval, NoteName from, boolean fromTonic, Key key) {
        if (interval.number() > LARGEST || interval.number() < 2) {
            throw Unreadable.because(
                    interval.toString(), 0, "an interval to ask", "from a second to two octaves is asked", "m3");
        }
        NoteName wanted = from.plus(interval);
        String subject = fromTonic ? interval.toString() : interval + " above " + from;
        Phrase prompt = interval.goesDown()
                ? Phrase.sentence("Which note lies {0} below {1}?", Phrase.one(interval), from)
                : Phrase.sentence("Which note lies {0} above {1}?", Phrase.one(interval), from);
        NoteRubric judge = new NoteRubric(wanted, from, way(interval, from), () -> noteErrors(interval, from));
        return Question.of(new Topic(id(), subject, key), AnswerForm.NOTES, prompt, judge, coaching(interval, from));
    }

    private static List<ModelledError<NoteName>> noteErrors(Interval interval, NoteName from) {
        List<ModelledError<NoteName>> errors = new ArrayList<>();
        NoteName wanted = from.plus(interval);
        errors.add(new ModelledError<>(
                SIGNATURE_FORGOTTEN,
                DiatonicTriads.bare(wanted),
                () -> Phrase.sentence(
                        "{0} has the right letter. Now the size: {1}.", DiatonicTriads.bare(wanted), size(interval))));
        if (!interval.goesDown()) {
            int number = interval.withinOctave().number();
            NoteName next = Key.major(from).note(number % 7 + 1);
            errors.add(new ModelledError<>(
                    COUNTED_FROM_ZERO,
                    next,
                    () -> Phrase.sentence("One letter too far: {0} itself counts as 1.", from)));
        }
        errors.add(new ModelledError<>(
                WRONG_WAY,
                from.minus(interval),
                () -> Phrase.sentence("You went the other way.").then(way(interval, from))));
        return errors;
    }

    private static Phrase reason(Interval interval, NoteName from) {
        return Phrase.sentence(
                "Letters {0}, and {1}: {2}.", letters(interval, from), size(interval), from.plus(interval));
    }

    /** {@code Count letters C D E, and then three half steps up.} */
    private static Phrase way(Interval interval, NoteName from) {
        return Phrase.sentence("Count letters {0}, and then {1}.", letters(interval, from), size(interval));
    }

    private static Phrase size(Interval interval) {
        Phrase size = MusicWords.halfStepsInWords(Math.abs(interval.semitones()));
        return interval.goesDown() ? Phrase.of("{0} down", size) : Phrase.of("{0} up", size);
    }

    /** The letters on the way, both ends included. */
    private static Phrase letters(Interval interval, NoteName from) {
        int way = interval.goesDown() ? -1 : 1;
        return Phrase.row(IntStream.range(0, interval.number())
                .mapToObj(i -> NoteName.of("CDEFGAB".charAt(Math.floorMod(from.letterStep() + way * i, 7)), 0))
                .toList());
    }

    private static Coaching coaching(Interval interval, NoteName from) {
        NoteName letter = DiatonicTriads.bare(from.plus(interval));
        Phrase size = MusicWords.halfStepsInWords(Math.abs(interval.semitones()));
        return Coaching.of(
                Phrase.sentence("Find the letter first, counting {0} as 1.", from),
                Phrase.sentence("Letters: {0}. So it is some kind of {1}.", letters(interval, from), letter),
                Phrase.sentence("Some kind of {0}, {1} away from {2}.", letter, size, from),
                reason(interval, from));
    }

    private Question name(NoteName lower, NoteName upper, Key key) {
        Interval interval = lower.to(upper);
        if (interval.number() == 1 || interval.goesDown()) {
            throw Unreadable.because(
                    lower + " " + upper, 0, "two notes to measure", "the second has another letter", "C Eb");
        }
        Phrase prompt = Phrase.sentence("Which interval is it from {0} up to {1}?", lower, upper);
        IntervalRubric judge =
                new IntervalRubric(interval, nameWay(interval, lower), () -> nameErrors(interval, lower));
        Topic topic = new Topic(id(), lower + " " + upper, key);
        return Question.of(topic, AnswerForm.INTERVAL, prompt, judge, nameCoaching(interval, lower));
    }

    private static List<ModelledError<Interval>> nameErrors(Interval interval, NoteName lower) {
        List<ModelledError<Interval>> errors = new ArrayList<>();
        errors.add(new ModelledError<>(
                WRONG_WAY,
                interval.inverted(),
                () -> Phrase.sentence("That is how far it is on to the next {0}.", lower)
                        .then(nameWay(interval, lower))));
        if (interval.number() > 2) {
            Interval below = Degree.of(interval.number() - 1, 0).interval();
            errors.add(new ModelledError<>(
                    COUNTED_FROM_ZERO,
                    below,
                    () -> Phrase.sentence("One letter too few: the lower note counts as 1.")));
        }
        Interval looks = DiatonicTriads.bare(lower).to(DiatonicTriads.bare(lower.plus(interval)));
        errors.add(new ModelledError<>(
                WRONG_QUALITY,
                looks,
                () -> Phrase.sentence(
                                "That is {0} to {1}, without the accidentals.",
                                DiatonicTriads.bare(lower), DiatonicTriads.bare(lower.plus(interval)))
                        .then(nameWay(interval, lower))));
        return errors;
    }

    private static Phrase nameReason(Interval interval, NoteName lower) {
        return Phrase.sentence(
                "Letters {0} make {1}; with {2} it is {3}.",
                letters(interval, lower),
                MusicWords.oneNumber(interval.number()),
                MusicWords.halfStepsInWords(interval.semitones()),
                Phrase.one(interval));
    }

    /** {@code Letters C D E, then three half steps.} */
    private static Phrase nameWay(Interval interval, NoteName lower) {
        return Phrase.sentence(
                "Letters {0}, and {1}: put a name to both.",
                letters(interval, lower), MusicWords.halfStepsInWords(interval.semitones()));
    }

    private static Coaching nameCoaching(Interval interval, NoteName lower) {
        return Coaching.of(
                Phrase.sentence("Count the letters, both ends included."),
                Phrase.sentence("Letters: {0}. Now the half steps.", letters(interval, lower)),
                Phrase.sentence(
                        "{0} of {1}.",
                        MusicWords.oneNumber(interval.number()), MusicWords.halfStepsInWords(interval.semitones())),
                nameReason(interval, lower));
    }
}
