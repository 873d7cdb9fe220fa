package monochord.view.web;

import java.util.List;
import java.util.Optional;
import monochord.lesson.ProseBlock;
import monochord.text.Reader;
import monochord.text.StyledText;
import monochord.view.keyboard.Drawing;

/** What a page is made of, in order. */
public sealed interface PageSection {
    /** The person's own words. */
    record OwnWords(List<ProseBlock> blocks) implements PageSection {
        public OwnWords {
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * What was typed and what came back.
     *
     * @param typed one line, or the lines of something longer
     * @param answer without its pictures
     * @param drawings the pictures
     * @param sound what was heard, if something was
     * @param reader whose words and note names the answer is in, and the pictures are to be in
     */
    record AnsweredLine(
            List<String> typed, StyledText answer, List<Drawing> drawings, Optional<EmbeddedSound> sound, Reader reader)
            implements PageSection {
        public AnsweredLine {
            typed = List.copyOf(typed);
            drawings = List.copyOf(drawings);
        }
    }
}
