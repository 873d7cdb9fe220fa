package monochord.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import monochord.shell.sitting.CellAnswers;
import monochord.view.Look;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cells that do what they should not, all in one JVM that outlives every one of them. Each test names the guard without
 * which it fails.
 *
 * <p>Source of the attack classes: OWASP Top 10:2021, "A04 Insecure Design" (bounds on what one may use up), title from
 * memory.
 */
@Tag("attack")
class UnrulyCellTest {
    private static final Bench BENCH = new Bench();

    private ProcessHandle jvm;

    @AfterAll
    static void close() {
        BENCH.close();
    }

    @BeforeEach
    void definesSomething() {
        assertEquals("kept = 42", BENCH.says("int kept = 42"));
        jvm = BENCH.process();
    }

    @AfterEach
    void goesOnInTheSameJvm() {
        assertEquals("42", BENCH.says("kept"));
        assertEquals(jvm, BENCH.process());
    }

    /**
     * Guards: the deadline in {@code CellRun.watch}; for the one that sleeps, each enough, the JDK's own stop and the
     * interrupt in {@code Engine.stop}; that {@code Engine} puts values into words on the snippet's own thread, for the one
     * that never says what it is.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "while (true) { }",
                "Thread.sleep(60_000)",
                "new Object() { public String toString() { while (true) { } } }"
            })
    void whatTakesTooLongIsStopped(String text) {
        long begun = System.nanoTime();
        assertEquals(
                "Stopped, for it took longer than a cell may take. That is 1 second.",
                BENCH.saysWithin(Duration.ofSeconds(1), text));
        assertTrue(System.nanoTime() - begun >= Duration.ofSeconds(1).toNanos());
    }

    /** Guard: {@code stopAsked} in {@code CellRun.watch}; without it the time limit comes first, with other words. */
    @Test
    void whoeverHasEnoughStopsIt() throws Exception {
        CompletableFuture<String> said =
                BENCH.begins("var begun = new java.io.File(\"begun\").createNewFile(); while (true) { }");
        Path begun = BENCH.cell().folder().resolve("begun");
        while (!Files.exists(begun)) {
            Thread.sleep(10);
        }
        BENCH.cell().stop();
        String answer = said.get();
        assertTrue(answer.endsWith("Stopped."), answer);
        Files.delete(begun);
    }

    /** Guard: that {@code Engine.evaluate} hands on what a snippet throws, whatever it is. */
    @Test
    void whatCallsItselfWithoutEndIsToldSo() {
        BENCH.says("int deep(int n) { return deep(n + 1) + 1; }");
        assertEquals("Something calls itself without end.", BENCH.says("deep(0)"));
    }

    /** Guard: the stack in {@code SandboxMain}; without it the compiler breaks, and what it says of itself is printed. */
    @Test
    void textMayBeNestedDeeply() {
        assertEquals("1", BENCH.says("(".repeat(4900) + "1" + ")".repeat(4900)));
    }

    /** Guard: {@code room} in {@code Output}. */
    @Test
    void whatIsPrintedIsCut() {
        assertEquals(
                "x".repeat(10_000) + "…and104847600morecharactersthatarenotshown.",
                BENCH.says("for (int i = 0; i < 100; i++) System.out.print(\"x\".repeat(1 << 20))")
                        .replace(" ", ""));
    }

    /** Guard: {@code Limits.cut} in {@code Rendering}; the line would take so long a message for a broken JVM. */
    @Test
    void aValueIsCut() {
        assertEquals(
                "\"" + "x".repeat(1999) + "…(20000002charactersinall)",
                BENCH.says("\"x\".repeat(20_000_000)").replace(" ", ""));
    }

    /** Guard: {@code Limits.cut} in {@code Trouble}. */
    @Test
    void whatAnExceptionSaysIsCut() {
        assertEquals(
                "X" + "x".repeat(1999) + "…(20000001charactersinall)",
                BENCH.says("throw new IllegalStateException(\"x\".repeat(20_000_000))")
                        .replace(" ", ""));
    }

    /** Guard: {@code LineState.send} counts. */
    @Test
    void onlySoMuchIsPlayed() {
        assertEquals(
                "One cell plays and shows at most 16 things.",
                BENCH.says("for (int i = 0; i < 1000; i++) play(\"C\")"));
    }

    /** Guard: the launch mechanism in {@code Launch}, and {@code SandboxMain.closeDoors}. */
    @Test
    void noProgramIsStarted() {
        assertEquals(
                "A cell starts no other programs.", BENCH.says("new ProcessBuilder(\"sh\", \"-c\", \"echo\").start()"));
    }

    /** Guard: {@code SandboxMain.closeDoors}; what comes from the line is no snippet's to read. */
    @Test
    void thereIsNothingToReadFrom() {
        assertEquals("-1", BENCH.says("System.in.read()"));
        assertEquals("null", BENCH.says("System.console()"));
    }

    /** Guard: {@code Launch.ENVIRONMENT}; on newer JDKs {@code SandboxMain.closeDoors} closes that door, too. */
    @Test
    void theEnvironmentIsTheLearnersOwnBusiness() {
        String said = BENCH.says("System.getenv(\"PATH\") + System.getenv(\"HOME\")");
        assertTrue(
                List.of("\"nullnull\"", "A cell sees nothing of what is set around it.")
                        .contains(said),
                said);
    }

    /** Guard: {@code Confinement}, where the system offers it. */
    @Test
    void thereIsNoNetworkAndNobodyElse() throws IOException {
        assumeTrue(Confinement.isOffered());
        try (ServerSocket listening = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String said = BENCH.says("new java.net.Socket(\"127.0.0.1\", " + listening.getLocalPort() + ")");
            assertTrue(said.contains("unreachable"), said);
        }
        String us = "/proc/" + ProcessHandle.current().pid() + "/environ";
        assertEquals("false", BENCH.says("new java.io.File(\"" + us + "\").exists()"));
    }

    /** Guard: {@code -Xmx256m} in {@code Launch}. */
    @Test
    void memoryIsBounded() {
        assertEquals("true", BENCH.says("Runtime.getRuntime().maxMemory() <= 256 << 20"));
    }

    /** Guard: {@code setsid} in {@code Launch}. Field 6 of the line is the session (proc_pid_stat(5)). */
    @Test
    void itHasASessionOfItsOwn() throws Exception {
        Path stat = Path.of("/proc", Long.toString(jvm.pid()), "stat");
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(stat), "no /proc here");
        String[] fields = Files.readString(stat).replaceAll("\\(.*\\)", "java").split(" ");
        assertEquals(Long.toString(jvm.pid()), fields[5]);
    }

    /** Guard: {@code SafeText} in {@code CellReportBuilder}; it is held message by message in {@link CellReportTest}. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "System.out.println(\"\\u001b]0;owned\\u0007\\u001b[2J\\u009b31m\")",
                "\"\\u001b]0;owned\\u0007\\u001b[2J\\u009b31m\"",
                "throw new RuntimeException(\"\\u001b]0;owned\\u0007\\u009b31m\")"
            })
    void noControlCharacterComesThrough(String text) {
        String raw =
                CellAnswers.of(BENCH.report(text), text).text(Look.ofPipe()).plain();
        assertTrue(raw.contains("owned"), raw);
        assertTrue(raw.chars().allMatch(c -> c == '\n' || !Character.isISOControl(c)), raw);
    }
}
