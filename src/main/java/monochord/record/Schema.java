package monochord.record;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** The tables of a record, and the marks by which a file is known to be one. */
final class Schema {
    /** Written where SQLite keeps the kind of a file: {@code Mono}. */
    private static final int OURS = 0x4D6F6E6F;

    /** To be raised by one with each change of the tables; older files are then brought up to it, newer ones left alone. */
    private static final int VERSION = 2;

    private static final String VERSION_MARK = "user_version";
    private static final String KIND_MARK = "application_id";

    private static final String KEEP_ATTEMPTS = """
            CREATE TRIGGER attempts_are_not_removed BEFORE DELETE ON attempt
            BEGIN SELECT raise(ABORT, 'attempts are never removed'); END
            """;

    private static final List<String> TABLES =
            List.of("CREATE TABLE word (id INTEGER PRIMARY KEY, text TEXT NOT NULL UNIQUE)", """
            CREATE TABLE attempt (
                id INTEGER PRIMARY KEY,
                time INTEGER NOT NULL, -- milliseconds since 1970 in UTC
                lesson INTEGER NOT NULL REFERENCES word,
                skill INTEGER NOT NULL REFERENCES word,
                subject TEXT NOT NULL,
                key INTEGER NOT NULL REFERENCES word,
                seed INTEGER NOT NULL,
                answer TEXT NOT NULL,
                grade INTEGER NOT NULL CHECK (grade BETWEEN 0 AND 3), -- right, remark, nearly, wrong
                misconception INTEGER NOT NULL REFERENCES word,
                millis INTEGER NOT NULL,
                hints INTEGER NOT NULL,
                tries INTEGER NOT NULL)
            """, """
            CREATE TRIGGER attempts_are_not_changed BEFORE UPDATE ON attempt
            BEGIN SELECT raise(ABORT, 'attempts are never rewritten'); END
            """, KEEP_ATTEMPTS);

    /** What version 2 has besides: whose an attempt is if it is not the learner's own, and the assignment it belongs to. */
    private static final List<String> SINCE_VERSION_2 = List.of(
            "ALTER TABLE attempt ADD COLUMN learner INTEGER REFERENCES word",
            "ALTER TABLE attempt ADD COLUMN assignment INTEGER REFERENCES word");

    /** Shows a file of version 1 that cannot be written as one of version 2, to this connection alone. */
    private static final String AS_VERSION_2 =
            "CREATE TEMP VIEW attempt AS SELECT *, NULL AS learner, NULL AS assignment FROM main.attempt";

    private static final String UNUSED_WORDS = """
            DELETE FROM word WHERE id NOT IN (
                SELECT lesson FROM attempt UNION SELECT skill FROM attempt UNION SELECT key FROM attempt
                UNION SELECT misconception FROM attempt
                UNION SELECT learner FROM attempt WHERE learner IS NOT NULL
                UNION SELECT assignment FROM attempt WHERE assignment IS NOT NULL)
            """;

    private Schema() {}

    /**
     * Makes the tables in a new file, looks whether those of an old one are ours, and brings those of an earlier version up
     * to this one; no row is touched by that.
     *
     * @throws StrangeFile if the file is a database of another program
     * @throws NewerFile if a later version of Monochord made it
     */
    static void settle(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            if (number(statement, "PRAGMA " + KIND_MARK) != OURS) {
                begin(statement);
            }
            int version = number(statement, "PRAGMA " + VERSION_MARK);
            if (version > VERSION) {
                throw new NewerFile();
            }
            if (tables(statement, "WHERE name IN ('word', 'attempt')") != 2) {
                throw new StrangeFile();
            }
            if (version < VERSION && connection.isReadOnly()) {
                statement.execute(AS_VERSION_2);
            } else if (version < VERSION) {
                bringUp(statement);
            }
        }
    }

    private static void begin(Statement statement) throws SQLException {
        atOnce(statement, () -> {
            if (tables(statement, "") == 0) {
                run(statement, TABLES);
                run(statement, SINCE_VERSION_2);
                mark(statement);
            }
        });
        if (number(statement, "PRAGMA " + KIND_MARK) != OURS) {
            throw new StrangeFile();
        }
    }

    private static void bringUp(Statement statement) throws SQLException {
        atOnce(statement, () -> {
            if (number(statement, "PRAGMA " + VERSION_MARK) < VERSION) {
                run(statement, SINCE_VERSION_2);
                mark(statement);
            }
        });
    }

    private static void run(Statement statement, List<String> steps) throws SQLException {
        for (String step : steps) {
            statement.execute(step);
        }
    }

    private static void mark(Statement statement) throws SQLException {
        statement.execute("PRAGMA " + KIND_MARK + " = " + OURS);
        statement.execute("PRAGMA " + VERSION_MARK + " = " + VERSION);
    }

    /** A change that is made whole or not at all. */
    interface SchemaChange {
        void make() throws SQLException;
    }

    /**
     * Another shell may do the same at the same moment: who comes second waits, and finds everything done. It is not left to
     * the driver, whose commit begins the next transaction: where that waits in vain for another shell, it fails although
     * all is kept, and what is tried again is kept twice.
     */
    static void atOnce(Statement statement, SchemaChange change) throws SQLException {
        statement.execute("BEGIN IMMEDIATE");
        try {
            change.make();
            statement.execute("COMMIT");
        } catch (SQLException failed) {
            undo(statement, failed);
            throw failed;
        }
    }

    /** On a full disk SQLite has undone everything by itself, and says so; what failed first is what matters. */
    private static void undo(Statement statement, SQLException failed) {
        try {
            statement.execute("ROLLBACK");
        } catch (SQLException undone) {
            failed.addSuppressed(undone);
        }
    }

    /**
     * Removes attempts, and the words that nothing else holds then: a pupil may ask for that. It changes the version of the
     * schema, by which other shells see that what they have gathered no longer holds.
     *
     * @param which the condition of SQL behind {@code WHERE}
     * @return how many attempts
     */
    static int remove(Connection connection, String which) throws SQLException {
        int[] removed = {0};
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA secure_delete = ON");
            atOnce(statement, () -> {
                statement.execute("DROP TRIGGER attempts_are_not_removed");
                removed[0] = statement.executeUpdate("DELETE FROM attempt WHERE " + which);
                statement.executeUpdate(UNUSED_WORDS);
                statement.execute(KEEP_ATTEMPTS);
            });
            statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        }
        return removed[0];
    }

    /** Rises with each change of the tables, and with each removal. */
    static int changes(Statement statement) throws SQLException {
        return number(statement, "PRAGMA schema_version");
    }

    private static int tables(Statement statement, String which) throws SQLException {
        return number(statement, "SELECT count(*) FROM sqlite_master " + which);
    }

    private static int number(Statement statement, String query) throws SQLException {
        try (ResultSet rows = statement.executeQuery(query)) {
            return rows.getInt(1);
        }
    }

    /** A database that is no record of ours. */
    static final class StrangeFile extends SQLException {
        private static final long serialVersionUID = 1;
    }

    /** A record that a later version has made. */
    static final class NewerFile extends SQLException {
        private static final long serialVersionUID = 1;
    }
}
