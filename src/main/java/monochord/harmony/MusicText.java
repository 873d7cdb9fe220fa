package monochord.harmony;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import monochord.harmony.Music.OneChord;
import monochord.harmony.Music.OneProgression;
import monochord.harmony.Music.OneScale;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.ChordNames;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * Reads a line of music as the prompt and the lessons write it.
 *
 * <p>The readings, in this order:
 *
 * <ul>
 *   <li>a scale: {@code scale} is the key's own, {@code harmonic minor} stands on the tonic of the key, {@code E
 *       harmonic minor} says its tonic; the word {@code scale} behind a tonic or a name changes nothing;
 *   <li>notes: names with commas or close hyphens between them ({@code C, E, G}, {@code C-E-G}), pitches ({@code C4 E4
 *       G4}), or anything of the two behind the word {@code notes};
 *   <li>one numeral, number or chord symbol: a chord;
 *   <li>several, with or without bars: a progression.
 * </ul>
 *
 * <p>A pitch such as {@code C7} is also a chord symbol. A row of pitches is read as notes if an octave among them is no
 * usual chord number: 4 and 3 are octaves, 2, 5, 6, 7 and 9 may be either and are chords.
 */
public final class MusicText {
    private static final String SCALE = "scale";
    private static final Pattern BARE_LETTERS = Pattern.compile("(?:[A-G][b#♭♯]{0,2}\\s+){2,3}[A-G][b#♭♯]{0,2}");
    private static final Set<ChordKind> IN_THIRDS = Set.of(
            ChordKind.MAJOR,
            ChordKind.MINOR,
            ChordKind.DIMINISHED,
            ChordKind.AUGMENTED,
            ChordKind.DOMINANT_SEVENTH,
            ChordKind.MAJOR_SEVENTH,
            ChordKind.MINOR_SEVENTH,
            ChordKind.HALF_DIMINISHED,
            ChordKind.DIMINISHED_SEVENTH);

    private MusicText() {}

    /**
     * @param key the key in which numerals, numbers and scale names are read
     * @throws Unreadable if the text is none of these; its place is that in the text
     */
    public static Music read(String text, Key key) {
        Optional<Music> read = mayNameScale(text) ? scale(text.strip(), key) : Optional.empty();
        if (read.isEmpty()) {
            read = NotesText.read(text);
        }
        return read.isPresent() ? read.get() : chords(text, key);
    }

    /** Whether there is a word as long as {@code scale} or {@code major} with no digit behind it, which few chords have. */
    private static boolean mayNameScale(String text) {
        int run = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (run >= SCALE.length() && !Character.isLetterOrDigit(c)) {
                return true;
            }
            run = Character.isLetter(c) ? run + 1 : 0;
        }
        return run >= SCALE.length();
    }

    private static Optional<Music> scale(String text, Key key) {
        String name = withoutWordScale(text);
        if (name.isEmpty()) {
            return text.isEmpty() ? Optional.empty() : Optional.of(new OneScale(key.scale()));
        }
        boolean saysScale = name.length() < text.length();
        return kindAlone(name, key)
                .or(() -> scaleNamed(name))
                .or(() -> saysScale ? scaleNamed(name + " major") : Optional.empty())
                .map(OneScale::new);
    }

    private static String withoutWordScale(String text) {
        boolean ends = text.toLowerCase(Locale.ROOT).endsWith(SCALE);
        String before = ends ? text.substring(0, text.length() - SCALE.length()) : text;
        return before.isEmpty() || Character.isWhitespace(before.charAt(before.length() - 1)) ? before.strip() : text;
    }

    private static Optional<Scale> kindAlone(String name, Key key) {
        try {
            return Optional.of(new Scale(key.tonic(), ScaleKind.parse(name)));
        } catch (Unreadable otherwise) {
            return Optional.empty();
        }
    }

    private static Optional<Scale> scaleNamed(String name) {
        try {
            return Optional.of(Scale.parse(name));
        } catch (Unreadable otherwise) {
            return Optional.empty();
        }
    }

    private static Music chords(String text, Key key) {
        Progression progression = Progression.parse(text, key);
        List<ChordEvent> slots = progression.slots();
        ChordEvent first = slots.get(0);
        return slots.size() == 1 && !progression.barred() && first.shares() == 1
                ? new OneChord(first.chord(), first.numeral())
                : new OneProgression(progression, oneChord(text, progression));
    }

    /** What three or four bare letters are as notes, where they stack up in thirds as a triad or a seventh chord. */
    private static Optional<Chord> oneChord(String text, Progression progression) {
        if (!BARE_LETTERS.matcher(text.strip()).matches()) {
            return Optional.empty();
        }
        List<NoteName> letters =
                progression.slots().stream().map(slot -> slot.chord().root()).toList();
        return letters.stream().distinct().count() < letters.size()
                ? Optional.empty()
                : ChordNames.of(letters, progression.key()).stream()
                        .filter(name -> !name.bySound()
                                && IN_THIRDS.contains(name.chord().kind()))
                        .map(ChordNames.Name::chord)
                        .findFirst();
    }
}
