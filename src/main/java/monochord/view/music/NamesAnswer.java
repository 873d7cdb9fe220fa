package monochord.view.music;

import java.util.List;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.ChordNames;
import monochord.theory.note.NoteName;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * What a set of notes can be called.
 *
 * @param notes the lowest first
 */
public record NamesAnswer(List<NoteName> notes, List<ChordNames.Name> names) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        if (names.isEmpty()) {
            text.line(Phrase.sentence("{0}: no chord symbol is written for these notes.", Phrase.row(notes)));
            return text.build().wrapped(look.width());
        }
        ChordNames.Name best = names.get(0);
        text.line(named(best).then(best.bySound() ? Phrase.NOTHING : bySound()));
        if (best.bySound()) {
            text.line(Phrase.sentence(
                    "It only sounds so: that chord is spelled {0}.",
                    Phrase.row(best.chord().fromBass())));
        }
        return text.build().wrapped(look.width());
    }

    private Phrase named(ChordNames.Name best) {
        List<Chord> also = others(false);
        Phrase symbol = Phrase.of("{0}", best.chord()).styled(Style.STRONG);
        return also.isEmpty()
                ? Phrase.sentence("{0} is {1}.", Phrase.row(notes), symbol)
                : Phrase.sentence("{0} is {1}, also {2}.", Phrase.row(notes), symbol, Phrase.list(also));
    }

    private Phrase bySound() {
        List<Chord> soundingSo = others(true);
        return soundingSo.isEmpty() ? Phrase.NOTHING : Phrase.sentence("By sound alone: {0}.", Phrase.list(soundingSo));
    }

    private List<Chord> others(boolean bySound) {
        return names.stream()
                .skip(1)
                .filter(name -> name.bySound() == bySound)
                .map(ChordNames.Name::chord)
                .toList();
    }

    @Override
    public void json(Json json) {
        fields(json.put("kind", "names"));
    }

    /** The same within what is said of pitches. */
    void fields(Json json) {
        json.put("notes", notes)
                .objects(
                        "names",
                        names,
                        (object, name) ->
                                object.put("symbol", name.chord().toString()).put("bySound", name.bySound()));
    }
}
