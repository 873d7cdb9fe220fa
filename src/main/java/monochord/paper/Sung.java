package monochord.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.song.Section;
import monochord.song.WrittenBar;
import monochord.text.Phrase;

/**
 * The words of a section, syllable by syllable, one list for each verse; a line of words begins with a line of the tune.
 * {@code -} stands between syllables, {@code _} holds one over another note, {@code *} leaves a note without one, {@code ~}
 * is a space and {@code |} goes on to the next bar.
 */
final class Sung {
    private static final int MOST_VERSES = 4;
    private static final String NEXT_BAR = "|";
    /** What is sung to one note, and the sign behind it. */
    private static final Pattern UNIT = Pattern.compile("[_*|-]\\s*|(?:\\\\-|[^\\s_*|-])+(?:-\\s*|\\s+)?");

    private final List<WrittenBar> tune;
    private final List<List<List<String>>> verses = new ArrayList<>();
    private final int[] places;
    private int line;

    Sung(Section section) {
        this.tune = section.tune();
        List<List<String>> verse = new ArrayList<>();
        for (String words : section.words()) {
            if (words.isBlank() && !verse.isEmpty()) {
                verses.add(verse);
                verse = new ArrayList<>();
            } else if (!words.isBlank()) {
                verse.add(syllables(words));
            }
        }
        if (!verse.isEmpty()) {
            verses.add(verse);
        }
        places = new int[Math.min(MOST_VERSES, verses.size())];
    }

    private static List<String> syllables(String words) {
        List<String> all = new ArrayList<>();
        Matcher unit = UNIT.matcher(words);
        while (unit.find()) {
            String text = unit.group().strip();
            boolean isSign = text.matches("[_*-]");
            all.add(isSign ? "" : text.replace('~', ' ').replace("\\-", "-"));
        }
        return all;
    }

    /** What is sung to the next note. */
    List<Phrase> next() {
        List<Phrase> sung = new ArrayList<>();
        for (int verse = 0; verse < places.length; verse++) {
            List<String> words = words(verse);
            boolean isThere =
                    places[verse] < words.size() && !words.get(places[verse]).equals(NEXT_BAR);
            sung.add(isThere ? Phrase.typed(words.get(places[verse])) : Phrase.NOTHING);
            places[verse] += isThere ? 1 : 0;
        }
        return sung.stream().allMatch(Phrase::isEmpty) ? List.of() : sung;
    }

    private List<String> words(int verse) {
        List<List<String>> lines = verses.get(verse);
        return line < lines.size() ? lines.get(line) : List.of();
    }

    /** The next note begins another bar, and with it perhaps another line. */
    void endBar(int bar) {
        if (bar < tune.size() && tune.get(bar).endsLine()) {
            line++;
            Arrays.fill(places, 0);
            return;
        }
        for (int verse = 0; verse < places.length; verse++) {
            List<String> words = words(verse);
            boolean waits =
                    places[verse] < words.size() && words.get(places[verse]).equals(NEXT_BAR);
            places[verse] += waits ? 1 : 0;
        }
    }
}
