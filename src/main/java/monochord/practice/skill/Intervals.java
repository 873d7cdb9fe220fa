package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.SIGNATURE_FORGOTTEN;
import static monochord.practice.Misconception.WRONG_QUALITY;
import static monochord.practice.Misconception.WRONG_WAY;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.IntervalRubric;
import monochord.practice.answer.NoteRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.teaching.Own;
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

    @Override
    public String id() {
        return "interval";
    }

    @Override
    public String title() {
        return "Intervals";
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
        String[] parts = text.split(" (?:above|from|on|over) ", 2);
        boolean fromTonic = parts.length == 1;
        NoteName from = fromTonic ? key.tonic() : NoteName.parse(parts[1].strip());
        return note(Interval.parse(parts[0].strip()), from, fromTonic, key);
    }

    private Question note(Interval interval, NoteName from, boolean fromTonic, Key key) {
        if (interval.number() > LARGEST || interval.number() < 2) {
            throw Unreadable.because(
                    interval.toString(), 0, "an interval to ask", "from a second to two octaves is asked", "m3");
        }
        NoteName wanted = from.plus(interval);
        String way = interval.goesDown() ? " below " : " above ";
        String subject = fromTonic ? interval.toString() : interval + " above " + from;
        String prompt = "Which note lies " + Say.interval(interval) + way + Say.note(from) + "?";
        NoteRubric judge = new NoteRubric(wanted, from, way(interval, from), () -> noteSlips(interval, from));
        return Question.of(new Topic(id(), subject, key), Form.NOTES, prompt, judge, coaching(interval, from));
    }

    private static List<Slip<NoteName>> noteSlips(Interval interval, NoteName from) {
        List<Slip<NoteName>> slips = new ArrayList<>();
        NoteName wanted = from.plus(interval);
        slips.add(new Slip<>(
                SIGNATURE_FORGOTTEN,
                Own.bare(wanted),
                () -> Say.note(Own.bare(wanted)) + " has the right letter. Now the size: " + size(interval) + "."));
        if (!interval.goesDown()) {
            int number = interval.withinOctave().number();
            NoteName next = Key.major(from).note(number % 7 + 1);
            slips.add(new Slip<>(
                    COUNTED_FROM_ZERO, next, () -> "One letter too far: " + Say.note(from) + " itself counts as 1."));
        }
        slips.add(new Slip<>(WRONG_WAY, from.minus(interval), () -> "You went the other way. " + way(interval, from)));
        return slips;
    }

    private static String reason(Interval interval, NoteName from) {
        return "Letters " + letters(interval, from) + ", and " + size(interval) + ": " + Say.note(from.plus(interval))
                + ".";
    }

    /** {@code Count letters C D E, and then three half steps up.} */
    private static String way(Interval interval, NoteName from) {
        return "Count letters " + letters(interval, from) + ", and then " + size(interval) + ".";
    }

    private static String size(Interval interval) {
        return Say.halfSteps(Math.abs(interval.semitones())) + (interval.goesDown() ? " down" : " up");
    }

    private static String letters(Interval interval, NoteName from) {
        int way = interval.goesDown() ? -1 : 1;
        List<String> letters = IntStream.range(0, interval.number())
                .mapToObj(i -> "" + "CDEFGAB".charAt(Math.floorMod(from.letterStep() + way * i, 7)))
                .toList();
        return String.join(" ", letters);
    }

    private static Coaching coaching(Interval interval, NoteName from) {
        String letter = "" + from.plus(interval).letter();
        String size = Say.halfSteps(Math.abs(interval.semitones()));
        return Coaching.of(
                "Find the letter first, counting " + Say.note(from) + " as 1.",
                "Letters: " + letters(interval, from) + ". So it is some kind of " + letter + ".",
                "Some kind of " + letter + ", " + size + " away from " + Say.note(from) + ".",
                reason(interval, from));
    }

    private Question name(NoteName lower, NoteName upper, Key key) {
        Interval interval = lower.to(upper);
        if (interval.number() == 1 || interval.goesDown()) {
            throw Unreadable.because(
                    lower + " " + upper, 0, "two notes to measure", "the second has another letter", "C Eb");
        }
        String prompt = "Which interval is it from " + Say.note(lower) + " up to " + Say.note(upper) + "?";
        IntervalRubric judge = new IntervalRubric(interval, nameWay(interval, lower), () -> nameSlips(interval, lower));
        Topic topic = new Topic(id(), lower + " " + upper, key);
        return Question.of(topic, Form.INTERVAL, prompt, judge, nameCoaching(interval, lower));
    }

    private static List<Slip<Interval>> nameSlips(Interval interval, NoteName lower) {
        List<Slip<Interval>> slips = new ArrayList<>();
        slips.add(new Slip<>(
                WRONG_WAY,
                interval.inverted(),
                () -> "That is how far it is on to the next " + Say.note(lower) + ". " + nameWay(interval, lower)));
        if (interval.number() > 2) {
            Interval below = Degree.of(interval.number() - 1, 0).interval();
            slips.add(new Slip<>(COUNTED_FROM_ZERO, below, () -> "One letter too few: the lower note counts as 1."));
        }
        Interval looks = Own.bare(lower).to(Own.bare(lower.plus(interval)));
        slips.add(new Slip<>(
                WRONG_QUALITY,
                looks,
                () -> "That is " + Say.note(Own.bare(lower)) + " to " + Say.note(Own.bare(lower.plus(interval)))
                        + ", without the accidentals. " + nameWay(interval, lower)));
        return slips;
    }

    private static String nameReason(Interval interval, NoteName lower) {
        return "Letters " + letters(interval, lower) + " make " + Say.article(number(interval)) + number(interval)
                + "; with " + Say.halfSteps(interval.semitones()) + " it is " + Say.interval(interval) + ".";
    }

    /** {@code Letters C D E, then three half steps.} */
    private static String nameWay(Interval interval, NoteName lower) {
        return "Letters " + letters(interval, lower) + ", and " + Say.halfSteps(interval.semitones())
                + ": put a name to both.";
    }

    private static String number(Interval interval) {
        String words = interval.inWords();
        return words.substring(words.lastIndexOf(' ') + 1);
    }

    private static Coaching nameCoaching(Interval interval, NoteName lower) {
        return Coaching.of(
                "Count the letters, both ends included.",
                "Letters: " + letters(interval, lower) + ". Now the half steps.",
                Say.article(number(interval)).replace('a', 'A') + number(interval) + " of "
                        + Say.halfSteps(interval.semitones()) + ".",
                nameReason(interval, lower));
    }
}
