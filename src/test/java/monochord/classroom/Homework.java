package monochord.classroom;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import monochord.lesson.Keys;
import monochord.lesson.LessonPart.Ask;
import monochord.practice.Question;
import monochord.practice.skill.Skills;
import monochord.theory.Key;

/** Assignments of the Thursday keyboard class, for tests. */
final class Homework {
    private static final AssignmentHead HEAD = new AssignmentHead(
            "borrowed-chords-7", "Borrowed chords", "7b", Optional.of(LocalDate.of(2026, 12, 10)), 7);

    /** Two answers to a question, no hints, verdicts after. */
    static final AssignmentTerms STRICT = new AssignmentTerms(2, false, false);

    private Homework() {}

    static Question question(String skill, String subject, String key) {
        return Skills.find(skill).orElseThrow().question(Key.parse(key), subject);
    }

    /** iv, bVI and bVII in E major: Am, C and D. */
    static Assignment borrowed() {
        return Assignment.same(
                HEAD,
                STRICT,
                "See you on Thursday.",
                List.of(
                        question("borrowed-chord", "iv", "E major"),
                        question("borrowed-chord", "bVI", "E major"),
                        question("borrowed-chord", "bVII", "E major")));
    }

    static Assignment each() {
        return Assignment.each(
                new AssignmentHead("flat-triads-8", "Triads", "", Optional.empty(), 8),
                AssignmentTerms.OPEN,
                "",
                List.of(new Ask(1, Skills.find("triad-spelling").orElseThrow(), null, Keys.parse("flats"), 4, null)));
    }

    /** The file with a code in its head, and these answers under its questions, in their order. */
    static String handedIn(Assignment assignment, String... answers) {
        StringBuilder file = new StringBuilder();
        int next = 0;
        for (String line : AssignmentWriter.text(assignment).split("\n", -1)) {
            boolean isRoom = line.equals("Answer:") && next < answers.length;
            file.append(line.equals("code:") ? "code: 7b-04" : line);
            file.append(isRoom ? " " + answers[next++] : "").append('\n');
        }
        return file.toString();
    }

    static MarkedHandIn marked(String text) {
        return marked(text, TeachersFiles.NONE);
    }

    static MarkedHandIn marked(String text, TeachersFiles teacher) {
        return Marking.mark(AssignmentReader.read("anna.md", text), "anna.md", teacher);
    }

    static List<String> faults(MarkedHandIn marked) {
        return marked.faults().stream().map(Object::toString).toList();
    }

    /** A verdict for each question, or a hyphen where nothing was written. */
    static String verdicts(MarkedHandIn marked) {
        return String.join(
                " ",
                marked.answers().stream()
                        .map(answer -> answer.last()
                                .map(one -> one.verdict().grade().toString())
                                .orElse("-"))
                        .toList());
    }
}
