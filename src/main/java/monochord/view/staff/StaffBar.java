package monochord.view.staff;

import java.util.List;
import java.util.Optional;
import monochord.song.SongMetre;
import monochord.text.Phrase;

/**
 * A bar, or where there are no bar lines what may not be torn apart.
 *
 * @param before what is written ahead of its first column
 * @param end the line behind it
 * @param over words over its first column: the name of a section, a cue; perhaps nothing
 * @param ending the numbers of the ending that begins with it, or nothing
 * @param endsLine whether the next bar begins a line
 * @param number by which it is called, from 1; 0 where it has none, as a pick-up
 */
public record StaffBar(
        List<StaffColumn> columns,
        Before before,
        BarLine end,
        Phrase over,
        String ending,
        boolean endsLine,
        int number) {
    /** What comes behind a bar. */
    public enum BarLine {
        NONE,
        SINGLE,
        DOUBLE,
        FINAL,
        REPEAT
    }

    /**
     * What changes with a bar.
     *
     * @param opens whether a repeat begins with it
     * @param signature another key, in sharps
     * @param metre another metre
     * @param clef another clef on the upper staff
     */
    public record Before(boolean opens, Optional<Integer> signature, Optional<SongMetre> metre, Optional<Clef> clef) {
        public static final Before NOTHING = new Before(false, Optional.empty(), Optional.empty(), Optional.empty());

        /** A repeat begins. */
        public static final Before REPEAT = new Before(true, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public StaffBar {
        columns = List.copyOf(columns);
    }

    public static StaffBar of(List<StaffColumn> columns, BarLine end) {
        return new StaffBar(columns, Before.NOTHING, end, Phrase.NOTHING, "", false, 0);
    }

    public StaffBar with(Before changes) {
        return new StaffBar(columns, changes, end, over, ending, endsLine, number);
    }

    public StaffBar with(BarLine line) {
        return new StaffBar(columns, before, line, over, ending, endsLine, number);
    }

    /** With words over it. */
    public StaffBar named(Phrase words) {
        return new StaffBar(columns, before, end, words, ending, endsLine, number);
    }

    public StaffBar inEnding(String numbers) {
        return new StaffBar(columns, before, end, over, numbers, endsLine, number);
    }

    /** The last of its line. */
    public StaffBar endingLine() {
        return new StaffBar(columns, before, end, over, ending, true, number);
    }

    /** Called by this number. */
    public StaffBar numbered(int count) {
        return new StaffBar(columns, before, end, over, ending, endsLine, count);
    }
}
