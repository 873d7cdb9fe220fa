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
import monochord.record.Register;
import monochord.theory.Key;

/** Makes the record of somebody who has practised for years: every skill in some keys, over and over. */
final class LongRecord {
    private static final int KEYS = 12;
    private static final long BEGAN = 1_700_000_000_000L;
    private static final long APART_MILLIS = 60_000;

    /** All rows again, later by their own length, as often as it takes. */
    private static final String AGAIN = """
            INSERT INTO attempt
                (time, lesson, skill, subject, key, seed, answer, grade, misconception, millis, hints, tries)
            WITH RECURSIVE round (number) AS (SELECT 1 UNION ALL SELECT number + 1 FROM round WHERE number < %1$d / %2$d)
            SELECT time + number * %2$d * %3$d, lesson, skill, subject, key, seed + number, answer,
                CASE WHEN (id * 7 + number * 13) %% 5 = 0 THEN 3 ELSE grade END,
                misconception, millis + (id * 31 + number * 17) %% 4000, hints, tries
            FROM round CROSS JOIN attempt WHERE id <= %2$d ORDER BY number, id LIMIT %1$d - %2$d
            """;

    private LongRecord() {}

    /** @param arguments the folder, and how many attempts */
    public static void main(String[] arguments) throws SQLException {
        Path home = Path.of(arguments[0]);
        int first = firstRound(home);
        try (Connection record = DriverManager.getConnection("jdbc:sqlite:" + home.resolve("record.db"));
                Statement statement = record.createStatement()) {
            statement.execute(AGAIN.formatted(Integer.parseInt(arguments[1]), first, APART_MILLIS));
        }
    }

    private static int firstRound(Path home) {
        int count = 0;
        try (Register register = new Register(home)) {
            for (Skill skill : Skills.all()) {
                for (Key key :
                        skill.keys().subList(0, Math.min(KEYS, skill.keys().size()))) {
                    register.keep(attempt(skill.question(key, count), count));
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
                Grade.RIGHT,
                "",
                4000,
                0,
                0);
    }
}
