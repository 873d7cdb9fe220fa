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
    private static final int VERSION = 1;

    private static final String VERSION_MARK = "user_version";
    private static final String KIND_MARK = "application_id";

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
            """, """
            CREATE TRIGGER attempts_are_not_removed BEFORE DELETE ON attempt
            BEGIN SELECT raise(ABORT, 'attempts are never removed'); END
            """);

    private Schema() {}

    /**
     * Makes the tables in a new file, and looks whether those of an old one are ours.
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
        }
    }

    /** Another shell may begin at the same moment: who comes second finds everything done. */
    private static void begin(Statement statement) throws SQLException {
        statement.execute("BEGIN IMMEDIATE");
        try {
            if (tables(statement, "") == 0) {
                for (String table : TABLES) {
                    statement.execute(table);
                }
                statement.execute("PRAGMA " + KIND_MARK + " = " + OURS);
                statement.execute("PRAGMA " + VERSION_MARK + " = " + VERSION);
            }
            statement.execute("COMMIT");
        } catch (SQLException failed) {
            undo(statement, failed);
            throw failed;
        }
        if (number(statement, "PRAGMA " + KIND_MARK) != OURS) {
            throw new StrangeFile();
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
