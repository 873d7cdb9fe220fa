package monochord.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import monochord.Thorough;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells that end their JVM: it is built anew, and what went well before is there again. */
@Tag("attack")
class EndedCellTest {
    private static final Bench BENCH = new Bench();
    private static final String ANEW = " It begins anew; the one cell that went well before has been run again.";

    @AfterAll
    static void close() {
        BENCH.close();
    }

    /**
     * Guards: patience that ends in {@code CellRun.watch}, for the one that catches everything on an older JDK, and loops
     * where a newer one does not look; {@code
     * -XX:+ExitOnOutOfMemoryError} in {@code Launch}; {@code Watchdog.count} for threads; that {@code Watchdog} tells the line when
     * the JVM leaves; {@code Link.read} for what is forged in its name; {@code JvmCell.repeat} for what was defined before. Patience is in seconds, and short only where it is
     * what ends.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            3600 | for (int count = 0; count < 400; count++) new Thread(() -> { while (true) try { Thread.sleep(9999); } catch (Throwable t) { } }).start() | This cell started more threads than a cell may have, so its Java was ended.
            3600 | { var out = new java.io.FileOutputStream(java.io.FileDescriptor.out); out.write(new byte[] {127, 0, 0, 0, 5, 0, 0}); out.flush(); Thread.sleep(60_000); } | The cell's Java has ended, and nobody knows why.
            """)
    void anEndedJvmIsBuiltAnew(int patience, String text, String told) {
        assertTrue(BENCH.says("var verse = progression(\"F C G Ab\")").startsWith("In C major F C G A♭"));
        ProcessHandle before = BENCH.process();
        String said = BENCH.saysWithin(Duration.ofSeconds(patience), text);
        assertEquals(told + " It begins anew; the cells that went well before have been run again.", counted(said));
        assertFalse(before.isAlive());
        assertEquals("4", BENCH.says("verse.chords().size()"));
    }

    @Thorough.Only
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 | new Object() { void on() { try { Stream.iterate(1, UnaryOperator.identity()).allMatch(Objects::nonNull); } catch (Throwable t) { on(); } } }.on() | This cell would not stop, so its Java was ended.
            3600 | { var all = new ArrayList<long[]>(); while (true) all.add(new long[1 << 20]); } | This cell used up all its memory (256 MB), and its Java has ended.
            3600 | System.exit(0) | This cell told Java to end. It did; the line goes on.
            3600 | Runtime.getRuntime().halt(7) | The cell's Java has ended, and nobody knows why.
            """)
    void anEndedJvmOfAnotherKindIsBuiltAnew(int patience, String text, String told) {
        anEndedJvmIsBuiltAnew(patience, text, told);
    }

    private static String counted(String said) {
        return said.replace("one cell that went well before has", "cells that went well before have")
                .replaceFirst("the \\d+ cells", "the cells");
    }

    /**
     * Guards, each enough: {@code still} in {@code LineState} and {@code RequestHandler}; that {@code JvmCell.repeat} hears nothing. For
     * what lies about: {@code folder.remove()} in {@code Link.end}; links are removed and never followed.
     */
    @Test
    void nothingIsHeardOrPrintedAgainAndNothingIsLeftLyingAbout(@TempDir Path outside) throws Exception {
        Path precious = Files.writeString(outside.resolve("precious"), "tune");
        CellReport first = BENCH.report("play(\"F C\"); show(\"C\"); System.out.println(\"loud\"); int n = 5");
        assertEquals(1, first.plays().size());
        assertEquals("true", BENCH.says("new java.io.File(\"a/b\").getAbsoluteFile().mkdirs()"));
        BENCH.says("java.nio.file.Files.createSymbolicLink(java.nio.file.Path.of(\"a/b/c\"), java.nio.file.Path.of(\""
                + outside + "\"))");
        Path folder = BENCH.cell().folder();
        assertTrue(Files.exists(folder.resolve("a/b/c/precious")));
        assertEquals(Path.of(System.getProperty("java.io.tmpdir")).toRealPath(), folder.getParent());

        CellReport exit = BENCH.report("System.exit(1)");
        assertEquals(
                "This cell told Java to end. It did; the line goes on. It begins anew; the cells that went well before have"
                        + " been run again.",
                counted(Bench.said(exit, "System.exit(1)")));
        assertEquals(List.of(), exit.plays());
        assertEquals(List.of(), exit.parts());
        assertEquals("5", BENCH.says("n"));
        assertFalse(Files.exists(folder));
        assertTrue(Files.exists(precious));
    }

    /** Guard: {@code CellHistory.note}; without it the JVM would be built anew for ever. */
    @Thorough.Only
    @Test
    void whatEndsTheJvmTheSecondTimeIsLeftOut(@TempDir Path outside) {
        Path been = outside.resolve("been");
        String once = "var been = java.nio.file.Path.of(\"" + been + "\");"
                + " if (java.nio.file.Files.exists(been)) System.exit(0);"
                + " java.nio.file.Files.createFile(been);";
        try (Bench bench = new Bench()) {
            bench.says("int n = 5");
            bench.says(once);
            assertTrue(Files.exists(been));
            assertEquals(
                    "This cell told Java to end. It did; the line goes on." + ANEW
                            + " Left out, for it did not go well this time: 1.",
                    bench.says("System.exit(0)"));
            assertEquals("5", bench.says("n"));
        }
    }

    /** Guard: {@code hasLeft} in {@code JvmCell.link}; without it the next cell is told that it ended Java, and not run. */
    @Thorough.Only
    @Test
    void anEndBehindACellsBackIsNotTheNextCells() throws Exception {
        try (Bench bench = new Bench()) {
            bench.says("int n = 5");
            ProcessHandle jvm = bench.process();
            jvm.destroyForcibly();
            jvm.onExit().get();
            assertEquals("5" + ANEW, bench.says("n"));
        }
    }

    /** Guard: {@code closed} in {@code JvmCell.link}. */
    @Test
    void aClosedCellStartsNothing() {
        Bench bench = new Bench();
        bench.close();
        assertEquals("Java cannot be run here: the sitting is over.", bench.says("1 + 1"));
        assertEquals(-1, bench.cell().pid());
    }
}
