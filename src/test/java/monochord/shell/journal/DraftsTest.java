package monochord.shell.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drafts of sittings that go on, were left, and were killed; the other sittings are processes of their own. */
class DraftsTest {
    @TempDir
    private Path home;

    /** Another program: looks for what was broken off, or keeps a draft until it is killed. */
    public static final class Other {
        private Other() {}

        public static void main(String[] arguments) throws IOException {
            Drafts drafts = new Drafts(Path.of(arguments[1]), System::currentTimeMillis);
            if (arguments[0].equals("look")) {
                System.out.println(drafts.brokenOff().isPresent());
                return;
            }
            drafts.drafting().append(() -> "of " + ProcessHandle.current().pid(), () -> "");
            System.out.println("kept");
            System.in.read(); // until it is killed, or whoever started it is gone
        }
    }

    private Process other(String what) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Other.class.getName(),
                        what,
                        home.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private Process another() throws IOException {
        Process process = other("keep");
        assertEquals("kept", new BufferedReader(process.inputReader()).readLine());
        return process;
    }

    private boolean othersSeeOneBrokenOff() throws IOException {
        return Boolean.parseBoolean(new BufferedReader(other("look").inputReader()).readLine());
    }

    private Drafts drafts() {
        return new Drafts(home, () -> 7);
    }

    private static Drafting begun(Drafts drafts, String text) {
        Drafting drafting = drafts.drafting();
        assertEquals(Optional.empty(), drafting.append(() -> text, () -> ""));
        return drafting;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(home.resolve("drafts"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void nothingIsMadeBeforeSomethingIsNoted() {
        drafts().drafting().leave(false);
        assertEquals(Optional.empty(), drafts().latest());
        assertFalse(Files.exists(home.resolve("drafts")));
    }

    @Test
    void whatIsAddedStandsBehindAndIsOnDisk() throws IOException {
        Drafts drafts = drafts();
        Drafting drafting = begun(drafts, "one");
        drafting.append(() -> "all", () -> " two");

        assertEquals("one two", Files.readString(home.resolve("drafts").resolve(names().get(0))));
        drafting.leave(false);
        assertTrue(names().get(0).startsWith("left-7-"), names().toString());
        assertEquals("one two", Files.readString(drafts.latest().orElseThrow()));
        assertEquals(Optional.empty(), drafts.brokenOff());
    }

    @Test
    void whatWasSavedLeavesNothing() throws IOException {
        begun(drafts(), "one").leave(true);
        assertEquals(List.of(), names());
    }

    @Test
    void aKilledSittingIsBrokenOffAndALivingOneIsNot() throws Exception {
        Process one = another();
        Process two = another();
        assertEquals(2, names().size());
        assertEquals(Optional.empty(), drafts().brokenOff());

        one.destroyForcibly();
        one.waitFor();
        assertEquals("of " + one.pid(), Files.readString(drafts().brokenOff().orElseThrow()));
        two.destroyForcibly();
        two.waitFor();
        assertEquals("of " + two.pid(), Files.readString(drafts().brokenOff().orElseThrow()), "the latest");
    }

    /** Where a process loses its locks on a file as soon as it closes it once, looking must not be that once. */
    @Test
    void lookingAtTheDraftsGivesNoneOfThemAway() throws Exception {
        Drafts drafts = drafts();
        Drafting mine = begun(drafts, "mine");
        assertEquals(Optional.empty(), drafts.latest());
        assertEquals(Optional.empty(), drafts.brokenOff());

        assertFalse(othersSeeOneBrokenOff());
        mine.leave(false);
        assertFalse(othersSeeOneBrokenOff());
    }

    @Test
    void aFewAreKeptAndTheEldestGo() throws Exception {
        Drafts drafts = drafts();
        for (int i = 0; i < 20; i++) {
            begun(drafts, "of day " + i).leave(false);
            for (String name : names()) {
                Path file = home.resolve("drafts").resolve(name);
                if (Files.readString(file).equals("of day " + i)) {
                    Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_000L + i));
                }
            }
        }
        assertEquals(8, names().size());
        assertEquals("of day 19", Files.readString(drafts.latest().orElseThrow()));
        for (String name : names()) {
            String said = Files.readString(home.resolve("drafts").resolve(name));
            assertTrue(Integer.parseInt(said.substring("of day ".length())) >= 12, said);
        }
    }

    /** However old they are. */
    @Test
    void whatIsAliveIsNotPruned() throws Exception {
        Process living = another();
        try {
            Path its = home.resolve("drafts").resolve(names().get(0));
            Files.setLastModifiedTime(its, FileTime.fromMillis(0));
            for (int i = 0; i < 20; i++) {
                begun(drafts(), "later").leave(false);
            }
            assertTrue(Files.exists(its));
        } finally {
            living.destroyForcibly();
        }
    }

    @Test
    void whereNoneCanBeKeptItIsSaidOnce() throws IOException {
        Files.writeString(home.resolve("drafts"), "a file where the folder should be", StandardCharsets.UTF_8);
        Drafting drafting = drafts().drafting();

        assertNotEquals(Optional.empty(), drafting.append(() -> "one", () -> ""));
        assertEquals(Optional.empty(), drafting.append(() -> "two", () -> ""));
        assertFalse(drafting.isKept());
        drafting.leave(false);
    }
}
