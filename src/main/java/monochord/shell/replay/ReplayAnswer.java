package monochord.shell.replay;

import java.util.ArrayList;
import java.util.List;
import monochord.lesson.Fault;
import monochord.notebook.LineDifference;
import monochord.text.Phrase;
import monochord.text.SequenceDifference.Edit;
import monochord.text.SequenceDifference.EditKind;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** Whether notebooks hold. */
public record ReplayAnswer(List<ReplayedFile> files) implements Answer {
    private static final int MOST_TOLD = 20;
    private static final int MOST_LINES = 12;

    /**
     * What came of one file.
     *
     * @param faults why it could not be typed, if it could not
     * @param replayed null if it could not
     * @param isAccepted whether the file was rewritten with the answers of now
     * @param trouble why it could not be typed or rewritten after all; empty for nothing
     */
    public record ReplayedFile(String path, List<Fault> faults, Replayed replayed, boolean isAccepted, Phrase trouble) {
        boolean holds() {
            return replayed != null && trouble.isEmpty() && replayed.skipped().isEmpty() && settled();
        }

        private boolean settled() {
            return isAccepted || replayed.differences().isEmpty();
        }

        List<ReplayTurn> differences() {
            return replayed == null ? List.of() : replayed.differences();
        }

        List<ReplayTurn> skipped() {
            return replayed == null ? List.of() : replayed.skipped();
        }
    }

    public ReplayAnswer {
        files = List.copyOf(files);
    }

    @Override
    public StyledText text(Look look) {
        // A file holds English names, whoever reads of its faults.
        StyledText.Builder text =
                StyledText.builder(look.naming(NoteNaming.ENGLISH).reader());
        files.forEach(file -> tell(file, text));
        return text.build().wrapped(look.width());
    }

    private static void tell(ReplayedFile file, StyledText.Builder text) {
        Phrase path = Phrase.typed(file.path);
        file.faults.forEach(fault -> text.line(fault.phrase()));
        if (!file.trouble.isEmpty()) {
            text.line(file.trouble);
        }
        if (file.replayed == null) {
            return;
        }
        int lines = file.replayed.turns().size();
        if (file.holds() && !file.isAccepted) {
            text.line(
                    Phrase.counted(lines, "{0}: holds, {1} line.", "{0}: holds, {1} lines.", path, lines), Style.RIGHT);
        }
        int skipped = file.skipped().size();
        if (skipped > 0) {
            text.line(Phrase.counted(
                            skipped,
                            "{0}: {1} line of Java not run, at line {2}.",
                            "{0}: {1} lines of Java not run, at line {2}.",
                            path,
                            skipped,
                            file.skipped().get(0).written().line())
                    .then(Phrase.sentence("It is not ours; --trust runs it.")));
        }
        if (!file.differences().isEmpty()) {
            differences(file, text);
        }
    }

    private static void differences(ReplayedFile file, StyledText.Builder text) {
        List<ReplayTurn> differences = file.differences();
        text.line(changed(file), Style.NEARLY);
        for (ReplayTurn turn : differences.subList(0, Math.min(MOST_TOLD, differences.size()))) {
            text.line(Phrase.of(
                    "{0}:{1}: {2}",
                    Phrase.typed(file.path),
                    turn.written().line(),
                    Phrase.typed(turn.written().typed().get(0))));
            changes(turn, text);
        }
        if (differences.size() > MOST_TOLD) {
            text.line(Phrase.of("… and {0} more.", differences.size() - MOST_TOLD));
        }
    }

    private static Phrase changed(ReplayedFile file) {
        int lines = file.replayed.turns().size();
        Phrase path = Phrase.typed(file.path);
        int changed = file.differences().size();
        return file.isAccepted
                ? Phrase.counted(
                        lines,
                        "{0}: {1} of {2} line rewritten.",
                        "{0}: {1} of {2} lines rewritten.",
                        path,
                        changed,
                        lines)
                : Phrase.counted(
                        lines,
                        "{0}: {1} of {2} line answered otherwise.",
                        "{0}: {1} of {2} lines answered otherwise.",
                        path,
                        changed,
                        lines);
    }

    private static void changes(ReplayTurn turn, StyledText.Builder text) {
        List<Edit<String>> changes = changes(turn);
        for (Edit<String> change : changes.subList(0, Math.min(MOST_LINES, changes.size()))) {
            boolean gone = change.fate() == EditKind.GONE;
            text.line(
                    Phrase.of(gone ? "  - {0}" : "  + {0}", Phrase.typed(change.element())),
                    gone ? Style.WRONG : Style.RIGHT);
        }
        if (changes.size() > MOST_LINES) {
            text.line(Phrase.of("  … and {0} more lines.", changes.size() - MOST_LINES));
        }
    }

    private static List<Edit<String>> changes(ReplayTurn turn) {
        List<Edit<String>> changes =
                new ArrayList<>(LineDifference.of(turn.written().answer(), turn.text()));
        changes.removeIf(change -> change.fate() == EditKind.KEPT);
        return changes;
    }

    @Override
    public void json(Json json) {
        json.put("kind", "replay")
                .objects(
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
                                .put("trouble", file.trouble.isEmpty() ? null : file.trouble.toString()));
    }

    private static void difference(Json object, ReplayTurn turn) {
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
        return files.stream().allMatch(ReplayedFile::holds) ? DONE : NO;
    }
}
