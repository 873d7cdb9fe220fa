package monochord.view.music;

import java.util.List;
import java.util.Optional;
import monochord.harmony.after.ClassicalCounts;
import monochord.harmony.after.Continuation;
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
public record AfterAnswer(Key key, Numeral numeral, List<Continuation> ways, List<ClassicalCounts.Row> classical)
        implements Answer {
    /** Lines of an answer on a screen of 24, above the prompt and below what was typed. */
    private static final int SCREEN = 21;

    private static final int FEWEST = 3;
    private static final int NUMERAL = 8;
    private static final int SYMBOL = 8;
    private static final String SCORES = "When in Rome";

    /** As many ways as a usual screen holds, the last ones left out; all of them where everything is said in words. */
    @Override
    public StyledText text(Look look) {
        StyledText all = whole(look);
        boolean isTooTall = !look.plain() && all.lines().size() > SCREEN && ways.size() > FEWEST;
        return isTooTall ? new AfterAnswer(key, numeral, ways.subList(0, ways.size() - 1), classical).text(look) : all;
    }

    private StyledText whole(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(Phrase.of("After {0}, {1} in {2}", numeral.in(key), numeral, key), Style.HEADING);
        StyledText head = text.build().wrapped(look.width());
        return head.plus(look.plain() ? sentences(look) : table().text(look)).plus(notes(look));
    }

    private Table table() {
        Table table = Table.of(Column.left().atLeast(NUMERAL), Column.left().atLeast(SYMBOL), Column.left());
        for (Continuation way : ways) {
            table.row(
                            Phrase.of("{0}", way.numeral()).styled(Style.STRONG),
                            Phrase.of("{0}", way.chord()).styled(Style.STRONG),
                            Phrase.sentence("{0}.", way.reason()))
                    .row(
                            Phrase.NOTHING,
                            Phrase.NOTHING,
                            Phrase.sentence("{0}.", facts(way)).styled(Style.QUIET));
        }
        return table;
    }

    private StyledText sentences(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        ways.forEach(way -> text.line(Phrase.of("{0}, {1}: {2}.", way.numeral(), way.chord(), way.reason())
                .then(Phrase.sentence("{0}.", facts(way)))));
        return text.build().wrapped(look.width());
    }

    private Phrase facts(Continuation way) {
        return way.backed()
                .map(backing -> Phrase.of("{0}; {1}", way.movement(), counted(backing)))
                .orElseGet(way::movement);
    }

    private Phrase counted(Backing backing) {
        return collections().size() == 1
                ? backing.inWords()
                : Phrase.of("{0} {1}", Phrase.typed(backing.collection().title()), backing.inWords());
    }

    private StyledText notes(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(
                Phrase.sentence("T, S, D: tonic, subdominant, dominant; half steps of all voices together."),
                Style.QUIET);
        for (SongCounts.Collection one : collections()) {
            text.line(
                    Phrase.sentence(
                            "Counted in {0}: {1}, {2} ({3}).",
                            one.idiom(), Phrase.typed(one.title()), one.authors(), Phrase.typed(one.licence())),
                    Style.QUIET);
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
        json.put("key", key.toString())
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
