package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.text.SafeText;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Lessons and notebooks made to do harm are opened, replayed, checked and published: nothing in them runs unasked, nothing
 * of them steers a terminal or reaches a page as more than text, no file is touched, and the line answers the next line.
 *
 * <p>Source of the attack classes: OWASP Top 10:2021, "A03 Injection" and "A08 Software and Data Integrity Failures"; OWASP,
 * "Path Traversal", "Cross Site Scripting (XSS)", "OS Command Injection", "Denial of Service Cheat Sheet"; for marks that
 * turn text round, N. Boucher and R. Anderson, Trojan Source, 2021. Titles from memory.
 */
@Tag("attack")
class HostileNotebooksTest {
    private static final String PLANT = "new java.io.File(\"MARK\").createNewFile();";
    private static final String SHELL = "new ProcessBuilder(\"sh\", \"-c\", \"touch MARK\").start();";
    private static final String LESSON_HEAD =
            "---\ntitle: T\ngrade: 1\nneeds: []\nskills: [borrowed-chord]\n---\n\n## A\n\n";

    @TempDir
    private Path base;

    private static Arguments of(String what, String text) {
        return Arguments.of(what, text);
    }

    private static Arguments typed(String what, String... lines) {
        return of(what, NotebookDesk.notebook(lines));
    }

    static Stream<Arguments> steering() {
        return Stream.of(
                        "\u001b[2J\u001b[H",
                        "\u001b]0;title\u0007",
                        "\u001b]8;;file:///etc/passwd\u001b\\x\u001b]8;;\u001b\\",
                        "\u001b]52;c;cm0gLXJm\u0007",
                        "\u009b2J",
                        "\b\b\b\b",
                        "\u202eevil\u2066",
                        "\u200b\u2028\u2029\ufeff",
                        "\u0000",
                        "\r▸ quit\r",
                        "&#27;[2J",
                        "&#x202e;")
                .map(evil -> of(
                        "steers a terminal",
                        "---\ntitle: T" + evil + "\nkey: C" + evil + "\n---\n\n# T" + evil + "\n\nWords " + evil
                                + " [l" + evil + "](u" + evil + ")\n\n```console\n▸ show C" + evil + "\nC" + evil
                                + "\n\n▸ note " + evil + "\n\n▸ ask triad-spelling of " + evil + "\n```\n"));
    }

    static Stream<Arguments> fences() {
        return Stream.of(
                        "```console\n▸ show C\n```\n▸ PLANT\n```\n",
                        "```console\n▸ show C\n``` x\n▸ PLANT\n```\n",
                        "````console\n```console\n▸ PLANT\n```\n````\n",
                        "~~~console\n▸ PLANT\n~~~\n",
                        "~~~~console\n~~~\n▸ PLANT\n~~~~\n",
                        "```console sh {.run}\n▸ PLANT\n```\n",
                        "```console\t\n▸ PLANT\n```\n",
                        "```&#99;onsole\n▸ PLANT\n```\n",
                        "   ```console\n   ▸ PLANT\n▸ PLANT\n   ```\n",
                        "    ```console\n    ▸ PLANT\n    ```\n",
                        "> ```console\n> ▸ PLANT\n> ```\n",
                        "- ```console\n  ▸ PLANT\n  ```\n",
                        "```Console\n▸ PLANT\n```\n",
                        "```console\n▸ var a = 1;\n▹ PLANT\n▹ PLANT\n```\n",
                        "```console\n$ PLANT\n▸ PLANT\n\n$ PLANT\n```\n",
                        "```console\n▸ PLANT",
                        "```code\nPLANT\n```\n",
                        "```java\nPLANT\n```\n",
                        "<!--\n```console\n-->\n▸ PLANT\n```\n",
                        "[x]: <\n```console\n▸ PLANT\n```\n",
                        "---\nkey: C\n```console\n▸ PLANT\n```\n---\n")
                .map(text -> of("tricks with fences", text.replace("PLANT", PLANT)));
    }

    static Stream<Arguments> others() {
        return Stream.of(
                of(
                        "scripts",
                        "# <script>alert(1)</script>\n\n<img src=x onerror=alert(1)> [a](javascript:alert(1)) "
                                + "![](http://x/y)\n\n```console\n▸ <script>alert(1)</script>\n<script>alert(1)</script>\n```\n"),
                typed(
                        "paths",
                        "save ../../MARK",
                        "save MARK",
                        "play C --wav MARK",
                        "play C --midi ../../../../../../MARK",
                        "publish x --html MARK",
                        "open /etc/passwd",
                        "check /etc/shadow",
                        "fit --file /proc/self/environ",
                        "bank /dev/zero",
                        "open /dev/stdin",
                        "replay /proc/kmsg"),
                of("a lesson out of the library", "---\nlesson: ../../../etc/passwd\n---\n\nx\n"),
                typed("loops", "while (true) {}", "for (;;) { new Thread(() -> { for (;;) {} }).start(); }", "PLANT"),
                typed("forks", SHELL, "Runtime.getRuntime().exec(\"touch MARK\");", "System.exit(1);"),
                typed("much output", "for (int i = 0; i < 1_000_000; i++) System.out.println(\"x\".repeat(100));"),
                typed(
                        "variables of nobody",
                        "play $x --wav MARK",
                        "${key}",
                        "note ${PLANT}",
                        "show $(touch MARK)",
                        "`touch MARK`"),
                typed(
                        "much of one thing",
                        Stream.generate(() -> "show C")
                                .limit(Thorough.times(200, 2000))
                                .toArray(String[]::new)),
                typed(
                        "long lines",
                        "show " + "C ".repeat(4900),
                        "(".repeat(9000),
                        "x".repeat(Thorough.times(50_000, 200_000)),
                        "voice " + "Cmaj9 ".repeat(60)),
                typed(
                        "large numbers",
                        "play C at 999999999",
                        "play C loop 99999999",
                        "voice C reach 99999999",
                        "tempo 1e9"),
                of("a head that never ends", "---\n" + "title: x\n".repeat(Thorough.times(20_000, 100_000))),
                of(
                        "a head that unfolds",
                        "---\na: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\nseed: " + "9".repeat(100_000) + "\n---\n"),
                of("deep quotes", "> ".repeat(200_000)),
                of(
                        "deep lists",
                        Stream.iterate("", set -> set + "  ")
                                .limit(Thorough.times(200, 900))
                                .map(set -> set + "- a\n")
                                .reduce("", String::concat)),
                of("unclosed everything", "[*_`<(".repeat(100_000)),
                of("nothing", ""),
                of("larger than anybody writes", "words ".repeat(400_000)),
                of("a lesson with Java", LESSON_HEAD + "```code\n" + PLANT + "\n" + SHELL + "\n```\n"),
                of("a lesson with HTML", LESSON_HEAD + "<script>alert(1)</script> ${key} ${../x}\n"));
    }

    static Stream<Arguments> hostile() {
        return Stream.of(
                        Thorough.spread(steering().toList(), 4, 0).stream(),
                        Thorough.spread(fences().toList(), 7, 0).stream(),
                        others())
                .flatMap(set -> set);
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("hostile")
    void theLineLivesAndNothingElseHappens(String what, String text) throws IOException {
        NotebookDesk desk = NotebookDesk.in(base);
        Path mark = base.resolve("mark");
        desk.write("1-odd.md", text.replace("MARK", mark.toString()));
        Map<String, String> before = NotebookDesk.all(base);

        Run run = desk.types(
                "open 1-odd.md",
                "show Ab",
                "yes",
                "replay 1-odd.md",
                "check 1-odd.md",
                "publish 1-odd.md --html page.html",
                "show Eb7");
        String all = run.out() + run.err();
        assertTrue(all.codePoints().allMatch(SafeText::isSafe), all);
        assertFalse(all.contains("fault of ours"), all);
        assertTrue(run.out().contains("A♭ C E♭") && run.out().contains("E♭ G B♭ D♭"), all);
        assertFalse(Files.exists(mark), "something ran");
        page(desk);
        assertEquals(before, without(NotebookDesk.all(base), "home/"));
        assertEquals(
                0,
                desk.says("replay 1-odd.md")
                        .err()
                        .codePoints()
                        .filter(c -> !SafeText.isSafe(c))
                        .count());
    }

    /** The page, if there is one, holds no script but ours and no tag of theirs. */
    private static void page(NotebookDesk desk) throws IOException {
        Path page = desk.folder().resolve("page.html");
        if (Files.deleteIfExists(page.resolveSibling("none")) || !Files.exists(page)) {
            return;
        }
        String html = Files.readString(page);
        assertFalse(
                html.contains("<script>alert") || html.contains("<img src=x") || html.contains("javascript:"), html);
        assertTrue(html.codePoints().allMatch(SafeText::isSafe), html);
        Files.delete(page);
    }

    /** What a sitting itself leaves at home. */
    private static Map<String, String> without(Map<String, String> all, String place) {
        all.keySet().removeIf(name -> name.startsWith(place));
        return all;
    }

    @Test
    void namesOfFilesSteerNothingEither() throws IOException {
        NotebookDesk desk = NotebookDesk.in(base);
        for (String name :
                List.of("odd\u001b[2J.md", "\u202egm.md", "a\nb.md", "-x.md", "--trust.md", "$(touch x).md", "~.md")) {
            desk.write(name, NotebookDesk.notebook("show C"));
            for (String verb : List.of("open ", "replay ", "check ", "save ")) {
                Run run = desk.types("show C", verb + name, "show Ab");
                String all = run.out() + run.err();
                assertTrue(all.codePoints().allMatch(SafeText::isSafe), all);
                assertTrue(run.out().contains("A♭ C E♭"), all);
            }
        }
    }

    /** The same at a terminal, whose typist finds every control character, too wide line and fault of ours. */
    @Test
    void aTerminalSeesNoneOfIt() throws IOException {
        Path home = Files.createDirectory(base.resolve("home"));
        try (Typist typist = new Typist(80, 24, home)) {
            int count = 0;
            for (Arguments one : Stream.concat(steering(), fences()).toList()) {
                String text = ((String) one.get()[1]).replace(PLANT, "1 + 1;");
                Files.writeString(home.resolve("odd" + ++count + ".md"), text);
                typist.types("open odd" + count);
                assertTrue(typist.types("show Ab").startsWith("A♭ A♭ C E♭"), text);
            }
        }
    }
}
