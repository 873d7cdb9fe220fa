package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.course.JudgedAnswer;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import monochord.theory.note.NoteNaming;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Answers as people type them, in the note names of three countries, and what a teacher would say.
 *
 * <p>Source: common practice of teaching, no source; the table says in its head how it is read.
 */
class TypedAnswersTest {
    private static final Pattern QUESTION = Pattern.compile("@ (\\S+) of (.+) in (\\S+)( german| latin)?");
    private static final int GRADE = 1;
    private static final int MISCONCEPTION = 2;
    private static final int SAID = 3;

    private record Row(Question question, NoteNaming naming, String[] cells) {
        private Verdict verdict() {
            return JudgedAnswer.of(cells[0], question, naming).verdict();
        }

        /** What is not as the table has it. */
        Optional<String> fault() {
            Verdict verdict = verdict();
            boolean held = isGrade(verdict.grade())
                    && isFromMisconception(verdict)
                    && isSaid(verdict.message().toString());
            return held
                    ? Optional.empty()
                    : Optional.of(question + ", " + String.join(" | ", cells) + "  >>  " + told(verdict));
        }

        private static String told(Verdict verdict) {
            return verdict.grade() + ", " + verdict.misconception() + ", " + verdict.message();
        }

        private boolean isGrade(Grade grade) {
            return switch (cells[GRADE]) {
                case "yes" -> grade.isRight();
                case "no" -> grade == Grade.NEARLY || grade == Grade.WRONG;
                default -> grade.toString().equals(cells[GRADE]);
            };
        }

        private boolean isFromMisconception(Verdict verdict) {
            String due = cell(MISCONCEPTION);
            return due.isEmpty() || due.equals(verdict.misconception());
        }

        private boolean isSaid(String message) {
            String part = cell(SAID);
            return part.startsWith("~") ? !message.contains(part.substring(1)) : message.contains(part);
        }

        private String cell(int at) {
            return at < cells.length ? cells[at] : "";
        }
    }

    private static List<Row> rows(String table) throws IOException {
        List<Row> rows = new ArrayList<>();
        Question question = null;
        NoteNaming naming = NoteNaming.ENGLISH;
        for (String line : lines(table)) {
            Matcher head = QUESTION.matcher(line);
            if (head.matches()) {
                question = Skills.find(head.group(1)).orElseThrow().question(Key.parse(head.group(3)), head.group(2));
                naming = head.group(4) == null
                        ? NoteNaming.ENGLISH
                        : NoteNaming.valueOf(head.group(4).strip().toUpperCase(Locale.ROOT));
            } else if (!line.isBlank() && !line.startsWith("# ")) {
                rows.add(new Row(question, naming, line.strip().split(" *\\| *")));
            }
        }
        return rows;
    }

    private static List<String> lines(String table) throws IOException {
        try (InputStream file = TypedAnswersTest.class.getResourceAsStream(table)) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        }
    }

    @ParameterizedTest(name = "at least {1} answers of {0}")
    @CsvSource({"typed-answers.txt, 600", "strangers-answers.txt, 150"})
    void eachIsToldWhatATeacherWouldSay(String table, int least) throws IOException {
        List<Row> rows = rows(table);
        assertTrue(rows.size() >= least, () -> "only " + rows.size() + " rows");
        assertEquals(
                "",
                String.join(
                        "\n", rows.stream().flatMap(row -> row.fault().stream()).toList()));
    }
}
