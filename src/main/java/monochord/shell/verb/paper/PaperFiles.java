package monochord.shell.verb.paper;

import static monochord.shell.sentence.FormPart.alone;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import monochord.paper.Handout;
import monochord.paper.HandoutPages;
import monochord.paper.HandoutWeb;
import monochord.paper.Worksheet;
import monochord.paper.page.Page;
import monochord.paper.page.PageSize;
import monochord.paper.page.PageSvg;
import monochord.paper.page.PdfPages;
import monochord.shell.sentence.FormPart;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Value;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.note.Signs;

/** What goes on paper, in the forms that a sentence asks for: a page for a browser, PDF, pictures. */
public final class PaperFiles {
    private static final String HTML = "html";
    private static final String PDF = "pdf";
    private static final String SVG = "svg";
    private static final String LETTER = "letter";
    /** More pages than these are for one file, not for pictures. */
    private static final int MOST_PICTURES = 100;

    private final Sentence sentence;
    private final Sitting sitting;
    private final List<NewFile> files = new ArrayList<>();

    public PaperFiles(Sentence sentence, Sitting sitting) {
        this.sentence = sentence;
        this.sitting = sitting;
    }

    /** How they are asked for: the size of the paper, then the files. */
    public static FormPart[] form() {
        return new FormPart[] {
            may(alone(LETTER)),
            may(option(HTML, Value.OUT)),
            may(option(PDF, Value.OUT)),
            may(option(SVG, Value.OUT)),
            may(option(NewFile.OVER))
        };
    }

    /** Whether one of them is asked for. */
    public static boolean isWanted(Sentence sentence) {
        return sentence.has(HTML) || sentence.has(PDF) || sentence.has(SVG);
    }

    /** A4 unless letter is said. */
    public static PageSize size(Sentence sentence) {
        return sentence.clause(LETTER).isPresent() ? PageSize.LETTER : PageSize.A4;
    }

    public static Reader reader(Sitting sitting) {
        return Reader.of(Signs.MUSIC.with(sitting.naming()));
    }

    public PaperFiles page(Supplier<String> page) {
        NewFile.text(sentence, HTML, sitting, page).ifPresent(files::add);
        return this;
    }

    /** As PDF, and as a picture of each page. */
    public PaperFiles pages(Phrase title, Function<PageSize, List<Page>> pages) {
        Reader reader = reader(sitting);
        PageSize size = size(sentence);
        NewFile.of(sentence, PDF, sitting, part -> {
                    try (var out = Files.newOutputStream(part)) {
                        PdfPages.write(out, title, pages.apply(size).iterator(), reader);
                    }
                })
                .ifPresent(files::add);
        sentence.option(SVG).ifPresent(named -> pictures(named, "", title, pages.apply(size)));
        return this;
    }

    /** One player's part of a PDF in a file of its own, with the player's name behind that of the whole. */
    PaperFiles besides(String player, Function<PageSize, List<Page>> pages) {
        Reader reader = reader(sitting);
        PageSize size = size(sentence);
        sentence.option(PDF)
                .ifPresent(named ->
                        files.add(NewFile.named(named, NewFile.behind(named.text(), player), sitting, part -> {
                            try (var out = Files.newOutputStream(part)) {
                                PdfPages.write(
                                        out,
                                        Phrase.typed(player),
                                        pages.apply(size).iterator(),
                                        reader);
                            }
                        })));
        return this;
    }

    /** Sheets, and beside each file one with {@code -key} behind its name; pages are made as they are written. */
    PaperFiles worksheets(Phrase title, Supplier<Stream<Worksheet>> sheets) {
        worksheets(title, sheets, "", Worksheet::sheet);
        worksheets(title, sheets, "key", Worksheet::key);
        return this;
    }

    private void worksheets(
            Phrase title, Supplier<Stream<Worksheet>> sheets, String behind, Function<Worksheet, Handout> side) {
        Reader reader = reader(sitting);
        PageSize size = size(sentence);
        Supplier<Stream<Page>> pages =
                () -> sheets.get().flatMap(sheet -> HandoutPages.of(side.apply(sheet), size, reader).stream());
        sentence.option(HTML)
                .ifPresent(named -> files.add(NewFile.named(
                        named,
                        name(named, behind),
                        sitting,
                        part -> Files.writeString(
                                part, HandoutWeb.of(sheets.get().map(side).toList(), reader)))));
        sentence.option(PDF)
                .ifPresent(named -> files.add(NewFile.named(named, name(named, behind), sitting, part -> {
                    try (var out = Files.newOutputStream(part)) {
                        PdfPages.write(out, title, pages.get().iterator(), reader);
                    }
                })));
        sentence.option(SVG)
                .ifPresent(named -> pictures(
                        named, behind, title, pages.get().limit(MOST_PICTURES).toList()));
    }

    private static String name(Sentence.SentencePart named, String behind) {
        return behind.isEmpty() ? named.text() : NewFile.behind(named.text(), behind);
    }

    /** One picture has the name that was typed, of several each has its number behind it. */
    private void pictures(Sentence.SentencePart named, String behind, Phrase title, List<Page> pages) {
        for (int i = 0; i < pages.size(); i++) {
            Page page = pages.get(i);
            String name = name(named, behind);
            String numbered = pages.size() == 1 ? name : NewFile.behind(name, Integer.toString(i + 1));
            files.add(NewFile.named(
                    named,
                    numbered,
                    sitting,
                    part -> Files.writeString(part, PageSvg.of(page, title, reader(sitting)))));
        }
    }

    PaperFiles with(List<NewFile> more) {
        files.addAll(more);
        return this;
    }

    public List<NewFile> files() {
        return files;
    }

    public List<String> names() {
        return files.stream().map(NewFile::name).toList();
    }
}
