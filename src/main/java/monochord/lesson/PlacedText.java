package monochord.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A piece of a line that knows where in the line it stands.
 *
 * @param place index of its first character, from 0
 */
public record PlacedText(String text, int place) {
    public boolean isEmpty() {
        return text.isEmpty();
    }

    /** @param from index within this piece */
    public PlacedText part(int from, int to) {
        return new PlacedText(text.substring(from, to), place + from);
    }

    public PlacedText stripped() {
        int from = text.length() - text.stripLeading().length();
        return part(from, Math.max(from, text.stripTrailing().length()));
    }

    /** What stands between the gaps, stripped; one piece more than there are gaps. */
    public List<PlacedText> split(Pattern gap) {
        List<PlacedText> pieces = new ArrayList<>();
        Matcher gaps = gap.matcher(text);
        int from = 0;
        while (gaps.find()) {
            pieces.add(part(from, gaps.start()).stripped());
            from = gaps.end();
        }
        pieces.add(part(from, text.length()).stripped());
        return pieces;
    }
}
