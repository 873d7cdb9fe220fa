package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import monochord.song.Section;
import monochord.song.WrittenBar;
import monochord.text.Phrase;

/**
 * The words of a section, syllable by syllable, one list for each verse; a line of words begins with a line of the tune. A
 * lone underscore leaves a note without a syllable.
 */
final class Sung {
    private static final int MOST_VERSES = 4;

    private final List<WrittenBar> tune;
    private final List<List<List<String>>> verses = new ArrayList<>();
    private int line;
    private int place;

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
    }

    private static List<String> syllables(String words) {
        List<String> all = new ArrayList<>();
        for (String word : words.strip().split("\\s+")) {
            String[] parts = word.split("(?<=\\p{L})-(?=\\p{L})");
            for (int i = 0; i < parts.length; i++) {
                all.add(parts[i].equals("_") ? "" : i + 1 < parts.length ? parts[i] + "-" : parts[i]);
            }
        }
        return all;
    }

    /** What is sung to the next note. */
    List<Phrase> next() {
        List<Phrase> sung = new ArrayList<>();
        for (List<List<String>> verse : verses.subList(0, Math.min(MOST_VERSES, verses.size()))) {
            List<String> words = line < verse.size() ? verse.get(line) : List.of();
            sung.add(place < words.size() ? Phrase.typed(words.get(place)) : Phrase.NOTHING);
        }
        place++;
        return sung.stream().allMatch(Phrase::isEmpty) ? List.of() : sung;
    }

    /** The next note begins another bar, and with it perhaps another line. */
    void endBar(int bar) {
        if (bar < tune.size() && tune.get(bar).endsLine()) {
            line++;
            place = 0;
        }
    }
}
