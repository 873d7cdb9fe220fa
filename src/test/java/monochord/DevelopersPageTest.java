package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What DEVELOPERS.md says of the sources is so. */
class DevelopersPageTest {
    private static final Pattern NAME = Pattern.compile("`([A-Z]\\w+)`");

    private static List<String> page;
    private static List<String> classes;

    @BeforeAll
    static void read() throws IOException {
        page = Files.readAllLines(Path.of("DEVELOPERS.md"));
        try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java"))) {
            classes = sources.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java") && !name.equals("package-info.java"))
                    .map(name -> name.substring(0, name.length() - ".java".length()))
                    .toList();
        }
    }

    @Test
    @DisplayName("the page has less than 200 lines")
    void thePageIsShort() {
        assertTrue(page.size() < 200, () -> page.size() + " lines");
    }

    @Test
    @DisplayName("each of the five walks names at most eight classes, and those there are")
    void theWalksAreTrue() {
        List<String> walks = page.subList(page.indexOf("## Five walks"), page.indexOf("## Models to follow")).stream()
                .filter(line -> line.startsWith("- "))
                .toList();
        assertEquals(5, walks.size());
        for (String walk : walks) {
            List<String> named =
                    NAME.matcher(walk).results().map(found -> found.group(1)).toList();
            assertTrue(named.size() > 3 && named.size() <= 8, walk);
            assertTrue(classes.containsAll(named), walk);
        }
    }
}
