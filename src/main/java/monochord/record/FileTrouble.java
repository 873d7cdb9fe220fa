package monochord.record;

import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.sql.SQLException;
import monochord.text.Phrase;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What is wrong with a file, told by how SQLite or the system failed. */
final class FileTrouble {
    /** SQLite puts finer distinctions above the first eight bits. */
    private static final int KIND = 0xFF;

    private FileTrouble() {}

    /** Whether the file is no record, or no longer one; a busy disk or a missing right is not that. */
    static boolean isDamage(SQLException failed) {
        return failed instanceof Schema.StrangeFile
                || is(SQLiteErrorCode.SQLITE_CORRUPT, failed)
                || is(SQLiteErrorCode.SQLITE_NOTADB, failed);
    }

    /** Whether another program is writing just now. */
    static boolean isBusy(SQLException failed) {
        return is(SQLiteErrorCode.SQLITE_BUSY, failed);
    }

    private static boolean is(SQLiteErrorCode code, Throwable failed) {
        return failed instanceof SQLiteException sqlite && (sqlite.getResultCode().code & KIND) == code.code;
    }

    /** Why nothing can be written, as the end of a sentence. */
    static Phrase reason(Throwable failed, Path file) {
        if (failed instanceof Schema.NewerFile) {
            return Phrase.of("{0} was made by a later version of Monochord", Phrase.typed(file.toString()));
        }
        if (failed instanceof FileSystemException
                || is(SQLiteErrorCode.SQLITE_READONLY, failed)
                || is(SQLiteErrorCode.SQLITE_CANTOPEN, failed)
                || is(SQLiteErrorCode.SQLITE_PERM, failed)) {
            return Phrase.of("{0} cannot be written", Phrase.typed(String.valueOf(file.getParent())));
        }
        if (is(SQLiteErrorCode.SQLITE_FULL, failed)) {
            return Phrase.of("the disk is full");
        }
        if (is(SQLiteErrorCode.SQLITE_BUSY, failed)) {
            return Phrase.of("another program holds {0}", Phrase.typed(file.toString()));
        }
        return Phrase.of(
                "{0} cannot be used ({1})",
                Phrase.typed(file.toString()), Phrase.typed(String.valueOf(failed.getMessage())));
    }
}
