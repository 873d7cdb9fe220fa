package monochord.view.staff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import monochord.text.Reader;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import monochord.view.drawn.MusicSign;

/**
 * A bar with its columns set.
 *
 * @param state what holds in it, its own changes included
 * @param widths of the columns
 */
record SetBar(StaffBar bar, StaffMusic.State state, List<SetColumn> columns, List<Double> widths) {
    static final double BAR_LINE = 0.16;
    static final double THICK = 0.5;
    static final double LINES_APART = 0.4;
    static final double DOTS = 0.9;
    private static final double BEFORE_LINE = 0.6;
    private static final double BEHIND_LINE = 0.8;
    private static final double SIGN_APART = 0.1;
    private static final double CLEF_CHANGE = 3;
    private static final double METRE_CHANGE = 3;
    private static final double REPEAT = 2.2;
    private static final double BEHIND_SIGNS = 1;

    static List<SetBar> of(StaffMusic music, Reader reader) {
        StaffMusic.State state = music.opening();
        List<AccidentalMemory> memories = List.of();
        Map<StaffEvent.Voice, List<Pitch>> tied = new HashMap<>();
        List<SetBar> bars = new ArrayList<>();
        for (StaffBar bar : music.bars()) {
            state = state.after(bar.before());
            if (memories.isEmpty() || bar.before().signature().isPresent()) {
                int signs = state.signature();
                memories = music.clefs().stream()
                        .map(clef -> new AccidentalMemory(signs))
                        .toList();
            }
            bars.add(of(bar, state, memories, new VoiceSetting(state, tied), reader));
            if (bar.end() != StaffBar.BarLine.NONE) {
                memories.forEach(AccidentalMemory::barLine);
            }
        }
        return bars;
    }

    private static SetBar of(
            StaffBar bar, StaffMusic.State state, List<AccidentalMemory> memories, VoiceSetting voices, Reader reader) {
        List<List<SetEvent>> events = voices.of(bar);
        List<SetColumn> columns = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            SetColumn column = new SetColumn(bar.columns().get(i), events.get(i), state, memories, reader);
            columns.add(column);
            widths.add(column.width(room(bar, i)));
        }
        return new SetBar(bar, state, columns, widths);
    }

    /** By the time to the next column; the last of a bar, and where no time is told, by its own length. */
    private static double room(StaffBar bar, int index) {
        StaffColumn column = bar.columns().get(index);
        NoteLength own = column.events().stream()
                .map(StaffEvent::length)
                .min((one, other) -> one.beats().compareTo(other.beats()))
                .orElse(NoteLength.of(NoteValue.FREE));
        if (index + 1 >= bar.columns().size()
                || bar.columns().get(index + 1).at().compareTo(column.at()) <= 0) {
            return own.room();
        }
        Beats next = bar.columns().get(index + 1).at().minus(column.at());
        return NoteLength.room(next);
    }

    /** The room for what is written before its first column where it begins a line, or does not. */
    double before(boolean beginsLine) {
        StaffBar.Before changes = bar.before();
        double room = changes.opens() ? REPEAT : 0;
        if (!beginsLine) {
            room += changes.clef().isPresent() ? CLEF_CHANGE : 0;
            room += changes.signature().map(SetBar::signatureRoom).orElse(0.0);
        }
        return room + (changes.metre().isPresent() ? METRE_CHANGE : 0);
    }

    /** The signs of a key and the room behind them; of none, that of one natural. */
    static double signatureRoom(int signs) {
        return signatureWidth(signs) + BEHIND_SIGNS;
    }

    static double signatureWidth(int signs) {
        return signs == 0
                ? 0
                : Math.abs(signs)
                        * (MusicSign.accidental(Integer.signum(signs)).box().right() + SIGN_APART);
    }

    double columnsWidth() {
        return widths.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** From behind its last column to the right edge of its line. */
    double lineRoom() {
        return switch (bar.end()) {
            case NONE -> 0;
            case SINGLE -> BEFORE_LINE + BAR_LINE;
            case DOUBLE -> BEFORE_LINE + BAR_LINE + LINES_APART + BAR_LINE;
            case FINAL -> BEFORE_LINE + BAR_LINE + LINES_APART + THICK;
            case REPEAT -> BEFORE_LINE + DOTS + BAR_LINE + LINES_APART + THICK;
        };
    }

    double behindLine() {
        return bar.end() == StaffBar.BarLine.NONE ? 0 : BEHIND_LINE;
    }

    /** As wide as it is within a line, or at its start. */
    double width(boolean beginsLine) {
        return before(beginsLine) + columnsWidth() + lineRoom() + behindLine();
    }
}
