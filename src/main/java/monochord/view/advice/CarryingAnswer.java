package monochord.view.advice;

import java.util.List;
import java.util.Optional;
import monochord.harmony.tune.CarryingChord;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;
import monochord.view.Table.Column;

/**
 * Every chord that carries a note at a place, the best first.
 *
 * @param before the chord before
 * @param goal the chord behind
 */
public record CarryingAnswer(
        NoteName note, Key key, Optional<Chord> before, Optional<Chord> goal, List<CarryingChord> chords)
        implements Answer {
    private static final int COLUMN = 9;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(heading(), Style.HEADING);
        Table table = Table.of(Column.left().atLeast(COLUMN), Column.left().atLeast(COLUMN), Column.left());
        chords.forEach(chord -> table.row(
                Phrase.of("{0}", chord.bass()).styled(Style.STRONG),
                Phrase.of("{0}", chord.numeral()),
                chord.why().stream().reduce(Phrase.NOTHING, Phrase::then)));
        StyledText.Builder end = StyledText.builder(look.reader());
        end.line(
                Phrase.sentence(
                        "The likeliest stands first; which one, your ear decides. Agree a changed chord with the band."),
                Style.QUIET);
        return text.build()
                .wrapped(look.width())
                .plus(table.text(look))
                .plus(end.build().wrapped(look.width()));
    }

    private Phrase heading() {
        if (before.isPresent() && goal.isPresent()) {
            return Phrase.of("Under {0}, between {1} and {2} in {3}", note, before.get(), goal.get(), key);
        }
        return goal.map(next -> Phrase.of("Under {0}, before {1} in {2}", note, next, key))
                .or(() -> before.map(last -> Phrase.of("Under {0}, after {1} in {2}", note, last, key)))
                .orElseGet(() -> Phrase.of("Under {0} in {1}", note, key));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "harmonise")
                .put("key", key.toString())
                .put("note", note.toString())
                .put("before", before.map(Chord::toString).orElse(null))
                .put("goal", goal.map(Chord::toString).orElse(null))
                .objects(
                        "chords",
                        chords,
                        (object, chord) -> object.put("symbol", chord.bass().toString())
                                .put("numeral", chord.numeral().toString())
                                .put("why", chord.why()));
    }
}
