package monochord.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.practice.Skill;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.mastery.SkillMastery;
import monochord.practice.skill.Skills;
import monochord.text.Columns;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Span;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.note.Signs;

/**
 * What is known, as a field: a row for each skill in the order in which they are learned, a column for each key along the line of fifths. The more strokes a
 * sign has, the better the skill is known there; the sign says it without colour.
 *
 * @param time for which it is drawn
 */
public record ProgressPicture(Knowledge knowledge, long time, Reader reader) {
    private static final Phrase MAJOR = Phrase.of("major keys");
    private static final Phrase MINOR = Phrase.of("minor keys");
    /** Columns of the longest name of a skill, and a gap. */
    private static final int SKILL = 21;

    private static final int CELL = 3;
    private static final double HALF = 0.5;

    /** How well something is known, in words and as a sign of none to three strokes. */
    public enum KnownLevel {
        NOT_YET(Phrase.of("not yet"), "·", ".", Style.QUIET),
        BEGUN(Phrase.of("begun"), "-", "-", Style.PLAIN),
        COMING(Phrase.of("coming"), "=", "=", Style.NEARLY),
        KNOWN(Phrase.of("known"), "≡", "#", Style.RIGHT);

        private final Phrase words;
        private final String sign;
        private final String ascii;
        private final Style style;

        KnownLevel(Phrase words, String sign, String ascii, Style style) {
            this.words = words;
            this.sign = sign;
            this.ascii = ascii;
            this.style = style;
        }

        /** By the probability that it is known. */
        public static KnownLevel of(SkillMastery standing) {
            return standing.isMastered() ? KNOWN : standing.mastery() >= HALF ? COMING : BEGUN;
        }

        String sign(Signs signs) {
            return signs.isAscii() ? ascii : sign;
        }

        public Phrase words() {
            return words;
        }
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
        Set<String> asked = knowledge.standings().keySet().stream()
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
            Optional<SkillMastery> standing = knowledge.of(new SkillInKey(skill, key.toString()));
            KnownLevel level = standing.map(KnownLevel::of).orElse(KnownLevel.NOT_YET);
            String mark = standing.map(known -> mark(skill, known)).orElse("");
            spans.add(new Span(padded(level.sign(reader.signs()) + mark, CELL), level.style));
        }
        return new StyledLine(spans).stripTrailing();
    }

    private String mark(String skill, SkillMastery standing) {
        return standing.isDue(time) ? "*" : standing.isSlow(knowledge.pace(skill)) ? "~" : "";
    }

    private Phrase legend() {
        List<Phrase> legend = new ArrayList<>();
        for (KnownLevel level : KnownLevel.values()) {
            legend.add(Phrase.of("{0} {1}", Phrase.typed(level.sign(reader.signs())), level.words()));
        }
        legend.add(Phrase.of("* due"));
        legend.add(Phrase.of("~ slower than in other keys"));
        return Phrase.joined("   ", legend);
    }

    private static String padded(String text, int columns) {
        return text + " ".repeat(Math.max(1, columns - Columns.of(text)));
    }
}
