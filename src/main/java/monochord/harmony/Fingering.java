package monochord.harmony;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;

/**
 * The usual fingers for one octave of a scale going up, thumb 1 to little finger 5.
 *
 * <p>Common practice, written down from memory; no published table was at hand. Scales of which nothing is known here have
 * none.
 *
 * @param right one finger a note, the octave included
 * @param left the same for the left hand
 */
public record Fingering(List<Integer> right, List<Integer> left) {
    private static final String FROM_C = "12312345 54321321";

    private static final Map<Integer, String> MAJOR = Map.ofEntries(
            Map.entry(0, FROM_C),
            Map.entry(1, "23123412 32143213"),
            Map.entry(2, FROM_C),
            Map.entry(3, "31234123 32143213"),
            Map.entry(4, FROM_C),
            Map.entry(5, "12341234 54321321"),
            Map.entry(6, "23412312 43213214"),
            Map.entry(7, FROM_C),
            Map.entry(8, "34123123 32143213"),
            Map.entry(9, FROM_C),
            Map.entry(10, "21231234 32143213"),
            Map.entry(11, "12312345 43214321"));

    private static final Map<Integer, String> HARMONIC_MINOR = Map.ofEntries(
            Map.entry(0, FROM_C),
            Map.entry(1, "34123123 32143213"),
            Map.entry(2, FROM_C),
            Map.entry(3, "31234123 21432132"),
            Map.entry(4, FROM_C),
            Map.entry(5, "12341234 54321321"),
            Map.entry(6, "34123123 43213214"),
            Map.entry(7, FROM_C),
            Map.entry(8, "34123123 32143213"),
            Map.entry(9, FROM_C),
            Map.entry(10, "21231234 21321432"),
            Map.entry(11, "12312345 43214321"));

    public Fingering {
        right = List.copyOf(right);
        left = List.copyOf(left);
    }

    /** That of a scale, if one is known here. */
    public static Optional<Fingering> of(Scale scale) {
        if (scale.kind().equals(ScaleKind.MAJOR)) {
            return Optional.of(parsed(MAJOR.get(scale.tonic().pitchClass())));
        } else if (scale.kind().equals(ScaleKind.HARMONIC_MINOR)) {
            return Optional.of(parsed(HARMONIC_MINOR.get(scale.tonic().pitchClass())));
        }
        return Optional.empty();
    }

    private static Fingering parsed(String both) {
        String[] hands = both.split(" ");
        return new Fingering(fingers(hands[0]), fingers(hands[1]));
    }

    private static List<Integer> fingers(String hand) {
        return hand.chars().map(digit -> digit - '0').boxed().toList();
    }
}
