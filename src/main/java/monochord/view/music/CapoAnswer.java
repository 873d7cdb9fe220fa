package monochord.view.music;

import java.util.List;
import monochord.harmony.Capo;
import monochord.harmony.Progression;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * Where a guitarist may put a capo to play a progression with open strings.
 *
 * @param sounding the progression as it sounds
 * @param capos the best first; not empty
 */
public record CapoAnswer(Progression sounding, List<Capo> capos) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        text.line("To sound in " + sounding.key().write(Signs.MUSIC), Style.QUIET);
        text.line("  " + sounding.symbols(Signs.MUSIC));
        for (Capo capo : capos) {
            text.line(
                    (capo.fret() == 0 ? "No capo" : "Capo " + capo.fret()) + ", shapes of "
                            + capo.shapes().key().write(Signs.MUSIC) + ": " + capo.reason() + ".",
                    Style.QUIET);
            text.line("  " + capo.shapes().symbols(Signs.MUSIC), Style.STRONG);
        }
        text.line("The keyboard reads the chords that sound.", Style.QUIET);
        return text.build().in(look.signs()).wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        Progression best = capos.get(0).shapes();
        json.put("from", sounding.key().toString())
                .put("key", best.key().toString())
                .objects("chords", ProgressionAnswer.rows(best), (object, row) -> row.json(object))
                .objects(
                        "frets",
                        capos,
                        (object, capo) -> object.put("fret", capo.fret())
                                .put("shapes", capo.shapes().key().toString())
                                .put("chords", capo.shapes().chords())
                                .put("reason", capo.reason()));
    }
}
