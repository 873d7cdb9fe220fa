package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.shell.verb.Verbs;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a command of the system is expected to say of itself. */
class ManualTest {
    @TempDir
    private Path folder;

    @Test
    @DisplayName("the version names the program, the Java and the system")
    void theVersionIsTold() {
        String told = Run.of("--version").result(0);
        assertTrue(told.matches("Monochord \\S.*; Java [0-9].* of .*; \\S.* \\S+\n"), told);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    --versoin                 | There is no option --versoin.                 | Did you mean --version?
                    --frobnicate show C       | There is no option --frobnicate.              | --help lists them.
                    --completion csh          | "csh" is no shell I know.                     | Write --completion bash, zsh or fish.
                    --completion              | "" is no shell I know.                        | Write --completion bash, zsh or fish.
                    """)
    @DisplayName("an option that is none is told with the nearest")
    void anUnknownOptionIsTold(String line, String message, String advice) {
        assertEquals(message + "\n" + advice + "\n", Run.of(line).message(2));
    }

    @Test
    @DisplayName("behind a verb, too")
    void anUnknownOptionBehindAVerbIsTold() {
        String told = Run.of("play C --wave x.wav").message(2);
        assertTrue(
                told.startsWith(
                        "\"C --wave x.wav\" is not a sentence: there is no option --wave here, did you mean\n--wav."),
                told);
    }

    @Test
    @DisplayName("help lists each option, and what the exit status means")
    void helpListsTheOptions() {
        String help = Run.of("--help").result(0);
        for (String option : List.of("--json", "--plain", "--ascii", "--notes english", "--version", "--manual")) {
            assertTrue(help.contains("\n" + option), help);
        }
        assertTrue(help.contains("Exit status: 0 done, 1 the answer is no, 2 it cannot be read"), help);
        assertFalse(Run.of("help").result(0).contains("--json"), "not at the prompt");
    }

    @Test
    @DisplayName("the manual page tells every verb, and man has nothing to say against it")
    void theManualTellsEveryVerb() throws Exception {
        String page = Run.of("--manual").result(0);
        for (String verb : new Verbs().words()) {
            assertTrue(page.contains("\n.B " + verb), verb);
        }
        assertTrue(
                page.lines().noneMatch(line -> line.startsWith(".") && !line.matches("\\.(TH|SH|TP|PP|B|I|br)( .*)?")));
        assumeTrue(isThere("man"));
        Path file = Files.writeString(folder.resolve("monochord.1"), page);
        assertEquals("", said("man", "--warnings", "-E", "UTF-8", "-l", "-Tutf8", "-Z", file.toString()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    reco           | recolour
                    play C --wa    | --wav
                    voice F spr    | spread
                    show C --js    | --json
                    --ver          | --version
                    """)
    @DisplayName("bash completes a verb, a word behind it and an option")
    void bashCompletes(String typed, String completed) throws Exception {
        assumeTrue(isThere("bash"));
        Path script = Files.writeString(
                folder.resolve("completion"), Run.of("--completion bash").result(0));
        String words = "COMP_WORDS=(monochord " + typed + "); COMP_CWORD=$((${#COMP_WORDS[@]} - 1));";
        String line = ". " + script + "; " + words + " _monochord; echo \"${COMPREPLY[@]}\"";
        assertEquals(completed + "\n", printed("bash", "-c", line));
    }

    @ParameterizedTest
    @ValueSource(strings = {"zsh", "fish"})
    @DisplayName("the other shells can read theirs")
    void theOthersReadTheirs(String shell) throws Exception {
        String script = Run.of("--completion " + shell).result(0);
        assertTrue(script.contains("recolour") && script.contains("--version".substring(2)), script);
        assumeTrue(isThere(shell));
        Path file = Files.writeString(folder.resolve("completion"), script);
        assertEquals("", said(shell, "-n", file.toString()));
    }

    private static boolean isThere(String command) throws Exception {
        return new ProcessBuilder("sh", "-c", "command -v " + command)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start()
                        .waitFor()
                == 0;
    }

    /** What it complained about. */
    private static String said(String... command) throws Exception {
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        return all(process, process.getErrorStream());
    }

    private static String printed(String... command) throws Exception {
        Process process = new ProcessBuilder(command).start();
        return all(process, process.getInputStream());
    }

    private static String all(Process process, InputStream stream) throws IOException, InterruptedException {
        String all = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return all;
    }
}
