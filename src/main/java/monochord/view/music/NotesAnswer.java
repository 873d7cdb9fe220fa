package monochord.view.music;

import java.util.List;
import monochord.score.Arrangement;
import monochord.text.StyledText;
import monochord.theory.ChordNames;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.keyboard.Drawing;

/**
 * Notes drawn on the keyboard, and what they can be called.
 *
 * @param pitches as many as there are notes, or none if they were written without octaves
 */
public record NotesAnswer(List<NoteName> notes, List<Pitch> pitches) implements Answer {
    @Override
    public StyledText text(Look look) {
        return new NamesAnswer(notes, ChordNames.of(notes)).text(look).plus(Pictures.pitches(drawn(), look));
    }

    private List<Pitch> drawn() {
        return pitches.isEmpty() ? Arrangement.upwards(notes) : pitches;
    }

    @Override
    public List<Drawing> drawings() {
        return Pictures.drawings(drawn());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "notes").put("pitches", pitches);
        new NamesAnswer(notes, ChordNames.of(notes)).fields(json);
    }
}
