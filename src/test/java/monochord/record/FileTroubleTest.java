package monochord.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.sql.SQLException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** The codes are those of SQLite, "Result and Error Codes". */
@Tag("attack")
class FileTroubleTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            SQLITE_FULL               | the disk is full
            SQLITE_READONLY           | home cannot be written
            SQLITE_READONLY_DIRECTORY | home cannot be written
            SQLITE_CANTOPEN           | home cannot be written
            SQLITE_BUSY               | another program holds home/record.db
            SQLITE_BUSY_SNAPSHOT      | another program holds home/record.db
            SQLITE_IOERR              | home/record.db cannot be used (it broke)
            """)
    void theReasonIsOneALearnerCanDoSomethingAbout(SQLiteErrorCode code, String reason) {
        assertEquals(
                reason,
                FileTrouble.reason(new SQLiteException("it broke", code), Path.of("home", "record.db"))
                        .toString());
    }

    @ParameterizedTest(name = "{0} is damage: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            SQLITE_CORRUPT       | true
            SQLITE_CORRUPT_INDEX | true
            SQLITE_NOTADB        | true
            SQLITE_FULL          | false
            SQLITE_BUSY          | false
            SQLITE_IOERR         | false
            SQLITE_CANTOPEN      | false
            """)
    void onlyDamageSetsAFileAside(SQLiteErrorCode code, boolean damage) {
        assertEquals(damage, FileTrouble.isDamage(new SQLiteException("it broke", code)));
        assertEquals(false, FileTrouble.isDamage(new SQLException("it broke")));
    }
}
