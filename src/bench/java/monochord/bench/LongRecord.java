package monochord.bench;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import monochord.practice.Grade;
import monochord.practice.knowing.Attempt;
import monochord.practice.knowing.Due;
import monochord.record.Register;

/**
 * A record of many attempts: {@code LongRecord make HOME COUNT} makes it, {@code LongRecord due HOME} opens it, says what
 * is due, and how long that took, once in a fresh JVM as a learner's shell does it.
 */
public final class LongRecord {
    private static final long BEGIN = 1_700_000_000_000L;

    /** Some three years of answers, thirteen skills in fifteen keys, mistakes, hints and second tries among them. */
    private static final String FILL = """
            WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < %d)
            INSERT INTO attempt
            SELECT NULL, %d + i * 90000, 1, 100 + i %% 13, 'bVI', 200 + i / 13 %% 15, i, 'Bb D F',
                   CASE i * 7 %% 10 WHEN 0 THEN 3 WHEN 1 THEN 2 WHEN 2 THEN 1 ELSE 0 END, 1,
                   2000 + i * 7919 %% 40000, i * 13 %% 9 = 0, i * 11 %% 8 = 0
            FROM n
            """;

    private LongRecord() {}

    /** @param arguments as above */
    public static void main(String[] arguments) throws SQLException, IOException {
        Path home = Path.of(arguments[1]);
        if (arguments[0].equals("make")) {
            make(home, Integer.parseInt(arguments[2]));
        } else {
            due(home);
        }
    }

    private static void make(Path home, int count) throws SQLException, IOException {
        Files.createDirectories(home);
        Attempt first = new Attempt(BEGIN, "", "skill", "bVI", "D major", 0, "Bb D F", Grade.RIGHT, "", 4000, 0, 0);
        try (Register register = new Register(home)) {
            register.keep(first);
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + home.resolve("record.db"));
                Statement statement = connection.createStatement()) {
            for (int i = 0; i < 15; i++) {
                statement.execute("INSERT INTO word VALUES (" + (100 + i) + ", 'skill " + i + "')");
                statement.execute("INSERT INTO word VALUES (" + (200 + i) + ", 'key " + i + "')");
            }
            statement.execute(FILL.formatted(count - 1, BEGIN));
        }
    }

    private static void due(Path home) {
        long begin = System.nanoTime();
        try (Register register = new Register(home)) {
            Due due = Due.at(Long.MAX_VALUE / 2, register.knowledge());
            long millis = (System.nanoTime() - begin) / 1_000_000;
            say(millis + " ms to open the record and find " + due.items().size() + " things due");
            List<String> notices = register.notice();
            notices.forEach(LongRecord::say);
        }
    }

    private static void say(String line) {
        new PrintStream(new FileOutputStream(FileDescriptor.out), true).println(line);
    }
}
