package monochord.view.course;

import java.util.List;
import monochord.lesson.Fault;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** What was found wrong in lesson files. */
public record CheckAnswer(List<Checked> files) implements Answer {
    /**
     * One file and its faults, in the order of its lines.
     *
     * @param found whether the file is there and can be read
     * @param untried lines of blocks with Java that was not tried, because the file is not ours
     */
    public record Checked(String path, List<Fault> faults, boolean found, List<Integer> untried) {
        public Checked(String path, List<Fault> faults, boolean found) {
            this(path, faults, found, List.of());
        }
    }

    @Override
    public StyledText text(Look look) {
        // files hold English note names
        StyledText.Builder text =
                StyledText.builder(look.naming(NoteNaming.ENGLISH).reader());
        for (Checked file : files) {
            if (file.faults.isEmpty()) {
                text.line(Phrase.of("{0}: no faults.", Phrase.typed(file.path)), Style.RIGHT);
            }
            file.untried.forEach(line -> text.line(Phrase.of(
                    "{0}:{1}: this Java was not tried, for the file is not ours; --trust tries it.",
                    Phrase.typed(file.path), line)));
            file.faults.forEach(fault -> text.line(fault.phrase()));
        }
        return text.build().wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "check");
        List<Fault> faults =
                files.stream().flatMap(file -> file.faults.stream()).toList();
        json.put("files", files.stream().map(Checked::path).toList())
                .objects(
                        "faults",
                        faults,
                        (object, fault) -> object.put("path", fault.path())
                                .put("line", fault.line())
                                .put("column", fault.column())
                                .put("what", fault.what().toString())
                                .put("instead", fault.instead().toString()))
                .objects(
                        "untried",
                        files.stream().filter(file -> !file.untried.isEmpty()).toList(),
                        (object, file) -> object.put("path", file.path).numbers("lines", file.untried));
    }

    @Override
    public int status() {
        if (files.stream().anyMatch(file -> !file.found)) {
            return FAILED;
        }
        return files.stream().allMatch(file -> file.faults.isEmpty() && file.untried.isEmpty()) ? DONE : NO;
    }
}
