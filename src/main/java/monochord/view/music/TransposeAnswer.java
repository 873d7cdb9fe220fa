package monochord.view.music;

import monochord.harmony.Progression;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * A progression in the key it came from and in the one it went to.
 *
 * @param as what the second is for, or nothing
 */
public record TransposeAnswer(Progression from, Progression to, Phrase as) implements Answer {
    private static final String INDENT = "  ";

    @Override
    public StyledText text(Look look) {
        Phrase goal = as.isEmpty() ? Phrase.of("{0}", to.key()) : Phrase.of("{0}, {1}", to.key(), as);
        return StyledText.builder(look.reader())
                .line(Phrase.of("{0}", from.key()), Style.QUIET)
                .add(INDENT)
                .add(Phrase.row(from.symbols()))
                .line(goal, Style.QUIET)
                .add(INDENT)
                .add(Phrase.row(to.symbols()), Style.STRONG)
                .build()
                .wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "transpose")
                .put("from", from.key().toString())
                .put("key", to.key().toString())
                .objects("chords", ProgressionAnswer.rows(to), (object, row) -> row.json(object));
    }
}
