package monochord.view.music;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import monochord.text.Columns;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.note.Pitch;

/**
 * Voices over time, the top one above: a chord a column, and a line from a note to the next where its key stays down.
 *
 * @param chords as many pitches in each, from the bottom
 * @param heads what stands above each chord
 * @param names what stands in front of each voice, from the bottom
 */
record VoiceGrid(List<List<Pitch>> chords, List<Phrase> heads, List<Phrase> names, Reader reader) {
    private static final int GAP = 4;

    /** As many chords on a line as the width takes; those that do not fit follow below. */
    StyledText draw(int width) {
        int label = names.stream().mapToInt(this::columnsOf).max().orElse(0) + 2;
        int column = widest() + GAP;
        int perLine = Math.max(1, (width - label) / column);
        StyledText.Builder text = StyledText.builder();
        for (int from = 0; from < chords.size(); from += perLine) {
            int to = Math.min(chords.size(), from + perLine);
            text.line(row(padded("", label), from, to, i -> padded(said(heads.get(i)), column)));
            for (int voice = names.size() - 1; voice >= 0; voice--) {
                int sounding = voice;
                text.line(row(padded(said(names.get(voice)), label), from, to, i -> cell(i, sounding, column)));
            }
        }
        return text.build();
    }

    private StyledLine row(String label, int from, int to, IntFunction<String> cell) {
        StringBuilder row = new StringBuilder();
        for (int i = from; i < to; i++) {
            row.append(cell.apply(i));
        }
        return StyledLine.of(label, Style.QUIET).plus(row.toString()).stripTrailing();
    }

    private String cell(int i, int voice, int column) {
        Pitch pitch = chords.get(i).get(voice);
        String written = pitch.write(reader.signs());
        boolean held =
                i + 1 < chords.size() && pitch.soundsLike(chords.get(i + 1).get(voice));
        String bar = reader.signs().isAscii() ? "-" : "─";
        return held ? written + " " + bar.repeat(column - Columns.of(written) - 2) + " " : padded(written, column);
    }

    private int widest() {
        List<Phrase> all = new ArrayList<>(heads);
        chords.forEach(chord -> chord.forEach(pitch -> all.add(Phrase.of("{0}", pitch))));
        return all.stream().mapToInt(this::columnsOf).max().orElse(0);
    }

    private int columnsOf(Phrase phrase) {
        return Columns.of(said(phrase));
    }

    private String said(Phrase phrase) {
        return phrase.in(reader).plain();
    }

    private static String padded(String text, int columns) {
        return text + " ".repeat(Math.max(0, columns - Columns.of(text)));
    }
}
