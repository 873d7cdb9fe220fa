package monochord.practice.skill.ear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Excerpt;
import monochord.practice.Excerpt.Moment;
import monochord.practice.Listening;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.EarRubric;
import monochord.practice.skill.ear.IntervalSubject.Manner;
import monochord.text.MusicWords;
import monochord.text.Phrase;
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
    public Phrase title() {
        return Phrase.of("Intervals by ear");
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
        HeardInterval task = new HeardInterval(about.size(), notes(placed, about.manner()));
        Phrase prompt = about.manner() == Manner.TOGETHER
                ? Phrase.sentence("Two notes together. Which interval is it?")
                : Phrase.sentence("Two notes, one after the other. Which interval is it?");
        Listening listening = new Listening(
                () -> heard(placed, about.manner()),
                answer -> read(task, answer).map(given -> heard(instead(placed, given, about), about.manner())));
        return Question.of(
                        new Topic(id(), about.toString(), key),
                        AnswerForm.INTERVAL,
                        prompt,
                        new EarRubric<>(about.size(), task, () -> errors(about.size())),
                        coaching(placed, about.size(), key))
                .byEar(listening)
                .withSeed(seed);
    }

    private static Placement instead(Placement placed, Interval given, IntervalSubject about) {
        return placed.with(given, about.manner() == Manner.DOWN);
    }

    private static Optional<Interval> read(HeardInterval task, String answer) {
        try {
            return Optional.of(task.read(answer)).filter(given -> given.semitones() <= WIDEST);
        } catch (Unreadable unreadable) {
            return Optional.empty();
        }
    }

    private static Phrase notes(Placement placed, Manner manner) {
        NoteName lower = placed.lower().name();
        NoteName upper = placed.upper().name();
        return switch (manner) {
            case UP -> Phrase.of("{0} up to {1}", lower, upper);
            case DOWN -> Phrase.of("{0} down to {1}", upper, lower);
            case TOGETHER -> Phrase.of("{0} with {1} above it", lower, upper);
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
    private static List<Interval> errors(Interval size) {
        List<Interval> errors = new ArrayList<>();
        errors.add(size.inverted());
        IntervalSubject.ALL.stream()
                .limit(12)
                .map(name -> IntervalSubject.parse(name).size())
                .filter(other -> Math.abs(other.number() - size.number()) < 2)
                .forEach(errors::add);
        errors.add(size.plus(Interval.OCTAVE));
        return errors;
    }

    private static Coaching coaching(Placement placed, Interval size, Key key) {
        return Coaching.of(
                Phrase.sentence("Hear it again, and hum the lower note until it is yours."),
                Phrase.sentence(
                        "Sing up the scale from the lower note, counting it as 1, until you meet the upper one."),
                last(size),
                derivation(placed, size, key));
    }

    private static Phrase last(Interval size) {
        if (IntervalSubject.isTritone(size)) {
            return Phrase.sentence("It is wider than a perfect fourth and narrower than a perfect fifth.");
        }
        Phrase counted = Phrase.of("You will count to {0}", Phrase.number(size.number()));
        return size.quality().equals("P")
                ? Phrase.sentence("{0}, and it is as bare as such intervals are.", counted)
                : Phrase.sentence(
                        "{0}. There are two of these, a half step apart: is it the wider or the narrower?", counted);
    }

    private static Phrase derivation(Placement placed, Interval size, Key key) {
        NoteName lower = placed.lower().name();
        int degree = key.degreeOf(lower).number();
        int count = placed.interval().number();
        List<NoteName> sung = IntStream.range(0, count)
                .mapToObj(i -> key.note((degree - 1 + i) % 7 + 1))
                .toList();
        return Phrase.sentence(
                "From {0} sing {1}: {2} notes. With {3} between the ends it is {4}.",
                lower,
                Phrase.row(sung),
                Phrase.number(count),
                MusicWords.halfStepsInWords(size.semitones()),
                HeardInterval.name(size));
    }
}
