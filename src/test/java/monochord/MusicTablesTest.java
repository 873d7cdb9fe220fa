package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Each table of music in the tests names its source, or says that it is common practice without one, or from memory: in
 * the words above the test or its class, or in the first line of the file.
 *
 * <p>A table is of music if in half of its rows or more at least two words are notes, chords or numerals. Tables of
 * messages are not, whatever they quote: what is said to a text that cannot be read is ours.
 */
class MusicTablesTest {
    private static final Path TESTS = Path.of("src", "test", "java");
    private static final Path FILES = Path.of("src", "test", "resources");

    private static final Pattern SOURCED = Pattern.compile(
            "\\bsources?\\b(?: (?:for|of) [^:]{0,80})?:|common practice, no source|from memory",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern TABLE = Pattern.compile("@CsvSource\\b");
    private static final Pattern METHOD = Pattern.compile("\\n {4}(?:static )?void (\\w+)\\(([^)]*)\\)");
    private static final Pattern CLASS = Pattern.compile("\\n(?:@[^\\n]*\\n)*(?:public |final |abstract )*class ");
    private static final Pattern MESSAGES = Pattern.compile("\\b(?:place|message|refusal)\\b");
    private static final Pattern STRING = Pattern.compile("\"(?:\\\\.|[^\"\\\\\\n])*\"");

    private static final Pattern MUSIC = Pattern.compile("[\"'(\\[]*(?:"
            + "[A-G](?:bb|b|##|#|x|♭|♯|𝄫|𝄪)?"
            + "(?:-?[0-9]|m|dim|aug|sus[24]?|add9|(?:m|maj|dim|ø|o)?(?:6|7|9|11|13)(?:b5)?)?"
            + "(?:/[A-G][b#]?)?(?::[0-9/]+)?"
            + "|[b#♭♯]?(?:VII|VI|IV|V|III|II|I|vii|vi|iv|v|iii|ii|i)(?:o|ø|°|\\+)?[0-9]{0,2}(?:/[ivIV]+)?"
            + ")[\"')\\].]*");

    /** One table: where it is, its rows, and all that is said above it and above its class. */
    private record Rows(String where, String parameters, List<String> rows, String said) {
        boolean isOfMusic() {
            long musical = rows.stream().filter(Rows::isMusical).count();
            return !rows.isEmpty()
                    && 2 * musical >= rows.size()
                    && !MESSAGES.matcher(parameters).find();
        }

        private static boolean isMusical(String row) {
            return Stream.of(row.split("[\\s|!;,/]+"))
                            .filter(word -> MUSIC.matcher(word).matches())
                            .count()
                    >= 2;
        }
    }

    private static List<Rows> tables() throws IOException {
        List<Rows> tables = new ArrayList<>();
        try (Stream<Path> files = Files.walk(TESTS)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                tables.addAll(tables(file));
            }
        }
        return tables;
    }

    private static List<Rows> tables(Path file) throws IOException {
        String text = Files.readString(file);
        Matcher header = CLASS.matcher(text);
        String ofTheClass = header.find() ? commentAbove(text.substring(0, header.start() + 1)) : "";
        List<Rows> tables = new ArrayList<>();
        Matcher table = TABLE.matcher(text);
        Matcher method = METHOD.matcher(text);
        while (table.find() && method.find(table.end())) {
            List<String> rows = text.substring(table.end(), method.start())
                    .lines()
                    .skip(1)
                    .map(String::strip)
                    .filter(row -> !row.isEmpty() && !row.startsWith("\"\"\"") && !row.startsWith("})"))
                    .toList();
            String said = commentAbove(text.substring(0, table.start())) + " " + ofTheClass;
            tables.add(new Rows(TESTS.relativize(file) + ": " + method.group(1), method.group(2), rows, said));
        }
        return tables;
    }

    /** The comment before the annotations that end the text, in one line; empty if there is none. */
    private static String commentAbove(String text) {
        int begin = text.lastIndexOf("/**");
        int end = text.indexOf("*/", Math.max(0, begin));
        if (begin < 0 || end < 0) {
            return "";
        }
        String between = STRING.matcher(text.substring(end)).replaceAll("");
        boolean apart = between.contains(";") || between.contains("{") || between.contains("}");
        return apart ? "" : text.substring(begin, end).replaceAll("\\s+(?:\\* ?)?", " ");
    }

    @Test
    void eachTableInTheTestsIsSourced() throws IOException {
        List<Rows> music = tables().stream().filter(Rows::isOfMusic).toList();
        assertTrue(music.size() > 100, () -> "only " + music.size() + " tables of music were seen");
        assertEquals(
                List.of(),
                music.stream()
                        .filter(table -> !SOURCED.matcher(table.said()).find())
                        .map(Rows::where)
                        .toList());
    }

    @Test
    void eachTableInAFileIsSourced() throws IOException {
        try (Stream<Path> files = Files.walk(FILES)) {
            List<Path> tables =
                    files.filter(file -> file.toString().endsWith(".csv")).toList();
            assertTrue(tables.size() >= 9, tables::toString);
            for (Path table : tables) {
                String first = Files.readAllLines(table).get(0);
                assertTrue(SOURCED.matcher(first).find(), () -> table + ": " + first);
            }
        }
    }

    @Test
    void tellsMusicFromOtherTables() {
        assertTrue(new Rows("", "String text", List.of("C | I | C E G", "Bb4:2 | vi7/V"), "").isOfMusic());
        assertTrue(!new Rows("", "String text", List.of("major third | M3", "A | tune"), "").isOfMusic());
        assertTrue(!new Rows("", "String text, String message", List.of("C | I | C E G"), "").isOfMusic());
    }
}
