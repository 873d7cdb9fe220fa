package monochord.shell.trust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Source of the attack class: OWASP Top 10:2021, "A08 Software and Data Integrity Failures", title from memory. */
class TrustedTest {
    private static final String ONE = "1".repeat(64);
    private static final String TWO = "2".repeat(64);

    @TempDir
    private Path base;

    private Path ours;
    private Path elsewhere;
    private Trusted trusted;

    @BeforeEach
    void setUp() throws IOException {
        ours = Files.createDirectory(base.resolve("ours"));
        elsewhere = Files.writeString(base.resolve("elsewhere.md"), "x");
        trusted = new Trusted(base.resolve("home"), List.of(ours, base.resolve("not there")));
    }

    @Test
    void whatLiesInOurFoldersIsOurs() throws IOException {
        Path file = Files.writeString(ours.resolve("a.md"), "x");
        assertTrue(trusted.isTrusted(file, ONE));
        assertTrue(trusted.isTrusted(ours.resolve("../ours/a.md"), ONE));
    }

    @Test
    void nothingElseIs() throws IOException {
        assertFalse(trusted.isTrusted(elsewhere, ONE));
        assertFalse(trusted.isTrusted(ours.resolve("../elsewhere.md"), ONE));
        assertFalse(trusted.isTrusted(ours.resolve("gone.md"), ONE));
        assertFalse(trusted.isTrusted(Files.createSymbolicLink(ours.resolve("link.md"), elsewhere), ONE));
        assertFalse(trusted.isTrusted(
                Files.createSymbolicLink(ours.resolve("up"), base).resolve("elsewhere.md"), ONE));
        Path beside = Files.createDirectory(base.resolve("ours2"));
        assertFalse(trusted.isTrusted(Files.writeString(beside.resolve("a.md"), "x"), ONE));
    }

    @Test
    void aYesIsForAContentAndIsRemembered() throws IOException {
        trusted.trust(ONE, "a name\nof two lines " + TWO);

        Trusted later = new Trusted(base.resolve("home"), List.of(ours));
        assertTrue(later.isTrusted(elsewhere, ONE));
        assertFalse(later.isTrusted(elsewhere, TWO));
        assertFalse(later.isTrusted(elsewhere, ""));
        assertFalse(later.isTrusted(elsewhere, ONE.substring(1)));
    }

    @Test
    void aNameIsNoDigest() throws IOException {
        trusted.trust(ONE, "x\r" + TWO + " y\u2028" + TWO + " z\u0085" + TWO + " a");
        assertFalse(trusted.isTrusted(elsewhere, TWO));
    }

    @Test
    void theListStaysShort() throws IOException {
        for (int i = 0; i < 1010; i++) {
            trusted.trust("%064x".formatted(i), "n");
        }
        assertEquals(
                1000,
                Files.readAllLines(base.resolve("home").resolve("trusted")).size());
        assertTrue(trusted.isTrusted(elsewhere, "%064x".formatted(1009)));
    }

    @Test
    void aYesInAReplayChangesNothing() throws IOException {
        trusted.unmoved().trust(ONE, "n");
        assertFalse(trusted.isTrusted(elsewhere, ONE));
        trusted.trust(ONE, "n");
        assertTrue(trusted.unmoved().isTrusted(elsewhere, ONE));
    }

    @Test
    void aListThatCannotBeReadTrustsNothing() throws IOException {
        Path list = Files.createDirectories(base.resolve("home")).resolve("trusted");
        Files.write(list, new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        assertFalse(trusted.isTrusted(elsewhere, ONE));
    }
}
