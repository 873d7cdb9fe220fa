package monochord.harmony.voicing;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.theory.note.Notated;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * One chord as two hands hold it.
 *
 * <p>Text form: {@code left | right}, the pitches of each hand bottom to top, such as {@code F2 C3 | A3 C4}. {@link
 * #parse} reads all that {@link #toString} writes; the pitches of a hand may come in any order.
 *
 * @param left bottom to top, perhaps none
 * @param right bottom to top, perhaps none
 */
public record Voicing(List<Pitch> left, List<Pitch> right) implements Notated {
    private static final String WHAT = "a voicing";
    private static final String EXAMPLE = "F2 C3 | A3 C4";
    private static final int LONGEST = 200;

    public Voicing {
        left = left.stream().sorted().toList();
        right = right.stream().sorted().toList();
    }

    /** @throws Unreadable if the text is not the pitches of two hands */
    public static Voicing parse(String text) {
        int bar = text.indexOf('|');
        if (text.length() > LONGEST || bar < 0 || text.indexOf('|', bar + 1) >= 0) {
            throw Unreadable.because(
                    text,
                    Math.max(0, text.indexOf('|', bar + 1)),
                    WHAT,
                    "expected the left hand, one bar and the right hand",
                    EXAMPLE);
        }
        return new Voicing(hand(text, 0, bar), hand(text, bar + 1, text.length()));
    }

    private static List<Pitch> hand(String text, int from, int to) {
        return Stream.of(text.substring(from, to).split("[\\s,]+"))
                .filter(token -> !token.isEmpty())
                .map(token -> pitch(token, text, text.indexOf(token, from)))
                .toList();
    }

    private static Pitch pitch(String token, String text, int place) {
        try {
            return Pitch.parse(token);
        } catch (Unreadable unreadable) {
            throw unreadable.within(text, place);
        }
    }

    /** Every pitch, the left hand's first: bottom to top unless the hands cross. */
    public List<Pitch> pitches() {
        return Stream.concat(left.stream(), right.stream()).toList();
    }

    /** The same as MIDI note numbers. */
    int[] keys() {
        return pitches().stream().mapToInt(Pitch::midiNumber).toArray();
    }

    /** The lowest pitch of both hands. */
    public Pitch bass() {
        return pitches().stream().min(Comparator.naturalOrder()).orElseThrow();
    }

    /** The highest pitch of both hands. */
    public Pitch top() {
        return pitches().stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    @Override
    public String write(Signs signs) {
        return write(left, signs) + " | " + write(right, signs);
    }

    private static String write(List<Pitch> hand, Signs signs) {
        return hand.stream().map(pitch -> pitch.write(signs)).collect(Collectors.joining(" "));
    }

    @Override
    public String toString() {
        return write(Signs.ASCII);
    }
}
