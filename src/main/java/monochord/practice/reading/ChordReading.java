package monochord.practice.reading;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.Chord;
import monochord.theory.note.Clause;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * Reads a chord by its symbol, in words ({@code B flat minor}), or by its notes; its bass behind a slash, by its position
 * ({@code first inversion}) or in words ({@code with A in the bass}).
 */
public final class ChordReading {
    private static final List<SpokenWord> WORDS = List.of(
            new SpokenWord(Pattern.compile("^[Aa]n? +(?=[A-G][b#♭♯]?(?:[ -]*[a-z0-9]{3,}.*|m|$))"), ""),
            new SpokenWord(Pattern.compile("(?i)[ -]*(?:chord|triad)$"), ""),
            word("[ -]*half[ -]*diminished(?:[ -]*(?:7|seventh|seven))?", "m7b5"),
            word("[ -]*(?:fully[ -]*)?diminished[ -]*(?:7|seventh|seven)", "dim7"),
            word("[ -]*(?:major|maj)[ -]*(?:7th|7|seventh|seven)", "maj7"),
            word("[ -]*(?:minor|min)[ -]*(?:7th|7|seventh|seven)", "m7"),
            word("[ -]*(?:dominant|dom)[ -]*(?:7th|7|seventh|seven)?", "7"),
            word("[ -]*(?:seventh|seven)", "7"),
            word("[ -]*(?:diminished|dim$)", "dim"),
            word("[ -]*augmented", "aug"),
            word("[ -]*(?:major|maj)$", ""),
            word("[ -]*(?:minor|min)$", "m"));
    private static final Pattern POSITION = Pattern.compile(
            "(?i)(.*?)[ ,]*(?:in )?(?:the )?(root position|(first|1st|second|2nd|third|3rd) inversion)");
    private static final Pattern POSITION_FIRST =
            Pattern.compile("(?i)(root position|(first|1st|second|2nd|third|3rd) inversion)(?: of)? +(.+)");
    /** The inversions of a triad by their figures, said in words. */
    private static final List<SpokenWord> FIGURES = List.of(
            new SpokenWord(Pattern.compile("(?i)six[ -]four(?: chord)?"), "second inversion"),
            new SpokenWord(Pattern.compile("(?i)(?:sixth|six[ -]three) chord"), "first inversion"));

    private static final Pattern IN_BASS = Pattern.compile(
            "(?i)(.+?)[ ,]+(?:over|with|on)(?: +an?(?= +[A-Ga-g](?:[b#♭♯]| |$)))? +(.+?)(?: +(?:in +)?bass)?");
    /** {@code C7 third in the bass}. */
    private static final Pattern TONE_IN_BASS = Pattern.compile(
            "(?i)(.+?)[ ,]+(?:(?:with|over) +)?(third|3rd|fifth|5th|seventh|7th) +(?:in|on|at)(?: +the)? +(?:bass|bottom)");

    private static final String WHAT = "a chord with its bass";

    private ChordReading() {}

    private static SpokenWord word(String written, String meant) {
        return new SpokenWord(Pattern.compile("(?i)(?<=[a-g#b♭♯])" + written), meant);
    }

    /** @throws Unreadable if the text is neither a chord symbol nor notes */
    public static Tones read(String plain, String example) {
        if (hasPosition(plain)) {
            return Tones.of(symbol(plain));
        }
        String symbol = symbolText(plain);
        return symbol.indexOf(' ') < 0 ? symbolFirst(symbol, plain, example) : notesFirst(symbol, plain, example);
    }

    /** Whether words tell which note lies lowest. */
    private static boolean hasPosition(String plain) {
        return AnswerText.hasWord(plain)
                && (plain.contains("nversion")
                        || plain.contains("osition")
                        || plain.contains(" over ")
                        || plain.contains(" bass"));
    }

    /** @throws Unreadable if the text is not a chord symbol, or the chord has no such inversion */
    public static Chord symbol(String written) {
        if (!AnswerText.hasWord(written)) {
            return bare(written);
        }
        String plain = SpokenWord.replace(FIGURES, written);
        Matcher position = POSITION.matcher(plain);
        if (position.matches()) {
            return inverted(bare(position.group(1)), position.group(3));
        }
        Matcher first = POSITION_FIRST.matcher(plain);
        if (first.matches()) {
            return inverted(bare(first.group(3)), first.group(2));
        }
        Matcher tone = TONE_IN_BASS.matcher(plain);
        Matcher bass = tone.matches() ? tone : IN_BASS.matcher(plain);
        return bass.matches() ? over(bare(bass.group(1)), bass.group(2).strip()) : bare(plain);
    }

    private static Chord bare(String plain) {
        return Chord.parse(symbolText(plain).replace(" ", ""));
    }

    private static Chord over(Chord chord, String bass) {
        int place = switch (bass.toLowerCase(Locale.ROOT)) {
            case "third", "3rd" -> 1;
            case "fifth", "5th" -> 2;
            case "seventh", "7th" -> 3;
            default -> 0;
        };
        return place == 0 ? chord.over(NoteName.parse(bass)) : inverted(chord, place);
    }

    /** @param which the ordinal of the inversion, or null for the root position */
    private static Chord inverted(Chord chord, String which) {
        return which == null ? chord : inverted(chord, place(which));
    }

    private static Chord inverted(Chord chord, int place) {
        List<NoteName> tones = chord.tones();
        if (place >= tones.size()) {
            Clause why = Clause.of("the chord has no such inversion");
            throw Unreadable.because(chord.toString(), 0, WHAT, why, "F/A");
        }
        return chord.over(tones.get(place));
    }

    /** Which inversion an ordinal says: from 1 to 3. */
    static int place(String ordinal) {
        return switch (ordinal.charAt(0)) {
            case 'f', 'F', '1' -> 1;
            case 's', 'S', '2' -> 2;
            default -> 3;
        };
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
        return SpokenWord.replace(WORDS, plain.strip()).strip();
    }
}
