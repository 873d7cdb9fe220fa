package monochord.notebook;

import java.util.ArrayList;
import java.util.List;
import monochord.text.SequenceDifference;
import monochord.text.SequenceDifference.Edit;
import monochord.text.SequenceDifference.EditKind;

/** Where two texts differ, line by line. */
public final class LineDifference {
    /** Beyond so many cells of the table everything counts as changed, so that no text costs more than a blink. */
    private static final int MOST_CELLS = 1 << 20;

    private LineDifference() {}

    /** All lines in order, those that are gone before those that are new where they meet. */
    public static List<Edit<String>> of(String before, String after) {
        List<String> old = before.lines().toList();
        List<String> now = after.lines().toList();
        return (long) (old.size() + 1) * (now.size() + 1) > MOST_CELLS
                ? replaced(old, now)
                : SequenceDifference.between(old, now);
    }

    private static List<Edit<String>> replaced(List<String> old, List<String> now) {
        List<Edit<String>> changes = new ArrayList<>();
        old.forEach(line -> changes.add(new Edit<>(EditKind.GONE, line)));
        now.forEach(line -> changes.add(new Edit<>(EditKind.NEW, line)));
        return changes;
    }
}
