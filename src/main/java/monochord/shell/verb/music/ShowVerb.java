package monochord.shell.verb.music;

import java.util.List;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.shell.sentence.Keys;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.theory.Key;
import monochord.theory.ScaleKind;
import monochord.view.Answer;
import monochord.view.music.MusicAnswer;

/** Spells music and draws it on a keyboard. */
final class ShowVerb implements Verb {
    @Override
    public Usage usage() {
        return Usage.of(
                "show",
                Usage.Topic.EXPLORING,
                "show CHORD, SCALE, NOTES or PROGRESSION [in KEY]",
                "spell it and draw it on a keyboard",
                "show Abmaj7",
                "show E harmonic minor",
                "show IV I V bVI V I in D");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = Keys.of(sentence, sitting);
        Music music = sentence.body().read(text -> MusicText.read(text, key));
        sitting.stage().remember(music);
        return MusicAnswer.of(music, key);
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return ScaleKind.all().stream().map(ScaleKind::toString).toList();
    }
}
