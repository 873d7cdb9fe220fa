package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What ships says whose it is: each library and each file of data is named in NOTICE, and NOTICE is in the jar. */
class NoticeTest {
    /** Libraries of the tests and of what runs them; none of them is passed on. */
    private static final Pattern OF_THE_TESTS =
            Pattern.compile("(junit|surefire|opentest4j|apiguardian|common-java5|maven|jmh|jopt|commons-math3).*");

    private static String notice;

    @BeforeAll
    static void read() throws IOException {
        notice = Files.readString(Path.of("NOTICE"));
    }

    /** The libraries on our class path, without version. */
    private static Set<String> libraries() {
        return Arrays.stream(System.getProperty("java.class.path").split(Pattern.quote(File.pathSeparator)))
                .map(entry -> Path.of(entry).getFileName().toString())
                .filter(name -> name.endsWith(".jar"))
                .map(name -> name.replaceFirst("-[0-9][^-]*\\.jar$", ""))
                .filter(name -> !OF_THE_TESTS.matcher(name).matches())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String section(String from, String to) {
        return notice.substring(notice.indexOf("\n" + from), notice.indexOf("\n" + to));
    }

    @Test
    void eachLibraryIsNamedAndNoOther() {
        Set<String> named = section("LIBRARIES", "The text of the LGPL")
                .lines()
                .filter(line -> line.matches("[a-z].* {2,}.*"))
                .map(line -> line.replaceFirst(" .*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(named.size() >= 8, named::toString);
        assertEquals(libraries(), named);
    }

    /** A licence beside a file names itself; scripts and settings are no data. */
    @ParameterizedTest
    @ValueSource(strings = {"main", "test"})
    void eachFileOfDataIsNamed(String part) throws IOException {
        Path resources = Path.of("src", part, "resources");
        String section = part.equals("main")
                ? section("DATA IN THE PROGRAM", "DATA IN THE TESTS")
                : section("DATA IN THE TESTS", "LIBRARIES");
        try (Stream<Path> files = Files.walk(resources)) {
            List<String> names = files.filter(Files::isRegularFile)
                    .filter(file -> !file.startsWith(resources.resolve("META-INF")))
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.contains(".") && !name.endsWith(".properties"))
                    .filter(name -> !name.toLowerCase(Locale.ROOT).contains("licen"))
                    .toList();
            assertTrue(names.size() >= 3, names::toString);
            assertEquals(
                    List.of(),
                    names.stream().filter(name -> !isNamed(name, section)).toList());
        }
    }

    private static boolean isNamed(String name, String section) {
        return Pattern.compile("(?<![\\w.-])" + Pattern.quote(name) + "(?![\\w.-])")
                .matcher(section)
                .find();
    }

    @ParameterizedTest
    @ValueSource(strings = {"LICENSE", "NOTICE", "licences/LGPL-2.1.txt", "licences/OFL-1.1.txt"})
    void goesIntoTheJar(String name) throws IOException {
        Path packed = Path.of("target", "classes", "META-INF").resolve(name);
        assertEquals(Files.readString(Path.of(name)), Files.readString(packed));
    }
}
