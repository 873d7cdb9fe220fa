package monochord.shell.verb.writing;

import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** A notebook that was written into a file. */
record Saved(String file, int lines, int notes) implements Answer {
    @Override
    public StyledText text(Look look) {
        String notebook = counted(lines, "line") + (notes == 0 ? "" : ", " + counted(notes, "note"));
        return StyledText.of("Saved: " + file + ", " + notebook + ".").wrapped(look.width());
    }

    private static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    @Override
    public void json(Json json) {
        json.put("file", file).put("lines", lines).put("notes", notes);
    }
}
