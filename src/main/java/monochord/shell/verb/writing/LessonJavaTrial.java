package monochord.shell.verb.writing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.cell.Cell;
import monochord.file.Digest;
import monochord.lesson.Fault;
import monochord.lesson.LessonPart;
import monochord.lesson.Reading;
import monochord.lesson.read.Faults;
import monochord.lesson.read.Source;
import monochord.shell.sitting.CellAnswers;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Look;

/** The Java of a lesson, tried in a cell of its own, one block after the other. */
final class LessonJavaTrial {
    private LessonJavaTrial() {}

    static List<LessonPart.Code> code(Reading reading) {
        return reading.lesson().stream()
                .flatMap(lesson -> lesson.parts().stream())
                .filter(LessonPart.Code.class::isInstance)
                .map(LessonPart.Code.class::cast)
                .toList();
    }

    /** Whether it is ours, or somebody has said yes to it; in a sitting that is closed off a yes is nobody's. */
    static boolean mayRun(Path file, boolean saidYes, Sitting sitting) {
        String digest = new Source(new Faults(""), Source.MOST_BYTES)
                .bytes(file)
                .map(Digest::of)
                .orElse("");
        return saidYes && sitting.outside().seal().isEmpty()
                || sitting.outside().trust().isTrusted(file, digest);
    }

    /** The faults of the lesson, those of its Java among them. */
    static List<Fault> faults(String path, Reading reading, Sitting sitting) {
        List<LessonPart.Code> code = code(reading);
        List<Fault> faults = new ArrayList<>(reading.faults());
        if (!code.isEmpty()) {
            try (Cell cell = sitting.cells().newCell()) {
                code.forEach(block -> tried(path, block, cell, sitting, faults));
            }
        }
        faults.sort(Fault.IN_ORDER);
        return faults;
    }

    private static void tried(String path, LessonPart.Code block, Cell cell, Sitting sitting, List<Fault> faults) {
        if (cell.equals(Cell.none())) {
            return;
        }
        Answer answer = CellAnswers.of(cell.run(block.text(), sitting.key()), block.text());
        if (answer.status() != Answer.DONE) {
            String said = answer.text(Look.ofPipe()).plain();
            faults.add(new Fault(
                    path,
                    block.line(),
                    1,
                    Phrase.of("this Java fails: {0}", Phrase.typed(said)),
                    Phrase.of("try it at the prompt")));
        }
    }
}
