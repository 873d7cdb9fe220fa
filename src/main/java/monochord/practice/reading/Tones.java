package monochord.practice.reading;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/**
 * A chord as it was answered: its notes, and the symbol if one was written.
 *
 * @param notes each once, in the order they were written; from the root up where a symbol was written
 * @param symbol the chord symbol, or null if notes were written
 */
public record Tones(List<NoteName> notes, Chord symbol) {
    public Tones {
        notes = List.copyOf(new LinkedHashSet<>(notes));
    }

    public static Tones of(Chord symbol) {
        return new Tones(symbol.tones(), symbol);
    }

    public static Tones of(List<NoteName> notes) {
        return new Tones(notes, null);
    }

    public boolean hasSameNotes(Tones other) {
        return notes.size() == other.notes.size() && notes.containsAll(other.notes);
    }

    public boolean soundsLike(Tones other) {
        return NoteName.keys(notes) == NoteName.keys(other.notes);
    }

    public String write(Signs signs) {
        return symbol != null
                ? symbol.write(signs)
                : notes.stream().map(note -> note.write(signs)).collect(Collectors.joining(" "));
    }
}
