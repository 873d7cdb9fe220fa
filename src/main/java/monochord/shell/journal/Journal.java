package monochord.shell.journal;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.file.Digest;
import monochord.lesson.read.MarkdownGuard;
import monochord.notebook.AttachedFile;
import monochord.notebook.Exchange;
import monochord.notebook.Notebook;
import monochord.notebook.NotebookReader;
import monochord.notebook.Start;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.view.Answer;
import monochord.view.Look;

/**
 * The one place where each line typed in a sitting and the answer given are noted. What it holds becomes a {@link Notebook}
 * whenever one is wanted; it is bounded by what a notebook may hold.
 *
 * <p>Without a draft to keep, answers are rendered for the notebook only when it is asked for, or when many have gathered.
 */
public final class Journal {
    private static final int MOST_UNRENDERED = 8;
    /** Leaves room for what is not rendered yet. */
    private static final int MOST_BYTES = NotebookReader.MOST_BYTES / 2;

    private final Supplier<Start> circumstances;
    private final Supplier<Look> page;
    private final List<JournalEntry> entries = new ArrayList<>();
    private JournalEntry opening;
    private Notebook before;
    private Start start;
    private Drafting drafts = Drafting.none();
    private Own own = Own.NONE;
    private int rendered;
    private int bytes;
    private int typed;
    private int notes;
    private boolean saved = true;
    private boolean full;
    private boolean foreign;

    /** A paragraph of the person's own, or an exchange whose answer is perhaps not rendered yet. */
    private static final class JournalEntry {
        final String words;
        private Exchange exchange;
        private final Look look;
        private Answer pending;

        JournalEntry(String words, Exchange exchange, Answer pending, Look look) {
            this.words = words;
            this.exchange = exchange;
            this.pending = pending;
            this.look = look;
        }

        Optional<Exchange> exchange() {
            if (pending != null) {
                exchange = exchange.answered(SafeText.clean(pending.text(look).plain()));
                pending = null;
            }
            return Optional.ofNullable(exchange);
        }
    }

    /** The file that is this sitting's own notebook, and what we last knew to be in it. */
    private record Own(Path file, String digest) {
        static final Own NONE = new Own(null, "");
    }

    /**
     * @param circumstances how the sitting began; asked once, when the first thing is noted
     * @param page how answers look in it, asked for each
     */
    public Journal(Supplier<Start> circumstances, Supplier<Look> page) {
        this.circumstances = circumstances;
        this.page = page;
    }

    /**
     * Puts the command that opened the prompt, and the greeting, before what will be noted: for a greeting that asks
     * something, and so decides how the first line is read.
     */
    public void open(String command, Answer greeting) {
        opening = new JournalEntry(null, new Exchange(0, true, List.of(command), ""), greeting, page.get());
    }

    /** Keeps a draft of all that is noted from now on. */
    public void keep(Drafting keeping) {
        drafts = keeping;
    }

    /**
     * Notes what was typed, one line or several, and what was answered.
     *
     * @return what the person must be told, once
     */
    public Optional<Phrase> note(String line, Answer answer) {
        Optional<Answer> kept = answer.noted();
        if (kept.isEmpty() || isFull()) {
            return kept.isEmpty() ? Optional.empty() : sayFull();
        }
        Exchange exchange = Exchange.of(SafeText.clean(line), "");
        bytes += size(exchange.text());
        typed++;
        return add(new JournalEntry(null, exchange, kept.get(), page.get()));
    }

    /**
     * Notes the person's own words, a line of Markdown, in which neither HTML nor a fence means anything.
     *
     * @return what the person must be told, once
     */
    public Optional<Phrase> words(String markdown) {
        if (isFull()) {
            return sayFull();
        }
        String clean = MarkdownGuard.withoutHtml(SafeText.oneLine(markdown).strip());
        boolean fence = clean.startsWith("```") || clean.startsWith("~~~");
        bytes += size(clean);
        notes++;
        return add(new JournalEntry((fence ? "\\" : "") + clean, null, null, null));
    }

    /** Keeps a file that is opened before what is noted next, so that its notebook can be typed again. */
    public void attach(AttachedFile file) {
        String block = SafeText.clean(file.toString());
        if (!isFull() && bytes + size(block) < MOST_BYTES) {
            bytes += size(block);
            add(new JournalEntry(block, null, null, null));
        }
    }

    private static int size(String text) {
        return text.getBytes(StandardCharsets.UTF_8).length;
    }

    private boolean isFull() {
        return typed >= NotebookReader.MOST_TYPED || bytes >= MOST_BYTES;
    }

    private Optional<Phrase> sayFull() {
        boolean first = !full;
        full = true;
        return first
                ? Optional.of(Phrase.of(
                        "The notebook of this sitting is full; what follows is not noted. Save it, and begin another."))
                : Optional.empty();
    }

    private Optional<Phrase> add(JournalEntry entry) {
        start();
        if (opening != null) {
            entries.add(opening);
            opening = null;
        }
        entries.add(entry);
        saved = false;
        if (drafts.isKept()) {
            return drafts.append(() -> notebook().toString(), () -> behind(entry));
        }
        if (entries.size() - rendered > MOST_UNRENDERED) {
            renderAll();
        }
        return Optional.empty();
    }

    private void renderAll() {
        for (JournalEntry entry : entries.subList(rendered, entries.size())) {
            entry.exchange().ifPresent(exchange -> bytes += size(exchange.answer()));
        }
        rendered = entries.size();
    }

    private Start start() {
        if (start == null) {
            start = circumstances.get();
        }
        return start;
    }

    /** One entry as it is put behind a draft, each exchange in a block of its own. */
    private String behind(JournalEntry entry) {
        renderAll();
        NotebookText pages = new NotebookText(new Notebook(Start.USUAL, List.of()));
        entry.exchange().ifPresentOrElse(pages::add, () -> pages.add(entry.words));
        return "\n" + pages.notebook();
    }

    /** All that was noted so far. */
    public Notebook notebook() {
        NotebookText pages = new NotebookText(before == null ? new Notebook(start(), List.of()) : before);
        for (JournalEntry entry : entries) {
            entry.exchange().ifPresentOrElse(pages::add, () -> pages.add(entry.words));
        }
        return pages.notebook();
    }

    public boolean isEmpty() {
        return entries.isEmpty() && before == null;
    }

    /** How many lines have been typed. */
    public int typed() {
        return typed;
    }

    /** How many paragraphs of the person's own there are. */
    public int notes() {
        return notes;
    }

    /** Begins again behind another notebook; a draft of what was noted so far stays behind if it was not saved. */
    public void goOnFrom(Notebook opened, Path file, String digest, boolean isForeign) {
        drafts.leave(saved);
        drafts = drafts.another(isForeign);
        foreign = isForeign;
        entries.clear();
        opening = null;
        before = opened;
        start = opened.start();
        own = new Own(file, digest);
        rendered = 0;
        bytes = size(opened.toString());
        typed = opened.exchanges().size();
        notes = 0;
        saved = true;
        full = false;
    }

    /** Puts all of it into the draft now, although nothing new is in it, for the file it came from goes. */
    public Optional<Phrase> secure() {
        saved = false;
        own = Own.NONE;
        return drafts.append(() -> notebook().toString(), () -> "");
    }

    /** The file that was saved or opened last, if one was. */
    public Optional<Path> file() {
        return Optional.ofNullable(own.file);
    }

    /** Whether this file is this sitting's own notebook, and still holds what this sitting put there or found there. */
    public boolean isOwn(Path file, String digest) {
        return file.equals(own.file) && digest.equals(own.digest);
    }

    /** Whether it goes on from a notebook with somebody else's Java that was not run. */
    public boolean isForeign() {
        return foreign;
    }

    /** The notebook has been saved there. */
    public void saved(Path file, String content) {
        own = new Own(file, Digest.of(content));
        saved = true;
    }

    /** The sitting ends, or the program does. */
    public void leave(boolean ended) {
        if (ended) {
            drafts.leave(saved);
        }
    }
}
