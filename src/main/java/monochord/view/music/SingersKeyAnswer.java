package monochord.view.music;

import java.util.List;
import monochord.harmony.singing.SingersKey;
import monochord.harmony.singing.VocalRange;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * Keys for a singer, best first, with what speaks for and against each.
 *
 * @param voice the name of the voice where its range is that of a table, or nothing
 */
public record SingersKeyAnswer(List<SingersKey> keys, VocalRange range, String voice) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(Phrase.of("To sing from {0} to {1}", range.low(), range.high()), Style.HEADING);
        for (SingersKey key : keys) {
            text.line(Phrase.of("{0}", key.key()), Style.STRONG);
            key.why(range).forEach(reason -> text.line(Phrase.of("  {0}", reason)));
        }
        if (keys.stream().noneMatch(SingersKey::fits)) {
            text.line(Phrase.sentence("The tune is wider than the voice: in every key some notes lie outside."));
        }
        if (!voice.isEmpty()) {
            text.line(Phrase.sentence(
                    "No two voices are alike: say your own lowest and highest note, as in {0}.",
                    Phrase.toType("to sing A3 to D5")));
        }
        text.line(
                Phrase.sentence("A note that strains is out of range, whatever a table says: then take a lower key."),
                Style.QUIET);
        return text.build().wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "keys")
                .put("low", range.low().toString())
                .put("high", range.high().toString())
                .objects("keys", keys, this::key);
    }

    private void key(Json json, SingersKey key) {
        json.put("key", key.key().toString())
                .put("low", key.low().toString())
                .put("high", key.high().toString())
                .put("fits", key.fits())
                .put("why", key.why(range))
                .objects(
                        "parts",
                        key.parts(),
                        (object, part) -> object.put("name", part.name())
                                .put("key", part.key().toString())
                                .put("capo", part.fret()));
    }
}
