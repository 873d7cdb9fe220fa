package monochord.view.music;

import monochord.harmony.Music;
import monochord.theory.Key;
import monochord.view.Answer;

/** How music is shown: by {@code show}, in a lesson, and where it is typed without a verb. */
public final class MusicAnswer {
    private MusicAnswer() {}

    public static Answer of(Music music, Key key) {
        if (music instanceof Music.OneChord one) {
            return new ChordAnswer(new ChordRow(one.chord(), one.numeral(), key));
        } else if (music instanceof Music.OneScale one) {
            return new ScaleAnswer(one.scale());
        } else if (music instanceof Music.OneProgression one) {
            return new ProgressionAnswer(one.progression(), one.oneChord());
        }
        Music.Notes notes = (Music.Notes) music;
        return new NotesAnswer(notes.names(), notes.pitches());
    }
}
