package monochord.harmony.singing;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import monochord.theory.note.Clause;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/**
 * What somebody sings with ease, as it sounds.
 *
 * <p>Text form: {@code low to high}, such as {@code A3 to D5}; a dash does for {@code to}.
 */
public record VocalRange(Pitch low, Pitch high) {
    private static final String WHAT = "what a voice can sing";
    private static final String EXAMPLE = "A3 to D5";

    /**
     * Voices by name. Source: between the limits that choirs print and what choristers say is comfortable; the values are
     * ours. A room of people: two pages on church music, where men sing an octave lower.
     */
    private static final Map<String, VocalRange> NAMED = new TreeMap<>(Map.of(
            "soprano", parse("C4 to F5"),
            "mezzo", parse("A3 to D5"),
            "alto", parse("G3 to C5"),
            "tenor", parse("C3 to F4"),
            "baritone", parse("A2 to E4"),
            "bass", parse("F2 to C4"),
            "everyone", parse("A3 to D5")));

    /** @throws IllegalArgumentException if the low note is not below the high one */
    public VocalRange {
        if (low.compareTo(high) >= 0) {
            throw new IllegalArgumentException(low + " is not below " + high);
        }
    }

    /** @throws Unreadable if the text is no low note and a higher one */
    public static VocalRange parse(String text) {
        String[] ends = text.strip().split("\\s+to\\s+|\\s*[-–]\\s*", 2);
        if (ends.length < 2) {
            throw Unreadable.because(
                    text, text.length(), WHAT, "expected the lowest and the highest note, with to between", EXAMPLE);
        }
        Pitch low = pitch(ends[0], text, 0);
        Pitch high = pitch(ends[1], text, text.length() - ends[1].length());
        if (low.midiNumber() >= high.midiNumber()) {
            throw Unreadable.because(text, 0, WHAT, Clause.of("{0} is not below {1}", low, high), EXAMPLE);
        }
        return new VocalRange(low, high);
    }

    private static Pitch pitch(String text, String whole, int place) {
        try {
            return Pitch.parse(text.strip());
        } catch (Unreadable unreadable) {
            throw unreadable.within(whole, place);
        }
    }

    /** That of a voice by its name, in whatever case. */
    public static Optional<VocalRange> named(String name) {
        return Optional.ofNullable(NAMED.get(name.strip().toLowerCase(Locale.ROOT)));
    }

    /** In half steps. */
    public int span() {
        return high.midiNumber() - low.midiNumber();
    }

    /** By how many half steps a note lies above, below zero beneath; 0 inside. */
    int beyond(int midi) {
        return midi > high.midiNumber() ? midi - high.midiNumber() : Math.min(0, midi - low.midiNumber());
    }

    double middle() {
        return (low.midiNumber() + high.midiNumber()) / 2.0;
    }
}
