package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.theory.note.Pitch;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.MusicSign;

/**
 * The accidentals before what sounds at once on a staff. Common practice of engraving, no source: they are set from the
 * outside in, top and bottom in turn, each as far right as there is room.
 */
final class AccidentalColumn {
    private static final double ROOM_BESIDE = 0.16;
    private static final double ROOM_ABOVE = 0.08;

    private final Clef clef;
    private final List<Box> taken;
    private final List<Drawn> drawn = new ArrayList<>();

    /** @param taken by heads, ledger lines and stems; what is set is added */
    AccidentalColumn(Clef clef, List<Box> taken) {
        this.clef = clef;
        this.taken = taken;
    }

    /** @param needed from the bottom up */
    List<Drawn> set(List<Pitch> needed) {
        List<Pitch> some = new ArrayList<>(needed);
        for (int i = 0; !some.isEmpty(); i++) {
            add(some.remove(i % 2 == 0 ? some.size() - 1 : 0));
        }
        return drawn;
    }

    private void add(Pitch pitch) {
        MusicSign sign = MusicSign.accidental(pitch.name().alteration());
        double y = clef.y(pitch.staffPosition());
        double x = -ROOM_BESIDE - sign.box().right();
        for (Box part : sign.shape()) {
            for (Box there : taken) {
                if (part.moved(0, y).isBeside(there, ROOM_ABOVE)) {
                    x = Math.min(x, there.left() - ROOM_BESIDE - part.right());
                }
            }
        }
        drawn.add(new Drawn.Sign("accidental " + pitch, words(pitch), sign, x, y));
        for (Box part : sign.shape()) {
            taken.add(part.moved(x, y));
        }
    }

    private static Phrase words(Pitch pitch) {
        return switch (pitch.name().alteration()) {
            case -3 -> Phrase.of("triple flat");
            case -2 -> Phrase.of("double flat");
            case -1 -> Phrase.of("flat");
            case 0 -> Phrase.of("natural");
            case 1 -> Phrase.of("sharp");
            case 2 -> Phrase.of("double sharp");
            default -> Phrase.of("triple sharp");
        };
    }
}
