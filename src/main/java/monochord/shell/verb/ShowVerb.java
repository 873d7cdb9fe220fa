package monochord.shell.verb;

import java.util.List;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.shell.answer.Answer;
import monochord.shell.answer.ChordAnswer;
import monochord.shell.answer.ChordRow;
import monochord.shell.answer.NotesAnswer;
import monochord.shell.answer.ProgressionAnswer;
import monochord.shell.answer.ScaleAnswer;
import monochord.shell.sitting.Sitting;
import monochord.theory.Key;
import monochord.theory.ScaleKind;

/** Spells music and draws it on a keyboard. */
public final class ShowVerb implements Verb {
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
        return answer(sentence.body().read(text -> MusicText.read(text, key)), key);
    }

    /** How music is shown, also where it is typed without a verb. */
    public static Answer answer(Music music, Key key) {
        if (music instanceof Music.OneChord one) {
            return new ChordAnswer(new ChordRow(one.chord(), one.numeral(), key));
        } else if (music instanceof Music.OneScale one) {
            return new ScaleAnswer(one.scale());
        } else if (music instanceof Music.OneProgression one) {
            return new ProgressionAnswer(one.progression());
        }
        Music.Notes notes = (Music.Notes) music;
        return new NotesAnswer(notes.names(), notes.pitches());
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return ScaleKind.all().stream().map(ScaleKind::toString).toList();
    }
}
