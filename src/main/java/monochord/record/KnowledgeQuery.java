package monochord.record;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.Map;
import monochord.practice.Grade;
import monochord.practice.mastery.Evidence;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.KnowledgeBuilder;
import monochord.practice.mastery.SkillInKey;

/**
 * What the attempts of whose record it is say. What has been gathered is kept, for attempts are added and hardly ever removed:
 * asked again, it reads those that came since, from this shell or another. Where a pupil's were removed, rows that come later
 * may have their numbers, and all are read anew.
 */
final class KnowledgeQuery {
    private static final Grade[] GRADES = Grade.values();

    /**
     * Two numbers a row, for each number that crosses over from SQLite costs as much as all the rest. The words are few, so
     * 16 bits hold the number of one.
     */
    private static final String EVIDENCE =
            "SELECT time, (skill << 40) | (key << 24) | (grade << 21) | (min(hints, 3) << 19) | min(millis, 524287)"
                    + " FROM attempt WHERE tries = 0 AND learner IS NULL AND id > ? AND id <= ? ORDER BY ";

    private final Connection connection;
    private KnowledgeBuilder gathered = new KnowledgeBuilder();
    private long lastRow;
    private long lastTime = Long.MIN_VALUE;
    private int changes;

    KnowledgeQuery(Connection connection) {
        this.connection = connection;
    }

    /**
     * What all of them say. The rows lie in the order of time, and are read as they lie, unless a clock was set back; then
     * all are read anew.
     */
    Knowledge knowledge() throws SQLException {
        long newest = newest();
        int now = changes();
        if (now != changes) {
            forget();
            changes = now;
        }
        if (gather(newest, "id")) {
            return gathered.knowledge();
        }
        forget();
        if (gather(newest, "id")) {
            return gathered.knowledge();
        }
        forget();
        gather(newest, "time");
        Knowledge knowledge = gathered.knowledge();
        forget();
        return knowledge;
    }

    private void forget() {
        gathered = new KnowledgeBuilder();
        lastRow = 0;
        lastTime = Long.MIN_VALUE;
    }

    private int changes() throws SQLException {
        try (Statement statement = connection.createStatement()) {
            return Schema.changes(statement);
        }
    }

    private long newest() throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT coalesce(max(id), 0) FROM attempt")) {
            return row.getLong(1);
        }
    }

    /** Whether the rows up to that one could be added, since none is older than what was there, nor as old as that. */
    private boolean gather(long newest, String order) throws SQLException {
        Map<Integer, String> words = words();
        Map<Long, SkillInKey> items = new HashMap<>();
        long before = lastTime;
        try (PreparedStatement statement = connection.prepareStatement(EVIDENCE + order)) {
            statement.setLong(1, lastRow);
            statement.setLong(2, newest);
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    long time = row.getLong(1);
                    if (time < lastTime || time == before) {
                        return false;
                    }
                    lastTime = time;
                    gathered.add(evidence(time, row.getLong(2), words, items));
                }
            }
        }
        lastRow = newest;
        return true;
    }

    private static Evidence evidence(long time, long mark, Map<Integer, String> words, Map<Long, SkillInKey> items) {
        SkillInKey item = items.computeIfAbsent(
                mark >> 24, pair -> new SkillInKey(words.get((int) (pair >> 16)), words.get((int) (pair & 0xFFFF))));
        return new Evidence(time, item, GRADES[(int) (mark >> 21 & 7)], (int) (mark & 0x7FFFF), (int) (mark >> 19 & 3));
    }

    private Map<Integer, String> words() throws SQLException {
        Map<Integer, String> words = new HashMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT id, text FROM word")) {
            while (row.next()) {
                words.put(row.getInt(1), row.getString(2));
            }
        }
        return words;
    }
}
