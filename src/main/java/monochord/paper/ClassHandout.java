package monochord.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.classroom.overview.ClassOverview;
import monochord.classroom.overview.ClassOverview.ClassCell;
import monochord.classroom.overview.ClassOverview.PupilSummary;
import monochord.classroom.overview.MistakeCount;
import monochord.classroom.overview.NextTopic;
import monochord.practice.Skill;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.skill.Skills;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Signs;
import monochord.view.ProgressPicture.KnownLevel;

/** A class for the wall: what comes next, what it can do in which key, its commonest mistakes; pupils by their codes only. */
public final class ClassHandout {
    private static final int MOST_MISTAKES = 10;
    private static final int ROWS_ON_A_PAGE = 40;
    private static final Signs SIGNS = Signs.MUSIC;

    private ClassHandout() {}

    /** @param next what to teach next */
    public static Handout of(ClassOverview overview, List<NextTopic> next) {
        List<Handout.HandoutSection> sections = new ArrayList<>();
        if (!next.isEmpty()) {
            sections.add(section(
                    Phrase.of("What comes next"),
                    next.stream()
                            .map(topic -> lines(topic.sentence(), topic.evidence()))
                            .toList()));
        }
        List<Handout.Block> fields = Stream.of(
                        field(overview, Phrase.of("major keys"), Key.majorKeys()),
                        field(overview, Phrase.of("minor keys"), Key.minorKeys()))
                .flatMap(Optional::stream)
                .toList();
        if (!fields.isEmpty()) {
            sections.add(section(Phrase.of("Over the class"), fields));
        }
        if (!overview.mistakes().isEmpty()) {
            sections.add(section(Phrase.of("Mistakes, the commonest first"), List.of(mistakes(overview))));
        }
        sections.add(section(Phrase.of("The pupils"), pupils(overview)));
        return new Handout(Phrase.of("The class"), List.of(count(overview)), sections, legend());
    }

    private static Phrase count(ClassOverview overview) {
        int pupils = overview.pupils().size();
        return Phrase.sentence(
                "{0}, {1}, {2} right at the first try.",
                Phrase.counted(pupils, "{0} pupil", "{0} pupils", pupils),
                Phrase.counted(overview.asked(), "{0} answer", "{0} answers", overview.asked()),
                overview.right());
    }

    private static Phrase legend() {
        List<Phrase> legend = new ArrayList<>();
        for (KnownLevel level : List.of(KnownLevel.BEGUN, KnownLevel.COMING, KnownLevel.KNOWN)) {
            legend.add(Phrase.of("{0} {1}", Phrase.typed(level.sign(SIGNS)), level.words()));
        }
        return Phrase.joined("   ", legend);
    }

    private static Handout.HandoutSection section(Phrase heading, List<Handout.Block> blocks) {
        return new Handout.HandoutSection(heading, 1, blocks);
    }

    private static Handout.Block lines(Phrase... lines) {
        return new Handout.Block(Phrase.NOTHING, List.of(lines), List.of());
    }

    private static Handout.Block rows(Phrase name, List<Phrase> head, List<List<Phrase>> rows) {
        return new Handout.Block(name, List.of(), List.of(new Handout.HandoutFigure.Rows(head, rows)));
    }

    private static Optional<Handout.Block> field(ClassOverview overview, Phrase name, List<Key> keys) {
        List<Key> line = keys.stream()
                .sorted(Comparator.comparingInt(key -> key.tonic().fifths()))
                .toList();
        List<Phrase> head = new ArrayList<>(List.of(Phrase.NOTHING));
        line.forEach(key -> head.add(Phrase.of("{0}", key.tonic())));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Skill skill : Skills.all()) {
            List<Phrase> row = new ArrayList<>(List.of(skill.title()));
            line.forEach(key -> row.add(sign(overview, skill, key)));
            if (row.stream().skip(1).anyMatch(cell -> !cell.isEmpty())) {
                rows.add(row);
            }
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows(name, head, rows));
    }

    private static Phrase sign(ClassOverview overview, Skill skill, Key key) {
        ClassCell cell = overview.grid().get(new SkillInKey(skill.id(), key.toString()));
        return cell == null
                ? Phrase.NOTHING
                : Phrase.typed(KnownLevel.of(cell.mastery()).sign(SIGNS));
    }

    private static Handout.Block mistakes(ClassOverview overview) {
        List<List<Phrase>> rows = new ArrayList<>();
        overview.mistakesOfAllSkills().stream().limit(MOST_MISTAKES).forEach(one -> rows.add(row(one)));
        return rows(
                Phrase.NOTHING,
                List.of(Phrase.of("what was done"), Phrase.of("how often"), Phrase.of("by how many")),
                rows);
    }

    private static List<Phrase> row(MistakeCount one) {
        return List.of(
                one.misconception().words(),
                Phrase.of("{0}", one.count()),
                Phrase.of("{0}", one.byPupil().size()));
    }

    /** A table on each page; more pupils than fit go on on the next. */
    private static List<Handout.Block> pupils(ClassOverview overview) {
        List<Handout.Block> blocks = new ArrayList<>();
        List<PupilSummary> pupils = overview.pupils();
        for (int i = 0; i < pupils.size(); i += ROWS_ON_A_PAGE) {
            blocks.add(rows(
                    Phrase.NOTHING,
                    List.of(
                            Phrase.of("pupil"),
                            Phrase.of("answers"),
                            Phrase.of("right at once"),
                            Phrase.of("known"),
                            Phrase.of("of things asked")),
                    pupils.subList(i, Math.min(pupils.size(), i + ROWS_ON_A_PAGE)).stream()
                            .map(ClassHandout::row)
                            .toList()));
        }
        return blocks;
    }

    private static List<Phrase> row(PupilSummary pupil) {
        return List.of(
                Phrase.typed(pupil.code()),
                Phrase.of("{0}", pupil.asked()),
                Phrase.of("{0}", pupil.right()),
                Phrase.of("{0}", pupil.known()),
                Phrase.of("{0}", pupil.items()));
    }
}
