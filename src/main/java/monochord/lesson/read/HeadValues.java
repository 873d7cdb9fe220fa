package monochord.lesson.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import monochord.lesson.PlacedText;
import monochord.lesson.Trouble;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.text.Phrase;

/** Reads what the fields of a head say. */
final class HeadValues {
    private static final int HIGHEST_GRADE = 8;
    private static final Pattern COMMA = Pattern.compile(",");
    private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*+");

    private final Head head;
    private final Faults faults;

    HeadValues(Head head, Faults faults) {
        this.head = head;
        this.faults = faults;
    }

    Optional<String> title() {
        Optional<Field> field = head.field("title");
        Optional<String> title =
                field.map(said -> unquoted(said.value().text())).filter(text -> !text.isEmpty());
        if (field.isPresent() && title.isEmpty()) {
            field.get().fault(Phrase.of("the title is empty"), Head.example("title"), faults);
        }
        if (title.isPresent() && title.get().contains("${")) {
            field.get().fault(Phrase.of("a title is not filled in"), Phrase.of("write it without ${…}"), faults);
        }
        return title;
    }

    private static String unquoted(String text) {
        boolean quoted = text.length() > 1 && text.charAt(0) == '"' && text.endsWith("\"");
        return quoted ? text.substring(1, text.length() - 1).strip() : text;
    }

    OptionalInt grade() {
        Optional<Field> field = head.field("grade");
        if (field.isEmpty()) {
            return OptionalInt.empty();
        }
        OptionalInt grade = Numbers.upTo(HIGHEST_GRADE, field.get().value().text());
        if (grade.isEmpty()) {
            Phrase what = Phrase.of(
                    "the grade \"{0}\" is no number from 1 to {1}",
                    Phrase.quoted(field.get().value().text()), HIGHEST_GRADE);
            field.get().fault(what, Phrase.of("write for example grade: 3"), faults);
        }
        return grade;
    }

    /** The slugs, each with its place. */
    List<PlacedText> needs() {
        List<PlacedText> needs = new ArrayList<>();
        for (PlacedText need : list("needs")) {
            if (SLUG.matcher(need.text()).matches()) {
                needs.add(need);
            } else {
                fault(
                        "needs",
                        need.place(),
                        Phrase.of("\"{0}\" is no slug", Phrase.quoted(need.text())),
                        Phrase.of("write the file name without its number and .md"));
            }
        }
        return needs;
    }

    List<Skill> skills() {
        List<Skill> skills = new ArrayList<>();
        for (PlacedText piece : skillPieces()) {
            Skills.find(piece.text()).ifPresentOrElse(skills::add, () -> unknownSkill(piece));
        }
        return skills;
    }

    List<PlacedText> skillPieces() {
        return list("skills");
    }

    private void unknownSkill(PlacedText piece) {
        Trouble trouble = Trouble.unknown(piece.place(), Phrase.of("skill"), piece.text(), AskText.skillIds());
        faults.in(head.field("skills").orElseThrow().line(), 0, trouble);
    }

    void fault(String field, int place, Phrase what, Phrase instead) {
        faults.in(head.field(field).orElseThrow().line(), 0, new Trouble(place, what, instead));
    }

    private List<PlacedText> list(String name) {
        Optional<Field> field = head.field(name);
        if (field.isEmpty()) {
            return List.of();
        }
        PlacedText value = field.get().value();
        if (!value.text().startsWith("[") || !value.text().endsWith("]")) {
            Phrase what = Phrase.of("{0} is no list in square brackets", Phrase.typed(name));
            field.get().fault(what, Head.example(name), faults);
            return List.of();
        }
        PlacedText inside = value.part(1, value.text().length() - 1).stripped();
        return inside.isEmpty() ? List.of() : inside.split(COMMA);
    }
}
