package monochord.song.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import monochord.song.BarDraft;

/**
 * What is sung, in the lines of a song: a hyphen between syllables, {@code _} for a note more, {@code *} for a note without
 * a word, verse after verse with an empty line between. Source: the ABC standard 2.1, section 5.
 */
final class SheetWords {
    private static final String NONE = "*";

    private SheetWords() {}

    /** None where nothing is sung. */
    static List<String> of(List<SheetBar> bars) {
        TreeSet<String> verses = new TreeSet<>();
        bars.forEach(bar -> bar.sung.forEach(note -> verses.addAll(note.keySet())));
        List<String> lines = new ArrayList<>();
        for (String verse : verses) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            lines.addAll(verse(verse, bars));
        }
        return lines;
    }

    private static List<String> verse(String verse, List<SheetBar> bars) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        SheetBar.Syllable last = null;
        for (SheetBar bar : bars) {
            List<BarDraft.Sound> notes = bar.draft.sounds.stream()
                    .filter(sound -> sound.pitch != null)
                    .toList();
            for (int i = 0; i < Math.min(notes.size(), bar.sung.size()); i++) {
                last = add(bar.sung.get(i), verse, notes.get(i).held, last, line);
            }
            if (bar.draft.endsLine) {
                lines.add(close(line));
            }
        }
        lines.add(close(line));
        while (!lines.isEmpty() && lines.get(lines.size() - 1).equals(NONE)) {
            lines.remove(lines.size() - 1);
        }
        return lines;
    }

    private static String close(StringBuilder line) {
        String text = line.toString().replaceAll("(?:\\s*\\*)+$", "").strip();
        line.setLength(0);
        return text.isEmpty() ? NONE : text;
    }

    /** The syllable that sounds now. */
    private static SheetBar.Syllable add(
            Map<String, SheetBar.Syllable> note,
            String verse,
            boolean held,
            SheetBar.Syllable last,
            StringBuilder line) {
        SheetBar.Syllable own = note.get(verse);
        boolean inWord = last != null && last.goesOn();
        if (own != null) {
            line.append(line.length() == 0 || inWord ? "" : " ")
                    .append(own.text())
                    .append(own.goesOn() ? "-" : "");
            return own;
        } else if (last != null && (held || inWord || last.isExtended())) {
            line.append(inWord ? "-" : "_");
            return last;
        }
        line.append(" ").append(NONE);
        return null;
    }
}
