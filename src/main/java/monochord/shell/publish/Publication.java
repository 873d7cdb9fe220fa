package monochord.shell.publish;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import monochord.lesson.Block;
import monochord.lesson.notebook.Exchange;
import monochord.lesson.notebook.Notebook;
import monochord.page.StyledText;
import monochord.page.web.Section;
import monochord.page.web.Sound;
import monochord.page.web.WebPage;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Look;
import monochord.shell.replay.Replayed;
import monochord.shell.replay.Turn;

/**
 * A notebook as a page, its answers as they come now. Of Java that was not run the page has what the notebook has.
 *
 * @param recordings how many pieces can be heard in it
 * @param leftOut how many could not be taken in, for their length
 */
public record Publication(WebPage page, int recordings, int leftOut) {
    private static final String UNTITLED = "A sitting";
    /** Sentences are not broken here: the window breaks them. */
    private static final int WIDE = 200;

    /**
     * @param replayed the notebook, typed again
     * @throws IOException if its music cannot be recorded
     */
    public static Publication of(Replayed replayed) throws IOException {
        Recordings recordings = new Recordings();
        Notebook notebook = replayed.written();
        List<Section> sections = new ArrayList<>();
        Iterator<Turn> turns = replayed.turns().iterator();
        for (Notebook.Part part : notebook.parts()) {
            if (part instanceof Notebook.Console console) {
                for (int i = 0; i < console.exchanges().size(); i++) {
                    sections.add(exchange(turns.next(), recordings));
                }
            } else {
                words((Notebook.Prose) part, sections);
            }
        }
        String title = notebook.title().orElse(UNTITLED);
        return new Publication(new WebPage(title, sections), recordings.made(), recordings.leftOut());
    }

    /** The title stands above all of it already. */
    private static void words(Notebook.Prose prose, List<Section> sections) {
        List<Block> blocks = prose.blocks();
        boolean titled = sections.isEmpty()
                && !blocks.isEmpty()
                && prose.text().stripLeading().startsWith("# ");
        List<Block> below = titled ? blocks.subList(1, blocks.size()) : blocks;
        if (!below.isEmpty()) {
            sections.add(new Section.Words(below));
        }
    }

    private static Section exchange(Turn turn, Recordings recordings) throws IOException {
        Exchange written = turn.written();
        if (turn.isSkipped()) {
            return new Section.Exchange(written.typed(), StyledText.of(written.answer()), List.of(), Optional.empty());
        }
        Answer answer = turn.answer().noted().orElse(turn.answer());
        Look look = Look.ofPipe().naming(turn.naming()).inWidth(WIDE).withPicturesApart();
        Optional<Sound> sound = turn.heard().isEmpty()
                ? Optional.empty()
                : recordings.of(turn.heard().get(), name(written));
        return new Section.Exchange(written.typed(), answer.text(look), answer.drawings(), sound);
    }

    private static String name(Exchange written) {
        return written.text().isBlank() ? "what is played here" : String.join(" ", written.typed());
    }
}
