package monochord.song.musicxml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.note.Interval;

/**
 * How a chord is written as a harmony element: the customary kind that needs the fewest changes, and the changes. The
 * mirror of {@link HarmonyChord}: what is written so is read as the same chord.
 *
 * <p>Source: W3C MusicXML 4.0, {@code kind-value}, {@code degree-type}, {@code degree-alter}.
 *
 * @param kind one of the names the standard has
 * @param degrees what differs from that kind; taken away first, then altered, then added
 */
public record HarmonyElement(Chord chord, String kind, List<AlteredDegree> degrees) {
    private static final int SEVENTH = 7;

    /**
     * One change.
     *
     * @param value the number of the degree, 1 to 13
     * @param alter half steps: added to the tone of the kind, or from the dominant scale where a tone is added
     */
    public record AlteredDegree(Type type, int value, int alter) {}

    /** In the order in which they are written. */
    public enum Type {
        SUBTRACT,
        ALTER,
        ADD;

        /** As the standard has it. */
        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public HarmonyElement {
        degrees = List.copyOf(degrees);
    }

    public static HarmonyElement of(Chord chord) {
        return HarmonyChord.KINDS.entrySet().stream()
                .map(kind -> changed(chord, kind))
                .min(Comparator.comparingInt((HarmonyElement element) -> element.degrees.size())
                        .thenComparing(HarmonyElement::kind))
                .orElseThrow();
    }

    private static HarmonyElement changed(Chord chord, Map.Entry<String, String> kind) {
        List<Interval> lacking =
                new ArrayList<>(ChordKind.parse(kind.getValue()).intervals());
        List<Interval> more = new ArrayList<>(chord.kind().intervals());
        List<Interval> common = lacking.stream()
                .filter(one -> more.stream().anyMatch(other -> isSame(one, other)))
                .toList();
        common.forEach(one -> {
            lacking.remove(one);
            more.removeIf(other -> isSame(one, other));
        });
        List<AlteredDegree> degrees = new ArrayList<>();
        for (Interval tone : lacking) {
            Optional<Interval> instead =
                    more.stream().filter(other -> step(other) == step(tone)).findFirst();
            instead.ifPresent(more::remove);
            degrees.add(instead.map(other ->
                            new AlteredDegree(Type.ALTER, tone.number(), other.alteration() - tone.alteration()))
                    .orElseGet(() -> new AlteredDegree(Type.SUBTRACT, tone.number(), 0)));
        }
        more.forEach(tone -> degrees.add(added(tone)));
        degrees.sort(Comparator.comparing(AlteredDegree::type));
        return new HarmonyElement(chord, kind.getKey(), degrees);
    }

    /** An added seventh counts from the minor one, as a dominant chord has it. */
    private static AlteredDegree added(Interval tone) {
        int fromDominant = step(tone) == SEVENTH ? 1 : 0;
        return new AlteredDegree(Type.ADD, tone.number(), tone.withinOctave().alteration() + fromDominant);
    }

    private static boolean isSame(Interval one, Interval other) {
        return one.fifths() == other.fifths();
    }

    private static int step(Interval tone) {
        return (tone.number() - 1) % SEVENTH + 1;
    }
}
