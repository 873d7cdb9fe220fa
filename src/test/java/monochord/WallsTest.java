package monochord;

import static java.util.stream.Collectors.toCollection;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Holds the walls between the rooms: who may import whom, and what only the shell may touch. */
class WallsTest {
    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final Path CLASSES = Path.of("target", "classes");

    /** Which rooms a room may import, beside its own sub-packages. A room that is not a key here does not exist. */
    private static final Map<String, Set<String>> MAY_IMPORT = Map.ofEntries(
            Map.entry("theory", Set.of()),
            Map.entry("file", Set.of("text")),
            Map.entry("text", Set.of("theory")),
            Map.entry("harmony", Set.of("theory", "text")),
            Map.entry("song", Set.of("theory", "harmony", "text")),
            Map.entry("score", Set.of("theory", "harmony", "song", "text")),
            Map.entry("practice", Set.of("theory", "harmony", "text")),
            Map.entry("record", Set.of("practice", "text", "file")),
            Map.entry("lesson", Set.of("theory", "harmony", "song", "practice", "text")),
            Map.entry("course", Set.of("theory", "harmony", "text", "practice", "record", "lesson")),
            Map.entry(
                    "classroom", Set.of("theory", "harmony", "text", "file", "practice", "record", "lesson", "course")),
            Map.entry("notebook", Set.of("theory", "lesson", "text", "file")),
            Map.entry("view", Set.of("theory", "harmony", "song", "score", "practice", "lesson", "classroom", "text")),
            Map.entry(
                    "paper",
                    Set.of("theory", "harmony", "song", "score", "practice", "lesson", "classroom", "text", "view")),
            Map.entry("sound", Set.of("theory", "score", "text", "file")),
            Map.entry("cell", Set.of("theory", "harmony", "text")),
            Map.entry(
                    "shell",
                    Set.of(
                            "theory",
                            "harmony",
                            "song",
                            "score",
                            "text",
                            "practice",
                            "record",
                            "lesson",
                            "course",
                            "classroom",
                            "notebook",
                            "view",
                            "sound",
                            "paper",
                            "cell",
                            "file")));

    /** The rooms that compute only: no files, no clock, no chance, no other library. */
    private static final Set<String> PURE = Set.of("theory", "harmony", "score", "practice");

    private static final Pattern JDEPS_LINE = Pattern.compile("^ +(\\S+) +-> (\\S+) .*$", Pattern.MULTILINE);

    private static List<Edge> edges;
    private static List<Source> sources;

    /** One package that uses another, by their full names. */
    private record Edge(String from, String to) {
        boolean betweenRooms() {
            return isOurs(from) && isOurs(to) && !room(from).equals(room(to));
        }

        boolean isAllowed() {
            return MAY_IMPORT.getOrDefault(room(from), Set.of()).contains(room(to));
        }

        @Override
        public String toString() {
            return from + " uses " + to;
        }
    }

    /** One source file, with its comments and the insides of its texts taken out of {@code code}. */
    private record Source(Path path, String code) {
        private static final Pattern NOT_CODE = Pattern.compile(
                "\"\"\".*?(?<!\\\\)\"\"\"|\"(?:\\\\.|[^\"\\\\\n])*\"|'(?:\\\\.|[^'\\\\\n])+'|//[^\n]*|/\\*.*?\\*/",
                Pattern.DOTALL);

        static Source read(Path path) {
            try {
                return new Source(path, NOT_CODE.matcher(Files.readString(path)).replaceAll(" "));
            } catch (IOException e) {
                throw new AssertionError("cannot read " + path, e);
            }
        }

        String room() {
            Path inside = SOURCES.relativize(path);
            return inside.getNameCount() < 3 ? "" : inside.getName(1).toString();
        }
    }

    @BeforeAll
    static void lookAtEverything() throws IOException {
        edges = jdeps();
        sources = sourceFiles().map(Source::read).toList();
    }

    private static List<Edge> jdeps() {
        var said = new StringWriter();
        var complaints = new StringWriter();
        int status = ToolProvider.findFirst("jdeps")
                .orElseThrow()
                .run(
                        new PrintWriter(said),
                        new PrintWriter(complaints),
                        "--multi-release",
                        "base",
                        "--ignore-missing-deps",
                        "-verbose:package",
                        CLASSES.toString());
        assertEquals(0, status, () -> "jdeps failed: " + said + complaints);
        return JDEPS_LINE
                .matcher(said.toString())
                .results()
                .map(found -> new Edge(found.group(1), found.group(2)))
                .toList();
    }

    private static Stream<Path> sourceFiles() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList().stream();
        }
    }

    private static boolean isOurs(String name) {
        return name.equals("monochord") || name.startsWith("monochord.");
    }

    /** The room of one of our packages: {@code theory} for {@code monochord.theory.chord}. */
    private static String room(String name) {
        String[] parts = name.split("\\.");
        return parts.length < 2 ? "" : parts[1];
    }

    private static Set<String> roomsSeen() {
        return edges.stream()
                .map(Edge::from)
                .filter(WallsTest::isOurs)
                .map(WallsTest::room)
                .collect(toCollection(TreeSet::new));
    }

    private static List<String> offenders(Predicate<Source> offends) {
        return sources.stream()
                .filter(offends)
                .map(source -> source.path().toString())
                .toList();
    }

    private static Predicate<Source> mentions(String regex) {
        Pattern pattern = Pattern.compile(regex);
        return source -> pattern.matcher(source.code()).find();
    }

    private static Predicate<Source> outside(String room) {
        return source -> !source.room().equals(room);
    }

    @Test
    @DisplayName("every package with classes lies in a room of the plan")
    void everyPackageLiesInARoom() {
        var homeless = new TreeSet<>(roomsSeen());
        homeless.removeAll(MAY_IMPORT.keySet());
        assertEquals(Set.of(), homeless, "not a room of the plan");
    }

    @Test
    @DisplayName("the walls were looked at: each room with sources was seen by jdeps, and shell uses theory")
    void enoughWasSeen() {
        var withSources = sources.stream()
                .filter(source -> !source.path().endsWith("package-info.java"))
                .map(Source::room)
                .collect(toCollection(TreeSet::new));
        assertEquals(withSources, roomsSeen(), "rooms with sources, and rooms that jdeps saw");
        assumeTrue(withSources.contains("theory"), "theory is not built yet");
        assertTrue(withSources.contains("shell"));
        assertTrue(
                edges.stream()
                        .filter(Edge::betweenRooms)
                        .anyMatch(edge -> room(edge.from()).equals("shell")
                                && room(edge.to()).equals("theory")),
                () -> "no shell that uses theory among " + edges);
    }

    @Test
    @DisplayName("no room imports one that the plan does not let it import")
    void noRoomImportsWhatItMayNot() {
        assertEquals(
                List.of(),
                edges.stream()
                        .filter(Edge::betweenRooms)
                        .filter(edge -> !edge.isAllowed())
                        .toList());
    }

    @Test
    @DisplayName("no two packages need each other, not by way of others either")
    void thePackagesStandInOneOrder() {
        Set<Edge> left = new HashSet<>(edges.stream()
                .filter(edge -> isOurs(edge.from()) && isOurs(edge.to()))
                .toList());
        Set<String> leaning;
        do {
            leaning = left.stream().map(Edge::from).collect(toCollection(TreeSet::new));
        } while (left.removeIf(leansOnNothing(leaning)));
        assertEquals(Set.of(), left, "what is left goes round, or leans on what does");
    }

    private static Predicate<Edge> leansOnNothing(Set<String> leaning) {
        return edge -> !leaning.contains(edge.to());
    }

    @Test
    @DisplayName("theory, harmony, score and practice use nothing but java.base, and none of its files or sockets")
    void theRoomsThatComputeUseNoLibrary() {
        assertEquals(
                List.of(),
                edges.stream()
                        .filter(edge -> isOurs(edge.from()) && PURE.contains(room(edge.from())))
                        .filter(edge -> !isOurs(edge.to()))
                        .filter(edge -> !edge.to()
                                .matches(
                                        "java\\.(lang(\\..+)?|math|text|time(\\..+)?|util(\\.(?!jar|zip|logging).+)?)"))
                        .toList());
    }

    @Test
    @DisplayName("theory, harmony, score and practice read no clock and draw no chance of their own")
    void theRoomsThatComputeAreHandedTimeAndChance() {
        assertEquals(
                List.of(),
                offenders(mentions("\\bMath\\.random\\b|\\bnew Random\\(\\)|\\bThreadLocalRandom\\b|\\bSecureRandom\\b"
                                + "|\\bSystem\\.(currentTimeMillis|nanoTime|getenv|getProperty)\\b|\\.now\\(\\)")
                        .and(source -> PURE.contains(source.room()))));
    }

    @Test
    @DisplayName("only shell knows the terminal, and only cell the JDK's shell for Java")
    void theTerminalAndTheJavaShellHaveOneRoomEach() {
        assertEquals(
                List.of(),
                offenders(mentions("\\borg\\.jline\\b(?!\\.utils\\.Signals;)").and(outside("shell"))));
        assertEquals(List.of(), offenders(mentions("\\bjdk\\.jshell\\b").and(outside("cell"))));
    }

    @Test
    @DisplayName(
            "only shell knows the standard streams and the exit status, and what runs in a cell's own JVM those of that")
    void onlyShellKnowsTheStandardStreams() {
        assertEquals(
                List.of(),
                offenders(mentions("\\bSystem\\s*\\.\\s*(in|out|err|exit|console)\\b"
                                + "|\\bimport static java\\.lang\\.System\\b|\\.printStackTrace\\(\\)"
                                + "|\\bRuntime\\.getRuntime\\(\\)\\.(exit|halt)\\b")
                        .and(outside("shell"))
                        .and(source -> !source.path().startsWith(SOURCES.resolve("monochord/cell/sandbox")))));
    }

    @Test
    @DisplayName("each package says in its package-info what it is for and what it may import")
    void eachPackageHasItsPage() {
        var folders = sources.stream().map(source -> source.path().getParent()).collect(toCollection(TreeSet::new));
        assertEquals(
                List.of(),
                folders.stream()
                        .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
                        .toList(),
                "without a package-info.java");
        assertEquals(
                List.of(),
                folders.stream()
                        .filter(folder -> !importsAreSaid(folder.resolve("package-info.java")))
                        .toList(),
                "whose package-info.java does not say what the package may import");
    }

    private static boolean importsAreSaid(Path page) {
        try {
            return Files.readString(page).contains("mport");
        } catch (IOException e) {
            throw new AssertionError("cannot read " + page, e);
        }
    }

    /** The guard against hanging stands in {@code junit-platform.properties}, for all tests at once. */
    @Test
    @DisplayName("no test has a time limit of its own")
    void noTestHasATimeLimit() throws IOException {
        Pattern limit = Pattern.compile("@Timeout\\b|\\bassertTimeout|\\.(get|waitFor)\\([^()]*\\bTimeUnit\\b");
        assertTrue(limit.matcher("@Timeout(60)").find()
                && limit.matcher("one.waitFor(10, TimeUnit.SECONDS)").find());
        try (Stream<Path> files = Files.walk(Path.of("src", "test"))) {
            List<Source> tests = files.filter(file -> file.toString().endsWith(".java"))
                    .map(Source::read)
                    .toList();
            assertTrue(tests.size() > 100, "only " + tests.size() + " sources seen");
            assertEquals(
                    List.of(),
                    tests.stream()
                            .filter(source -> limit.matcher(source.code()).find())
                            .map(Source::path)
                            .toList());
        }
    }

    @Test
    @DisplayName("the scan sees code, and neither comments nor texts")
    void theScanSeesCodeOnly() {
        String text = "int a; // System.out\n/* System.err */ String s = \"System.in\"; char c = '\"'; System.exit(1);";
        Matcher code = Pattern.compile("System\\.(\\w+)")
                .matcher(Source.NOT_CODE.matcher(text).replaceAll(" "));
        assertEquals(
                List.of("exit"), code.results().map(found -> found.group(1)).toList());
    }
}
