package monochord.view.music;

import monochord.harmony.Progression;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * A progression in the key it came from and in the one it went to.
 *
 * @param as what the second is for, or nothing
 */
public record TransposeAnswer(Progression from, Progression to, String as) implements Answer {
    @Override
    public StyledText text(Look look) {
        String source = from.key().write(Signs.MUSIC);
        String goal = to.key().write(Signs.MUSIC) + (as.isEmpty() ? "" : ", " + as);
        return StyledText.builder()
                .line(source, Style.QUIET)
                .line("  " + from.symbols(Signs.MUSIC))
                .line(goal, Style.QUIET)
                .line("  " + to.symbols(Signs.MUSIC), Style.STRONG)
                .build()
                .in(look.signs())
                .wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("from", from.key().toString())
                .put("key", to.key().toString())
                .objects("chords", ProgressionAnswer.rows(to), (object, row) -> row.json(object));
    }
}
