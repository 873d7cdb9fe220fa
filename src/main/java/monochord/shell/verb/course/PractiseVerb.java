package monochord.shell.verb.course;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;
import static monochord.shell.sentence.FormPart.unsaid;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.lesson.Keys;
import monochord.practice.Skill;
import monochord.practice.drill.Difficulty;
import monochord.practice.drill.Mix;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/** Begins a run of questions on one skill, keys and directions mixed. */
final class PractiseVerb implements Verb {
    private static final int QUESTIONS = 10;

    @Override
    public String word() {
        return "practise";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.LEARNING,
                        Phrase.of("alone, ten minutes for today; with a skill, ten questions on it, keys mixed"))
                .form(may(takes(Value.SKILL)), may(clause("in", Value.KEYS)), unsaid(option("seed", Value.SEED)))
                .examples(
                        "practise",
                        "practise degree-chord",
                        "practise interval in D A Eb",
                        "practise borrowed-chord in flats");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (sentence.body().isEmpty() && sentence.clause("in").isEmpty()) {
            return sitting.teaching().runs().daily(AskVerb.seed(sentence, sitting));
        }
        Skill skill = AskVerb.skill(sentence, sitting);
        List<Key> keys = sentence.clause("in")
                .map(part -> part.read(text -> keys(text, sitting)))
                .orElseGet(() -> new Difficulty(sitting.study().knowledge()).keys(skill));
        Answer first = sitting.teaching()
                .runs()
                .practise(Mix.of(skill, keys).turns(QUESTIONS, AskVerb.seed(sentence, sitting)));
        return Answers.of(head(skill, keys), first);
    }

    private static Answer head(Skill skill, List<Key> keys) {
        Optional<Skill> back = Mix.wayBack(skill);
        List<Phrase> skills = Stream.concat(Stream.of(skill), back.stream())
                .map(one -> Phrase.typed(one.id()))
                .toList();
        return Statement.of(
                keys.size() == 1
                        ? Phrase.of("Ten questions on {0}; skip ends it.", Phrase.list(skills))
                        : Phrase.of(
                                "Ten questions on {0}, {1} keys mixed; skip ends it.",
                                Phrase.list(skills), keys.size()));
    }

    /** Keys as lessons write them, with commas, or with spaces between. */
    private static List<Key> keys(String text, Sitting sitting) {
        Keys keys;
        try {
            keys = Keys.parse(text);
        } catch (Unreadable withCommas) {
            keys = Keys.parse(text.replace(' ', ','));
        }
        return keys.in(sitting.key()).stream().flatMap(List::stream).distinct().toList();
    }
}
