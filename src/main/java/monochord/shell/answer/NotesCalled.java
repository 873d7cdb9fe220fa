package monochord.shell.answer;

import monochord.page.Style;
import monochord.page.StyledText;
import monochord.theory.NoteNaming;

/**
 * By what names notes go.
 *
 * @param trouble what kept the choice from being kept, perhaps nothing
 */
public record NotesCalled(NoteNaming naming, String trouble) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder()
                .line("Notes are called C D E F G A B C, with F♯ and B♭ among them; type them so, too.")
                .line("English, German or Latin names: notes english, notes german, notes latin.", Style.QUIET);
        if (!trouble.isEmpty()) {
            text.line(trouble);
        }
        return text.build().in(look.signs().with(naming)).wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("notes", naming.toString());
    }
}
