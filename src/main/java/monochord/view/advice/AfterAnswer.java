package monochord.view.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.harmony.after.ClassicalCounts;
import monochord.harmony.after.Continuation;
import monochord.harmony.after.ContinuationKind;
import monochord.harmony.after.SongCounts;
import monochord.harmony.after.SongCounts.Backing;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;
import monochord.view.Table.Column;

/**
 * Where a chord goes next.
 *
 * @param ways the best first, as many as are to be shown
 * @param classical what came next in classical scores, or nothing
 */
public record AfterAnswer(Key key, Numeral numeral, List<Continuation> ways, List<ClassicalCounts.ScoreCount> classical)
        implements Answer {
    /** Ways that songs go at least so many times of a hundred are all told. */
    public static final int LEAST_SHARE = 5;

    private static final int NUMERAL = 8;
    private static final int SYMBOL = 8;
    private static final int INDENT = 2;
    private static final String SCORES = "When in Rome";

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(Phrase.of("After {0}, {1} in {2}", numeral.in(key), numeral, key), Style.HEADING);
        StyledText head = text.build().wrapped(look.width());
        return head.plus(look.plain() ? sentences(look) : table().text(look)).plus(notes(look));
    }

    /** The ways by the road they take, the road of the likeliest way first. */
    private Map<ContinuationKind, List<Continuation>> roads() {
        Map<ContinuationKind, List<Continuation>> roads = new LinkedHashMap<>();
        ways.forEach(way ->
                roads.computeIfAbsent(way.road(), road -> new ArrayList<>()).add(way));
        return roads;
    }

    private Phrase heading(ContinuationKind road) {
        return road.heading(numeral.in(key), key).styled(Style.HEADING);
    }

    private Table table() {
        Table table = Table.of(Column.left().atLeast(NUMERAL), Column.left().atLeast(SYMBOL), Column.left())
                .indentedBy(INDENT);
        roads().forEach((road, those) -> {
            table.across(heading(road));
            those.forEach(way -> table.row(
                    Phrase.of("{0}", way.numeral()).styled(Style.STRONG),
                    Phrase.of("{0}", way.chord()).styled(Style.STRONG),
                    Phrase.sentence("{0}.", said(way))));
        });
        return table;
    }

    private StyledText sentences(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        roads().forEach((road, those) -> {
            text.line(Phrase.of("{0}:", heading(road)));
            those.forEach(way -> text.line(Phrase.of("{0}, {1}: {2}.", way.numeral(), way.chord(), said(way))));
        });
        return text.build().wrapped(look.width());
    }

    /** Why, and how often. */
    private Phrase said(Continuation way) {
        return way.backed()
                .map(backing -> Phrase.of("{0}; {1}", way.reason(), counted(backing)))
                .orElseGet(way::reason);
    }

    private Phrase counted(Backing backing) {
        return collections().size() == 1
                ? backing.inWords()
                : Phrase.of(
                        "{0} ({1})",
                        backing.inWords(), Phrase.typed(backing.collection().title()));
    }

    private StyledText notes(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        for (SongCounts.Collection one : collections()) {
            text.line(
                    Phrase.sentence(
                            "Counted in {0}: {1}, {2} ({3}).",
                            one.idiom(), Phrase.typed(one.title()), one.authors(), Phrase.typed(one.licence())),
                    Style.QUIET);
        }
        if (!collections().isEmpty()) {
            text.line(Phrase.sentence("What ten songs or more do one time in twenty is all here."), Style.QUIET);
        }
        if (!classical.isEmpty()) {
            text.line(classicalScores(), Style.QUIET);
        }
        return text.build().wrapped(look.width());
    }

    private Phrase classicalScores() {
        List<Phrase> rows = classical.stream()
                .map(row -> Phrase.of("{0} {1}", row.to(), row.times()))
                .toList();
        return Phrase.sentence(
                "Classical scores differ: {0} of {1} in {2} ({3} and others, {4}).",
                Phrase.joined(", ", rows),
                classical.get(0).of(),
                Phrase.typed(SCORES),
                Phrase.typed("M. Gotham"),
                Phrase.typed("CC BY-SA 4.0"));
    }

    private List<SongCounts.Collection> collections() {
        return SongCounts.collections(ways.stream()
                .map(Continuation::backed)
                .flatMap(Optional::stream)
                .toList());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "after")
                .put("key", key.toString())
                .put("numeral", numeral.toString())
                .put("symbol", numeral.in(key).toString())
                .objects("next", ways, AfterAnswer::json)
                .objects(
                        "classical",
                        classical,
                        (object, row) -> object.put("numeral", row.to().toString())
                                .put("corpus", SCORES)
                                .put("count", row.times())
                                .put("of", row.of()));
    }

    private static void json(Json object, Continuation way) {
        object.put("numeral", way.numeral().toString())
                .put("symbol", way.chord().toString())
                .put("road", way.road().toString())
                .put(
                        "reason",
                        Phrase.sentence("{0}.", way.reason())
                                .then(Phrase.sentence("{0}.", way.movement()))
                                .toString())
                .put("held", way.move().held())
                .put("moved", way.move().halfSteps());
        way.backed()
                .ifPresent(backing -> object.put(
                                "corpus",
                                backing.collection().title() + ", "
                                        + backing.collection().authors())
                        .put("count", backing.times())
                        .put("of", backing.of())
                        .put("songs", backing.songs()));
    }
}
