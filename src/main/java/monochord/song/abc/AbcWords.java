package monochord.song.abc;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.text.SafeText;

/**
 * The words of one part: under each line of music its lines, one a verse. Source: the ABC standard 2.1, section 5.
 *
 * <p>A line of music without words has {@code *}, which skips a note, so that lines of words and of music stay together.
 */
final class AbcWords {
    private static final String NONE = "*";
    private static final int MOST_VERSES = 50;

    /** What is sung to one note, and the sign behind it. */
    private static final Pattern UNIT = Pattern.compile("_\\s*|\\*\\s*|-\\s*|(?:\\\\-|[^\\s_*-])+(?:-\\s*|\\s+)?");

    private final List<List<String>> byMusicLine = new ArrayList<>();

    private List<Boolean> held = List.of();

    /** @param notes of the line: whether each goes on from the one before */
    void music(List<Boolean> notes) {
        byMusicLine.add(new ArrayList<>());
        held = List.copyOf(notes);
    }

    void line(String text, boolean goesOn) {
        if (byMusicLine.isEmpty()) {
            return;
        }
        List<String> verses = byMusicLine.get(byMusicLine.size() - 1);
        if (goesOn && !verses.isEmpty()) {
            verses.set(verses.size() - 1, verses.get(verses.size() - 1) + " " + SafeText.oneLine(text));
        } else if (verses.size() < MOST_VERSES) {
            verses.add(struck(SafeText.oneLine(text), held));
        }
    }

    /** Without the signs for notes that only go on, tied: here something is sung to what is struck. */
    private static String struck(String line, List<Boolean> held) {
        if (line.indexOf('|') >= 0 || !held.contains(true)) {
            return line;
        }
        Matcher unit = UNIT.matcher(line);
        StringBuilder text = new StringBuilder();
        for (int note = 0; unit.find(); note++) {
            boolean isHold = unit.group().strip().matches("[_*-]");
            boolean goesOn = note < held.size() && held.get(note);
            if (!isHold || !goesOn) {
                text.append(unit.group());
            } else if (unit.group().isBlank() || unit.group().endsWith(" ")) {
                text.append(' ');
            }
        }
        return text.toString().replaceAll("\\s+", " ").strip();
    }

    boolean isEmpty() {
        return byMusicLine.stream().allMatch(List::isEmpty);
    }

    int musicLines() {
        return byMusicLine.size();
    }

    /** Verse after verse, an empty line between. */
    List<String> lines() {
        return lines(0, byMusicLine.size());
    }

    /** The same for some lines of music, from one to before another, however many there are. */
    List<String> lines(int from, int to) {
        List<List<String>> some = byMusicLine.subList(from, Math.min(to, byMusicLine.size()));
        int most = some.stream().mapToInt(List::size).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (int verse = 0; verse < most; verse++) {
            if (verse > 0) {
                lines.add("");
            }
            List<String> its = new ArrayList<>();
            for (List<String> under : some) {
                its.add(verse < under.size() ? under.get(verse) : NONE);
            }
            while (!its.isEmpty() && its.get(its.size() - 1).equals(NONE)) {
                its.remove(its.size() - 1);
            }
            lines.addAll(its);
        }
        return lines;
    }

    /**
     * A line of words for notes of which some are tied: what is sung to the first is held on the next.
     *
     * @param cuts for each note whether it goes on with the one before
     */
    static String held(String line, List<Boolean> cuts) {
        Matcher unit = UNIT.matcher(line);
        StringBuilder text = new StringBuilder();
        int note = 0;
        for (; note < cuts.size() && cuts.get(note); note++) {
            text.append("_ ");
        }
        while (unit.find()) {
            text.append(unit.group());
            note++;
            for (; note < cuts.size() && cuts.get(note); note++) {
                boolean inWord = text.length() > 0 && text.charAt(text.length() - 1) == '-';
                int end = text.toString().stripTrailing().length();
                text.insert(end, unit.group().strip().equals(NONE) ? " *" : inWord ? "-" : "_");
            }
        }
        return line.indexOf('|') >= 0 ? line : text.toString().strip();
    }
}
