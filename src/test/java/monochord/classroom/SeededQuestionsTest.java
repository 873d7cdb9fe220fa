package monochord.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.lesson.Keys;
import monochord.lesson.LessonPart.Ask;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;

/**
 * Which question a seed stands for, in every skill: what is in an assignment that was given out must be asked by a later
 * version, too. A row that changes is a break with all assignments that are out; {@code -Dseeds.accept=true} writes it.
 */
class SeededQuestionsTest {
    private static final Path ROWS = Path.of("src/test/resources/monochord/classroom/seeded-questions.txt");
    private static final List<Long> SEEDS = List.of(0L, 7L, -3_000_000_000L, 4_711L);

    private static List<String> rows() {
        List<String> rows = new ArrayList<>();
        for (Skill skill : Skills.all()) {
            List<Key> keys = skill.keys();
            for (int i = 0; i < SEEDS.size(); i++) {
                Key key = keys.get(i * (keys.size() - 1) / (SEEDS.size() - 1));
                rows.add(row(skill.question(key, SEEDS.get(i))));
            }
            Ask ask = new Ask(1, skill, null, Keys.parse("easy"), 3, null);
            Assignment.drawn(List.of(ask), 7).forEach(question -> rows.add(row(question)));
        }
        Homework.each()
                .forPupil(new PupilCode("7b-04"))
                .questions()
                .forEach(one -> rows.add("7b-04 | " + row(one.question().orElseThrow())));
        return rows;
    }

    private static String row(Question question) {
        return String.join(
                " | ",
                question.skillId(),
                question.key().toString(),
                Long.toString(question.seed()),
                question.subject(),
                question.prompt().toString(),
                question.expected());
    }

    @Test
    void theSameSeedAsksTheSameInEveryVersion() throws IOException {
        List<String> rows = rows();
        if (Boolean.getBoolean("seeds.accept")) {
            Files.createDirectories(ROWS.getParent());
            Files.write(ROWS, rows);
        }
        assertEquals(String.join("\n", Files.readAllLines(ROWS)), String.join("\n", rows));
        assertEquals(7 * Skills.all().size() + 4, rows.size());
    }
}
