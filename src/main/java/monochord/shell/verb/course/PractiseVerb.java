package monochord.shell.verb.course;

import java.util.List;
import java.util.Optional;
import monochord.lesson.Keys;
import monochord.practice.Skill;
import monochord.practice.drill.Level;
import monochord.practice.drill.Mix;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.theory.Key;
import monochord.theory.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Saying;

/** Begins a run of questions on one skill, keys and directions mixed. */
final class PractiseVerb implements Verb {
    private static final int QUESTIONS = 10;

    @Override
    public Usage usage() {
        return Usage.of(
                        "practise",
                        Usage.Topic.LEARNING,
                        "practise SKILL [in KEYS] [--seed N]",
                        "take ten questions, keys and directions mixed; skip ends it",
                        "practise degree-chord",
                        "practise interval in D A Eb",
                        "practise borrowed-chord in flats")
                .withOptions("seed");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Skill skill = AskVerb.skill(sentence, sitting);
        List<Key> keys = sentence.clause("in")
                .map(part -> part.read(text -> keys(text, sitting)))
                .orElseGet(() -> new Level(sitting.study().knowledge()).keys(skill));
        Answer first =
                sitting.teaching().practise(Mix.of(skill, keys).turns(QUESTIONS, AskVerb.seed(sentence, sitting)));
        return Answers.of(head(skill, keys), first);
    }

    private static Answer head(Skill skill, List<Key> keys) {
        Optional<Skill> back = Mix.wayBack(skill);
        String both = back.map(way -> " and " + way.id()).orElse("");
        String where = keys.size() == 1 ? "" : ", " + keys.size() + " keys mixed";
        return Saying.of("Ten questions on " + skill.id() + both + where + "; skip ends it.");
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

    @Override
    public List<String> candidates(Sitting sitting) {
        return AskVerb.ids();
    }
}
