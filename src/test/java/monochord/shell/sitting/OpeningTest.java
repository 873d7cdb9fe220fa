package monochord.shell.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import monochord.course.Course;
import monochord.record.Agenda;
import monochord.shell.playback.Ear;
import monochord.view.Look;
import org.junit.jupiter.api.Test;

/** Every later start says in two lines what is due and what comes next. */
class OpeningTest {
    private static final long NOON = 1_800_000_000_000L;
    private static final List<Agenda.Entry> THREE = List.of(new Agenda.Entry(NOON, 3, 200));

    private static String greeting(String slug, String title, List<Agenda.Entry> entries, long time) {
        Sitting sitting =
                new Sitting(Ear.silent(), new Random(1)::nextLong, Path.of(""), new Course(Path.of("lessons")));
        return new Opening(new Agenda(slug, title, entries), time)
                .greeting(sitting)
                .text(Look.ofPipe())
                .plain()
                .strip();
    }

    @Test
    void saysWhatIsDueAndWhatComesNext() {
        assertEquals(
                "Good day. 3 things are due, some 4 min; Enter begins today's set.\n"
                        + "Then comes 1.2 Seven letters, each once; or type music, a verb, or help.",
                greeting("seven-letters", "1.2 Seven letters, each once", THREE, NOON));
        assertEquals(
                "Good day. Nothing is due today; practise is ten minutes with something new.\n"
                        + "Enter begins 1.2 Seven letters, each once; or type music, a verb, or help.",
                greeting("seven-letters", "1.2 Seven letters, each once", THREE, NOON - 1));
    }

    @Test
    void saysWhatEnterDoesWhereNoLessonWasTaken() {
        assertEquals(
                "Good day. 3 things are due, some 4 min; Enter begins today's set.\n"
                        + "Then comes the first lesson; or type music, a verb, or help.",
                greeting("", "", THREE, NOON));
        assertEquals(
                "Good day. Nothing is due today; practise is ten minutes with something new.\nEnter begins the first lesson; or type music, a verb, or help.",
                greeting("", "", THREE, NOON - 1));
    }

    @Test
    void aLessonThatWasTakenAwayIsNotNamed() {
        Course course = new Course(Path.of("lessons"));
        Agenda there = new Agenda("seven-letters", "1.2 Seven letters, each once", THREE);
        assertEquals(there, course.stillThere(there, slug -> false));
        assertFalse(course.isRead(), "no lesson is read where all is as it was");
        Agenda gone = new Agenda("eight-letters", "1.2 Eight letters", THREE);
        assertEquals(
                new Agenda("seven-letters", "1.2 Seven letters, each once", THREE),
                course.stillThere(gone, "steps-and-half-steps"::equals));
        assertEquals(new Agenda("", "", THREE), new Course(Path.of("nowhere")).stillThere(gone, slug -> false));
    }
}
