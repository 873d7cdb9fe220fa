package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.DumbTerminal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("attack")
class TerminalSizeTest {
    @ParameterizedTest
    @CsvSource({"0, 0, 80, 24", "0, 50, 80, 50", "132, 0, 132, 24", "40, 10, 40, 10"})
    @DisplayName("a terminal that knows no size gets the usual one")
    void aTerminalWithoutASizeGetsTheUsualOne(int columns, int rows, int columnsThen, int rowsThen) throws IOException {
        try (Terminal terminal = new DumbTerminal(
                "test",
                "ansi",
                new ByteArrayInputStream(new byte[0]),
                new ByteArrayOutputStream(),
                StandardCharsets.UTF_8)) {
            terminal.setSize(Size.of(columns, rows));
            assertEquals(
                    Size.of(columnsThen, rowsThen),
                    TerminalWindow.sized(terminal).getSize());
        }
    }
}
