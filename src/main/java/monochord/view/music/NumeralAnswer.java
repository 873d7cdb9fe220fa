package monochord.view.music;

import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;

/** A chord as a numeral, a number and a symbol in a key. */
public record NumeralAnswer(ChordRow row) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledLine names = StyledLine.of(row.numeral().write(look.signs()), Style.STRONG)
                .plus(" in " + row.key().write(look.signs()) + " is ")
                .plus(row.chord().write(look.signs()), Style.STRONG)
                .plus(", spelled " + Words.notes(row.chord().fromBass(), look) + ".");
        String rest = "By number " + row.number(look.signs()) + ", degrees " + row.degrees(look) + "; "
                + row.origin(look) + ".";
        return StyledText.of(names, StyledLine.of(rest)).wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        row.json(json);
    }
}
