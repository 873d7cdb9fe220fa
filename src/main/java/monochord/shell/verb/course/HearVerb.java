package monochord.shell.verb.course;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.unsaid;
import static monochord.shell.sentence.FormPart.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.drill.Difficulty;
import monochord.practice.skill.Skills;
import monochord.practice.skill.ear.Dictation;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.sounding.HeardAgain;
import monochord.shell.verb.sounding.Recording;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** Plays the open question for the ear again, or asks one. */
final class HearVerb implements Verb {
    private static final String EXAMPLE = "hear progression in D";
    private static final String DICTATION = "dictation";
    private static final List<String> KINDS = List.of("interval", "quality", "progression", DICTATION);

    @Override
    public String word() {
        return "hear";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.LEARNING,
                        Phrase.of("be asked by ear, at your level and in any key; alone, hear the open question again"))
                .form(may(words("interval", "quality", "progression", DICTATION)), may(clause("in", Value.KEY)))
                .form(Recording.form())
                .form(unsaid(option("seed", Value.SEED)))
                .examples("hear interval", EXAMPLE, "hear dictation");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        String kind = sentence.body().text().toLowerCase(Locale.ROOT);
        if (kind.isEmpty() && sitting.teaching().room().isPresent()) {
            return HeardAgain.of(sitting.teaching().roomQuestion().filter(Question::isByEar), sentence, sitting);
        }
        if (kind.isEmpty() && sitting.question().isByEar()) {
            return HeardAgain.of(sentence, sitting);
        }
        if (kind.isEmpty() && sitting.question().isToldByEar()) {
            return HeardAgain.of(Optional.of(sitting.question().lastQuestion()), sentence, sitting);
        }
        return ask(kind, sentence, sitting);
    }

    private static Answer ask(String kind, Sentence sentence, Sitting sitting) {
        long seed = AskVerb.seed(sentence, sitting);
        Difficulty level = new Difficulty(sitting.study().knowledge());
        Skill skill = kind.isEmpty() ? level.next(skills()) : sentence.body().read(HearVerb::skill);
        Optional<Key> named = sentence.clause("in").map(part -> part.read(Key::parse));
        Key key = named.orElseGet(() -> level.key(skill, seed));
        Question question = kind.equals(DICTATION) ? Dictation.question(key, seed) : level.question(skill, key, seed);
        return AskVerb.put(skill, question, named, sentence, sitting);
    }

    private static List<Skill> skills() {
        return KINDS.stream().limit(KINDS.size() - 1L).map(HearVerb::skill).toList();
    }

    private static Skill skill(String text) {
        String kind = text.toLowerCase(Locale.ROOT);
        return Skills.find("ear-" + (kind.equals(DICTATION) ? "progression" : kind))
                .orElseThrow(() -> unknown(text));
    }

    private static Unreadable unknown(String text) {
        Clause advice = Nearest.to(text, KINDS)
                .map(kind -> Clause.of("did you mean {0}", kind))
                .orElseGet(() -> Clause.of("expected one of {0}", String.join(", ", KINDS)));
        return Unreadable.because(text, 0, "something to be asked by ear", advice, EXAMPLE);
    }
}
