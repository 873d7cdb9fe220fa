package monochord.view.music;

import java.util.List;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.ChordNames;
import monochord.theory.NoteName;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;

/**
 * What a set of notes can be called.
 *
 * @param notes the lowest first
 */
public record NamesAnswer(List<NoteName> notes, List<ChordNames.Name> names) implements Answer {
    @Override
    public StyledText text(Look look) {
        String spelled = Words.notes(notes, look);
        if (names.isEmpty()) {
            return StyledText.of(spelled + ": no chord symbol is written for these notes.")
                    .wrapped(look.width());
        }
        StyledText.Builder text = StyledText.builder();
        text.line(StyledLine.of(spelled + " is ")
                .plus(symbol(names.get(0), look.signs()), Style.STRONG)
                .plus(rest(look)));
        if (names.get(0).bySound()) {
            text.line("It only sounds so: that chord is spelled "
                    + Words.notes(names.get(0).chord().fromBass(), look) + ".");
        }
        return text.build().wrapped(look.width());
    }

    private String rest(Look look) {
        List<String> spelledSo = others(false, look);
        List<String> soundingSo = names.get(0).bySound() ? List.of() : others(true, look);
        String also = spelledSo.isEmpty() ? "" : ", also " + Words.listed(spelledSo);
        return also + "." + (soundingSo.isEmpty() ? "" : " By sound alone: " + Words.listed(soundingSo) + ".");
    }

    private List<String> others(boolean bySound, Look look) {
        return names.stream()
                .skip(1)
                .filter(name -> name.bySound() == bySound)
                .map(name -> symbol(name, look.signs()))
                .toList();
    }

    private static String symbol(ChordNames.Name name, Signs signs) {
        return name.chord().write(signs);
    }

    @Override
    public void json(Json json) {
        json.put("notes", notes)
                .objects(
                        "names",
                        names,
                        (object, name) ->
                                object.put("symbol", name.chord().toString()).put("bySound", name.bySound()));
    }
}
