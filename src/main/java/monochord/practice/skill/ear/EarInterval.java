package monochord.practice.skill.ear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.practice.Coaching;
import monochord.practice.Excerpt;
import monochord.practice.Excerpt.Moment;
import monochord.practice.Form;
import monochord.practice.Listening;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.EarRubric;
import monochord.practice.answer.Say;
import monochord.practice.skill.ear.IntervalSubject.Manner;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Two notes of a key, one after the other or together: which interval is it? */
public final class EarInterval implements Skill {
    private static final Beats EACH = Beats.of(2);
    private static final Beats BOTH = Beats.of(3);
    /** Two octaves: what lies farther apart is not played beside what was asked. */
    private static final int WIDEST = 24;

    @Override
    public String id() {
        return "ear-interval";
    }

    @Override
    public String title() {
        return "Intervals by ear";
    }

    @Override
    public List<String> subjects(Key key) {
        return IntervalSubject.ALL;
    }

    @Override
    public Question question(Key key, String subject) {
        return question(key, subject, 0);
    }

    @Override
    public Question question(Key key, String subject, long seed) {
        Chance chance = new Chance(seed);
        IntervalSubject about = Alternatives.of(subject, IntervalSubject::parse, chance);
        Placement placed = Placement.of(about.size(), key, chance);
        IntervalSense sense = new IntervalSense(about.size(), notes(placed, about.manner()));
        String prompt = about.manner() == Manner.TOGETHER
                ? "Two notes together. Which interval is it?"
                : "Two notes, one after the other. Which interval is it?";
        Listening listening = new Listening(
                () -> heard(placed, about.manner()),
                answer -> read(sense, answer).map(given -> heard(instead(placed, given, about), about.manner())));
        return Question.of(
                        new Topic(id(), about.toString(), key),
                        Form.INTERVAL,
                        prompt,
                        new EarRubric<>(about.size(), sense, () -> slips(about.size())),
                        coaching(placed, about.size(), key))
                .byEar(listening)
                .withSeed(seed);
    }

    private static Placement instead(Placement placed, Interval given, IntervalSubject about) {
        return placed.with(given, about.manner() == Manner.DOWN);
    }

    private static Optional<Interval> read(IntervalSense sense, String answer) {
        try {
            return Optional.of(sense.read(answer)).filter(given -> given.semitones() <= WIDEST);
        } catch (Unreadable unreadable) {
            return Optional.empty();
        }
    }

    private static String notes(Placement placed, Manner manner) {
        String lower = Say.note(placed.lower().name());
        String upper = Say.note(placed.upper().name());
        return switch (manner) {
            case UP -> lower + " up to " + upper;
            case DOWN -> upper + " down to " + lower;
            case TOGETHER -> lower + " with " + upper + " above it";
        };
    }

    private static Excerpt heard(Placement placed, Manner manner) {
        Moment lower = new Moment(List.of(placed.lower()), EACH);
        Moment upper = new Moment(List.of(placed.upper()), EACH);
        return Excerpt.of(
                switch (manner) {
                    case UP -> List.of(lower, upper);
                    case DOWN -> List.of(upper, lower);
                    case TOGETHER -> List.of(new Moment(List.of(placed.lower(), placed.upper()), BOTH));
                });
    }

    /** What unsure ears give: the complement, the other size, a step too far or too few, the octave. */
    private static List<Interval> slips(Interval size) {
        List<Interval> slips = new ArrayList<>();
        slips.add(size.inverted());
        IntervalSubject.ALL.stream()
                .limit(12)
                .map(name -> IntervalSubject.parse(name).size())
                .filter(other -> Math.abs(other.number() - size.number()) < 2)
                .forEach(slips::add);
        slips.add(size.plus(Interval.OCTAVE));
        return slips;
    }

    private static Coaching coaching(Placement placed, Interval size, Key key) {
        return Coaching.of(
                "Hear it again, and hum the lower note until it is yours.",
                "Sing up the scale from the lower note, counting it as 1, until you meet the upper one.",
                last(size),
                derivation(placed, size, key));
    }

    private static String last(Interval size) {
        if (IntervalSubject.isTritone(size)) {
            return "It is wider than a perfect fourth and narrower than a perfect fifth.";
        }
        String counted = "You will count to " + Say.count(size.number());
        return size.quality().equals("P")
                ? counted + ", and it is as bare as such intervals are."
                : counted + ". There are two of these, a half step apart: is it the wider or the narrower?";
    }

    private static String derivation(Placement placed, Interval size, Key key) {
        NoteName lower = placed.lower().name();
        int degree = key.degreeOf(lower).number();
        int count = placed.interval().number();
        List<NoteName> sung = IntStream.range(0, count)
                .mapToObj(i -> key.note((degree - 1 + i) % 7 + 1))
                .toList();
        return "From " + Say.note(lower) + " sing " + Say.row(sung) + ": " + Say.count(count) + " notes. "
                + "With " + Say.halfSteps(size.semitones()) + " between the ends it is " + IntervalSense.name(size)
                + ".";
    }
}
