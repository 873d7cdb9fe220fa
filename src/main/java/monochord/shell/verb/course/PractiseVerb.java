package monochord.shell.verb.course;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import java.util.Optional;
import monochord.lesson.Keys;
import monochord.practice.Skill;
import monochord.practice.drill.Level;
import monochord.practice.drill.Mix;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Saying;

/** Begins a run of questions on one skill, keys and directions mixed. */
final class PractiseVerb implements Verb {
    private static final int QUESTIONS = 10;

    @Override
    public String word() {
        return "practise";
    }

    @Override
    public Usage usage() {
        return Usage.of(word(), Usage.Topic.LEARNING, Phrase.of("take ten questions, keys and directions mixed; skip ends it"))
                .form(takes(Value.SKILL), may(clause("in", Value.KEYS)), may(option("seed", Value.SEED)))
                .examples("practise degree-chord", "practise interval in D A Eb", "practise borrowed-chord in flats");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Skill skill = AskVerb.skill(sentence, sitting);
        List<Key> keys = sentence.clause("in")
                .map(part -> part.read(text -> keys(text, sitting)))
                .orElseGet(() -> new Level(sitting.study().knowledge()).keys(skill));
        Answer first = sitting.teaching().drill(Mix.of(skill, keys).turns(QUESTIONS, AskVerb.seed(sentence, sitting)));
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
}
