package monochord.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.lesson.ProseBlock;
import monochord.lesson.read.LenientProse;

/**
 * A sitting as a document: somebody's words, and what was typed at the prompt and came back.
 *
 * <p>Text form: Markdown with an optional head ({@link Start}). Fenced blocks with the word {@code console} hold exchanges
 * ({@link Exchange}), an empty line between them; all else is prose. {@link NotebookReader} reads all that {@link #toString}
 * writes, and what it reads of a file written here is written the same again, byte for byte.
 */
public record Notebook(Start start, List<NotebookPart> parts) {
    private static final Pattern TITLE = Pattern.compile("(?m)^# +(\\S.*)$");

    /** A stretch of prose or a block of exchanges. */
    public sealed interface NotebookPart {
        /** Where it begins in its file, from 1; 0 if it comes from none. */
        int line();
    }

    /**
     * @param text whole lines of Markdown as they stand in the file, the empty ones around them too
     */
    public record NotebookProse(int line, String text) implements NotebookPart {
        /** The files that are kept in it. */
        public List<AttachedFile> files() {
            return AttachedFile.in(text);
        }

        /** The words as blocks, for pages and screens. */
        public List<ProseBlock> blocks() {
            return LenientProse.of(text);
        }
    }

    /** @param exchanges one after the other, in one fenced block */
    public record Console(int line, List<Exchange> exchanges) implements NotebookPart {
        private static final Pattern FENCE = Pattern.compile("(?m)^ {0,3}(`{3,})");

        public Console {
            exchanges = List.copyOf(exchanges);
        }

        private void write(StringBuilder out) {
            StringBuilder inside = new StringBuilder();
            for (Exchange exchange : exchanges) {
                inside.append(inside.isEmpty() ? "" : "\n");
                exchange.write(inside);
            }
            String fence = fence(inside);
            out.append(fence).append("console\n").append(inside).append(fence).append('\n');
        }

        /** Longer than any fence that stands inside. */
        private static String fence(CharSequence inside) {
            int longest = 2;
            Matcher fences = FENCE.matcher(inside);
            while (fences.find()) {
                longest = Math.max(longest, fences.group(1).length());
            }
            return "`".repeat(longest + 1);
        }
    }

    public Notebook {
        parts = List.copyOf(parts);
    }

    /** As its head says, or the words of its first heading. */
    public Optional<String> title() {
        return start.title()
                .or(() -> parts.stream()
                        .filter(NotebookProse.class::isInstance)
                        .map(part -> TITLE.matcher(((NotebookProse) part).text()))
                        .filter(Matcher::find)
                        .map(found -> LenientProse.of(found.group()))
                        .filter(blocks -> !blocks.isEmpty())
                        .map(blocks -> blocks.get(0).plain())
                        .findFirst());
    }

    /** All exchanges, openings too. */
    public List<Exchange> exchanges() {
        return parts.stream()
                .filter(Console.class::isInstance)
                .flatMap(part -> ((Console) part).exchanges().stream())
                .toList();
    }

    /** The same with each exchange as {@code change} makes it; it is asked in their order. */
    public Notebook with(UnaryOperator<Exchange> change) {
        List<NotebookPart> changed = new ArrayList<>();
        for (NotebookPart part : parts) {
            changed.add(
                    part instanceof Console console
                            ? new Console(
                                    console.line,
                                    console.exchanges.stream().map(change).toList())
                            : part);
        }
        return new Notebook(start, changed);
    }

    /** The whole file. */
    @Override
    public String toString() {
        StringBuilder out = new StringBuilder(start.written());
        for (NotebookPart part : parts) {
            if (part instanceof Console console) {
                console.write(out);
            } else {
                out.append(((NotebookProse) part).text());
            }
        }
        return out.toString();
    }
}
