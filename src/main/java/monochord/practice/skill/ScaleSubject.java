package monochord.practice.skill;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Unreadable;

/**
 * A scale as a subject: a kind on the key's tonic ({@code harmonic minor}), or one with a tonic of its own ({@code E
 * harmonic minor}).
 *
 * @param text the canonical text
 * @param key the key asked in, or the major or minor key on the scale's own tonic
 */
record ScaleSubject(String text, Scale scale, Key key) {
    private static final int FURTHEST = 7;
    private static final List<ScaleKind> MAJOR_SIDE = List.of(
            ScaleKind.MAJOR,
            ScaleKind.MINOR,
            ScaleKind.HARMONIC_MINOR,
            ScaleKind.MELODIC_MINOR,
            ScaleKind.MIXOLYDIAN,
            ScaleKind.DORIAN,
            ScaleKind.LYDIAN,
            ScaleKind.PHRYGIAN);
    private static final List<ScaleKind> MINOR_SIDE = List.of(
            ScaleKind.MINOR, ScaleKind.HARMONIC_MINOR, ScaleKind.MELODIC_MINOR, ScaleKind.DORIAN, ScaleKind.PHRYGIAN);

    /** @throws Unreadable if it is no scale */
    static ScaleSubject parse(String subject, Key key) {
        String text = subject.strip();
        try {
            ScaleKind kind = ScaleKind.parse(text);
            return new ScaleSubject(kind.toString(), new Scale(key.tonic(), kind), key);
        } catch (Unreadable unreadable) {
            Scale scale = withTonic(text);
            return new ScaleSubject(scale.toString(), scale, keyOf(scale));
        }
    }

    private static Scale withTonic(String text) {
        try {
            return Scale.parse(text);
        } catch (Unreadable unreadable) {
            return ofKey(text, unreadable);
        }
    }

    private static Scale ofKey(String text, Unreadable asScale) {
        try {
            return Key.parse(text).scale();
        } catch (Unreadable unreadable) {
            throw asScale;
        }
    }

    private static Key keyOf(Scale scale) {
        boolean minor = scale.kind().signatureOf().map(Mode::isMinor).orElse(false);
        return minor ? Key.minor(scale.tonic()) : Key.major(scale.tonic());
    }

    /** The scales on the key's tonic that are written with at most seven signs. */
    static List<String> all(Key key) {
        Stream<ScaleKind> kinds = (key.isMinor() ? MINOR_SIDE : MAJOR_SIDE).stream();
        return kinds.filter(kind -> isInUse(new Scale(key.tonic(), kind)))
                .map(ScaleKind::toString)
                .toList();
    }

    private static boolean isInUse(Scale scale) {
        OptionalInt signature = scale.signature();
        return signature.isPresent() && Math.abs(signature.getAsInt()) <= FURTHEST;
    }
}
