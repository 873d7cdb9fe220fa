package monochord.view;

import java.util.List;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;

/**
 * By what names notes go.
 *
 * @param kept whether the choice is kept for the next sitting
 */
public record NotesCalled(NoteNaming naming, boolean kept) implements Answer {
    private static final List<NoteName> SCALE = Stream.of("C", "D", "E", "F", "G", "A", "B", "C")
            .map(NoteName::parse)
            .toList();

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.naming(naming).reader())
                .line(Phrase.sentence(
                        "Notes are called {0}, with {1} and {2} among them; type them so, too.",
                        Phrase.row(SCALE), NoteName.parse("F#"), NoteName.parse("Bb")))
                .line(
                        Phrase.sentence("English, German or Latin names: notes english, notes german, notes latin."),
                        Style.QUIET);
        if (!kept) {
            text.line(Phrase.sentence(
                    "This holds for today; it cannot be kept for the next time, for the folder cannot be"
                            + " written to."));
        }
        return text.build().wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "naming").put("notes", naming.toString());
    }
}
