package monochord.text.naming;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A stretch of a text that is written otherwise.
 *
 * @param from its first character
 * @param to the character behind it
 * @param by what stands there instead
 */
public record Renaming(int from, int to, String by) {
    private static final Pattern GAP = Pattern.compile("(?<=\\S) {2,}");
    private static final int NARROWEST = 2;

    /** The text with all these changes, which must stand in order and apart. */
    static String all(List<Renaming> changes, String text) {
        return changes.isEmpty() ? text : within(changes, text, 0);
    }

    /** A piece of a longer text, beginning at {@code start} of it, with the changes that fall into it as a whole. */
    public static String within(List<Renaming> changes, String piece, int start) {
        StringBuilder changed = new StringBuilder();
        int place = 0;
        for (Renaming change : changes) {
            if (change.from >= start && change.to <= start + piece.length()) {
                changed.append(piece, place, change.from - start).append(change.by);
                place = change.to - start;
            }
        }
        return changed.append(piece, place, piece.length()).toString();
    }

    /** These changes, and the gaps of two spaces and more behind them made wider or narrower, so that columns stay. */
    public static List<Renaming> inColumns(List<Renaming> changes, String text) {
        List<Renaming> all = new ArrayList<>();
        Matcher gaps = GAP.matcher(text);
        int next = 0;
        int grown = 0;
        while (gaps.find()) {
            for (; next < changes.size() && changes.get(next).to <= gaps.start(); next++) {
                all.add(changes.get(next));
                grown += changes.get(next).growth(text);
            }
            int wanted = gaps.end() - gaps.start() - grown;
            int room = Math.max(NARROWEST, wanted);
            grown = room - wanted;
            all.add(new Renaming(gaps.start(), gaps.end(), " ".repeat(room)));
        }
        all.addAll(changes.subList(next, changes.size()));
        return all;
    }

    private int growth(String text) {
        return by.codePointCount(0, by.length()) - text.codePointCount(from, to);
    }
}
