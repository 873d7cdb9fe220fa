package monochord.cell;

import java.util.List;
import monochord.harmony.Music;
import monochord.text.Phrase;
import monochord.theory.Key;

/**
 * What came of a cell, as a value.
 *
 * @param parts values, prints and notices in the order in which they came
 * @param unprinted characters that were printed beyond the bound
 * @param failure what went wrong, or null
 * @param plays what is now to be played, one after the other
 * @param notRun why nothing was run at all; nothing where something was
 */
public record CellReport(List<ReportItem> parts, int unprinted, CellFailure failure, List<Play> plays, Phrase notRun) {
    /** One thing that came out. */
    public sealed interface ReportItem {}

    /** What the cell printed. */
    public record Printed(String text) implements ReportItem {}

    /** What is to be known. */
    public record Notice(Phrase said) implements ReportItem {}

    /**
     * A value.
     *
     * @param name the variable that has it, or nothing
     * @param type its class, or nothing
     * @param text what it prints, or how it would be typed
     * @param music the music that it is, or null
     */
    public record CellValue(String name, String type, String text, CellMusic music) implements ReportItem {}

    /**
     * Something that a cell wants heard.
     *
     * @param tempo beats a minute, or 0 where the cell did not say
     */
    public record Play(Music music, Key key, int tempo) {}

    public CellReport {
        parts = List.copyOf(parts);
        plays = List.copyOf(plays);
    }

    /** Nothing was run, for this reason. */
    public static CellReport notRun(Phrase why) {
        return new CellReport(List.of(), 0, null, List.of(), why);
    }
}
