package monochord.shell.verb.paper;

import java.util.List;
import monochord.paper.PlayerPart;
import monochord.text.Phrase;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** Says which files were written, and in which key each player reads. */
record ChartWritten(List<String> files, List<PlayerPart> parts) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        for (PlayerPart part : parts) {
            text.line(Phrase.of("{0}: written in {1}", Phrase.typed(part.name()), part.key()));
        }
        return text.line(Phrase.of("Written: {0}", Phrase.typed(String.join(", ", files))))
                .build()
                .wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "chart")
                .put("files", files)
                .objects(
                        "parts",
                        parts,
                        (object, part) -> object.put("name", part.name())
                                .put("key", part.key().toString()));
    }
}
