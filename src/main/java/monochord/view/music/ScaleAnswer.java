package monochord.view.music;

import java.util.List;
import java.util.OptionalInt;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Scale;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.keyboard.Drawing;

/** A scale, spelled and drawn. */
public record ScaleAnswer(Scale scale) implements Answer {
    @Override
    public StyledText text(Look look) {
        Phrase spelled = Phrase.of("{0}  {1}", Phrase.of("{0}", scale).styled(Style.STRONG), Phrase.row(scale.tones()));
        Phrase steps = Phrase.sentence(
                "Half steps from note to note: {0}.", Phrase.row(scale.kind().steps()));
        StyledText said = StyledText.builder(look.reader())
                .line(spelled)
                .line(steps)
                .build()
                .wrapped(look.width());
        return said.plus(Pictures.scale(scale, look));
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
