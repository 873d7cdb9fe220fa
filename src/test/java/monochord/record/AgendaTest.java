package monochord.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AgendaTest {
    private static final Agenda TWO_THINGS = new Agenda(
            "the-lowered-seventh",
            "3.2 The lowered seventh",
            List.of(new Agenda.Entry(1000, 20), new Agenda.Entry(5000, 90)));

    @TempDir
    private Path home;

    @Test
    void whatIsLeftIsRead() {
        TWO_THINGS.write(home);
        assertEquals(TWO_THINGS, Agenda.read(home));
        Agenda.NONE.write(home);
        assertEquals(Agenda.NONE, Agenda.read(home));
    }

    @Test
    void asTimeGoesByMoreIsDue() {
        assertEquals(0, TWO_THINGS.due(999));
        assertEquals(1, TWO_THINGS.due(1000));
        assertEquals(1, TWO_THINGS.minutes(1000));
        assertEquals(2, TWO_THINGS.due(5000));
        assertEquals(2, TWO_THINGS.minutes(5000));
    }

    @ParameterizedTest(name = "<{0}>")
    @ValueSource(strings = {"", "\n", "monochord agenda 2\ndue 1 2", "monochord agenda 1\ndue soon 2", "due 1 2"})
    void whatCannotBeReadIsNoAgenda(String text) throws IOException {
        Files.writeString(home.resolve("agenda"), text);
        assertEquals(Agenda.NONE, Agenda.read(home));
    }

    @Test
    void whereNothingCanBeWrittenNothingHappens() {
        Path nowhere = home.resolve("no such folder");
        TWO_THINGS.write(nowhere);
        assertTrue(Agenda.read(nowhere).isEmpty());
    }
}
