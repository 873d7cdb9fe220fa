package monochord.harmony;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;

/**
 * Chords borrowed from the parallel modes: those that fall out of the key's own window on the line of fifths and into a
 * darker or brighter one over the same tonic.
 *
 * <p>A minor key's own chords are those of its natural and its harmonic scale.
 *
 * <p>Source for the common borrowed chords: Open Music Theory (Shaffer, Hughes, Moseley, 2014), page "modalMixture", CC
 * BY-SA 4.0; which scales hold a chord is computed.
 */
public final class Borrowing {
    private static final int TRIAD = 3;
    private static final int SEVENTH = 4;
    private static final List<ScaleKind> MINORS = List.of(ScaleKind.HARMONIC_MINOR, ScaleKind.MELODIC_MINOR);

    /**
     * A chord that is not the key's own.
     *
     * @param numeral the degree it stands on
     * @param sources the parallel scales that hold all its tones, nearest first
     * @param changed the degrees the key does not have
     */
    public record Borrowed(Chord chord, Numeral numeral, List<Scale> sources, List<Degree> changed) {}

    private Borrowing() {}

    /**
     * The parallel scales that hold all tones of the chord: the modes by the number of degrees they change, the darker
     * one first where two change as many, then harmonic and melodic minor. Empty if the chord is the key's own.
     */
    public static List<Scale> borrowedFrom(Chord chord, Key key) {
        if (key.isOwn(chord)) {
            return List.of();
        }
        List<Scale> sources = new ArrayList<>();
        for (Scale scale : parallels(key)) {
            if (scale.holds(chord)) {
                sources.add(scale);
            }
        }
        return sources;
    }

    /** Every parallel scale but the key's own, nearest first. */
    public static List<Scale> parallels(Key key) {
        List<Scale> scales = new ArrayList<>();
        Mode[] modes = Mode.values();
        int own = key.mode().ordinal();
        for (int distance = 1; distance < modes.length; distance++) {
            if (own + distance < modes.length) {
                scales.add(new Scale(key.tonic(), ScaleKind.of(modes[own + distance])));
            }
            if (own - distance >= 0) {
                scales.add(new Scale(key.tonic(), ScaleKind.of(modes[own - distance])));
            }
        }
        scales.add(new Scale(key.tonic(), ScaleKind.HARMONIC_MINOR));
        scales.add(new Scale(key.tonic(), ScaleKind.MELODIC_MINOR));
        return scales;
    }

    /**
     * The borrowed chords a player meets: triads and seventh chords of the parallel minor or major, the diminished seventh
     * chord of harmonic minor, and the major and minor triads of the other modes.
     */
    public static List<Borrowed> table(Key key) {
        Map<Chord, Borrowed> rows = new LinkedHashMap<>();
        Scale nextDoor = key.parallel().scale();
        add(rows, stacked(nextDoor, TRIAD), key);
        add(rows, stacked(nextDoor, SEVENTH), key);
        add(
                rows,
                stacked(new Scale(key.tonic(), ScaleKind.HARMONIC_MINOR), SEVENTH).stream()
                        .filter(chord -> chord.kind().equals(ChordKind.DIMINISHED_SEVENTH))
                        .toList(),
                key);
        for (Scale scale : parallels(key)) {
            if (!scale.kind().equals(ScaleKind.LOCRIAN) && !MINORS.contains(scale.kind())) {
                add(
                        rows,
                        stacked(scale, TRIAD).stream()
                                .filter(Borrowing::isMajorOrMinor)
                                .toList(),
                        key);
            }
        }
        return List.copyOf(rows.values());
    }

    private static boolean isMajorOrMinor(Chord chord) {
        return chord.kind().equals(ChordKind.MAJOR) || chord.kind().equals(ChordKind.MINOR);
    }

    /** The chords borrowed from one parallel scale: its triads, then its seventh chords, that are not the key's own. */
    public static List<Borrowed> table(Key key, ScaleKind source) {
        Map<Chord, Borrowed> rows = new LinkedHashMap<>();
        Scale scale = new Scale(key.tonic(), source);
        add(rows, stacked(scale, TRIAD), key);
        add(rows, stacked(scale, SEVENTH), key);
        return List.copyOf(rows.values());
    }

    private static void add(Map<Chord, Borrowed> rows, List<Chord> chords, Key key) {
        for (Chord chord : chords) {
            if (!key.isOwn(chord)) {
                rows.putIfAbsent(chord, borrowed(chord, key));
            }
        }
    }

    /** The chord of so many stacked thirds on each degree of a scale of seven notes. */
    public static List<Chord> stacked(Scale scale, int size) {
        List<NoteName> notes = scale.tones();
        List<Chord> chords = new ArrayList<>();
        for (int i = 0; i < notes.size() && notes.size() == 7; i++) {
            List<NoteName> tones = new ArrayList<>();
            for (int third = 0; third < size; third++) {
                tones.add(notes.get((i + 2 * third) % 7));
            }
            NoteName root = notes.get(i);
            ChordKind.of(root, tones).ifPresent(kind -> chords.add(new Chord(root, kind)));
        }
        return chords;
    }

    /** How many degrees a parallel scale raises, or lowers where the number is negative, against the key's own. */
    public static int brightness(Scale scale, Key key) {
        return scale.kind().degrees().stream()
                .mapToInt(degree -> Integer.signum(
                        degree.alteration() - key.mode().degree(degree.number()).alteration()))
                .sum();
    }

    /** All that is known about a chord as a borrowed one; no sources if no parallel scale holds it. */
    public static Borrowed borrowed(Chord chord, Key key) {
        List<Degree> changed = chord.tones().stream()
                .filter(tone -> !key.holds(tone))
                .map(key::degreeOf)
                .sorted()
                .toList();
        return new Borrowed(chord, Numeral.onDegree(chord, key), borrowedFrom(chord, key), changed);
    }
}
