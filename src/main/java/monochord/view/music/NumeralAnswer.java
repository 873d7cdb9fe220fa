package monochord.view.music;

import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.BandNumber;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** A chord as a numeral, a number and a symbol in a key. */
public record NumeralAnswer(ChordRow row) implements Answer {
    @Override
    public StyledText text(Look look) {
        Phrase names = Phrase.sentence(
                "{0} in {1} is {2}, spelled {3}.",
                Phrase.of("{0}", row.numeral()).styled(Style.STRONG),
                row.key(),
                Phrase.of("{0}", row.chord()).styled(Style.STRONG),
                Phrase.row(row.chord().fromBass()));
        Phrase rest = Phrase.sentence(
                "By number {0}, degrees {1}; {2}.", BandNumber.of(row.chord(), row.key()), row.degrees(), row.origin());
        return StyledText.builder(look.reader()).line(names).line(rest).build().wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "numeral");
        row.json(json);
        json.put("origin", row.origin().toString());
    }
}
