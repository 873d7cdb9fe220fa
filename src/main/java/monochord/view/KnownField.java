package monochord.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.practice.Skill;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.skill.Skills;
import monochord.text.Columns;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Span;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Key;

/**
 * Signs in a field: a row for each skill in the order in which they are learned, a column for each key along the line of fifths.
 *
 * @param signs by skill and key; where there is none, nothing was asked
 * @param marks what the marks behind the signs mean
 */
public record KnownField(Map<SkillInKey, FieldSign> signs, List<Phrase> marks, Reader reader) {
    private static final Phrase MAJOR = Phrase.of("major keys");
    private static final Phrase MINOR = Phrase.of("minor keys");
    /** Columns of the longest name of a skill, and a gap. */
    private static final int SKILL = 21;

    private static final int CELL = 3;

    /** @param mark one character, or nothing */
    public record FieldSign(ProgressPicture.KnownLevel level, String mark) {
        static final FieldSign NONE = new FieldSign(ProgressPicture.KnownLevel.NOT_YET, "");
    }

    /** Columns of a terminal that the field needs. */
    public int columns() {
        return front() + CELL * Key.majorKeys().size() + 1;
    }

    /** Columns in front of the first key. */
    private int front() {
        return Stream.of(MAJOR, MINOR)
                .mapToInt(name -> name.in(reader).columns() + 1)
                .reduce(SKILL, Math::max);
    }

    /** The field: major keys, then minor ones if any were asked, then what the signs mean. */
    public StyledText text() {
        StyledText.Builder text = StyledText.builder(reader);
        field(text, MAJOR, Key.majorKeys());
        field(text, MINOR, Key.minorKeys());
        return text.line(legend(), Style.QUIET).build();
    }

    private void field(StyledText.Builder text, Phrase name, List<Key> keys) {
        List<Key> line = keys.stream()
                .sorted(Comparator.comparingInt(key -> key.tonic().fifths()))
                .toList();
        List<String> skills = skillsIn(line);
        if (!skills.isEmpty()) {
            heads(name.in(reader).plain(), line).forEach(text::line);
            skills.forEach(skill -> text.line(row(skill, line)));
        }
    }

    private List<String> skillsIn(List<Key> keys) {
        List<String> names = keys.stream().map(Key::toString).toList();
        Set<String> asked = signs.keySet().stream()
                .filter(item -> names.contains(item.key()))
                .map(SkillInKey::skill)
                .collect(Collectors.toSet());
        return Skills.all().stream().map(Skill::id).filter(asked::contains).toList();
    }

    /** The tonics in one line, or by turns in two where their names are long. */
    private List<StyledLine> heads(String name, List<Key> keys) {
        boolean fits = keys.stream().allMatch(key -> tonic(key).length() < CELL);
        return fits ? List.of(head(name, keys, 0, 1)) : List.of(head("", keys, 1, 2), head(name, keys, 0, 2));
    }

    private StyledLine head(String name, List<Key> keys, int first, int step) {
        StringBuilder tonics = new StringBuilder(" ".repeat(first * CELL));
        for (int i = first; i < keys.size(); i += step) {
            tonics.append(padded(tonic(keys.get(i)), step * CELL));
        }
        return StyledLine.of(padded(name, front()), Style.HEADING)
                .plus(tonics.toString(), Style.STRONG)
                .stripTrailing();
    }

    private String tonic(Key key) {
        return key.tonic().write(reader.signs());
    }

    private StyledLine row(String skill, List<Key> keys) {
        List<Span> spans = new ArrayList<>(List.of(new Span(padded(skill, front()), Style.PLAIN)));
        for (Key key : keys) {
            FieldSign sign = signs.getOrDefault(new SkillInKey(skill, key.toString()), FieldSign.NONE);
            spans.add(new Span(
                    padded(sign.level().sign(reader.signs()) + sign.mark(), CELL),
                    sign.level().style()));
        }
        return new StyledLine(spans).stripTrailing();
    }

    private Phrase legend() {
        List<Phrase> legend = new ArrayList<>();
        for (ProgressPicture.KnownLevel level : ProgressPicture.KnownLevel.values()) {
            legend.add(Phrase.of("{0} {1}", Phrase.typed(level.sign(reader.signs())), level.words()));
        }
        legend.addAll(marks);
        return Phrase.joined("   ", legend);
    }

    private static String padded(String text, int columns) {
        return text + " ".repeat(Math.max(1, columns - Columns.of(text)));
    }
}
