package monochord.view.music;

import java.util.List;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.keyboard.Drawing;

/** A chord, spelled and drawn, and what it is in the key. */
public record ChordAnswer(ChordRow row) implements Answer {
    @Override
    public StyledText text(Look look) {
        Phrase spelled = Phrase.of(
                "{0}  {1}",
                Phrase.of("{0}", row.chord()).styled(Style.STRONG),
                Phrase.row(row.chord().fromBass()));
        Phrase inKey = Phrase.sentence(
                "In {0}: {1}, degrees {2}; {3}.", row.key(), row.numeral(), row.degrees(), row.origin());
        StyledText said = StyledText.builder(look.reader())
                .line(spelled)
                .line(inKey)
                .build()
                .wrapped(look.width());
        return said.plus(Pictures.chord(row.chord(), look));
    }

    @Override
    public List<Drawing> drawings() {
        return Pictures.drawings(row.chord());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "chord")
                .put("symbol", row.chord().toString())
                .put("root", row.chord().root().toString())
                .put("bass", row.chord().bass().toString())
                .put("tones", row.chord().tones())
                .put("intervals", row.chord().kind().intervals());
    }
}
