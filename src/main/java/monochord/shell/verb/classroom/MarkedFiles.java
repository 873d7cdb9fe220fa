package monochord.shell.verb.classroom;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.classroom.HandInFiles;
import monochord.classroom.MarkedHandIn;
import monochord.classroom.MarksCsv;
import monochord.paper.Feedback;
import monochord.paper.Handout;
import monochord.paper.HandoutMarkdown;
import monochord.paper.HandoutPages;
import monochord.paper.HandoutWeb;
import monochord.paper.page.PageSize;
import monochord.paper.page.PdfPages;
import monochord.shell.sentence.FormPart;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Sentence.SentencePart;
import monochord.shell.sentence.Value;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.paper.PaperFiles;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/**
 * What is written beside the marks: a page of feedback for each pupil, as Markdown, for a browser and as PDF, and a table. They
 * are marked anew for it, so that not all of them are held at once.
 */
final class MarkedFiles {
    private static final String FEEDBACK = "feedback";
    private static final String CSV = "csv";

    private final Sentence sentence;
    private final Sitting sitting;
    private final HandInFiles files;
    private final Reader reader;
    private final Map<String, Integer> names = new HashMap<>();

    MarkedFiles(Sentence sentence, Sitting sitting, HandInFiles files) {
        this.sentence = sentence;
        this.sitting = sitting;
        this.files = files;
        this.reader = PaperFiles.reader(sitting);
    }

    /** How they are asked for. */
    static FormPart[] form() {
        return new FormPart[] {
            may(option(FEEDBACK, Value.FOLDER)), may(option(CSV, Value.OUT)), may(option(NewFile.OVER))
        };
    }

    /** Writes what is asked for, or nothing where one of the files is there already; then answers as it would have. */
    Answer write(Answer marks) throws IOException {
        Optional<NewFile> csv = NewFile.of(sentence, CSV, sitting, this::csv);
        if (sentence.option(FEEDBACK).isPresent()) {
            Files.createDirectories(sentence.option(FEEDBACK).get().read(sitting.outside()::file));
        }
        List<NewFile> pages = sentence.option(FEEDBACK).map(this::pages).orElse(List.of());
        List<NewFile> all = new ArrayList<>(pages);
        csv.ifPresent(all::add);
        if (all.isEmpty()) {
            return marks;
        }
        Phrase written = csv.isPresent() && pages.isEmpty()
                ? Phrase.of("Written: {0}", Phrase.typed(csv.get().name()))
                : Phrase.counted(all.size(), "{0} file written.", "{0} files written.", all.size());
        return NewFile.writeNoted(all, sentence, sitting, Answers.of(marks, Statement.of(written)));
    }

    private void csv(Path part) throws IOException {
        try (Writer out = Files.newBufferedWriter(part)) {
            out.write(MarksCsv.head());
            files.mark(marked -> {
                try {
                    out.write(MarksCsv.rows(marked.handIn()));
                } catch (IOException failed) {
                    throw new UncheckedIOException(failed);
                }
            });
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
    }

    private List<NewFile> pages(SentencePart folder) {
        List<NewFile> pages = new ArrayList<>();
        files.mark(marked -> {
            if (marked.handIn().code().isPresent()) {
                pages.addAll(pages(folder, marked.handIn()));
            }
        });
        return pages;
    }

    private List<NewFile> pages(SentencePart folder, MarkedHandIn marked) {
        String stem = marked.code().orElseThrow() + "-" + marked.assignment();
        int number = names.merge(stem, 1, Integer::sum);
        String name = folder.text() + "/" + stem + (number == 1 ? "" : "-" + number);
        PageSize size = PageSize.A4;
        return List.of(
                page(
                        folder,
                        name + ".md",
                        marked,
                        (page, part) -> Files.writeString(part, HandoutMarkdown.of(page, reader))),
                page(
                        folder,
                        name + ".html",
                        marked,
                        (page, part) -> Files.writeString(part, HandoutWeb.of(page, reader))),
                page(folder, name + ".pdf", marked, (page, part) -> {
                    try (var out = Files.newOutputStream(part)) {
                        PdfPages.write(
                                out,
                                page.title(),
                                HandoutPages.of(page, size, reader).iterator(),
                                reader);
                    }
                }));
    }

    /** One way to write a page. */
    private interface PageWriter {
        void write(Handout page, Path part) throws IOException;
    }

    private NewFile page(SentencePart folder, String name, MarkedHandIn marked, PageWriter writer) {
        return NewFile.named(folder, name, sitting, part -> writer.write(Feedback.of(marked), part));
    }
}
