package monochord.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Reads the launcher for Windows by the rules of its command line, with a Java and a Maven that only pretend. */
class WindowsLauncherTest extends WindowsCheckout {
    @Test
    @DisplayName(
            "the first start says that it builds and how far it is, with the Java it found; the next builds nothing")
    void theFirstStartBuilds() throws IOException {
        Run run = start();
        assertEquals(
                BUILDING + "monochord: building: fetching tools and libraries.\nmonochord: building: compiling.\n"
                        + "monochord: building: putting it together.\n",
                run.err());
        assertWhole(run);
        assertEquals("with " + JDK + "\n", house.read(ROOT + "builds"));
        assertStarts();
    }

    @Test
    @DisplayName("whoever waits long is told that it goes on")
    void aLongBuildSaysSo() throws IOException {
        house.pause = 21;
        Run run = start();
        assertTrue(run.err().startsWith(BUILDING + "monochord: building: still getting ready.\n".repeat(2)), run.err());
        assertWhole(run);
    }

    @Test
    @DisplayName("it builds again where a source is newer, or new, and not where nothing is")
    void newerSources() throws IOException {
        start();
        edit(ROOT + "src\\main\\java\\Tune.java");
        assertBuilds(CHANGED);
        edit(ROOT + "pom.xml");
        assertBuilds(CHANGED);
        write(ROOT + "src\\main\\java\\Chord.java", "");
        assertBuilds(CHANGED);
    }

    @Test
    @DisplayName("it builds again where a file of the last build is missing, cut, or not in the stamp's list")
    void damagedFiles() throws IOException {
        start();
        write(TARGET + "\\lib\\tunes.jar", "tu");
        assertBuilds(DAMAGED);
        Files.delete(house.path(TARGET + "\\lib\\chords.jar"));
        assertBuilds(DAMAGED);
        write(TARGET + "\\monochord.jar", "");
        write(TARGET + "\\lib\\old.jar", "of the build before");
        assertBuilds(DAMAGED);
        write(TARGET + "\\stamp", "");
        assertBuilds(DAMAGED);
    }

    @Test
    @DisplayName("what Maven alone built in target is not trusted half, but built again")
    void whatMavenBuiltAlone() throws IOException {
        start();
        write(TARGET + "\\libraries", "lib/chords.jar");
        write(TARGET + "\\monochord.jar", "half a ");
        assertBuilds(BUILDING);
    }

    @Test
    @DisplayName("a start that was killed at any step leaves its Maven to finish, and the next waits for it")
    void killedStarts() throws IOException {
        for (int step = 0; step < PretendedMaven.COUNT; step++) {
            build();
            IntStream.range(0, step).forEach(i -> house.events.add(() -> {}));
            house.events.add(() -> {
                throw new Killed();
            });
            assertThrows(Killed.class, this::start);
            Run next = start();
            assertEquals(WAITING, next.said(), "killed at step " + step);
            assertWhole(next);
            assertEquals(1, builds());
        }
    }

    @Test
    @DisplayName("a Maven that was killed at any step fails, and the next start builds from the beginning")
    void killedMavens() throws IOException {
        for (int step = 0; step < PretendedMaven.COUNT; step++) {
            build();
            IntStream.range(0, step).forEach(i -> house.events.add(() -> {}));
            house.events.add(house::endMaven);
            assertSays(3, BUILDING + FAILED, start());
            assertBuilds(BUILDING);
        }
    }

    @Test
    @DisplayName("both killed at any step, as by a closed window: the next start builds")
    void killedWindows() throws IOException {
        for (int step = 0; step < PretendedMaven.COUNT; step++) {
            build();
            IntStream.range(0, step).forEach(i -> house.events.add(() -> {}));
            house.events.add(() -> {
                house.endMaven();
                throw new Killed();
            });
            assertThrows(Killed.class, this::start);
            assertBuilds(BUILDING);
        }
    }

    /** What is left of {@code :put_in_place} when it was killed between two moves. */
    @Test
    @DisplayName("a start that was killed while it put the build in place: the next puts there what is left")
    void killedWhilePuttingInPlace() throws IOException {
        start();
        write(TARGET + "\\staged\\libraries", "lib/chords.jar:lib/tunes.jar");
        Files.move(house.path(TARGET + "\\stamp"), house.path(TARGET + "\\staged\\stamp.new"));
        Files.move(house.path(TARGET + "\\monochord.jar"), house.path(TARGET + "\\staged\\monochord.jar"));
        assertWhole(start());
        assertEquals(1, builds());
        write(TARGET + "\\staged\\libraries", "lib/chords.jar:lib/tunes.jar");
        Files.move(house.path(TARGET + "\\stamp"), house.path(TARGET + "\\staged\\stamp.new"));
        assertWhole(start());
        assertEquals(1, builds());
    }

    @Test
    @DisplayName("while another start builds, this one waits, and says so once")
    void twoStarts() throws IOException {
        Files.createDirectories(house.path(TARGET));
        house.setWritten(TARGET + "\\.building", true);
        house.events.add(() -> {});
        house.events.add(() -> house.setWritten(TARGET + "\\.building", false));
        assertBuilds(WAITING + BUILDING);
        Path stamp = house.path(TARGET + "\\stamp");
        String written = Files.readString(stamp);
        Files.delete(stamp);
        house.setWritten(TARGET + "\\.building", true);
        house.events.add(() -> {
            WindowsHouse.put(stamp, written, false);
            house.setWritten(TARGET + "\\.building", false);
        });
        assertSays(7, WAITING, start());
        assertEquals(1, builds());
    }

    @Test
    @DisplayName("what was edited while Maven built is for the next start")
    void editedMeanwhile() throws IOException {
        house.events.add(() -> {});
        house.events.add(() -> {
            try {
                edit(ROOT + "pom.xml");
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
        Run run = start();
        assertEquals(BUILDING, run.said());
        assertWhole(run);
        assertBuilds(CHANGED);
    }

    @Test
    @DisplayName("a build that fails says where Maven said why; without Maven nothing is built")
    void failedBuilds() throws IOException {
        write(ROOT + "broken", "");
        assertSays(3, BUILDING + FAILED, start());
        Files.delete(house.path(ROOT + "broken"));
        assertBuilds(BUILDING);
        write(ROOT + "broken", "");
        edit(ROOT + "pom.xml");
        assertSays(3, CHANGED + FAILED, start());
        Files.delete(house.path(TARGET + "\\stamp"));
        house.hasMaven = false;
        assertSays(3, "monochord: building needs Maven, and there is no mvn on the PATH.\n", start());
    }

    @Test
    @DisplayName("while the program runs elsewhere, a new build waits for it to be closed")
    void inUse() throws IOException {
        String message =
                "monochord: the new build cannot be put in place while Monochord runs in another window: close it,"
                        + " then start again.\n";
        for (String jar : List.of("\\monochord.jar", "\\lib\\tunes.jar", "\\seen", "\\stamp")) {
            build();
            start();
            edit(ROOT + "pom.xml");
            house.inUse.add(house.path(TARGET + jar));
            assertSays(3, CHANGED + message, start());
            assertSays(3, message, start());
            house.inUse.clear();
            assertWhole(start());
            assertEquals(2, builds());
        }
        build();
        start();
        edit(ROOT + "pom.xml");
        house.inUse.add(house.path(TARGET + "\\staged\\stamp.new"));
        assertSays(3, CHANGED + message, start());
        house.inUse.clear();
        assertBuilds(BUILDING);
    }

    @Test
    @DisplayName("where nothing can be written, what is whole is started, and all else is told")
    void readOnly() throws IOException {
        house.isReadOnly = true;
        assertSays(3, "monochord: cannot build: \"" + TARGET + "\" cannot be written.\n", start());
        house.isReadOnly = false;
        start();
        house.isReadOnly = true;
        assertStarts();
        edit(ROOT + "pom.xml");
        assertSays(
                7,
                "monochord: the sources are newer than the jar, but \"" + TARGET
                        + "\" cannot be written; starting the jar.\n",
                start());
        write(TARGET + "\\lib\\tunes.jar", "tu");
        assertSays(
                3,
                "monochord: a file of the last build is missing or damaged, and \"" + TARGET
                        + "\" cannot be written to build again.\n",
                start());
        write(TARGET + "\\libraries", "lib/chords.jar");
        assertSays(7, "", start());
        Files.delete(house.path(TARGET + "\\monochord.jar"));
        assertSays(3, "monochord: cannot build: \"" + TARGET + "\" cannot be written.\n", start());
    }

    @Test
    @DisplayName("it takes the JDK in JAVA_HOME, else the java on the PATH, and says what is wrong with it")
    void whichJava() throws IOException {
        jdk("C:\\old", "11.0.2");
        house.environment().put("JAVA_HOME", "C:\\old");
        assertSays(3, "monochord: the Java in \"C:\\old\" is version 11.0.2." + NEEDS, start());
        Files.delete(house.path("C:\\old\\bin\\javac.exe"));
        assertSays(3, "monochord: the Java in \"C:\\old\" is a runtime without a compiler, a JRE." + NEEDS, start());
        house.environment().put("JAVA_HOME", "C:\\none");
        assertSays(3, "monochord: there is no bin\\java.exe in \"C:\\none\"." + NEEDS, start());
        house.environment().remove("JAVA_HOME");
        assertSays(3, "monochord: no Java was found." + NEEDS, start());
        house.javaOnPath = JDK;
        assertBuilds(BUILDING);
        jdk("C:\\new", "25-ea");
        house.environment().put("JAVA_HOME", "C:\\new");
        assertStarts();
    }

    /** Lines that begin a command, by number; those within a block in parentheses belong to its first. */
    private static List<String> unwalked(List<String> lines, Set<String> walked) {
        List<String> missing = new ArrayList<>();
        int depth = 0;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            boolean isCommand = depth == 0 && !line.isEmpty() && !line.matches("(rem\\b|:).*");
            if (isCommand && !walked.contains(Integer.toString(i + 1))) {
                missing.add(line);
            }
            if (!line.matches("rem\\b.*")) {
                depth += line.endsWith("(") ? 1 : 0;
                depth -= line.startsWith(")") ? 1 : 0;
            }
        }
        return missing;
    }

    /** Each {@code if}, {@code &&} and {@code ||} goes either way in the tests above. */
    private static List<String> oneWay(List<String> lines, Set<String> walked) {
        return walked.stream()
                .filter(way -> way.matches("\\d+.*[+-].*"))
                .filter(way -> !walked.contains(otherWay(way)))
                .map(way -> lines.get(Integer.parseInt(way.replaceAll("\\D.*", "")) - 1)
                                .strip() + " " + way)
                .toList();
    }

    private static String otherWay(String way) {
        Matcher found = Pattern.compile("(\\d+(?:&&|\\|\\|)?)([+-])(.*)").matcher(way);
        assertTrue(found.matches(), way);
        return found.group(1) + (found.group(2).equals("+") ? "-" : "+") + found.group(3);
    }

    @Test
    @DisplayName("every line and every branch is walked by the tests above")
    void everyBranchIsWalked() throws Exception {
        int tests = 0;
        for (Method method : WindowsLauncherTest.class.getDeclaredMethods()) {
            if (method.isAnnotationPresent(Test.class) && !method.getName().equals("everyBranchIsWalked")) {
                build();
                method.invoke(this);
                tests++;
            }
        }
        assertTrue(tests > 10, "only " + tests);
        List<String> lines = Files.readAllLines(Path.of("monochord.cmd"));
        assertEquals(List.of(), unwalked(lines, walked));
        assertEquals(List.of(), oneWay(lines, walked));
    }
}
