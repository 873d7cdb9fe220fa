package monochord.view.classroom;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import monochord.classroom.overview.ClassOverview;
import monochord.classroom.overview.ClassOverview.ClassCell;
import monochord.classroom.overview.ClassOverview.ClassWeek;
import monochord.classroom.overview.ClassOverview.PupilSummary;
import monochord.classroom.overview.MistakeCount;
import monochord.classroom.overview.NextTopic;
import monochord.practice.mastery.SkillInKey;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.KnownField;
import monochord.view.KnownField.FieldSign;
import monochord.view.Look;
import monochord.view.ProgressPicture.KnownLevel;
import monochord.view.Table;
import monochord.view.course.ProgressAnswer;

/**
 * A class: what to teach next, its mistakes, what it can do in which key, its weeks and its pupils, in this order, so that the
 * first screen is what a teacher wants before a lesson.
 *
 * @param over of what it is the view, in words behind {@code over}; nothing for all there is
 * @param next what to teach next, most wanted first
 */
public record ClassOverviewAnswer(ClassOverview overview, Phrase over, List<NextTopic> next) implements Answer {
    private static final int MOST_MISTAKES = 6;
    private static final int MOST_CODES = 4;
    private static final int MANY = 9;

    public ClassOverviewAnswer {
        next = List.copyOf(next);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        if (overview.pupils().isEmpty()) {
            return text.line(nothing()).build().wrapped(look.width());
        }
        text.line(count());
        topics(text);
        section(text, Phrase.of("Mistakes, the commonest first"), mistakes(look));
        section(text, Phrase.of("Over the class"), field(look));
        if (overview.weeks().size() > 1) {
            section(text, Phrase.of("Week by week"), weeks().text(look));
        }
        section(text, Phrase.of("The pupils"), pupils().text(look));
        return text.build().wrapped(look.width());
    }

    private Phrase nothing() {
        return over.isEmpty()
                ? Phrase.sentence("Nothing has been marked yet: mark takes a file that was handed in, or a folder.")
                : Phrase.sentence("Nothing is on record over {0}.", over);
    }

    private Phrase count() {
        Phrase pupils = Phrase.counted(
                overview.pupils().size(),
                "{0} pupil",
                "{0} pupils",
                overview.pupils().size());
        Phrase answers = Phrase.counted(overview.asked(), "{0} answer", "{0} answers", overview.asked());
        return over.isEmpty()
                ? Phrase.sentence("{0}, {1}, {2} right at the first try.", pupils, answers, overview.right())
                : Phrase.sentence(
                        "{0}, {1}, {2} right at the first try, over {3}.", pupils, answers, overview.right(), over);
    }

    private void topics(StyledText.Builder text) {
        text.gap().line(Phrase.of("To teach next"), Style.HEADING);
        if (next.isEmpty()) {
            text.line(Phrase.sentence("No mistake and no key stands out."));
        }
        for (int i = 0; i < next.size(); i++) {
            NextTopic topic = next.get(i);
            text.line(Phrase.of("{0}. {1}", i + 1, topic.sentence()));
            text.line(topic.evidence(), Style.QUIET);
            text.line(Phrase.toType(topic.assign()).styled(Style.TYPED));
        }
    }

    private static void section(StyledText.Builder text, Phrase heading, StyledText content) {
        if (!content.isEmpty()) {
            text.gap().line(heading, Style.HEADING).lines(content);
        }
    }

    private StyledText mistakes(Look look) {
        Table table = Table.of(Table.Column.right(Phrase.NOTHING), Table.Column.left(), Table.Column.left());
        overview.mistakesOfAllSkills().stream()
                .limit(MOST_MISTAKES)
                .forEach(one -> table.row(
                        Phrase.of("{0}", one.count()), one.misconception().words(), who(one.codes())));
        return table.text(look);
    }

    private static Phrase who(List<String> codes) {
        List<Phrase> first = codes.stream().limit(MOST_CODES).map(Phrase::typed).toList();
        int more = codes.size() - first.size();
        Phrase some = Phrase.joined(", ", first);
        return more == 0 ? some : Phrase.of("{0} and {1} more", some, more);
    }

    private StyledText field(Look look) {
        Map<SkillInKey, FieldSign> signs = new HashMap<>();
        overview.grid()
                .forEach((item, cell) -> signs.put(
                        item,
                        new FieldSign(
                                KnownLevel.of(cell.mastery()), mark(cell.below().size()))));
        KnownField field = new KnownField(
                signs, List.of(Phrase.of("3 so many unsure"), Phrase.of("+ more than nine")), look.reader());
        if (!look.plain() && look.width() >= field.columns()) {
            return field.text();
        }
        StyledText.Builder text = StyledText.builder(look.reader());
        overview.grid().forEach((item, cell) -> text.line(fact(item, cell)));
        return text.build();
    }

    private static String mark(int below) {
        return below == 0 ? "" : below > MANY ? "+" : Integer.toString(below);
    }

    private static Phrase fact(SkillInKey item, ClassCell cell) {
        Phrase level = KnownLevel.of(cell.mastery()).words();
        Phrase right = Phrase.of("{0} of {1} right alone", cell.right(), cell.asked());
        return cell.below().isEmpty()
                ? Phrase.of("{0}: {1}, {2}.", ProgressAnswer.name(item), level, right)
                : Phrase.of("{0}: {1}, {2}; unsure: {3}.", ProgressAnswer.name(item), level, right, who(cell.below()));
    }

    private Table weeks() {
        Table table = Table.of(
                Table.Column.left(Phrase.of("from Monday")),
                Table.Column.right(Phrase.of("answers")),
                Table.Column.right(Phrase.of("right at once")));
        for (ClassWeek week : overview.weeks()) {
            table.row(
                    Phrase.typed(day(week).toString()), Phrase.of("{0}", week.asked()), Phrase.of("{0}", week.right()));
        }
        return table;
    }

    private static LocalDate day(ClassWeek week) {
        return Instant.ofEpochMilli(week.from()).atZone(ZoneOffset.UTC).toLocalDate();
    }

    private Table pupils() {
        Table table = Table.of(
                Table.Column.left(Phrase.of("pupil")),
                Table.Column.right(Phrase.of("answers")),
                Table.Column.right(Phrase.of("right at once")),
                Table.Column.right(Phrase.of("known")),
                Table.Column.right(Phrase.of("of things asked")));
        for (PupilSummary pupil : overview.pupils()) {
            table.row(
                    Phrase.typed(pupil.code()),
                    Phrase.of("{0}", pupil.asked()),
                    Phrase.of("{0}", pupil.right()),
                    Phrase.of("{0}", pupil.known()),
                    Phrase.of("{0}", pupil.items()));
        }
        return table;
    }

    @Override
    public void json(Json json) {
        json.put("kind", "class")
                .put("pupils", overview.codes())
                .put("asked", overview.asked())
                .put("right", overview.right());
        json.objects("grid", List.copyOf(overview.grid().entrySet()), ClassOverviewAnswer::cell)
                .objects("mistakes", overview.mistakesOfAllSkills(), ClassOverviewAnswer::mistake)
                .objects("next", next, ClassOverviewAnswer::topic)
                .objects("weeks", overview.weeks(), ClassOverviewAnswer::week);
    }

    private static void cell(Json object, Map.Entry<SkillInKey, ClassCell> entry) {
        ClassCell cell = entry.getValue();
        object.put("skill", entry.getKey().skill())
                .put("key", entry.getKey().key())
                .put("mastery", cell.mastery())
                .put("asked", cell.asked())
                .put("right", cell.right())
                .put("below", cell.below());
    }

    private static void mistake(Json object, MistakeCount one) {
        object.put("misconception", one.misconception().id())
                .put("count", one.count())
                .put("codes", one.codes());
    }

    private static void topic(Json object, NextTopic topic) {
        object.put("sentence", topic.sentence().toString())
                .put("evidence", topic.evidence().toString())
                .put("assign", topic.assign());
    }

    private static void week(Json object, ClassWeek week) {
        object.put("from", day(week).toString()).put("asked", week.asked()).put("right", week.right());
    }
}
