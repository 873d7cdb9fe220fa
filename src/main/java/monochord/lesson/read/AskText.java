package monochord.lesson.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import monochord.lesson.Keys;
import monochord.lesson.LessonPart.Ask;
import monochord.lesson.Trouble;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/** Reads an {@code ask} block, and has the skill try what it asks in every key it names. */
public final class AskText {
    private static final List<String> NAMES = List.of("skill", "subject", "keys", "count", "answer");

    private static final Phrase LINE = Phrase.of("line of a question");
    private static final int MOST_LINES = 12;

    private final Faults faults;
    private final Map<String, Field> fields = new LinkedHashMap<>();

    private AskText(Faults faults) {
        this.faults = faults;
    }

    /** All that can stand behind {@code skill}. */
    public static List<String> skillIds() {
        return Skills.all().stream().map(Skill::id).toList();
    }

    /**
     * @param fence number of the line with the fence, from 1
     * @return nothing if it has a fault that leaves nothing to ask
     */
    public static Optional<Ask> read(int fence, List<SourceLine> lines, Faults faults) {
        AskText text = new AskText(faults);
        if (lines.size() > MOST_LINES) {
            faults.at(
                    lines.get(MOST_LINES).number(),
                    1,
                    Phrase.of("a question of too many lines"),
                    Phrase.of("write each line once"));
        }
        for (SourceLine line : lines.subList(0, Math.min(MOST_LINES, lines.size()))) {
            Field.read(line, NAMES, LINE, faults).ifPresent(field -> Field.put(text.fields, field, faults));
        }
        return text.ask(fence);
    }

    private Optional<Ask> ask(int fence) {
        if (!fields.containsKey("skill")) {
            faults.at(
                    fence,
                    1,
                    Phrase.of("the question names no skill"),
                    Phrase.of("write skill: and one of {0}", Phrase.typed(String.join(", ", skillIds()))));
        }
        Optional<Skill> skill = said("skill").flatMap(this::skill);
        Optional<Keys> keys = said("keys").map(this::keys).orElse(Optional.of(Keys.same()));
        OptionalInt count = said("count").map(this::count).orElse(OptionalInt.of(1));
        if (skill.isEmpty() || keys.isEmpty() || count.isEmpty()) {
            return Optional.empty();
        }
        Ask ask = new Ask(fence, skill.get(), value("subject"), keys.get(), count.getAsInt(), value("answer"));
        return canBeAsked(ask) ? Optional.of(ask) : Optional.empty();
    }

    /** A field that is there and not empty. */
    private Optional<Field> said(String name) {
        Field field = fields.get(name);
        if (field != null && field.value().isEmpty()) {
            field.fault(
                    Phrase.of("{0} is empty", Phrase.typed(name)),
                    Phrase.of("write something behind the colon, or leave the line out"),
                    faults);
        }
        return Optional.ofNullable(field).filter(some -> !some.value().isEmpty());
    }

    private String value(String name) {
        return said(name).map(field -> field.value().text()).orElse(null);
    }

    private Optional<Skill> skill(Field field) {
        String id = field.value().text();
        Optional<Skill> skill = Skills.find(id);
        if (skill.isEmpty()) {
            faults.in(field.line(), field.value().place(), Trouble.unknown(0, Phrase.of("skill"), id, skillIds()));
        }
        return skill;
    }

    private Optional<Keys> keys(Field field) {
        try {
            return Optional.of(Keys.parse(field.value().text()));
        } catch (Unreadable unreadable) {
            faults.in(field.line(), field.value().place(), Trouble.of(unreadable));
            return Optional.empty();
        }
    }

    private OptionalInt count(Field field) {
        OptionalInt count = Numbers.upTo(Ask.MOST, field.value().text());
        if (count.isEmpty()) {
            Phrase what = Phrase.of(
                    "the count \"{0}\" is no number from 1 to {1}",
                    Phrase.quoted(field.value().text()), Ask.MOST);
            field.fault(what, Phrase.of("write for example count: 4"), faults);
        }
        return count;
    }

    private boolean canBeAsked(Ask ask) {
        boolean nothingToProve = ask.subject() == null && ask.answer() == null;
        return nothingToProve || keysOf(ask).stream().allMatch(key -> canBeAsked(ask, key));
    }

    /** All keys the questions may come in; where the learner's is among them, all fifteen. */
    private static List<Key> keysOf(Ask ask) {
        return Key.majorKeys().stream()
                .flatMap(lessonKey -> ask.keys().in(lessonKey).stream())
                .flatMap(List::stream)
                .distinct()
                .toList();
    }

    private boolean canBeAsked(Ask ask, Key key) {
        List<String> subjects = ask.subjects();
        return subjects.isEmpty()
                ? canBeAsked(ask, key, 0, () -> ask.skill().question(key, 0))
                : subjects.stream()
                        .allMatch(subject -> canBeAsked(
                                ask,
                                key,
                                ask.subject().indexOf(subject),
                                () -> ask.skill().question(key, subject)));
    }

    /** @param place where the subject begins among several */
    private boolean canBeAsked(Ask ask, Key key, int place, Supplier<Question> asked) {
        try {
            Question question = asked.get();
            return ask.answer() == null || isRight(ask, question, key);
        } catch (Unreadable unreadable) {
            Field field = fields.getOrDefault("subject", fields.get("skill"));
            faults.in(field.line(), field.value().place() + place, Trouble.of(unreadable));
            return false;
        }
    }

    private boolean isRight(Ask ask, Question question, Key key) {
        boolean right = question.judge(ask.answer()).grade().isRight();
        if (!right) {
            Phrase what =
                    Phrase.of("in {0} \"{1}\" is not right", Phrase.typed(key.toString()), Phrase.quoted(ask.answer()));
            Phrase instead = Phrase.of("write {0}, or leave the line out", Phrase.typed(question.expected()));
            fields.get("answer").fault(what, instead, faults);
        }
        return right;
    }
}
