package monochord.view.music;

import java.util.List;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;
import monochord.view.keyboard.Drawing;

/** A chord, spelled and drawn, and what it is in the key. */
public record ChordAnswer(ChordRow row) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledLine first = StyledLine.of(row.chord().write(look.signs()), Style.STRONG)
                .plus("  " + Words.notes(row.chord().fromBass(), look));
        String second = "In " + row.key().write(look.signs()) + ": "
                + row.numeral().write(look.signs()) + ", degrees " + row.degrees(look) + "; " + row.origin(look) + ".";
        StyledText said = StyledText.of(first, StyledLine.of(second)).wrapped(look.width());
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
