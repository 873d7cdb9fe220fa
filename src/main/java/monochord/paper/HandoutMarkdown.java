package monochord.paper;

import java.util.List;
import java.util.stream.Collectors;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.SafeText;

/**
 * A handout as Markdown that any viewer shows. Whatever words stand in it, they are shown as they are: none can become markup.
 * Pictures are left out.
 *
 * <p>Source: CommonMark 0.31, 2.4: any punctuation of ASCII may stand behind a backslash.
 */
public final class HandoutMarkdown {
    private static final String MARKUP = "\\`*_[]<>#|&~$";
    /** At the beginning of a line these make a list, a quotation, a rule or a heading. */
    private static final String LINE_MARKUP = "-+=";

    private final StringBuilder text = new StringBuilder();
    private final Reader reader;

    private HandoutMarkdown(Reader reader) {
        this.reader = reader;
    }

    public static String of(Handout handout, Reader reader) {
        HandoutMarkdown markdown = new HandoutMarkdown(reader);
        markdown.add(handout);
        return markdown.text.toString();
    }

    private void add(Handout handout) {
        line("# ", handout.title());
        handout.opening().forEach(words -> line("", words));
        for (Handout.HandoutSection section : handout.sections()) {
            line("## ", section.heading());
            section.blocks().forEach(this::add);
        }
        line("", handout.foot());
    }

    private void add(Handout.Block block) {
        line("### ", block.name());
        block.lines().forEach(words -> line("", words));
        for (Handout.HandoutFigure figure : block.figures()) {
            if (figure instanceof Handout.HandoutFigure.Rows rows) {
                table(rows);
            }
        }
    }

    private void table(Handout.HandoutFigure.Rows rows) {
        row(rows.head());
        text.append("| --- ".repeat(rows.head().size())).append("|\n");
        rows.rows().forEach(this::row);
        text.append('\n');
    }

    private void row(List<Phrase> cells) {
        text.append(cells.stream().map(this::words).collect(Collectors.joining(" | ", "| ", " |\n")));
    }

    private void line(String before, Phrase words) {
        if (!words.isEmpty()) {
            text.append(before).append(words(words)).append("\n\n");
        }
    }

    private String words(Phrase phrase) {
        String plain = SafeText.oneLine(phrase.in(reader).plain()).strip();
        StringBuilder escaped = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            boolean isMarkup = MARKUP.indexOf(c) >= 0
                    || i == 0 && LINE_MARKUP.indexOf(c) >= 0
                    || (c == '.' || c == ')')
                            && i > 0
                            && plain.substring(0, i).chars().allMatch(Character::isDigit);
            escaped.append(isMarkup ? "\\" : "").append(c);
        }
        return escaped.toString();
    }
}
