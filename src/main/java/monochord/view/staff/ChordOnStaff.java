package monochord.view.staff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.note.Pitch;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.MusicSign;

/**
 * What one voice sounds at once on a staff: heads, ledger lines, dots, stem and flag; or a slash in their place. The left
 * edge of the main row of heads is x 0, the top line of the staff y 0.
 *
 * <p>Common practice of engraving, no source: of two notes a step apart one moves to the other side of the stem; a stem is
 * three and a half spaces long and reaches at least the middle line; a dot stands in a space.
 */
final class ChordOnStaff {
    static final double STEM = 0.12;
    static final double LEDGER = 0.16;
    static final double STEM_LENGTH = 3.5;
    static final double MIDDLE_LINE = 2;
    private static final double LEDGER_BEYOND = 0.4;
    /** How far from the middle of a head its stem begins. */
    private static final double STEM_START = 0.168;
    /** How much longer a stem is for each flag beyond two. */
    private static final double LONGER = 0.75;

    private static final double DOT_APART = 0.25;

    private final Clef clef;
    private final SetEvent set;
    private final NoteValue value;
    private final MusicSign head;
    private final List<Pitch> pitches;
    private final double shift;
    private final List<Integer> rows = new ArrayList<>();
    private final List<Drawn> drawn = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();
    private Box heads;

    /** @param shift how far all of it is moved, so that another voice has its place */
    ChordOnStaff(Clef clef, SetEvent set, double shift) {
        this.clef = clef;
        this.set = set;
        this.shift = shift;
        this.value = set.event().length().value();
        this.head = set.event().pitches().isEmpty() ? value.slash() : value.head();
        this.pitches = set.event().pitches().stream()
                .sorted((one, other) -> Integer.compare(one.staffPosition(), other.staffPosition()))
                .toList();
        if (pitches.isEmpty()) {
            slash();
        } else {
            setRows();
            setHeads();
            ledgers(pitches.get(pitches.size() - 1).staffPosition(), clef.top(), 2);
            ledgers(pitches.get(0).staffPosition(), clef.bottom(), -2);
        }
        if (set.event().hasStem()) {
            stem();
        }
        dots();
    }

    SetEvent set() {
        return set;
    }

    List<Pitch> pitches() {
        return pitches;
    }

    Clef clef() {
        return clef;
    }

    private void slash() {
        Drawn.Sign sign = new Drawn.Sign("slash", Phrase.of("play on, one beat a slash"), head, shift, MIDDLE_LINE);
        drawn.add(sign);
        heads = sign.box();
        taken.add(heads);
    }

    /** 0 for heads in the main row, 1 for those across the stem, 2 where even that place is taken. */
    private void setRows() {
        Map<Integer, Integer> known = new HashMap<>();
        for (int i = 0; i < pitches.size(); i++) {
            int note = set.stemUp() ? i : pitches.size() - 1 - i;
            int row = 0;
            while (isTaken(known, row, pitches.get(note).staffPosition())) {
                row++;
            }
            known.put(note, row);
        }
        for (int note = 0; note < pitches.size(); note++) {
            rows.add(known.get(note));
        }
    }

    private boolean isTaken(Map<Integer, Integer> known, int row, int height) {
        return known.entrySet().stream()
                .anyMatch(one -> one.getValue() == row
                        && Math.abs(pitches.get(one.getKey()).staffPosition() - height) <= 1);
    }

    /** The left edge of a head. */
    double x(int note) {
        double across = head.box().width() - STEM;
        return shift + rows.get(note) * (set.stemUp() ? across : -across);
    }

    private void setHeads() {
        for (int note = 0; note < pitches.size(); note++) {
            Pitch pitch = pitches.get(note);
            Drawn.Sign sign = new Drawn.Sign(
                    "note " + pitch, Phrase.of("{0}", pitch), head, x(note), clef.y(pitch.staffPosition()));
            drawn.add(sign);
            taken.add(sign.box());
            heads = heads == null ? sign.box() : heads.around(sign.box());
        }
    }

    /** A line at every other height from the staff to the outermost note, as long as the heads from there on ask for. */
    private void ledgers(int outermost, int edge, int way) {
        for (int height = edge + way; (outermost - height) * way >= 0; height += way) {
            double left = Double.MAX_VALUE;
            double right = -Double.MAX_VALUE;
            for (int note = 0; note < pitches.size(); note++) {
                if ((pitches.get(note).staffPosition() - height) * way >= 0) {
                    left = Math.min(left, x(note));
                    right = Math.max(right, x(note) + head.box().width());
                }
            }
            double y = clef.y(height);
            Box box = new Box(left - LEDGER_BEYOND, y - LEDGER / 2, right + LEDGER_BEYOND, y + LEDGER / 2);
            drawn.add(new Drawn.Line("ledger", box));
            taken.add(box);
        }
    }

    private double highest() {
        return pitches.isEmpty()
                ? MIDDLE_LINE
                : clef.y(pitches.get(pitches.size() - 1).staffPosition());
    }

    private double lowest() {
        return pitches.isEmpty() ? MIDDLE_LINE : clef.y(pitches.get(0).staffPosition());
    }

    /** The left edge of its stem. */
    double stemX() {
        return set.stemUp() ? shift + head.box().width() - STEM : shift;
    }

    /** Where the stem begins, at the note farthest from its end. */
    double stemStart() {
        double in = pitches.isEmpty() ? head.box().bottom() : STEM_START;
        return set.stemUp() ? lowest() - in : highest() + in;
    }

    /** The height of the note from which its length counts. */
    double nearest() {
        return set.stemUp() ? highest() : lowest();
    }

    private void stem() {
        double length = STEM_LENGTH + Math.max(0, value.flags() - 2) * LONGER;
        double end =
                set.stemUp() ? Math.min(nearest() - length, MIDDLE_LINE) : Math.max(nearest() + length, MIDDLE_LINE);
        Box box = stem(end);
        taken.add(box);
        if (!set.isBeamed()) {
            drawn.add(new Drawn.Line("stem", box));
            flag(end).ifPresent(flag -> {
                drawn.add(flag);
                taken.add(flag.box());
            });
        }
    }

    /** As far as an end. */
    Box stem(double end) {
        double top = Math.min(end, stemStart());
        double bottom = Math.max(end, stemStart());
        return new Box(stemX(), top, stemX() + STEM, bottom);
    }

    private Optional<Drawn.Sign> flag(double end) {
        return value.flag(set.stemUp()).map(sign -> new Drawn.Sign("flag", Phrase.of("flag"), sign, stemX(), end));
    }

    private void dots() {
        MusicSign sign = MusicSign.named("augmentationDot");
        List<Double> heights = dotHeights();
        for (int dot = 0; dot < set.event().length().dots(); dot++) {
            double x = heads.right() + DOT_APART;
            for (double y : heights) {
                x = Math.max(x, clear(sign.box().moved(x, y)));
            }
            for (double y : heights) {
                Drawn.Sign drawnDot = new Drawn.Sign("dot", Phrase.of("dotted"), sign, x, y);
                drawn.add(drawnDot);
                taken.add(drawnDot.box());
            }
        }
    }

    /** The left edge that a box must have to touch nothing to its right. */
    private double clear(Box box) {
        double left = box.left();
        for (Box there : taken) {
            if (box.isBeside(there, 0) && there.right() + DOT_APART > left) {
                left = there.right() + DOT_APART;
            }
        }
        return left;
    }

    /** In the space of each note, or the one above its line; where that is taken, below. */
    private List<Double> dotHeights() {
        List<Double> heights = new ArrayList<>();
        for (int note = pitches.size() - 1; note >= 0; note--) {
            double y = clef.y(pitches.get(note).staffPosition());
            boolean onLine = Math.abs(y - Math.rint(y)) < 0.1;
            double above = onLine ? y - 0.5 : y;
            heights.add(heights.contains(above) ? above + 1 : above);
        }
        return pitches.isEmpty()
                ? List.of(MIDDLE_LINE - 0.5)
                : heights.stream().distinct().toList();
    }

    List<Drawn> drawn() {
        return drawn;
    }

    /** What other things have to keep off. */
    List<Box> taken() {
        return taken;
    }

    /** Around its heads. */
    Box heads() {
        return heads;
    }
}
