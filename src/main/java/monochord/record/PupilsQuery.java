package monochord.record;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.function.Consumer;
import monochord.practice.Grade;
import monochord.practice.mastery.SkillInKey;

/** What the attempts of pupils say, read once from end to end. */
final class PupilsQuery {
    private static final int LOW_WORD = 0xFFFF;

    /**
     * Two numbers a row, for each number that crosses over from SQLite costs as much as all the rest: the time, the word of
     * the misconception, the grade and whether there were hints; the words of pupil, skill and key. The words are few, so 16
     * bits hold the number of one; 42 bits hold the time until the year 2109.
     */
    private static final String ANSWERS =
            "SELECT (time << 21) | (misconception << 5) | (grade << 2) | (hints > 0), (learner << 32) | (skill << 16) | key"
                    + " FROM attempt WHERE learner IS NOT NULL AND tries = 0 AND time >= ?1"
                    + "%s ORDER BY id";

    private static final String FOR_ASSIGNMENT = " AND assignment = (SELECT id FROM word WHERE text = ?2)";

    private final Connection connection;
    /** By the number of the word. */
    private String[] words = {};
    /** By the words of skill and key, each made once. */
    private SkillInKey[][] items = {};

    PupilsQuery(Connection connection) {
        this.connection = connection;
    }

    /**
     * First answers of all pupils as they lie, mostly in the order of time.
     *
     * @param since only those not older, in milliseconds since 1970 in UTC
     * @param assignment only those given for it; empty for all
     */
    void answers(long since, String assignment, Consumer<PupilAnswer> each) throws SQLException {
        readWords();
        String sql = ANSWERS.formatted(assignment.isEmpty() ? "" : FOR_ASSIGNMENT);
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.setLong(1, since);
            if (!assignment.isEmpty()) {
                statement.setString(2, assignment);
            }
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    each.accept(answer(row.getLong(1), row.getLong(2)));
                }
            }
        }
    }

    private PupilAnswer answer(long said, long of) {
        boolean isRight = (said >> 2 & 7) <= Grade.REMARK.ordinal();
        return new PupilAnswer(
                said >> 21,
                words[(int) (of >> 32)],
                item((int) (of >> 16) & LOW_WORD, (int) of & LOW_WORD),
                words[(int) (said >> 5) & LOW_WORD],
                isRight,
                isRight && (said & 3) == 0);
    }

    private SkillInKey item(int skill, int key) {
        if (items[skill] == null) {
            items[skill] = new SkillInKey[words.length];
        }
        if (items[skill][key] == null) {
            items[skill][key] = new SkillInKey(words[skill], words[key]);
        }
        return items[skill][key];
    }

    private void readWords() throws SQLException {
        try (Statement statement = connection.createStatement()) {
            try (ResultSet most = statement.executeQuery("SELECT coalesce(max(id), 0) FROM word")) {
                words = new String[most.getInt(1) + 1];
                items = new SkillInKey[words.length][];
            }
            try (ResultSet row = statement.executeQuery("SELECT id, text FROM word")) {
                while (row.next()) {
                    words[row.getInt(1)] = row.getString(2);
                }
            }
        }
    }

    /** Removes all that this pupil gave; the bytes of it are overwritten in the file. */
    int forget(String pupil) throws SQLException {
        int word = word(pupil);
        return word == 0 ? 0 : Schema.remove(connection, "learner = " + word);
    }

    /** The number of a word; 0 where there is none. */
    private int word(String text) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement("SELECT id FROM word WHERE text = ?")) {
            statement.setString(1, text);
            try (ResultSet row = statement.executeQuery()) {
                return row.next() ? row.getInt(1) : 0;
            }
        }
    }

    /** Removes all that no pupil gave; for copies. */
    void forgetOwn() throws SQLException {
        Schema.remove(connection, "learner IS NULL");
    }
}
