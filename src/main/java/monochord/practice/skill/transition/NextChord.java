package monochord.practice.skill.transition;

import java.util.List;
import monochord.harmony.after.Continuation;
import monochord.harmony.after.Continuations;
import monochord.harmony.after.SongCounts;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.NextChordJudge;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** A chord that can come next. Many answers are right; the rules of {@link Continuations} judge. */
public final class NextChord implements Skill {
    private static final List<String> IN_MAJOR =
            List.of("V", "IV", "ii", "vi", "bVI", "bVII", "iv", "bIII", "bII", "V7/V", "iii", "I");
    private static final List<String> IN_MINOR = List.of("V", "iv", "VI", "VII", "iio", "III", "V7/iv", "i");

    @Override
    public String id() {
        return "next-chord";
    }

    @Override
    public Phrase title() {
        return Phrase.of("The next chord");
    }

    @Override
    public List<String> subjects(Key key) {
        return key.isMinor() ? IN_MINOR : IN_MAJOR;
    }

    @Override
    public Question question(Key key, String subject) {
        Numeral from = numeral(subject.strip(), key);
        List<Continuation> ways = Continuations.ways(from, key, SongCounts.NONE);
        if (ways.isEmpty()) {
            throw Unreadable.because(subject, 0, "a chord to go on from", "no rule leads on from it", "bVI");
        }
        Phrase prompt = Phrase.sentence(
                "In {0} you stand on {1}, {2}. Name a chord that leads on well.", key, from.in(key), from);
        Topic topic = new Topic(id(), from.toString(), key);
        return Question.of(topic, AnswerForm.CHORD, prompt, new NextChordJudge(from, key, ways), coaching(ways));
    }

    private static Numeral numeral(String subject, Key key) {
        try {
            return Numeral.parse(subject);
        } catch (Unreadable asNumeral) {
            return number(subject, key, asNumeral);
        }
    }

    private static Numeral number(String subject, Key key, Unreadable asNumeral) {
        try {
            return BandNumber.parse(subject, key);
        } catch (Unreadable unreadable) {
            throw asNumeral;
        }
    }

    private static Coaching coaching(List<Continuation> ways) {
        Continuation best = ways.get(0);
        Continuation last = ways.get(Math.min(2, ways.size() - 1));
        return Coaching.of(
                Phrase.sentence(
                        "Ask three things: does it have to resolve, which tones can stay, where does the root want to fall?"),
                Phrase.sentence("Perhaps {0}.", last.reason()),
                untold(ways),
                Phrase.sentence(
                        "There are several: {0}.",
                        Phrase.list(ways.stream().limit(3).map(NextChord::said).toList())));
    }

    /** The first reason that does not name its own chord. */
    private static Phrase untold(List<Continuation> ways) {
        return ways.stream()
                .filter(way -> !way.reason().toString().contains(way.chord().write(Signs.MUSIC)))
                .findFirst()
                .map(way -> Phrase.sentence("Or {0}.", way.reason()))
                .orElse(Phrase.sentence("Let the root fall a fifth."));
    }

    private static Phrase said(Continuation way) {
        return Phrase.of("{0} ({1})", way.chord(), way.reason());
    }
}
