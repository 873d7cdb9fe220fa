package monochord.record;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import monochord.practice.Grade;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.Knowledge;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;

/** An open file of attempts. What {@link #append} has been given is on disk when it returns. */
final class Logbook implements AutoCloseable {
    private static final int PATIENCE_MILLIS = 5000;
    private static final int NAP_MILLIS = 25;
    private static final Grade[] GRADES = Grade.values();

    private static final String WORD = "INSERT INTO word (text) SELECT ?1 WHERE ?1 NOT IN (SELECT text FROM word)";

    private static final String APPEND = """
            INSERT INTO attempt
                (time, lesson, skill, subject, key, seed, answer, grade, misconception, millis, hints, tries,
                learner, assignment)
            SELECT ?, lesson.id, skill.id, ?, key.id, ?, ?, ?, misconception.id, ?, ?, ?,
                (SELECT id FROM word WHERE text = ?), (SELECT id FROM word WHERE text = ?)
            FROM word AS lesson, word AS skill, word AS key, word AS misconception
            WHERE lesson.text = ? AND skill.text = ? AND key.text = ? AND misconception.text = ?
            """;

    private static final String READ = """
            SELECT time, lesson.text, skill.text, subject, key.text, seed, answer, grade,
                misconception.text, millis, hints, tries,
                (SELECT text FROM word WHERE id = learner), (SELECT text FROM word WHERE id = assignment)
            FROM attempt
            JOIN word AS lesson ON lesson.id = lesson
            JOIN word AS skill ON skill.id = skill
            JOIN word AS key ON key.id = key
            JOIN word AS misconception ON misconception.id = misconception
            %s
            ORDER BY time, attempt.id
            """;

    /** Those of some pupils; their codes come as one text, each on a line of its own. */
    private static final String OF_PUPILS =
            "WHERE learner IN (SELECT id FROM word WHERE instr(?, char(10) || text || char(10)) > 0)";

    private final Connection connection;
    private final KnowledgeQuery query;

    private Logbook(Connection connection) {
        this.connection = connection;
        this.query = new KnowledgeQuery(connection);
    }

    /** Opens the file, or begins it; waits for another shell that is just doing so, for which SQLite does not. */
    static Logbook open(Path file) throws SQLException {
        long until = System.nanoTime() + PATIENCE_MILLIS * 1_000_000L;
        while (true) {
            try {
                return openOnce(file);
            } catch (SQLException failed) {
                if (!FileTrouble.isBusy(failed) || System.nanoTime() > until) {
                    throw failed;
                }
            }
            nap();
        }
    }

    private static void nap() {
        try {
            Thread.sleep(NAP_MILLIS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static Logbook openOnce(Path file) throws SQLException {
        SQLiteConfig config = config();
        config.setBusyTimeout(PATIENCE_MILLIS);
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        return open(config, "jdbc:sqlite:" + file.toUri());
    }

    /** A register lets one thread at a time in, so SQLite need not see to that with each step. */
    private static SQLiteConfig config() {
        SQLiteConfig config = new SQLiteConfig();
        config.setOpenMode(SQLiteOpenMode.NOMUTEX);
        return config;
    }

    /** Opens a file of which no other shell knows; nothing is left beside it. */
    static Logbook openAlone(Path file) throws SQLException {
        SQLiteConfig config = config();
        config.setJournalMode(SQLiteConfig.JournalMode.MEMORY);
        return open(config, "jdbc:sqlite:" + file.toUri());
    }

    /** Opens a file that cannot be written, for reading. */
    static Logbook openForReading(Path file) throws SQLException {
        SQLiteConfig config = config();
        config.setReadOnly(true);
        return open(config, "jdbc:sqlite:" + file.toUri() + "?immutable=1");
    }

    private static Logbook open(SQLiteConfig config, String url) throws SQLException {
        Connection connection = config.createConnection(url);
        try {
            Schema.settle(connection);
            return new Logbook(connection);
        } catch (SQLException unusable) {
            connection.close();
            throw unusable;
        }
    }

    /** Keeps all of these or, if it fails, none. */
    void append(List<KeptAttempt> attempts) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            Schema.atOnce(statement, () -> {
                for (KeptAttempt attempt : attempts) {
                    append(attempt);
                }
            });
        }
    }

    private void append(KeptAttempt kept) throws SQLException {
        Attempt attempt = kept.attempt();
        String learner = orNull(kept.learner());
        String assignment = orNull(kept.assignment());
        for (String word : Arrays.asList(
                attempt.lesson(), attempt.skill(), attempt.key(), attempt.misconception(), learner, assignment)) {
            if (word != null) {
                run(WORD, word);
            }
        }
        int rows = run(
                APPEND,
                attempt.time(),
                attempt.subject(),
                attempt.seed(),
                attempt.answer(),
                attempt.grade().ordinal(),
                attempt.millis(),
                attempt.hints(),
                attempt.tries(),
                learner,
                assignment,
                attempt.lesson(),
                attempt.skill(),
                attempt.key(),
                attempt.misconception());
        if (rows != 1) {
            throw new SQLException("an attempt made " + rows + " rows");
        }
    }

    private static String orNull(String text) {
        return text.isEmpty() ? null : text;
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }

    private int run(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            return statement.executeUpdate();
        }
    }

    /** All attempts in the order of time, whoever gave them. */
    void attempts(Consumer<KeptAttempt> each) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(READ.formatted(""))) {
            read(statement, each);
        }
    }

    /** The attempts of these pupils, in the order of time. */
    void attempts(Set<String> pupils, Consumer<KeptAttempt> each) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(READ.formatted(OF_PUPILS))) {
            statement.setString(1, "\n" + String.join("\n", pupils) + "\n");
            read(statement, each);
        }
    }

    private static void read(PreparedStatement statement, Consumer<KeptAttempt> each) throws SQLException {
        try (ResultSet row = statement.executeQuery()) {
            while (row.next()) {
                each.accept(new KeptAttempt(attempt(row), orEmpty(row.getString(13)), orEmpty(row.getString(14))));
            }
        }
    }

    private static Attempt attempt(ResultSet row) throws SQLException {
        return new Attempt(
                row.getLong(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                row.getString(5),
                row.getLong(6),
                row.getString(7),
                GRADES[row.getInt(8)],
                row.getString(9),
                row.getInt(10),
                row.getInt(11),
                row.getInt(12));
    }

    /**
     * Copies the whole into a file that is not there yet, or is empty, whatever is being written meanwhile.
     *
     * @return how many attempts are in it
     */
    int copy(Path into) throws SQLException {
        run("VACUUM INTO ?", into.toString());
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT count(*) FROM attempt")) {
            return row.getInt(1);
        }
    }

    /** Reads and removes what pupils gave. */
    PupilsQuery pupils() {
        return new PupilsQuery(connection);
    }

    /** What all the learner's own say. */
    Knowledge knowledge() throws SQLException {
        return query.knowledge();
    }

    /** All that was appended is on disk already, so a failure to close loses nothing. */
    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException unclosed) {
            // the system takes the file back when the program ends
        }
    }
}
