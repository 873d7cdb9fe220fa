package monochord.shell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a learner settles holds for the next sitting; a spoilt file is no more than an empty one. */
class SettingsTest {
    @TempDir
    private Path home;

    @Test
    void whatIsSettledHoldsInTheNextSitting() throws IOException {
        Settings.in(home).put("notes", "german");

        assertEquals(Optional.of("german"), Settings.in(home).get("notes"));
    }

    @Test
    void oneSettingLeavesTheOthersAlone() throws IOException {
        Settings.in(home).put("notes", "german");
        Settings.in(home).put("tempo", "96");

        assertEquals(Optional.of("german"), Settings.in(home).get("notes"));
        assertEquals(Optional.of("96"), Settings.in(home).get("tempo"));
    }

    @Test
    void aSpoiltFileCountsAsEmpty() throws IOException {
        for (String spoilt : List.of("notes=\\u12", "\0\0\0", "x".repeat(1 << 17))) {
            Files.writeString(home.resolve("settings.properties"), spoilt, StandardCharsets.ISO_8859_1);

            assertEquals(Optional.empty(), Settings.in(home).get("notes"));
        }
    }

    @Test
    void whatCannotBeKeptHoldsForThisSitting() throws IOException {
        Path blocked = Files.writeString(home.resolve("a file"), "in the way");
        Settings settings = Settings.in(blocked);

        assertThrows(IOException.class, () -> settings.put("notes", "german"));
        assertEquals(Optional.of("german"), settings.get("notes"));
    }

    @Test
    void withoutAFolderNothingIsKept() throws IOException {
        Settings.inMemory().put("notes", "german");

        assertEquals(Optional.empty(), Settings.inMemory().get("notes"));
    }
}
