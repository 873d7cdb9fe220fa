package monochord.view;

import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.NoteNaming;

/**
 * By what names notes go.
 *
 * @param kept whether the choice is kept for the next sitting
 */
public record NotesCalled(NoteNaming naming, boolean kept) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder()
                .line("Notes are called C D E F G A B C, with F♯ and B♭ among them; type them so, too.")
                .line("English, German or Latin names: notes english, notes german, notes latin.", Style.QUIET);
        if (!kept) {
            text.line(
                    "This holds for today; it cannot be kept for the next time, for the folder cannot be written to.");
        }
        return text.build().in(look.signs().with(naming)).wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("notes", naming.toString());
    }
}
