package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.note.Pitch;

/** A column with its notes set, and the room it needs. */
record SetColumn(StaffColumn column, Optional<ChordOnStaff> upper, Optional<ChordOnStaff> lower) {
    private static final double GAP = 0.7;
    private static final double BAR_LINE = 1.4;

    static List<SetColumn> of(StaffMusic music) {
        AccidentalMemory upper = new AccidentalMemory(music.signature());
        AccidentalMemory lower = new AccidentalMemory(music.signature());
        List<SetColumn> set = new ArrayList<>();
        for (StaffColumn column : music.columns()) {
            set.add(new SetColumn(
                    column,
                    chord(Clef.TREBLE, column.value(), column.upper(), upper),
                    chord(Clef.BASS, column.value(), column.lower(), lower)));
            if (column.endsBar()) {
                upper.barLine();
                lower.barLine();
            }
        }
        return set;
    }

    private static Optional<ChordOnStaff> chord(
            Clef clef, NoteValue value, List<Pitch> pitches, AccidentalMemory memory) {
        return pitches.isEmpty()
                ? Optional.empty()
                : Optional.of(new ChordOnStaff(clef, value, pitches, memory.needed(pitches)));
    }

    private Box box() {
        Box head = column.value().head().box();
        Box first = upper.map(ChordOnStaff::box).orElse(head);
        return first.around(lower.map(ChordOnStaff::box).orElse(head));
    }

    /** How far what it holds reaches to the left of its heads. */
    double left() {
        return Math.max(0, -box().left());
    }

    /** From the leftmost sign to where the next column may begin, with its bar line. */
    double width() {
        double right = Math.max(box().right() + GAP, column.value().room());
        double words = Math.max(TextWidth.of(column.above()), TextWidth.of(column.below())) + GAP;
        return left() + Math.max(right, words) + (column.endsBar() ? BAR_LINE : 0);
    }

    Phrase above() {
        return column.above();
    }

    Phrase below() {
        return column.below();
    }
}
