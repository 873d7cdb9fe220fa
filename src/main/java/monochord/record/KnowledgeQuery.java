package monochord.record;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import monochord.practice.Grade;
import monochord.practice.knowing.Evidence;
import monochord.practice.knowing.Gathering;
import monochord.practice.knowing.Item;
import monochord.practice.knowing.Knowledge;

/** What the attempts of whose record it is say. */
record KnowledgeQuery(Connection connection) {
    private static final Grade[] GRADES = Grade.values();

    /**
     * Two numbers a row, for each number that crosses over from SQLite costs as much as all the rest. The words are few, so
     * 16 bits hold the number of one.
     */
    private static final String EVIDENCE =
            "SELECT time, (skill << 40) | (key << 24) | (grade << 21) | (min(hints, 3) << 19) | min(millis, 524287)"
                    + " FROM attempt WHERE tries = 0 AND learner IS NULL ORDER BY ";

    /**
     * What all of them say. The rows lie in the order of time, and are read as they lie, unless a clock was set back.
     */
    Knowledge knowledge() throws SQLException {
        Optional<Knowledge> asTheyLie = gathered("id");
        return asTheyLie.isPresent() ? asTheyLie.get() : gathered("time").orElseThrow();
    }

    /** Nothing if the rows are not in the order of time. */
    private Optional<Knowledge> gathered(String order) throws SQLException {
        Gathering gathering = new Gathering();
        Map<Integer, String> words = words();
        Map<Long, Item> items = new HashMap<>();
        long last = Long.MIN_VALUE;
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(EVIDENCE + order)) {
            while (row.next()) {
                long time = row.getLong(1);
                if (time < last) {
                    return Optional.empty();
                }
                last = time;
                gathering.add(evidence(time, row.getLong(2), words, items));
            }
        }
        return Optional.of(gathering.knowledge());
    }

    private static Evidence evidence(long time, long mark, Map<Integer, String> words, Map<Long, Item> items) {
        Item item = items.computeIfAbsent(
                mark >> 24, pair -> new Item(words.get((int) (pair >> 16)), words.get((int) (pair & 0xFFFF))));
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
