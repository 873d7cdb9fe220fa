package monochord.shell.verb.sounding;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.PlaybackState;
import monochord.shell.sitting.Sitting;
import monochord.shell.sound.SoundAnswer;
import monochord.sound.Directions;
import monochord.text.Failure;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Statement;

/** Says or settles how fast things are played. */
final class TempoVerb implements Verb {
    static final String KEEP = "keep";

    @Override
    public String word() {
        return "tempo";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.SOUND,
                        Phrase.of("say or settle the tempo, with --keep for other days too"))
                .form(may(takes(Value.BPM)), may(option(KEEP)))
                .examples("tempo 96", "tempo");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        PlaybackState stage = sitting.stage();
        Directions directions = stage.directions();
        if (sentence.body().isEmpty()) {
            return new SoundAnswer(
                    directions, Phrase.of("{0} beats a minute, where nothing else is said.", directions.tempo()));
        }
        int tempo = sentence.body().read(PlaybackOptions::tempo);
        stage.settle(directions.at(tempo));
        try {
            if (sentence.has(KEEP)) {
                sitting.settings().put(PlaybackState.TEMPO, Integer.toString(tempo));
            }
        } catch (IOException unkept) {
            return Statement.failed(
                    Phrase.of("It is {0} for now, but cannot be kept: {1}", tempo, Failure.told(unkept)));
        }
        return new SoundAnswer(stage.directions(), Phrase.of("From now on {0} beats a minute.", tempo));
    }
}
