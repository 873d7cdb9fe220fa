package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.Fingering;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.NoteName;
import monochord.view.keyboard.Drawing;
import monochord.view.keyboard.ToneRoles;
import monochord.view.staff.MusicOnStaff;
import monochord.view.staff.StaffMusic;

/** The scales on one tonic on paper: notes, steps, signature, usual fingers. */
public final class ScaleHandout {
    private static final List<ScaleKind> KINDS = List.of(
            ScaleKind.MAJOR,
            ScaleKind.MINOR,
            ScaleKind.HARMONIC_MINOR,
            ScaleKind.MELODIC_MINOR,
            ScaleKind.DORIAN,
            ScaleKind.MIXOLYDIAN);

    private static final Phrase FINGERS = Phrase.sentence(
            "Fingers are numbered from the thumb, 1, to the little finger, 5, for one octave up; going down they are the same."
                    + " On the staff those of the right hand stand over the notes, those of the left hand under them."
                    + " They are the usual ones, common practice written down from memory: a teacher may well ask for others.");
    private static final Phrase CARE =
            Phrase.sentence("If a hand aches, stop; if it comes back, ask a teacher or a doctor before you play on.");

    private ScaleHandout() {}

    /** @param key whose tonic all begin on */
    public static Handout of(Key key) {
        List<Handout.Block> blocks =
                KINDS.stream().map(kind -> block(new Scale(key.tonic(), kind))).toList();
        return new Handout(
                Phrase.of("Scales on {0}", key.tonic()),
                List.of(FINGERS, CARE),
                List.of(new Handout.HandoutSection(Phrase.of("One octave up"), 2, blocks)),
                Phrase.NOTHING);
    }

    private static Handout.Block block(Scale scale) {
        List<Phrase> lines = new ArrayList<>();
        lines.add(Phrase.of("Notes: {0}", Phrase.row(scale.tones())));
        lines.add(Phrase.of("Half steps from note to note: {0}", Phrase.row(steps(scale))));
        scale.signature().ifPresent(count -> lines.add(signature(count)));
        Optional<Fingering> fingers = Fingering.of(scale);
        fingers.ifPresent(hands -> {
            lines.add(Phrase.of("Right hand: {0}", Phrase.row(hands.right())));
            lines.add(Phrase.of("Left hand: {0}", Phrase.row(hands.left())));
        });
        Phrase name = Phrase.of("{0}", scale);
        return new Handout.Block(
                name,
                lines,
                List.of(
                        Handout.HandoutFigure.KeyboardFigure.of(Drawing.of(name, ToneRoles.marked(scale))),
                        new Handout.HandoutFigure.Staff(staff(scale, fingers))));
    }

    /** The fingers of the right hand over the notes, those of the left hand under them. */
    private static StaffMusic staff(Scale scale, Optional<Fingering> fingers) {
        return fingers.map(hands -> MusicOnStaff.scale(scale, hands.right(), hands.left()))
                .orElseGet(() -> MusicOnStaff.scale(scale));
    }

    private static List<Integer> steps(Scale scale) {
        List<NoteName> tones = scale.tones();
        return IntStream.range(0, tones.size())
                .mapToObj(i -> Math.floorMod(
                        tones.get((i + 1) % tones.size()).pitchClass()
                                - tones.get(i).pitchClass(),
                        12))
                .toList();
    }

    private static Phrase signature(int count) {
        if (count == 0) {
            return Phrase.of("Signature: none");
        }
        return count > 0
                ? Phrase.counted(count, "Signature: {0} sharp", "Signature: {0} sharps", count)
                : Phrase.counted(-count, "Signature: {0} flat", "Signature: {0} flats", -count);
    }
}
