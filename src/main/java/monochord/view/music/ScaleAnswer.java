package monochord.view.music;

import java.util.List;
import java.util.OptionalInt;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Scale;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;
import monochord.view.keyboard.Drawing;

/** A scale, spelled and drawn. */
public record ScaleAnswer(Scale scale) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledLine first =
                StyledLine.of(scale.write(look.signs()), Style.STRONG).plus("  " + Words.notes(scale.tones(), look));
        StyledLine second = StyledLine.of(
                "Half steps from note to note: " + Words.joined(scale.kind().steps(), " ", Object::toString) + ".");
        return StyledText.of(first, second).wrapped(look.width()).plus(Pictures.scale(scale, look));
    }

    @Override
    public List<Drawing> drawings() {
        return Pictures.drawings(scale);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "scale").put("name", scale.toString()).put("tones", scale.tones());
        OptionalInt signature = scale.signature();
        if (signature.isPresent()) {
            json.put("signature", signature.getAsInt());
        } else {
            json.put("signature", (String) null);
        }
    }
}
