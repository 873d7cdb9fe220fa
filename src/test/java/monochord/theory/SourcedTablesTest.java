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
 * in quotes.
 */
class SourcedTablesTest {
    @Test
    void noRowOfATableInATestVanishes() throws IOException, URISyntaxException {
        int seen = 0;
        for (Class<?> type : testClasses()) {
            for (Method method : type.getDeclaredMethods()) {
                CsvSource table = method.getAnnotation(CsvSource.class);
                seen += table == null ? 0 : 1;
                assertTrue(
                        table == null || table.textBlock().lines().noneMatch(row -> row.startsWith("#")),
                        method.toString());
            }
        }
        assertTrue(seen > 20, "only " + seen + " tables seen");
    }

    private static List<Class<?>> testClasses() throws IOException, URISyntaxException {
        Path root = Path.of(SourcedTablesTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        try (Stream<Path> files = Files.walk(root)) {
            return files.map(root::relativize)
                    .map(file -> file.toString().replace(root.getFileSystem().getSeparator(), "."))
                    .filter(name -> name.startsWith("monochord.") && name.endsWith("Test.class"))
                    .<Class<?>>map(name -> load(name.substring(0, name.length() - ".class".length())))
                    .toList();
        }
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, SourcedTablesTest.class.getClassLoader());
        } catch (ClassNotFoundException notThere) {
            throw new IllegalStateException(name, notThere);
        }
    }
}
