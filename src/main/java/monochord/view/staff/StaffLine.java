package monochord.view.staff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import monochord.theory.note.Pitch;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;

/** The notes of one staff in one line of music, with what joins them; its top line is y 0. */
final class StaffLine {
    /** How far before its head a tie from the line before begins. */
    private static final double TIE_IN = 2.2;

    private final int staff;
    private final List<PlacedColumn> columns;
    private final double right;
    private final List<Drawn> drawn = new ArrayList<>();

    /** @param right where the line ends */
    StaffLine(int staff, List<PlacedColumn> columns, double right) {
        this.staff = staff;
        this.columns = columns;
        this.right = right;
        for (PlacedColumn column : columns) {
            column.column().fixed(staff).forEach(thing -> drawn.add(thing.moved(column.x(), 0)));
        }
        beams();
        Map<StaffEvent.Voice, List<Beam.BeamedNote>> voices = voices();
        voices.values().forEach(this::ties);
        voices.values().forEach(notes -> drawn.addAll(new Tuplets(notes, drawn).drawn()));
    }

    private void beams() {
        Map<String, List<Beam.BeamedNote>> beams = new LinkedHashMap<>();
        for (PlacedColumn column : columns) {
            for (ChordOnStaff chord : column.column().chords(staff)) {
                chord.set()
                        .beam()
                        .ifPresent(beam -> beams.computeIfAbsent(column.bar() + " " + beam, one -> new ArrayList<>())
                                .add(new Beam.BeamedNote(chord, column.x())));
            }
        }
        beams.values().forEach(notes -> drawn.addAll(new Beam(notes).drawn()));
    }

    private Map<StaffEvent.Voice, List<Beam.BeamedNote>> voices() {
        Map<StaffEvent.Voice, List<Beam.BeamedNote>> voices = new HashMap<>();
        for (PlacedColumn column : columns) {
            for (ChordOnStaff chord : column.column().chords(staff)) {
                voices.computeIfAbsent(chord.set().event().voice(), voice -> new ArrayList<>())
                        .add(new Beam.BeamedNote(chord, column.x()));
            }
        }
        return voices;
    }

    private void ties(List<Beam.BeamedNote> notes) {
        for (int i = 0; i < notes.size(); i++) {
            Beam.BeamedNote note = notes.get(i);
            if (i == 0) {
                for (Pitch pitch : note.chord().set().tiedInto()) {
                    double to = note.x() + note.chord().heads().left();
                    drawn.add(tie(note.chord(), pitch, to - TIE_IN, to));
                }
            }
            if (note.chord().set().event().tied()) {
                double from = note.x() + note.chord().heads().right();
                double to = i + 1 < notes.size()
                        ? notes.get(i + 1).x()
                                + notes.get(i + 1).chord().heads().left()
                        : right;
                for (Pitch pitch : note.chord().pitches()) {
                    if (i + 1 == notes.size()
                            || notes.get(i + 1).chord().pitches().contains(pitch)) {
                        drawn.add(tie(note.chord(), pitch, from, to));
                    }
                }
            }
        }
    }

    /** A single one on the other side than the stem; of a chord the upper half of the notes above, the lower below. */
    private static Drawn tie(ChordOnStaff chord, Pitch pitch, double from, double to) {
        int place = chord.pitches().indexOf(pitch);
        boolean above = chord.set().shared() || chord.pitches().size() == 1
                ? chord.set().shared() == chord.set().stemUp()
                : 2 * place >= chord.pitches().size();
        return Tie.of(from, to, chord.clef().y(pitch.staffPosition()), above);
    }

    List<Drawn> drawn() {
        return drawn;
    }

    /** The highest thing on it, from its top line; 0 or less. */
    double highest() {
        return drawn.stream()
                .map(StaffLine::box)
                .filter(Objects::nonNull)
                .mapToDouble(Box::top)
                .reduce(0, Math::min);
    }

    double lowest() {
        return drawn.stream()
                .map(StaffLine::box)
                .filter(Objects::nonNull)
                .mapToDouble(Box::bottom)
                .reduce(Clef.LINES - 1, Math::max);
    }

    /** Around a thing; words have none. */
    static Box box(Drawn thing) {
        if (thing instanceof Drawn.Sign sign) {
            return sign.box();
        } else if (thing instanceof Drawn.Line line) {
            return line.box();
        }
        return thing instanceof Drawn.Area area ? area.box() : null;
    }
}
