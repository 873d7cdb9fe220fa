package monochord.practice.reading;

import java.util.List;
import java.util.regex.Pattern;
import monochord.theory.Chord;
import monochord.theory.note.Unreadable;

/** Reads a chord by its symbol, in words ({@code B flat minor}), or by its notes. */
public final class ChordReading {
    private record Word(Pattern written, String meant) {}

    private static final List<Word> WORDS = List.of(
            new Word(Pattern.compile("(?i)[ -]*(?:chord|triad)$"), ""),
            word("[ -]*half[ -]*diminished(?:[ -]*(?:7|seventh))?", "m7b5"),
            word("[ -]*diminished[ -]*(?:7|seventh)", "dim7"),
            word("[ -]*major[ -]*(?:7|seventh)", "maj7"),
            word("[ -]*minor[ -]*(?:7|seventh)", "m7"),
            word("[ -]*(?:dominant[ -]*)?(?:seventh|(?<=dominant)[ -]*7)", "7"),
            word("[ -]*diminished", "dim"),
            word("[ -]*augmented", "aug"),
            word("[ -]*(?:major|maj)$", ""),
            word("[ -]*(?:minor|min)$", "m"));

    private ChordReading() {}

    private static Word word(String written, String meant) {
        return new Word(Pattern.compile("(?i)(?<=[a-g#b♭♯])" + written), meant);
    }

    /** @throws Unreadable if the text is neither a chord symbol nor notes */
    public static Tones read(String plain, String example) {
        String symbol = symbolText(plain);
        return symbol.indexOf(' ') < 0 ? symbolFirst(symbol, plain, example) : notesFirst(symbol, plain, example);
    }

    /** @throws Unreadable if the text is not a chord symbol */
    public static Chord symbol(String plain) {
        return Chord.parse(symbolText(plain).replace(" ", ""));
    }

    private static Tones symbolFirst(String symbol, String plain, String example) {
        try {
            return Tones.of(Chord.parse(symbol));
        } catch (Unreadable unreadable) {
            return notesOr(unreadable, plain, example);
        }
    }

    private static Tones notesFirst(String symbol, String plain, String example) {
        try {
            return Tones.of(NoteReading.read(plain, example));
        } catch (Unreadable unreadable) {
            return symbolOr(unreadable, symbol);
        }
    }

    private static Tones notesOr(Unreadable asSymbol, String plain, String example) {
        try {
            return Tones.of(NoteReading.read(plain, example));
        } catch (Unreadable asNotes) {
            throw asSymbol;
        }
    }

    private static Tones symbolOr(Unreadable asNotes, String symbol) {
        try {
            return Tones.of(Chord.parse(symbol.replace(" ", "")));
        } catch (Unreadable asSymbol) {
            throw asNotes;
        }
    }

    private static String symbolText(String plain) {
        if (!AnswerText.hasWord(plain)) {
            return plain;
        }
        String text = plain;
        for (Word word : WORDS) {
            text = word.written.matcher(text).replaceAll(word.meant);
        }
        return text.strip();
    }
}
