package monochord.shell.sound;

import monochord.sound.Bank;
import monochord.sound.Directions;
import monochord.text.Phrase;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Statement;

/**
 * How things are played where nothing else is said.
 *
 * @param said the part of it that was asked for or has just been settled, in a sentence
 */
public record SoundAnswer(Directions directions, Phrase said) implements Answer {
    @Override
    public StyledText text(Look look) {
        return Statement.of(said).text(look);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "sound")
                .put("tempo", directions.tempo())
                .put("left", directions.left().toString())
                .put("right", directions.right().toString())
                .put("bank", directions.bank().map(Bank::name).orElse(null))
                .put("message", said.toString());
    }
}
