package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A table in a file: its source in the first line, the names of its columns in the second, then a row a line. */
public final class Table {
    private static final int LINES_ABOVE = 2;

    private Table() {}

    public static List<String[]> rows(String file) throws IOException {
        return lines(file).stream()
                .skip(LINES_ABOVE)
                .map(line -> line.split("\\|", -1))
                .toList();
    }

    static List<String> lines(String file) throws IOException {
        try (InputStream in = Table.class.getResourceAsStream(file)) {
            assertTrue(in != null, file + " is not there");
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }
}
