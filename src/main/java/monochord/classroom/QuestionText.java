package monochord.classroom;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import monochord.lesson.Trouble;
import monochord.lesson.read.AskText;
import monochord.lesson.read.Faults;
import monochord.lesson.read.Field;
import monochord.lesson.read.SourceLine;
import monochord.practice.skill.Skills;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/** Reads an {@code ask} block that names one question: its number, skill, subject, key and seed. */
final class QuestionText {
    static final String ITEM = "item";
    private static final List<String> NAMES = List.of(ITEM, "skill", "subject", "key", "seed");
    private static final Pattern NUMBERED = Pattern.compile("\\s*(?:item|key|seed)\\s*:.*");

    private final Faults faults;
    private final SourceLine fence;
    private final Map<String, Field> fields = new LinkedHashMap<>();

    private QuestionText(SourceLine fence, Faults faults) {
        this.fence = fence;
        this.faults = faults;
    }

    /** Whether a block names one question, not something to draw from. */
    static boolean isOne(List<SourceLine> lines) {
        return lines.stream().anyMatch(line -> NUMBERED.matcher(line.text()).matches());
    }

    /** @return the question without its words; nothing if the block has a fault that leaves nothing to ask */
    static Optional<AssignedQuestion> read(SourceLine fence, List<SourceLine> lines, Faults faults) {
        QuestionText text = new QuestionText(fence, faults);
        for (SourceLine line : lines) {
            Field.read(line, NAMES, Phrase.of("line of a question"), faults)
                    .ifPresent(field -> Field.put(text.fields, field, faults));
        }
        return text.question();
    }

    private Optional<AssignedQuestion> question() {
        Optional<Integer> item = number(ITEM)
                .filter(number -> number >= 1 && number <= Integer.MAX_VALUE)
                .map(Long::intValue);
        Optional<Long> seed = number("seed");
        if (item.isEmpty() || seed.isEmpty() || skill().isEmpty()) {
            return Optional.empty();
        }
        return key().map(key -> new AssignedQuestion(item.get(), skill().get(), said("subject"), key, seed.get(), ""))
                .filter(this::isAsked);
    }

    private Optional<Long> number(String name) {
        Optional<Long> number = Optional.of(said(name))
                .filter(text -> text.matches("-?[0-9]{1,18}|-?[0-9]{19}"))
                .flatMap(QuestionText::whole);
        return number.isPresent() ? number : fault(name, Phrase.of("write a whole number"));
    }

    private static Optional<Long> whole(String text) {
        try {
            return Optional.of(Long.parseLong(text));
        } catch (NumberFormatException tooLarge) {
            return Optional.empty();
        }
    }

    private Optional<String> skill() {
        String id = said("skill");
        if (Skills.find(id).isPresent()) {
            return Optional.of(id);
        }
        if (id.isEmpty()) {
            return fault("skill", Phrase.of("write skill: and what to ask"));
        }
        Field field = fields.get("skill");
        faults.in(field.line(), field.value().place(), Trouble.unknown(0, Phrase.of("skill"), id, AskText.skillIds()));
        return Optional.empty();
    }

    private Optional<Key> key() {
        try {
            return Optional.of(Key.parse(said("key")));
        } catch (Unreadable unreadable) {
            return fault("key", Phrase.of("write for example key: Eb major"));
        }
    }

    private boolean isAsked(AssignedQuestion question) {
        boolean asked = question.question().isPresent();
        if (!asked) {
            fault("subject", Phrase.of("keep the block as it was given out"));
        }
        return asked;
    }

    private String said(String name) {
        return Optional.ofNullable(fields.get(name))
                .map(field -> field.value().text())
                .orElse("");
    }

    private <T> Optional<T> fault(String name, Phrase instead) {
        Field field = fields.get(name);
        Phrase what = Phrase.of("this question has no {0} that can be read", Phrase.typed(name));
        if (field == null) {
            faults.at(fence.number(), 1, what, instead);
        } else {
            field.fault(what, instead, faults);
        }
        return Optional.empty();
    }
}
