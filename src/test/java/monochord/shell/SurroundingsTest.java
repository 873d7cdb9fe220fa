package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Map;
import monochord.shell.playback.Ear;
import monochord.shell.storage.Keeper;
import monochord.theory.note.Signs;
import monochord.view.Look;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

@Tag("attack")
class SurroundingsTest {
    private static Surroundings around(boolean terminal, Map<String, String> environment) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
        return new Surroundings(
                InputStream.nullInputStream(),
                nowhere,
                nowhere,
                terminal,
                terminal,
                environment,
                Path.of("here"),
                Path.of("lessons"),
                () -> 0,
                Ear.silent(),
                () -> 0,
                home -> Keeper.inMemory());
    }

    private static Look onTerminal(String... variables) {
        return around(true, environment(variables)).look();
    }

    private static Map<String, String> environment(String... variables) {
        Map<String, String> environment = new java.util.HashMap<>(Map.of("LANG", "en_GB.UTF-8", "TERM", "xterm"));
        for (String variable : variables) {
            int equals = variable.indexOf('=');
            environment.put(variable.substring(0, equals), variable.substring(equals + 1));
        }
        return environment;
    }

    @Test
    void aTerminalGetsColourAndMusicSigns() {
        assertEquals(new Look(80, Signs.MUSIC, false, true), onTerminal());
    }

    /** Source: no-color.org: any value but the empty one. */
    @Test
    void noColorAndDumbTerminalsGetNone() {
        assertEquals(new Look(80, Signs.MUSIC, false, false), onTerminal("NO_COLOR=1"));
        assertEquals(new Look(80, Signs.MUSIC, false, true), onTerminal("NO_COLOR="));
        assertEquals(new Look(80, Signs.MUSIC, false, false), onTerminal("TERM=dumb"));
    }

    /** Source: POSIX.1-2017, Base Definitions 8.2: LC_ALL before LC_CTYPE before LANG. */
    @Test
    @DisabledOnOs({OS.MAC, OS.WINDOWS})
    void aTerminalWithoutUnicodeGetsAscii() {
        assertEquals(Signs.ASCII, onTerminal("LANG=C").signs());
        assertEquals(Signs.ASCII, onTerminal("LC_ALL=POSIX").signs());
        assertEquals(Signs.MUSIC, onTerminal("LANG=C", "LC_CTYPE=C.utf8").signs());
        assertEquals(Signs.ASCII, around(true, Map.of()).look().signs());
    }

    @Test
    void aPipeGetsUnicodeWithoutColourWhateverTheLocale() {
        assertEquals(
                Look.ofPipe(),
                around(false, Map.of("LANG", "C", "TERM", "xterm")).look());
    }

    @Test
    void columnsAreTakenFromTheEnvironmentWhereTheyMakeSense() {
        assertEquals(100, onTerminal("COLUMNS=100").width());
        assertEquals(80, onTerminal("COLUMNS=0").width());
        assertEquals(80, onTerminal("COLUMNS=wide").width());
        assertEquals(80, onTerminal("COLUMNS=-5").width());
        assertEquals(200, onTerminal("COLUMNS=9999").width());
    }

    @Test
    @DisabledOnOs({OS.MAC, OS.WINDOWS})
    void whatIsTheLearnersIsKeptWhereTheSystemKeepsSuchThings() {
        assertEquals(
                Path.of("here", "mine"),
                around(true, Map.of("MONOCHORD_HOME", "mine")).home());
        assertEquals(
                Path.of("data", "monochord"),
                around(true, Map.of("XDG_DATA_HOME", "data")).home());
        assertEquals(
                Path.of(System.getProperty("user.home"), ".local", "share", "monochord"),
                around(true, Map.of()).home());
    }
}
