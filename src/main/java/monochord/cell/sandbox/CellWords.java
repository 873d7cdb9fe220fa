package monochord.cell.sandbox;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.cell.protocol.EncodedValue;
import monochord.cell.protocol.MessageKind;
import monochord.harmony.Borrowing;
import monochord.harmony.Borrowing.Borrowed;
import monochord.harmony.MusicText;
import monochord.harmony.Progression;
import monochord.harmony.voicing.VoicedProgression;
import monochord.harmony.voicing.VoicingSearch;
import monochord.harmony.voicing.VoicingStyle;
import monochord.harmony.voicing.VoicingTask;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/**
 * The short words of a cell. Each only calls the library; what it gives back is the library's own value, with all that
 * such a value can do.
 */
public final class CellWords {
    private static final Pattern NUMBER = Pattern.compile("[b#♭♯]*[1-7].*");

    private CellWords() {}

    /** The key of the line. */
    public static Key key() {
        return RunContext.current().key();
    }

    /**
     * {@code key("D")}, {@code key("E minor")}.
     *
     * @throws Unreadable if the text is not a key
     */
    public static Key key(String text) {
        return Key.parse(text);
    }

    /**
     * {@code chord("Abmaj7")}.
     *
     * @throws Unreadable if the text is not a chord symbol
     */
    public static Chord chord(String text) {
        return Chord.parse(text);
    }

    /**
     * {@code scale("E harmonic minor")}.
     *
     * @throws Unreadable if the text is not a scale
     */
    public static Scale scale(String text) {
        return Scale.parse(text);
    }

    /**
     * {@code notes("C E G")}, with commas or without.
     *
     * @throws Unreadable if a word of it is not a note name
     */
    public static List<NoteName> notes(String text) {
        return words(text).map(NoteName::parse).toList();
    }

    /**
     * {@code pitches("C4 E4 G4")}; C4 is middle C.
     *
     * @throws Unreadable if a word of it is not a pitch
     */
    public static List<Pitch> pitches(String text) {
        return words(text).map(Pitch::parse).toList();
    }

    private static Stream<String> words(String text) {
        return Arrays.stream(text.strip().split("[\\s,]+"));
    }

    /**
     * The chord that a numeral or number is in a key: {@code numeral("bVI", key("D"))}, {@code numeral("b6", key("D"))}.
     *
     * @throws Unreadable if the text is neither
     */
    public static Chord numeral(String text, Key key) {
        Numeral numeral = NUMBER.matcher(text).matches() ? BandNumber.parse(text, key) : Numeral.parse(text);
        return numeral.in(key);
    }

    /**
     * {@code numeral("bVI", "D")}.
     *
     * @throws Unreadable if one of the texts cannot be read
     */
    public static Chord numeral(String text, String key) {
        return numeral(text, key(key));
    }

    /** The chord that a numeral or number is in the key of the line. */
    public static Chord numeral(String text) {
        return numeral(text, key());
    }

    /** The numeral of a chord in a key: {@code numeral(chord("Bb"), key("D"))}. */
    public static Numeral numeral(Chord chord, Key key) {
        return Numeral.of(chord, key);
    }

    /** A progression in the key of the line. */
    public static Progression progression(String text) {
        return progression(text, key());
    }

    /**
     * {@code progression("F C G Ab", key("C"))}; numerals and numbers are read in the key.
     *
     * @throws Unreadable if the text is not a progression
     */
    public static Progression progression(String text, Key key) {
        return Progression.parse(text, key);
    }

    /**
     * {@code progression("4 1 5 b6", "D")}.
     *
     * @throws Unreadable if one of the texts cannot be read
     */
    public static Progression progression(String text, String key) {
        return progression(text, key(key));
    }

    /** These chords in the key of the line. */
    public static Progression progression(Collection<Chord> chords) {
        return Progression.of(List.copyOf(chords), key());
    }

    /** The voicing for two hands that moves best. */
    public static VoicedProgression voice(Progression progression) {
        return voice(progression, VoicingStyle.CLOSE);
    }

    /** {@code voice("F C G Ab")}, in the key of the line. */
    public static VoicedProgression voice(String text) {
        return voice(progression(text));
    }

    /** {@code voice(verse, VoicingStyle.SPREAD)}. */
    public static VoicedProgression voice(Progression progression, VoicingStyle style) {
        return VoicingSearch.best(VoicingTask.of(progression, style));
    }

    /** The chords that a key can borrow from its parallel modes. */
    public static List<Borrowed> borrowed(Key key) {
        return Borrowing.table(key);
    }

    /** Draws music at the line, at once; text is read in the key of the line. */
    public static void show(Object music) {
        RunContext.current().send(MessageKind.SHOW, told(music, key()));
    }

    /** {@code show(chord("Bb"), key("D"))}: as it stands in a key. */
    public static void show(Object music, Key key) {
        RunContext.current().send(MessageKind.SHOW, told(music, key).in(key.toString()));
    }

    /**
     * {@code show(chord("Bb"), "D")}.
     *
     * @throws Unreadable if the text is not a key
     */
    public static void show(Object music, String key) {
        show(music, key(key));
    }

    /** Plays music when the cell is done, each thing after the one before; text is read in the key of the line. */
    public static void play(Object music) {
        RunContext.current().send(MessageKind.PLAY, told(music, key()), "");
    }

    /** {@code play(verse, 84)}: at so many beats a minute. */
    public static void play(Object music, int tempo) {
        RunContext.current().send(MessageKind.PLAY, told(music, key()), Integer.toString(tempo));
    }

    private static EncodedValue told(Object music, Key key) {
        Object value = music instanceof String text ? MusicText.read(text, key) : music;
        return ValueText.music(value)
                .orElseThrow(() -> new IllegalArgumentException(
                        Limits.cut(ValueText.plain(value)) + " is not music, so it can be neither shown nor played"));
    }
}
