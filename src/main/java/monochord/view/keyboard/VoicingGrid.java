package monochord.view.keyboard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import monochord.text.Columns;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;

/**
 * Voices over time, one row a voice and one column a chord:
 *
 * <pre>
 *             C       Gsus4   A♭maj7
 * right       G4══════●═══════●
 *             E4   ↘4 C4══════●
 * left        C3   ↘5 G2   ↗1 A♭2
 * </pre>
 *
 * <p>A voice that is held is a string that sounds on through the chords, with a dot where it is struck again. One that moves
 * shows which way and by how many half steps. A row of chords too wide for the page is set in several.
 */
public final class VoicingGrid {
    private static final int NARROWEST_LABEL = 8;
    private static final int WAY = 4;

    private final List<VoicingRow> rows;
    private final Reader reader;
    private final Signs signs;
    private final int room;
    private final int cell;
    private final int voices;
    /** Columns in front of the first chord. */
    private final int label;

    private VoicingGrid(List<VoicingRow> rows, Reader reader, int width) {
        this.rows = rows;
        this.reader = reader;
        this.signs = reader.signs();
        this.voices = rows.get(0).voices();
        int name = rows.stream()
                .flatMap(row -> row.voicing().pitches().stream())
                .mapToInt(pitch -> Columns.of(pitch.write(signs)))
                .max()
                .orElse(0);
        int symbol = rows.stream()
                .mapToInt(row -> Columns.of(row.chord().write(signs)))
                .max()
                .orElse(0);
        this.cell = Math.max(name + 1 + WAY, symbol + 1);
        this.label = IntStream.range(0, voices)
                .map(voice -> label(voice).in(reader).columns() + 1)
                .reduce(NARROWEST_LABEL, Math::max);
        this.room = Math.max(1, (width - label - WAY + 1) / cell);
    }

    /**
     * @param rows one or more chords, all with as many voices
     * @param width columns
     */
    public static StyledText of(List<VoicingRow> rows, Reader reader, int width) {
        return new VoicingGrid(rows, reader, width).draw();
    }

    private StyledText draw() {
        StyledText.Builder text = StyledText.builder();
        for (int start = 0; start < rows.size(); start += room) {
            if (start > 0) {
                text.gap();
            }
            text.lines(stretch(start, Math.min(rows.size(), start + room)));
        }
        return text.build();
    }

    private StyledText stretch(int start, int end) {
        List<StyledLine> lines = new ArrayList<>();
        StyledLine symbols = StyledLine.of(" ".repeat(label + WAY));
        for (int i = start; i < end; i++) {
            symbols = symbols.plus(padded(rows.get(i).chord().write(signs), cell, ' '), Style.STRONG);
        }
        lines.add(symbols.stripTrailing());
        for (int voice = voices - 1; voice >= 0; voice--) {
            lines.add(line(voice, start, end));
        }
        return new StyledText(lines);
    }

    private StyledLine line(int voice, int start, int end) {
        StyledLine line = StyledLine.of(padded(label(voice).in(reader).plain(), label, ' '), Style.QUIET);
        line = line.plus(start == 0 ? StyledLine.of(" ".repeat(WAY)) : arrival(voice, start, true));
        for (int i = start; i < end; i++) {
            boolean last = i == end - 1;
            line = line.plus(note(voice, i, i == start, last));
            line = last ? line : line.plus(arrival(voice, i + 1, false));
        }
        return line.stripTrailing();
    }

    /** The hand at its upper voice; in a choir, where hands may change, each voice by its part. */
    private Phrase label(int voice) {
        int left = rows.get(0).voicing().left().size();
        boolean fixed = rows.stream().allMatch(row -> row.voicing().left().size() == left);
        if (!fixed) {
            return voice == voices - 1 ? Phrase.of("top") : voice == 0 ? Phrase.of("bass") : Phrase.NOTHING;
        }
        return voice == voices - 1 ? Phrase.of("right") : voice == left - 1 ? Phrase.of("left") : Phrase.NOTHING;
    }

    /** How the voice comes to its note: a string that goes on, or the way it moves. */
    private StyledLine arrival(int voice, int index, boolean first) {
        int step = step(voice, index);
        if (step == 0) {
            String string = string().repeat(WAY - (first ? 1 : 0));
            return StyledLine.of(first ? " " + string : string, Style.QUIET);
        }
        String up = signs.isAscii() ? "^" : "↗";
        String down = signs.isAscii() ? "v" : "↘";
        String way = (step > 0 ? up : down) + Math.abs(step) + " ";
        return StyledLine.of(" ".repeat(Math.max(0, WAY - Columns.of(way))) + way, Style.QUIET);
    }

    private StyledLine note(int voice, int index, boolean first, boolean last) {
        Pitch pitch = pitch(voice, index);
        boolean held = index > 0 && step(voice, index) == 0 && !first;
        String name = held ? (signs.isAscii() ? "o" : "●") : pitch.write(signs);
        boolean goesOn = !last && step(voice, index + 1) == 0;
        int gap = Math.max(0, cell - WAY - Columns.of(name));
        Style style = ToneRoles.of(rows.get(index).chord(), pitch.name()).style();
        return StyledLine.of(name, style).plus((goesOn ? string() : " ").repeat(gap), Style.QUIET);
    }

    private String string() {
        return signs.isAscii() ? "=" : "═";
    }

    private Pitch pitch(int voice, int index) {
        return rows.get(index).voicing().pitches().get(voice);
    }

    /** Half steps from the chord before. */
    private int step(int voice, int index) {
        return pitch(voice, index).midiNumber() - pitch(voice, index - 1).midiNumber();
    }

    private static String padded(String text, int columns, char fill) {
        return text + Character.toString(fill).repeat(Math.max(0, columns - Columns.of(text)));
    }

    /** The same in words, one chord a line, with what stays from the chord before. */
    public static StyledText words(List<VoicingRow> rows, Reader reader) {
        return new StyledText(IntStream.range(0, rows.size())
                .mapToObj(i -> words(rows, i).in(reader))
                .toList());
    }

    private static Phrase words(List<VoicingRow> rows, int index) {
        VoicingRow row = rows.get(index);
        List<Pitch> before =
                index == 0 ? List.of() : rows.get(index - 1).voicing().pitches();
        List<Pitch> stay = row.voicing().pitches().stream()
                .filter(pitch -> before.stream().anyMatch(pitch::soundsLike))
                .toList();
        Phrase kept = stay.isEmpty()
                ? Phrase.NOTHING
                : Phrase.counted(stay.size(), "{0} stays.", "{0} stay.", Phrase.row(stay));
        return Phrase.of(
                        "{0}: left hand {1}, right hand {2}.",
                        Phrase.of("{0}", row.chord()).styled(Style.STRONG),
                        Phrase.row(row.voicing().left()),
                        Phrase.row(row.voicing().right()))
                .then(kept);
    }

    /** Both hands of each chord on a keyboard, one under the other. */
    public static StyledText keyboards(List<VoicingRow> rows, Reader reader, int width) {
        StyledText.Builder text = StyledText.builder(reader);
        for (VoicingRow row : rows) {
            text.gap().line(Phrase.of("{0}", row.chord()), Style.STRONG);
            text.lines(KeyboardPicture.hands(
                    ToneRoles.marked(row.voicing().left(), row.chord()),
                    ToneRoles.marked(row.voicing().right(), row.chord()),
                    reader,
                    width));
        }
        return text.build();
    }
}
