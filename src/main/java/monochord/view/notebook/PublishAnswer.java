package monochord.view.notebook;

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
        StyledText.Builder text = StyledText.builder();
        text.line("Written: " + file + ", one page that needs nothing else; open it in a browser.");
        if (recordings > 0) {
            text.line(recordings + (recordings == 1 ? " piece" : " pieces") + " can be heard in it.");
        }
        if (leftOut > 0) {
            text.line(leftOut + (leftOut == 1 ? " is" : " are") + " too long for a page and left out.", Style.QUIET);
        }
        if (differing > 0) {
            text.line(differing + (differing == 1 ? " answer is" : " answers are")
                    + " not as in the notebook; the page has the new. replay shows what differs.");
        }
        if (untried > 0) {
            text.line("Somebody else's Java was not run; the page shows what the notebook has. --trust runs it.");
        }
        return text.build().wrapped(look.width());
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
