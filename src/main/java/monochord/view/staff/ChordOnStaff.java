package monochord.view.staff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import monochord.text.Phrase;
import monochord.theory.note.Pitch;

/**
 * The notes of one staff that sound at once: heads, ledger lines, stem and accidentals. The left edge of the main row of
 * heads is x 0, the top line of the staff y 0.
 *
 * <p>Common practice of engraving, no source: the stem goes by the note farthest from the middle line, and down where two
 * are equally far; of two notes a step apart one moves to the other side of the stem; accidentals are set from the outside
 * in, top and bottom in turn, each as far right as there is room.
 */
final class ChordOnStaff {
    static final double STEM = 0.12;
    static final double LEDGER = 0.16;
    private static final double LEDGER_BEYOND = 0.4;
    private static final double STEM_LENGTH = 3.5;
    /** How far from the middle of a head its stem begins. */
    private static final double STEM_START = 0.168;

    private static final double ROOM_BESIDE = 0.16;
    private static final double ROOM_ABOVE = 0.08;
    private static final double MIDDLE_LINE = 2;

    private final Clef clef;
    private final NoteValue value;
    private final List<Pitch> pitches;
    private final boolean stemUp;
    private final List<Integer> rows = new ArrayList<>();
    private final List<Drawn> drawn = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();

    /**
     * @param pitches from the bottom up, at least one
     * @param needed those that need an accidental
     */
    ChordOnStaff(Clef clef, NoteValue value, List<Pitch> pitches, List<Pitch> needed) {
        this.clef = clef;
        this.value = value;
        this.pitches = pitches.stream()
                .sorted((one, other) -> Integer.compare(one.staffPosition(), other.staffPosition()))
                .toList();
        this.stemUp = clef.middle() - lowest() > highest() - clef.middle();
        setRows();
        heads();
        ledgers(highest(), clef.top(), 2);
        ledgers(lowest(), clef.bottom(), -2);
        if (value.hasStem()) {
            stem();
        }
        outsideIn(needed).forEach(this::accidental);
    }

    private int lowest() {
        return pitches.get(0).staffPosition();
    }

    private int highest() {
        return pitches.get(pitches.size() - 1).staffPosition();
    }

    /** 0 for heads in the main row, 1 for those across the stem, 2 where even that place is taken. */
    private void setRows() {
        Map<Integer, Integer> set = new HashMap<>();
        for (int i = 0; i < pitches.size(); i++) {
            int note = stemUp ? i : pitches.size() - 1 - i;
            int row = 0;
            while (isTaken(set, row, pitches.get(note).staffPosition())) {
                row++;
            }
            set.put(note, row);
        }
        for (int note = 0; note < pitches.size(); note++) {
            rows.add(set.get(note));
        }
    }

    private boolean isTaken(Map<Integer, Integer> set, int row, int height) {
        return set.entrySet().stream()
                .anyMatch(one -> one.getValue() == row
                        && Math.abs(pitches.get(one.getKey()).staffPosition() - height) <= 1);
    }

    private double x(int note) {
        double across = value.head().box().width() - STEM;
        return rows.get(note) * (stemUp ? across : -across);
    }

    private void heads() {
        for (int note = 0; note < pitches.size(); note++) {
            Pitch pitch = pitches.get(note);
            Drawn.Sign head = new Drawn.Sign(
                    "note " + pitch, Phrase.of("{0}", pitch), value.head(), x(note), clef.y(pitch.staffPosition()));
            drawn.add(head);
            taken.add(head.box());
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
                    right = Math.max(right, x(note) + value.head().box().width());
                }
            }
            double y = clef.y(height);
            Box box = new Box(left - LEDGER_BEYOND, y - LEDGER / 2, right + LEDGER_BEYOND, y + LEDGER / 2);
            drawn.add(new Drawn.Line("ledger", box));
            taken.add(box);
        }
    }

    /** Three and a half spaces beyond the end note, and at least as far as the middle line. */
    private void stem() {
        double top = clef.y(highest());
        double bottom = clef.y(lowest());
        double x = stemUp ? value.head().box().width() - STEM : 0;
        Box box = stemUp
                ? new Box(x, Math.min(top - STEM_LENGTH, MIDDLE_LINE), x + STEM, bottom - STEM_START)
                : new Box(x, top + STEM_START, x + STEM, Math.max(bottom + STEM_LENGTH, MIDDLE_LINE));
        drawn.add(new Drawn.Line("stem", box));
        taken.add(box);
    }

    private List<Pitch> outsideIn(List<Pitch> needed) {
        List<Pitch> some =
                new ArrayList<>(pitches.stream().filter(needed::contains).toList());
        List<Pitch> ordered = new ArrayList<>();
        while (!some.isEmpty()) {
            boolean fromTop = ordered.size() % 2 == 0;
            ordered.add(some.remove(fromTop ? some.size() - 1 : 0));
        }
        return ordered;
    }

    private void accidental(Pitch pitch) {
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
        Drawn.Sign drawnSign = new Drawn.Sign("accidental " + pitch, words(pitch), sign, x, y);
        drawn.add(drawnSign);
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

    List<Drawn> drawn() {
        return drawn;
    }

    /** Around all of it. */
    Box box() {
        return taken.stream().reduce(Box::around).orElseThrow();
    }
}
