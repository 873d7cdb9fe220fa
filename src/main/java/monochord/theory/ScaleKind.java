package monochord.theory;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import monochord.theory.note.Degree;
import monochord.theory.note.ToneSet;
import monochord.theory.note.Unreadable;

/**
 * A kind of scale, such as harmonic minor: the degrees it has above its tonic.
 *
 * <p>Text form: the name, such as {@code harmonic minor}. {@link #parse} reads all that {@link #toString} writes, and
 * the other customary names.
 *
 * <p>Sources: Open Music Theory (Shaffer, Hughes, Moseley, 2014), pages "scales" and "scales2", CC BY-SA 4.0, for the
 * minor scales, the modes, major pentatonic, whole-tone and half-whole octatonic; minor pentatonic, the blues scales,
 * whole-half octatonic and the degrees of the acoustic scale from memory.
 */
public final class ScaleKind {
    private static final Map<String, ScaleKind> BY_NAME = new HashMap<>();
    private static final Map<Mode, ScaleKind> BY_MODE = new EnumMap<>(Mode.class);
    private static final List<ScaleKind> KINDS = new ArrayList<>();

    public static final ScaleKind MAJOR = mode(Mode.IONIAN, "ionian");
    public static final ScaleKind MINOR = mode(Mode.AEOLIAN, "natural minor", "aeolian");
    public static final ScaleKind HARMONIC_MINOR = kind("harmonic minor", Mode.AEOLIAN, "1 2 b3 4 5 b6 7");
    public static final ScaleKind MELODIC_MINOR =
            kind("melodic minor", Mode.AEOLIAN, "1 2 b3 4 5 6 7", "melodic minor ascending", "melodic minor up");
    public static final ScaleKind LYDIAN = mode(Mode.LYDIAN);
    public static final ScaleKind MIXOLYDIAN = mode(Mode.MIXOLYDIAN);
    public static final ScaleKind DORIAN = mode(Mode.DORIAN);
    public static final ScaleKind PHRYGIAN = mode(Mode.PHRYGIAN);
    public static final ScaleKind LOCRIAN = mode(Mode.LOCRIAN);
    public static final ScaleKind MAJOR_PENTATONIC =
            kind("major pentatonic", Mode.IONIAN, "1 2 3 5 6", "pentatonic", "pentatonic major");
    public static final ScaleKind MINOR_PENTATONIC =
            kind("minor pentatonic", Mode.AEOLIAN, "1 b3 4 5 b7", "pentatonic minor");
    public static final ScaleKind MINOR_BLUES = kind("minor blues", Mode.AEOLIAN, "1 b3 4 b5 5 b7", "blues");
    public static final ScaleKind MAJOR_BLUES = kind("major blues", Mode.IONIAN, "1 2 b3 3 5 6");
    public static final ScaleKind WHOLE_TONE = kind("whole-tone", null, "1 2 3 #4 #5 #6", "whole tone");
    public static final ScaleKind HALF_WHOLE =
            kind("half-whole octatonic", null, "1 b2 b3 3 #4 5 6 b7", "octatonic half-whole", "octatonic");
    public static final ScaleKind WHOLE_HALF =
            kind("whole-half octatonic", null, "1 2 b3 4 b5 b6 6 7", "octatonic whole-half");
    public static final ScaleKind ACOUSTIC =
            kind("acoustic", Mode.LYDIAN, "1 2 3 #4 5 6 b7", "lydian dominant", "overtone");

    private final String name;
    private final List<Degree> degrees;
    private final Mode signatureOf;
    private final long tones;

    private ScaleKind(String name, Mode signatureOf, List<Degree> degrees) {
        this.name = name;
        this.signatureOf = signatureOf;
        this.degrees = degrees;
        this.tones = tones(degrees);
    }

    private static long tones(List<Degree> degrees) {
        long tones = 0;
        for (Degree degree : degrees) {
            tones |= ToneSet.bit(degree.fifths());
        }
        return tones;
    }

    private static ScaleKind mode(Mode mode, String... otherNames) {
        ScaleKind kind = new ScaleKind(mode.label(), mode, mode.degrees());
        BY_MODE.put(mode, kind);
        return register(kind, otherNames);
    }

    private static ScaleKind kind(String name, Mode signatureOf, String degrees, String... otherNames) {
        List<Degree> parsed =
                Arrays.stream(degrees.split(" ")).map(Degree::parse).toList();
        return register(new ScaleKind(name, signatureOf, parsed), otherNames);
    }

    private static ScaleKind register(ScaleKind kind, String... otherNames) {
        KINDS.add(kind);
        BY_NAME.put(plain(kind.name), kind);
        Arrays.stream(otherNames).forEach(other -> BY_NAME.put(plain(other), kind));
        return kind;
    }

    private static String plain(String name) {
        String spaced = name.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
        while (spaced.contains("  ")) {
            spaced = spaced.replace("  ", " ");
        }
        return spaced;
    }

    /** Every kind, the commonest first. */
    public static List<ScaleKind> all() {
        return Collections.unmodifiableList(KINDS);
    }

    public static ScaleKind of(Mode mode) {
        return BY_MODE.get(mode);
    }

    /** @throws Unreadable if no scale has this name */
    public static ScaleKind parse(String text) {
        ScaleKind kind = text.length() > 40 ? null : BY_NAME.get(plain(text));
        if (kind == null) {
            throw Unreadable.because(text, 0, "a scale", "no scale has this name", "harmonic minor");
        }
        return kind;
    }

    /** The degrees in order from the tonic up, the octave left out. */
    public List<Degree> degrees() {
        return degrees;
    }

    long tones() {
        return tones;
    }

    /** The mode whose key signature the scale is written with; none for the scales that divide the octave evenly. */
    public Optional<Mode> signatureOf() {
        return Optional.ofNullable(signatureOf);
    }

    /** Half steps from each degree to the next, the last one up to the octave. */
    public List<Integer> steps() {
        List<Integer> steps = new ArrayList<>();
        for (int i = 0; i < degrees.size(); i++) {
            int above = i + 1 < degrees.size() ? degrees.get(i + 1).semitones() : 12;
            steps.add(above - degrees.get(i).semitones());
        }
        return List.copyOf(steps);
    }

    @Override
    public String toString() {
        return name;
    }
}
