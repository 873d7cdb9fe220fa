package monochord.view.music;

import java.util.List;
import monochord.harmony.Borrowing.Borrowed;
import monochord.harmony.ChordOrigin;
import monochord.harmony.after.BorrowedChordContext;
import monochord.harmony.after.Continuation;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** One borrowed chord: where it comes from, how it is reached and left, and what it does to the tune. */
public record BorrowedAnswer(Key key, Borrowed borrowed) implements Answer {
    @Override
    public StyledText text(Look look) {
        BorrowedChordContext setting = BorrowedChordContext.of(borrowed, key);
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(Phrase.sentence(
                "{0} in {1} is {2}, spelled {3}.",
                Phrase.of("{0}", borrowed.numeral()).styled(Style.STRONG),
                key,
                Phrase.of("{0}", borrowed.chord()).styled(Style.STRONG),
                Phrase.row(borrowed.chord().tones())));
        text.line(ChordOrigin.sentence(borrowed, key));
        setting.approach()
                .forEach(way -> text.line(Phrase.sentence("Reached from {0}: {1}.", way.start(), way.reason())));
        setting.exit().forEach(way -> text.line(Phrase.sentence("Left to {0}: {1}.", way.numeral(), way.reason())));
        text.line(setting.tune(key));
        text.line(
                Phrase.sentence(
                        "The rule about the tune is common practice, no source. More ways on: after {0}.",
                        borrowed.numeral()),
                Style.QUIET);
        text.line(Phrase.sentence("A changed chord is agreed with the band before anyone plays it."), Style.QUIET);
        return text.build().wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "borrow").put("key", key.toString()).objects("chords", List.of(borrowed), (object, one) -> {
            new ChordRow(one.chord(), one.numeral(), key).json(object);
            object.put("changed", one.changed());
            setting(object, BorrowedChordContext.of(one, key));
        });
    }

    static void setting(Json object, BorrowedChordContext setting) {
        object.put(
                        "approach",
                        setting.approach().stream().map(Continuation::start).toList())
                .put("exit", setting.exit().stream().map(Continuation::numeral).toList())
                .put("welcomes", setting.welcomes())
                .put("fights", setting.fights());
    }
}
