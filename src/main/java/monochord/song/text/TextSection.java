package monochord.song.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.song.BarLines;
import monochord.song.Section;
import monochord.song.WrittenBar;

/** A section of a plain text that is being read: its chords line by line, and the words below them. */
final class TextSection {
    final String name;
    final int line;
    int times = 1;
    private final List<String> chords = new ArrayList<>();
    private final List<String> words = new ArrayList<>();
    private List<Integer> columns = List.of();

    /** @param line of its heading, from 1 */
    TextSection(String name, int line) {
        this.name = name;
        this.line = line;
    }

    boolean isEmpty() {
        return chords.isEmpty() && words.isEmpty();
    }

    boolean hasChords() {
        return !chords.isEmpty();
    }

    /** A verse ends here. */
    void gap() {
        columns = List.of();
        if (!words.isEmpty() && !words.get(words.size() - 1).isEmpty()) {
            words.add("");
        }
    }

    /** @return whether each of its chords was taken as a bar */
    boolean chords(TextLine line, int number) {
        List<TextLine.PlacedSymbol> symbols = line.symbols();
        boolean barred = symbols.stream().anyMatch(TextLine.PlacedSymbol::isBarLine);
        List<Integer> starts = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        boolean begins = true;
        for (TextLine.PlacedSymbol symbol : symbols) {
            if (symbol.isBarLine()) {
                begins = true;
            } else if (begins || !barred) {
                starts.add(symbol.column());
                begins = false;
            }
            boolean isNext = !barred && text.length() > 0;
            text.append(isNext ? " | " : text.length() > 0 ? " " : "").append(symbol.text());
        }
        columns = starts;
        chords.add(repeated(text.toString(), line.times()));
        return !barred && symbols.size() > 1;
    }

    private static String repeated(String bars, int times) {
        return times < 2
                ? bars
                : "|: " + bars.replaceAll("^\\|+\\s*|\\s*\\|+$", "") + " " + ":".repeat(times - 1) + "|";
    }

    /** Bar lines stand in the words where the chords of a new bar stand over them. */
    void words(TextLine line) {
        String text = line.text();
        StringBuilder sung = new StringBuilder();
        int from = 0;
        for (int column : columns.subList(Math.min(1, columns.size()), columns.size())) {
            int at = syllable(text, Math.min(text.length(), Math.max(from, column)));
            if (at >= from) {
                boolean inWord = isLetter(text, at - 1) && isLetter(text, at);
                sung.append(text, from, at).append(inWord ? "-| " : " | ");
                from = at;
            }
        }
        sung.append(text.substring(from));
        words.add(sung.toString().replace("\u2060", "").replaceAll("\\s+", " ").strip());
        columns = List.of();
    }

    /** The word that stands at a column, or deep in a long word the column itself: where chords stand is never typed exactly. */
    private static int syllable(String text, int column) {
        int begin = column;
        if (column < text.length() && Character.isWhitespace(text.charAt(column))) {
            return column
                    + text.substring(column).length()
                    - text.substring(column).stripLeading().length();
        }
        while (begin > 0 && !Character.isWhitespace(text.charAt(begin - 1))) {
            begin--;
        }
        boolean isDeep = column - begin > 2 && isLetter(text, column) && isLetter(text, column + 1);
        return isDeep ? column : begin;
    }

    private static boolean isLetter(String text, int index) {
        return index >= 0 && index < text.length() && Character.isLetter(text.charAt(index));
    }

    /** @param like the section whose chords it takes if it has none of its own */
    List<Section.Part> blocks(Optional<Section> like) {
        List<WrittenBar> bars =
                chords.isEmpty() ? like.map(Section::chords).orElse(List.of()) : BarLines.read(chords, 1);
        List<Section.Part> blocks = new ArrayList<>();
        if (!bars.isEmpty()) {
            blocks.add(new Section.ChordBlock(bars));
        }
        while (!words.isEmpty() && words.get(words.size() - 1).isEmpty()) {
            words.remove(words.size() - 1);
        }
        if (!words.isEmpty()) {
            blocks.add(new Section.WordsBlock(words));
        }
        return blocks;
    }
}
