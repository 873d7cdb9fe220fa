package monochord.shell.verb.course;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.or;
import static monochord.shell.sentence.FormPart.takes;
import static monochord.shell.sentence.FormPart.unsaid;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.drill.Turn;
import monochord.practice.skill.Skills;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sentence.WholeNumber;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.sounding.HeardAgain;
import monochord.shell.verb.sounding.Recording;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.course.AskAnswer;
import monochord.view.course.VerdictAnswer;

/** Puts a question, or judges an answer to one. */
final class AskVerb implements Verb {
    private static final String EXAMPLE = "ask borrowed-chord of bVI in D";

    @Override
    public String word() {
        return "ask";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.LEARNING,
                        Phrase.of("be asked a question; without a skill, another of the same"))
                .form(
                        takes(Value.SKILL),
                        may(clause("of", Value.SUBJECT)),
                        may(clause("in", Value.KEY), or(), clause("from", Value.KEY), clause("to", Value.KEY)),
                        may(clause("for", Value.INSTRUMENT)),
                        may(option("answer", Value.TEXT)))
                .form(unsaid(option("seed", Value.SEED)))
                .form(unsaid(Recording.form()))
                .examples(
                        EXAMPLE,
                        "ask scale-spelling of E harmonic minor",
                        "ask degree-quality in Eb",
                        "ask transposition of F C G from C to Eb",
                        "ask transposition of F C G in C for alto sax");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (sentence.body().isEmpty() && sitting.question().lastSkill() == null && sitting.isSeated()) {
            return suggested(sentence, sitting);
        }
        Skill skill = skill(sentence, sitting);
        Question question = question(skill, sentence, sitting);
        Optional<Sentence.SentencePart> answer = sentence.option("answer");
        if (answer.isPresent()) {
            String text = answer.get().text();
            Answer verdict = new VerdictAnswer(question, question.judge(text), List.of());
            return Recording.isWanted(sentence)
                    ? Answers.of(
                            verdict,
                            HeardAgain.recorded(question.heardBeside(text).or(question::heard), sentence, sitting))
                    : verdict;
        }
        return put(skill, question, key(sentence, sitting), sentence, sitting);
    }

    /** Nothing is named and nothing was: what the learner is ready for, in the key that is named or an easy one. */
    private static Answer suggested(Sentence sentence, Sitting sitting) {
        long seed = seed(sentence, sitting);
        Turn turn = sitting.teaching().suggested(seed);
        Optional<Key> named = key(sentence, sitting);
        Question question = sitting.teaching().level().question(turn.skill(), named.orElse(turn.key()), seed);
        return put(turn.skill(), question, named, sentence, sitting);
    }

    /** Puts the question, and writes what is to be heard if the sentence wants it, else plays it. */
    static Answer put(Skill skill, Question question, Optional<Key> key, Sentence sentence, Sitting sitting) {
        boolean named = sentence.clause("of")
                .filter(said -> !said.text().contains(" or "))
                .isPresent();
        if (Recording.isWanted(sentence)) {
            Answer written = HeardAgain.recorded(question.heard(), sentence, sitting);
            sitting.teaching().ask(skill, question, key);
            AskAnswer asked = new AskAnswer(question);
            return written.status() == Answer.DONE ? Answers.of(named ? asked.named() : asked, written) : written;
        }
        sitting.teaching().ask(skill, question, key);
        return named ? sitting.teaching().asked().named() : sitting.teaching().asked();
    }

    /** The skill that is named, else the last one. */
    static Skill skill(Sentence sentence, Sitting sitting) {
        return sentence.body().isEmpty()
                ? again(sentence, sitting)
                : sentence.body().read(AskVerb::skill);
    }

    private static Skill again(Sentence sentence, Sitting sitting) {
        Skill last = sitting.question().lastSkill();
        if (last == null) {
            throw Unreadable.because(
                    "ask", 0, "a whole sentence", Clause.of("say which skill, of {0}", list()), EXAMPLE);
        }
        return last;
    }

    private static Skill skill(String text) {
        return Skills.find(text)
                .orElseThrow(() -> Unreadable.because(
                        text,
                        0,
                        "a skill",
                        meant(text)
                                .map(id -> Clause.of("did you mean {0}", id))
                                .orElseGet(() -> Clause.of("the skills are {0}", list())),
                        EXAMPLE));
    }

    /** The skill that begins so, else the one a slip of the finger away. */
    private static Optional<String> meant(String text) {
        String start = text.toLowerCase(Locale.ROOT).replace(' ', '-');
        return ids().stream().filter(id -> id.startsWith(start)).findFirst().or(() -> Nearest.to(text, ids()));
    }

    private static String list() {
        return String.join(", ", ids());
    }

    static List<String> ids() {
        return Skills.all().stream().map(Skill::id).toList();
    }

    private static Question question(Skill skill, Sentence sentence, Sitting sitting) {
        Key key = key(sentence, sitting).orElseGet(sitting::key);
        long seed = seed(sentence, sitting);
        return sentence.clause("of")
                .map(subject -> subject.read(text -> skill.question(key, text + goal(sentence), seed)))
                .orElseGet(() -> skill.question(key, seed));
    }

    /** The key that is named; where only another of the same is wanted, the one that was named before. */
    private static Optional<Key> key(Sentence sentence, Sitting sitting) {
        return sentence.clause("from")
                .or(() -> sentence.clause("in"))
                .map(part -> part.read(Key::parse))
                .or(() -> sentence.body().isEmpty() ? sitting.teaching().askedIn() : Optional.empty());
    }

    /** The seed that is given, else a new one. */
    static long seed(Sentence sentence, Sitting sitting) {
        return sentence.option("seed").map(part -> part.read(WholeNumber::seed)).orElseGet(sitting::nextSeed);
    }

    /** The key to go to, or whose part it is, which belongs to the subject. */
    private static String goal(Sentence sentence) {
        return sentence.clause("to")
                .map(to -> " to " + to.text())
                .or(() -> sentence.clause("for").map(reader -> " for " + reader.text()))
                .orElse("");
    }
}
