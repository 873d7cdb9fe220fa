package monochord.bench;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.mastery.Attempt;
import monochord.practice.skill.Skills;
import monochord.record.KeptAttempt;
import monochord.record.Register;
import monochord.theory.Key;

/** Makes the record of somebody who has practised for years, or of a class: every skill in some keys, over and over. */
final class LongRecord {
    private static final int KEYS = 12;
    private static final long BEGAN = 1_700_000_000_000L;
    private static final long APART_MILLIS = 60_000;

    /** All rows again, later by their own length, as often as it takes. */
    private static final String AGAIN = """
            INSERT INTO attempt
                (time, lesson, skill, subject, key, seed, answer, grade, misconception, millis, hints, tries,
                learner, assignment)
            WITH RECURSIVE round (number) AS (SELECT 1 UNION ALL SELECT number + 1 FROM round WHERE number < %1$d / %2$d)
            SELECT time + number * %2$d * %3$d, lesson, skill, subject, key, seed + number, answer,
                CASE WHEN (id * 7 + number * 13) %% 5 = 0 THEN 3 ELSE grade END,
                CASE WHEN (id * 7 + number * 13) %% 5 = 0 THEN (SELECT misconception FROM attempt WHERE id = 1)
                    ELSE (SELECT misconception FROM attempt WHERE id = 2) END,
                millis + (id * 31 + number * 17) %% 4000, hints, tries, learner, assignment
            FROM round CROSS JOIN attempt WHERE id <= %2$d ORDER BY number, id LIMIT %1$d - %2$d
            """;

    private LongRecord() {}

    /** @param arguments the folder, how many attempts, and of how many pupils, if it is a class */
    public static void main(String[] arguments) throws SQLException {
        Path home = Path.of(arguments[0]);
        int pupils = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 0;
        int first = pupils == 0 ? firstRound(home, "", 0) : 0;
        for (int i = 0; i < pupils; i++) {
            first = firstRound(home, "7b-" + i, first);
        }
        try (Connection record = DriverManager.getConnection("jdbc:sqlite:" + home.resolve("record.db"));
                Statement statement = record.createStatement()) {
            statement.execute(AGAIN.formatted(Integer.parseInt(arguments[1]), first, APART_MILLIS));
        }
    }

    private static int firstRound(Path home, String pupil, int from) {
        int count = from;
        try (Register register = new Register(home)) {
            for (Skill skill : Skills.all()) {
                for (Key key :
                        skill.keys().subList(0, Math.min(KEYS, skill.keys().size()))) {
                    Attempt attempt = attempt(skill.question(key, count), count);
                    register.keep(new KeptAttempt(attempt, pupil, pupil.isEmpty() ? "" : "week-1"));
                    count++;
                }
            }
        }
        return count;
    }

    private static Attempt attempt(Question question, int number) {
        return new Attempt(
                BEGAN + APART_MILLIS * number,
                "",
                question.skillId(),
                question.subject(),
                question.key().toString(),
                number,
                question.expected(),
                number == 0 ? Grade.WRONG : Grade.RIGHT,
                number == 0 ? "wrong-degree" : "",
                4000,
                0,
                0);
    }
}
