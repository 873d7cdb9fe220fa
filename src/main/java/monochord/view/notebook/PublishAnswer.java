package monochord.view.notebook;

import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * A page has been written.
 *
 * @param file where it is
 * @param recordings how many pieces can be heard in it
 * @param leftOut how many are too long for a page
 * @param differing answers that are no longer as the notebook has them
 * @param untried lines of somebody's Java that were not run
 */
public record PublishAnswer(String file, int recordings, int leftOut, int differing, int untried) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(
                Phrase.of("Written: {0}, one page that needs nothing else; open it in a browser.", Phrase.typed(file)));
        if (recordings > 0) {
            text.line(Phrase.counted(
                    recordings, "{0} piece can be heard in it.", "{0} pieces can be heard in it.", recordings));
        }
        if (leftOut > 0) {
            text.line(
                    Phrase.counted(
                            leftOut,
                            "{0} is too long for a page and left out.",
                            "{0} are too long for a page and left out.",
                            leftOut),
                    Style.QUIET);
        }
        if (differing > 0) {
            text.line(whatDiffers());
        }
        if (untried > 0) {
            text.line(Phrase.of(
                    "Somebody else's Java was not run; the page shows what the notebook has. --trust runs it."));
        }
        return text.build().wrapped(look.width());
    }

    private Phrase whatDiffers() {
        return Phrase.counted(
                        differing,
                        "{0} answer is not as in the notebook; the page has the new.",
                        "{0} answers are not as in the notebook; the page has the new.",
                        differing)
                .then(Phrase.of("replay shows what differs."));
    }

    @Override
    public int status() {
        return untried > 0 ? NO : DONE;
    }

    @Override
    public void json(Json json) {
        json.put("kind", "publish")
                .put("file", file)
                .put("recordings", recordings)
                .put("leftOut", leftOut)
                .put("differing", differing)
                .put("untried", untried);
    }
}
