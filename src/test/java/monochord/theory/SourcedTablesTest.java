package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * No row of a table goes unread: a row that starts with a sharp would be taken for a comment and vanish, so it must stand
 * in quotes; a table in a file says in its first line where it is from and how many rows it has.
 */
class SourcedTablesTest {
    @Test
    void noRowOfATableInATestVanishes() throws IOException, URISyntaxException {
        int seen = 0;
        for (Path file : files("Test.class")) {
            for (Method method : load(file).getDeclaredMethods()) {
                CsvSource table = method.getAnnotation(CsvSource.class);
                seen += table == null ? 0 : 1;
                assertTrue(
                        table == null || table.textBlock().lines().noneMatch(row -> row.startsWith("#")),
                        method.toString());
            }
        }
        assertTrue(seen > 36, "only " + seen + " tables seen");
    }

    @Test
    void everyTableInAFileSaysItsSourceAndItsRows() throws IOException, URISyntaxException {
        List<Path> tables = files(".csv");
        for (Path table : tables) {
            List<String> lines = Files.readAllLines(table);
            assertTrue(lines.get(0).startsWith("Source: "), table.toString());
            assertTrue(lines.get(0).endsWith("; " + (lines.size() - 2) + " rows"), table.toString());
            assertTrue(lines.stream().noneMatch(line -> line.startsWith("#") || line.isBlank()), table.toString());
        }
        assertTrue(tables.size() >= 7, "only " + tables.size() + " tables seen");
    }

    /** All files below our own test classes whose name ends so. */
    private static List<Path> files(String end) throws IOException, URISyntaxException {
        try (Stream<Path> files = Files.walk(root().resolve("monochord"))) {
            return files.filter(file -> file.toString().endsWith(end)).toList();
        }
    }

    private static Path root() throws URISyntaxException {
        return Path.of(SourcedTablesTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
    }

    private static Class<?> load(Path file) throws URISyntaxException {
        String name =
                root().relativize(file).toString().replace(file.getFileSystem().getSeparator(), ".");
        try {
            return Class.forName(
                    name.substring(0, name.length() - ".class".length()),
                    false,
                    SourcedTablesTest.class.getClassLoader());
        } catch (ClassNotFoundException notThere) {
            throw new IllegalStateException(name, notThere);
        }
    }
}
