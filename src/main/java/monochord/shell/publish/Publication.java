package monochord.shell.publish;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import monochord.lesson.ProseBlock;
import monochord.notebook.Exchange;
import monochord.notebook.Notebook;
import monochord.shell.replay.ReplayTurn;
import monochord.shell.replay.Replayed;
import monochord.shell.sitting.Progress;
import monochord.text.Phrase;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Look;
import monochord.view.web.EmbeddedSound;
import monochord.view.web.PageSection;
import monochord.view.web.WebPage;

/**
 * A notebook as a page, its answers as they come now. Of Java that was not run the page has what the notebook has.
 *
 * @param recordings how many pieces can be heard in it
 * @param leftOut how many could not be taken in, for their length
 */
public record Publication(WebPage page, int recordings, int leftOut) {
    private static final Phrase UNTITLED = Phrase.of("A sitting");
    /** Sentences are not broken here: the window breaks them. */
    private static final Look PAGE = Look.ofPipe().inWidth(200).withPicturesApart();

    /**
     * @param replayed the notebook, typed again
     * @param progress is told of each recording
     * @throws IOException if its music cannot be recorded
     */
    public static Publication of(Replayed replayed, Progress progress) throws IOException {
        Recordings recordings = new Recordings(heard(replayed), progress);
        Notebook notebook = replayed.written();
        String title = notebook.title().orElse("");
        Optional<Notebook.NotebookPart> titling = titling(notebook, title);
        List<PageSection> sections = new ArrayList<>();
        Iterator<ReplayTurn> turns = replayed.turns().iterator();
        for (Notebook.NotebookPart part : notebook.parts()) {
            if (part instanceof Notebook.Console console) {
                for (int i = 0; i < console.exchanges().size(); i++) {
                    sections.add(exchange(turns.next(), recordings));
                }
            } else {
                List<ProseBlock> blocks = ((Notebook.NotebookProse) part).blocks();
                words(titling.filter(part::equals).isPresent() ? below(title, blocks) : blocks, sections);
            }
        }
        return new Publication(
                new WebPage(title.isEmpty() ? UNTITLED : Phrase.typed(title), sections, PAGE.reader()),
                recordings.made(),
                recordings.leftOut());
    }

    private static int heard(Replayed replayed) {
        return (int) replayed.turns().stream()
                .filter(turn -> !turn.isSkipped() && turn.heard().isPresent())
                .count();
    }

    /** Where the heading is that became the title, if one did. */
    private static Optional<Notebook.NotebookPart> titling(Notebook notebook, String title) {
        return notebook.parts().stream()
                .filter(part -> part instanceof Notebook.NotebookProse prose
                        && prose.blocks().stream().anyMatch(block -> isTitle(block, title)))
                .findFirst();
    }

    private static boolean isTitle(ProseBlock block, String title) {
        return block instanceof ProseBlock.Heading && block.plain().equals(title);
    }

    /** The title stands above all of it already. */
    private static List<ProseBlock> below(String title, List<ProseBlock> blocks) {
        List<ProseBlock> below = new ArrayList<>(blocks);
        blocks.stream().filter(block -> isTitle(block, title)).findFirst().ifPresent(below::remove);
        return below;
    }

    private static void words(List<ProseBlock> blocks, List<PageSection> sections) {
        if (!blocks.isEmpty()) {
            sections.add(new PageSection.OwnWords(blocks));
        }
    }

    private static PageSection exchange(ReplayTurn turn, Recordings recordings) throws IOException {
        Exchange written = turn.written();
        Look look = PAGE.naming(turn.naming());
        if (turn.isSkipped()) {
            StyledText kept = StyledText.of(written.answer());
            return new PageSection.AnsweredLine(written.typed(), kept, List.of(), Optional.empty(), look.reader());
        }
        Answer answer = turn.answer().noted().orElse(turn.answer());
        Optional<EmbeddedSound> sound = turn.heard().isEmpty()
                ? Optional.empty()
                : recordings.of(turn.heard().get(), name(written));
        return new PageSection.AnsweredLine(
                written.typed(), answer.text(look), answer.drawings(), sound, look.reader());
    }

    private static Phrase name(Exchange written) {
        return written.text().isBlank()
                ? Phrase.of("what is played here")
                : Phrase.typed(String.join(" ", written.typed()));
    }
}
