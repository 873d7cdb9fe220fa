package monochord.song.abc;

import java.util.ArrayList;
import java.util.List;

/**
 * The order of parts in a header: {@code ABA}, {@code (AB)3.C2}. Source: the ABC standard 2.1, section 3.1.9.
 *
 * <p>Never more than {@value #MOST} parts, however it nests.
 */
final class AbcOrder {
    static final int MOST = 200;

    private static final int DEEPEST = 8;

    private final String text;
    private int place;

    private AbcOrder(String text) {
        this.text = text;
    }

    static List<Character> of(String text) {
        return new AbcOrder(text).sequence(0);
    }

    private List<Character> sequence(int depth) {
        List<Character> all = new ArrayList<>();
        while (place < text.length() && text.charAt(place) != ')') {
            char c = text.charAt(place++);
            if (c == '(' && depth < DEEPEST) {
                List<Character> within = sequence(depth + 1);
                place++;
                repeat(within, all);
            } else if (c >= 'A' && c <= 'Z') {
                repeat(List.of(c), all);
            }
        }
        return all;
    }

    private void repeat(List<Character> some, List<Character> all) {
        int start = place;
        while (place < text.length() && Character.isDigit(text.charAt(place)) && place - start < 3) {
            place++;
        }
        int times = start == place ? 1 : Integer.parseInt(text.substring(start, place));
        for (int i = 0; i < times && all.size() + some.size() <= MOST; i++) {
            all.addAll(some);
        }
    }
}
