package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.notebook.NotebookReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sitting at the prompt is killed, without a chance to tidy up, and is brought back. */
@Tag("attack")
class KilledSittingTest {
    private static final String OFFER = "A sitting was broken off; open draft brings it back.";

    @TempDir
    private Path home;

    /** Another program: somebody at a prompt, until it is killed. */
    public static final class Somebody {
        private Somebody() {}

        public static void main(String[] arguments) throws IOException {
            try (Typist typist = new Typist(80, 24, Path.of(arguments[0]))) {
                for (String line : List.of(arguments).subList(1, arguments.length)) {
                    typist.types(line);
                }
                typist.press("half a l");
                System.out.println("typed");
                System.in.read(); // until it is killed, or whoever started it is gone
            }
        }
    }

    private Process somebody(String... lines) throws IOException {
        List<String> command = Stream.concat(
                        Stream.of(
                                Path.of(System.getProperty("java.home"), "bin", "java")
                                        .toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-XX:+UseSerialGC",
                                "-cp",
                                System.getProperty("java.class.path"),
                                Somebody.class.getName(),
                                home.toString()),
                        Stream.of(lines))
                .toList();
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        assertEquals("typed", new BufferedReader(process.inputReader()).readLine());
        return process;
    }

    private static void kill(Process process) throws InterruptedException {
        process.destroyForcibly();
        process.waitFor();
    }

    private List<Path> drafts() throws IOException {
        try (Stream<Path> files = Files.list(home.resolve("drafts"))) {
            return files.sorted().toList();
        }
    }

    @Test
    void whatWasTypedComesBackWithKeyQuestionAndJava() throws Exception {
        kill(somebody("key Eb", "note The *last* chorus.", "var a = 40 + 2;", "ask borrowed-chord of bVI in A"));

        try (Typist typist = new Typist(80, 50, home)) {
            assertTrue(typist.greeting().endsWith(OFFER), typist.greeting());
            String back = typist.types("open draft");
            assertTrue(back.contains("The last chorus.") && back.contains("What you type goes on from here."), back);
            assertFalse(back.contains("not ours"), back);
            assertTrue(typist.types("F A C").startsWith("Yes: F, which is F A C."));
            assertTrue(typist.types("show IV").contains("A♭ C E♭"));
            assertTrue(typist.types("a + 1").contains("43"));
            assertEquals(1, drafts().size());
            typist.types("save evening");
        }
        Path saved = home.resolve("evening.md");
        assertEquals(List.of(), NotebookReader.read(saved).faults());
        assertEquals(
                6,
                NotebookReader.read(saved).notebook().orElseThrow().exchanges().size());
        Run run = new Run.Outside().inFolder(home).atHome(home).run("replay", "evening.md");
        assertEquals("evening.md: holds, 6 lines.\n", run.result(0));
    }

    /** A tune of a book, changed and never saved, comes back with what was changed, though its book has gone. */
    @Test
    void aSongFromABookComesBackWithItsChanges() throws Exception {
        Path book = Files.writeString(
                home.resolve("book.abc"),
                "X:1\nT:One\nM:4/4\nL:1/4\nK:C\n\"C\"c4|\n\nX:2\nT:Two\nM:4/4\nL:1/4\nK:F\n\"F\"f4|\"Bb\"d4|\"F\"f4|\n");
        kill(somebody("song book.abc tune two", "change tune bar 2 to Bbm because it sinks", "change key to G"));
        Files.delete(book);

        try (Typist typist = new Typist(80, 50, home)) {
            typist.types("open draft");
            String song = typist.types("song");
            assertTrue(song.startsWith("Two G major, 4/4 Form: Tune (3 bars) Tune G | Cm | G |"), song);
            assertTrue(song.contains("Tune, bar 2: Bb to Bbm. it sinks"), song);
            assertTrue(typist.types("undo").contains("taken back"));
            assertTrue(typist.types("undo").contains("taken back"));
            assertTrue(typist.types("song").contains("F | B♭ | F |"));
        }
    }

    /** The terminal has gone, and with it whoever might have pressed ctrl-D; guard: {@code Prompt.stands}. */
    @Test
    void aWindowThatIsClosedBreaksASittingOff() throws Exception {
        try (Typist typist = new Typist(80, 24, home)) {
            typist.types("show C");
            typist.closesTheWindow();
            typist.seesItEnd();
            typist.sitting().leave();
            assertFalse(typist.sitting().hasEnded());
        }
        assertTrue(drafts().get(0).getFileName().toString().startsWith("open-"), drafts().toString());
        try (Typist typist = new Typist(80, 24, home)) {
            typist.press(Typist.CTRL_D);
            typist.seesItEnd();
            assertTrue(typist.sitting().hasEnded());
        }
    }

    /** What is found broken off is offered again until somebody brings it back or it grows old. */
    @Thorough.Only
    @Test
    void whoDoesNotWantItBackIsNotMadeTo() throws Exception {
        kill(somebody("show C"));
        try (Typist typist = new Typist(80, 24, home)) {
            assertTrue(typist.greeting().endsWith(OFFER), typist.greeting());
            typist.types("show D");
            typist.press("quit" + Typist.ENTER);
            typist.seesItEnd();
            typist.sitting().leave();
        }
        try (Typist typist = new Typist(80, 24, home)) {
            assertTrue(typist.greeting().endsWith(OFFER), typist.greeting());
            assertTrue(typist.types("open draft").contains("▸ show C"));
            String left = typist.types("open draft");
            assertTrue(left.contains("▸ show D"), left);
        }
    }

    @Test
    void aSecondPromptLeavesTheFirstAlone() throws Exception {
        Process first = somebody("show C");
        try (Typist second = new Typist(80, 24, home)) {
            assertFalse(second.greeting().contains(OFFER), second.greeting());
            second.types("show D");
            assertEquals("There is no draft that was not saved.", second.types("open draft"));
            assertEquals(2, drafts().size());
        }
        try (Typist third = new Typist(80, 24, home)) {
            assertFalse(third.greeting().contains(OFFER), third.greeting());
        }
        kill(first);
    }

    /** Cut where a kill may cut it: anywhere, in the middle of a character too. */
    @Test
    void aDraftThatWasCutAnywhereComesBack() throws Exception {
        kill(somebody("show bVI", "note Ab♭.", "4 1 5 b6"));
        byte[] whole = Files.readAllBytes(drafts().get(0));
        Path other = drafts().get(0);
        for (int cut = 1; cut < whole.length; cut += Thorough.times(397, 97)) {
            byte[] part = java.util.Arrays.copyOf(whole, cut);
            for (Path file : drafts()) {
                Files.delete(file);
            }
            Files.write(other, part);
            Run run = new Run.Outside()
                    .atHome(home)
                    .typing("open draft\nshow C\n")
                    .run();
            assertTrue(run.out().contains("What you type goes on from here."), cut + ": " + run.out() + run.err());
            assertTrue(run.out().contains("C  C E G"), run.out());
        }
    }
}
