package monochord.shell.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of the attack class: OWASP, "Path Traversal", title from memory. */
class ReplaySandboxTest {
    @TempDir
    private Path base;

    private Path folder() throws IOException {
        return Files.createDirectories(base.resolve("sealed"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../x.md",
                "a/../../x.md",
                "..",
                "/etc/passwd",
                "/",
                "../sealed2/x",
                "./../x",
                "a/b/c/../../../../x",
                "//x"
            })
    void noNameLeadsOut(String name) throws IOException {
        ReplaySandbox seal = ReplaySandbox.around(folder());

        String said = assertThrows(Unreadable.class, () -> seal.file(name)).getMessage();
        assertTrue(said.contains("in a replay no file outside is touched"), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"x.md", "a/x.md", "a/../x.md", "..x", "x..", "C:\\x", "%2e%2e%2fx", "..\\x"})
    void otherNamesStayWithin(String name) throws IOException {
        assertTrue(ReplaySandbox.around(folder()).file(name).startsWith(folder()));
    }

    @Test
    void noLinkLeadsOut() throws IOException {
        Path secret = Files.writeString(base.resolve("secret.md"), "secret");
        Files.createSymbolicLink(folder().resolve("link.md"), secret);
        Files.createSymbolicLink(folder().resolve("up"), base);
        Files.createSymbolicLink(folder().resolve("dangling"), base.resolve("gone"));
        ReplaySandbox seal = ReplaySandbox.around(folder());

        for (String name : new String[] {"link.md", "up", "up/secret.md", "dangling", "dangling/x"}) {
            assertThrows(Unreadable.class, () -> seal.file(name), name);
        }
    }

    @Test
    void whatIsTypedIsCountedTogetherHoweverDeep() throws IOException {
        ReplaySandbox outer = ReplaySandbox.around(folder());
        ReplaySandbox inner = outer.within(folder());
        int typed = 0;
        while (typed < 20_000 && (typed % 2 == 0 ? outer : inner).takesLine()) {
            typed++;
        }
        assertEquals(10_000, typed);
        assertFalse(inner.takesLine());
        assertFalse(outer.isDeepest());
        assertTrue(inner.isDeepest());
    }

    @Test
    void whoHasHadEnoughStopsAllOfIt() throws IOException {
        ReplaySandbox outer = ReplaySandbox.around(folder());
        ReplaySandbox inner = outer.within(folder());
        assertFalse(inner.isStopped());
        outer.stop();
        assertTrue(inner.isStopped());
    }
}
