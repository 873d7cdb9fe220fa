package monochord.theory;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import monochord.theory.note.Clause;
import monochord.theory.note.Degree;
import monochord.theory.note.Unreadable;

/**
 * One of the seven modes: a window of seven neighbours on the line of fifths, seen from the tonic.
 *
 * <p>They stand here from bright to dark. Each window reaches one fifth less to the sharp side and one more to the flat
 * side than the one before, so each mode lowers one more degree: lydian has a raised fourth, ionian (major) none,
 * mixolydian a lowered seventh, and so on.
 *
 * <p>Source: step patterns, Open Music Theory (Shaffer, Hughes, Moseley, 2014), page "scales2", CC BY-SA 4.0; the
 * windows follow from them.
 */
public enum Mode {
    LYDIAN("lydian"),
    IONIAN("major"),
    MIXOLYDIAN("mixolydian"),
    DORIAN("dorian"),
    AEOLIAN("minor"),
    PHRYGIAN("phrygian"),
    LOCRIAN("locrian");

    private static final int WIDTH = 7;

    private final String label;

    Mode(String label) {
        this.label = label;
    }

    /** @throws Unreadable if the text is not the name of a mode */
    public static Mode parse(String text) {
        String name = text.strip().toLowerCase(Locale.ROOT);
        for (Mode mode : values()) {
            if (mode.label.equals(name) || mode.name().toLowerCase(Locale.ROOT).equals(name)) {
                return mode;
            }
        }
        throw Unreadable.because(text, 0, "a mode", Clause.of("expected one of {0}", labels()), "dorian");
    }

    private static String labels() {
        return String.join(", ", List.of(values()).stream().map(Mode::label).toList());
    }

    /** {@code major} for ionian, {@code minor} for aeolian, otherwise the mode's own name. */
    public String label() {
        return label;
    }

    /** The point of the window farthest to the flat side, in fifths from the tonic: −1 for major, −4 for minor. */
    public int flattest() {
        return -ordinal();
    }

    /** The point of the window farthest to the sharp side, in fifths from the tonic: 5 for major, 2 for minor. */
    public int sharpest() {
        return flattest() + WIDTH - 1;
    }

    public boolean holds(Degree degree) {
        return degree.fifths() >= flattest() && degree.fifths() <= sharpest();
    }

    /** The seven degrees in order from the tonic up. */
    public List<Degree> degrees() {
        return IntStream.rangeClosed(flattest(), sharpest())
                .mapToObj(Degree::ofFifths)
                .sorted()
                .toList();
    }

    /** The degree of that number, 1 to 7, in this mode. */
    public Degree degree(int number) {
        Degree natural = Degree.of(number, 0);
        int over = natural.fifths() - sharpest();
        int under = flattest() - natural.fifths();
        return over > 0
                ? Degree.ofFifths(natural.fifths() - WIDTH)
                : under > 0 ? Degree.ofFifths(natural.fifths() + WIDTH) : natural;
    }

    /** How many degrees differ between the two modes on one tonic. */
    public int distance(Mode other) {
        return Math.abs(ordinal() - other.ordinal());
    }

    /** Whether the mode has a minor third. */
    public boolean isMinor() {
        return ordinal() >= DORIAN.ordinal();
    }

    @Override
    public String toString() {
        return label;
    }
}
