package monochord.harmony.key;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import monochord.harmony.after.SongCounts;

/** The counts as they travel with the program, and the tables of the tests. */
public final class Counted {
    private static final String SHIPPED = "/monochord/shell/verb/music/";

    public static final KeyCounts KEYS =
            KeyCounts.of(text(SHIPPED + "key-profiles.tsv"), SongCounts.parse(text(SHIPPED + "next-chord.tsv")));

    private Counted() {}

    public static String text(String resource) {
        try (InputStream in = Counted.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows of a table whose cells have semicolons between, below its source and the names of its columns. */
    public static List<String[]> rows(String resource) {
        return text(resource).lines().skip(2).map(line -> line.split(";")).toList();
    }
}
