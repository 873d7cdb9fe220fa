package monochord.shell;

import monochord.shell.verb.Verbs;
import monochord.view.Look;
import org.jline.reader.Highlighter;
import org.jline.reader.LineReader;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;

/** Shows a line's verb in bold as soon as it is one, so that a slip is seen before Enter. */
final class VerbHighlighter implements Highlighter {
    private final Verbs verbs;
    private final Look look;

    VerbHighlighter(Verbs verbs, Look look) {
        this.verbs = verbs;
        this.look = look;
    }

    @Override
    public AttributedString highlight(LineReader reader, String line) {
        String word = LineReading.firstWord(line);
        if (!look.colour() || verbs.find(word).isEmpty()) {
            return new AttributedString(line);
        }
        return new AttributedStringBuilder()
                .append(word, AttributedStyle.BOLD)
                .append(line.substring(word.length()))
                .toAttributedString();
    }
}
