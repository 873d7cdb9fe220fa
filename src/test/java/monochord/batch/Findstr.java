package monochord.batch;

import java.util.List;
import java.util.regex.Pattern;

/** The program that finds lines, with the options the launcher uses: {@code /b /e /l /r /c:}. */
final class Findstr {
    private Findstr() {}

    static int run(WindowsHouse house, List<String> words, WindowsHouse.Sink out) {
        String sought = words.stream()
                .filter(word -> !word.matches("/[belr]"))
                .findFirst()
                .orElseThrow();
        String text = sought.replaceFirst("^/c:", "");
        String pattern = words.contains("/r") ? text : Pattern.quote(text);
        String whole = (words.contains("/b") ? "" : ".*") + pattern + (words.contains("/e") ? "" : ".*");
        int last = words.size() - 1;
        if (!words.get(last).equals(sought) && !house.exists(words.get(last))) {
            return 1;
        }
        String all = words.get(last).equals(sought) ? house.input : house.read(words.get(last));
        List<String> found = all.lines().filter(row -> row.matches(whole)).toList();
        found.forEach(row -> out.write(row + "\n"));
        return found.isEmpty() ? 1 : 0;
    }
}
