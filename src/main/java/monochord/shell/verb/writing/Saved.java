package monochord.shell.verb.writing;

import monochord.text.Phrase;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** A notebook that was written into a file. */
record Saved(String file, int lines, int notes) implements Answer {
    @Override
    public StyledText text(Look look) {
        Phrase typed = Phrase.counted(lines, "{0} line", "{0} lines", lines);
        Phrase own = Phrase.counted(notes, "{0} note", "{0} notes", notes);
        Phrase said = notes == 0
                ? Phrase.of("Saved: {0}, {1}.", Phrase.typed(file), typed)
                : Phrase.of("Saved: {0}, {1}, {2}.", Phrase.typed(file), typed, own);
        return StyledText.of(said, look.reader()).wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "saved").put("file", file).put("lines", lines).put("notes", notes);
    }
}
