package monochord.shell.replay;

import java.util.ArrayList;
import java.util.List;
import monochord.lesson.Fault;
import monochord.notebook.LineDifference;
import monochord.text.SequenceDifference.Change;
import monochord.text.SequenceDifference.Fate;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** Whether notebooks hold. */
public record ReplayAnswer(List<Played> files) implements Answer {
    private static final int MOST_TOLD = 20;
    private static final int MOST_LINES = 12;

    /**
     * What came of one file.
     *
     * @param faults why it could not be typed, if it could not
     * @param replayed null if it could not
     * @param isAccepted whether the file was rewritten with the answers of now
     * @param trouble why it could not be typed or rewritten after all, or nothing
     */
    public record Played(String path, List<Fault> faults, Replayed replayed, boolean isAccepted, String trouble) {
        boolean holds() {
            return replayed != null && trouble.isEmpty() && replayed.skipped().isEmpty() && settled();
        }

        private boolean settled() {
            return isAccepted || replayed.differences().isEmpty();
        }

        List<Turn> differences() {
            return replayed == null ? List.of() : replayed.differences();
        }

        List<Turn> skipped() {
            return replayed == null ? List.of() : replayed.skipped();
        }
    }

    public ReplayAnswer {
        files = List.copyOf(files);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        files.forEach(file -> tell(file, text));
        return text.build().in(look.signs()).wrapped(look.width());
    }

    private static void tell(Played file, StyledText.Builder text) {
        file.faults.forEach(fault -> text.line(fault.toString()));
        if (!file.trouble.isEmpty()) {
            text.line(file.trouble);
        }
        if (file.replayed == null) {
            return;
        }
        int lines = file.replayed.turns().size();
        if (file.holds() && !file.isAccepted) {
            text.line(file.path + ": holds, " + counted(lines, "line") + ".", Style.RIGHT);
        }
        if (!file.skipped().isEmpty()) {
            text.line(file.path + ": " + counted(file.skipped().size(), "line") + " of Java not run, at line "
                    + file.skipped().get(0).written().line() + ". It is not ours; --trust runs it.");
        }
        if (!file.differences().isEmpty()) {
            differences(file, lines, text);
        }
    }

    private static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    private static void differences(Played file, int lines, StyledText.Builder text) {
        List<Turn> differences = file.differences();
        String what = file.isAccepted ? " rewritten." : " answered otherwise.";
        text.line(file.path + ": " + differences.size() + " of " + counted(lines, "line") + what, Style.NEARLY);
        for (Turn turn : differences.subList(0, Math.min(MOST_TOLD, differences.size()))) {
            text.line(file.path + ":" + turn.written().line() + ": "
                    + turn.written().typed().get(0));
            changes(turn, text);
        }
        if (differences.size() > MOST_TOLD) {
            text.line("… and " + (differences.size() - MOST_TOLD) + " more.");
        }
    }

    private static void changes(Turn turn, StyledText.Builder text) {
        List<Change<String>> changes = changes(turn);
        for (Change<String> change : changes.subList(0, Math.min(MOST_LINES, changes.size()))) {
            boolean gone = change.fate() == Fate.GONE;
            text.line((gone ? "  - " : "  + ") + change.element(), gone ? Style.WRONG : Style.RIGHT);
        }
        if (changes.size() > MOST_LINES) {
            text.line("  … and " + (changes.size() - MOST_LINES) + " more lines.");
        }
    }

    private static List<Change<String>> changes(Turn turn) {
        List<Change<String>> changes =
                new ArrayList<>(LineDifference.of(turn.written().answer(), turn.text()));
        changes.removeIf(change -> change.fate() == Fate.KEPT);
        return changes;
    }

    @Override
    public void json(Json json) {
        json.objects(
                "files",
                files,
                (object, file) -> object.put("path", file.path)
                        .put("holds", file.holds())
                        .put(
                                "lines",
                                file.replayed == null
                                        ? 0
                                        : file.replayed.turns().size())
                        .objects("differences", file.differences(), ReplayAnswer::difference)
                        .numbers(
                                "skipped",
                                file.skipped().stream()
                                        .map(turn -> turn.written().line())
                                        .toList())
                        .put("accepted", file.isAccepted)
                        .put("faults", file.faults)
                        .put("trouble", file.trouble.isEmpty() ? null : file.trouble));
    }

    private static void difference(Json object, Turn turn) {
        object.put("line", turn.written().line())
                .put("typed", turn.written().text())
                .put("written", turn.written().answer())
                .put("now", turn.text());
    }

    @Override
    public int status() {
        if (files.stream().anyMatch(file -> file.replayed == null || !file.trouble.isEmpty())) {
            return FAILED;
        }
        return files.stream().allMatch(Played::holds) ? DONE : NO;
    }
}
