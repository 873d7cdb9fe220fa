package monochord.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.practice.Grade;
import monochord.practice.mastery.Evidence;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AgendaTest {
    private static final Agenda THREE_THINGS = new Agenda(
            "the-lowered-seventh",
            "3.2 The lowered seventh",
            List.of(new Agenda.Entry(1000, 1, 20), new Agenda.Entry(5000, 2, 90)));

    private static final long HOUR = 60 * 60 * 1000;

    @TempDir
    private Path home;

    @Test
    void whatIsLeftIsRead() {
        THREE_THINGS.write(home);
        assertEquals(THREE_THINGS, Agenda.read(home));
        Agenda.NONE.write(home);
        assertEquals(Agenda.NONE, Agenda.read(home));
    }

    @Test
    void asTimeGoesByMoreIsDue() {
        assertEquals(0, THREE_THINGS.due(999));
        assertEquals(1, THREE_THINGS.due(1000));
        assertEquals(1, THREE_THINGS.minutes(1000));
        assertEquals(3, THREE_THINGS.due(5000));
        assertEquals(2, THREE_THINGS.minutes(5000));
    }

    @ParameterizedTest(name = "<{0}>")
    @ValueSource(strings = {"", "\n", "monochord agenda 2\ndue 1 2 3", "monochord agenda 1\ndue soon 2 3", "due 1 2 3"})
    void whatCannotBeReadIsNoAgenda(String text) throws IOException {
        Files.writeString(home.resolve("agenda"), text);
        assertEquals(Agenda.NONE, Agenda.read(home));
    }

    /** Asked in the first second of 1970, right: back after two days less half a one. */
    @Test
    void whatComesBackWithinAnHourIsOneEntry() {
        Knowledge knowledge = Knowledge.of(List.of(right(1000, "D major"), right(2000, "A major")));
        assertEquals(
                List.of(new Agenda.Entry(37 * HOUR, 2, 40)),
                Agenda.of("", "", knowledge).entries());
    }

    private static Evidence right(long time, String key) {
        return new Evidence(time, new SkillInKey("interval", key), Grade.RIGHT, 10_000, 0);
    }

    @Test
    void whereNothingCanBeWrittenNothingHappens() {
        Path nowhere = home.resolve("no such folder");
        THREE_THINGS.write(nowhere);
        assertTrue(Agenda.read(nowhere).isEmpty());
    }
}
