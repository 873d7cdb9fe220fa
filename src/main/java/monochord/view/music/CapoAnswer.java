package monochord.view.music;

import java.util.List;
import monochord.harmony.Capo;
import monochord.harmony.Progression;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
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
    private static final String INDENT = "  ";

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(Phrase.of("To sound in {0}", sounding.key()), Style.QUIET);
        text.add(INDENT).add(Phrase.row(sounding.symbols()));
        for (Capo capo : capos) {
            text.line(heading(capo), Style.QUIET);
            text.add(INDENT).add(Phrase.row(capo.shapes().symbols()), Style.STRONG);
        }
        text.line(Phrase.sentence("The keyboard reads the chords that sound."), Style.QUIET);
        return text.build().wrapped(look.width());
    }

    private static Phrase heading(Capo capo) {
        Key shapes = capo.shapes().key();
        return capo.fret() == 0
                ? Phrase.sentence("No capo, shapes of {0}: {1}.", shapes, capo.reason())
                : Phrase.sentence("Capo {0}, shapes of {1}: {2}.", capo.fret(), shapes, capo.reason());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "capo");
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
                                .put("reason", capo.reason().toString()));
    }
}
