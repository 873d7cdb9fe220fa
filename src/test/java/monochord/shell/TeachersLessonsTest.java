package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A teacher with a folder of lessons of one's own, written from the guide alone. */
class TeachersLessonsTest {
    private static final Path GUIDE = Path.of("lessons", "README.md");

    @TempDir
    private Path home;

    /** The short lesson that the guide shows whole. */
    private String lesson;

    @BeforeEach
    void copiesTheLessonFromTheGuide() throws IOException {
        Matcher shown = Pattern.compile("(?s)````markdown\n(.*?)````").matcher(Files.readString(GUIDE));
        assertTrue(shown.find());
        lesson = shown.group(1);
    }

    private Path write(String name, String text) throws IOException {
        Path file = home.resolve("lessons").resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private Run run(String... arguments) {
        return new Run.Outside().atHome(home).run(arguments);
    }

    /** What check says, its lines joined. */
    private String checked(int status, String... files) {
        String[] arguments = Stream.concat(Stream.of("check"), Stream.of(files)).toArray(String[]::new);
        return run(arguments).result(status).strip().replaceAll("\\s+", " ");
    }

    @Test
    void theLessonInTheGuideHasNoFault() throws IOException {
        Path file = write("20-evenings/1-one-finger-sinks.md", lesson);
        assertEquals(file + ": no faults.", checked(0, file.toString()));
    }

    @Test
    void aFolderOfOnesOwnStandsBehindOurs() throws IOException {
        write("20-evenings/1-one-finger-sinks.md", lesson);
        List<String> said = run("lessons").lines();
        assertEquals("Evenings", said.get(said.size() - 3));
        assertEquals("  20.1  One finger sinks", said.get(said.size() - 2));
        assertTrue(said.contains("  1.1  Steps and half steps"), said.toString());
        List<String> begun = new Run.Outside()
                .atHome(home)
                .typing("learn 20.1 in D\nquit\n")
                .run()
                .lines();
        assertEquals("20.1  One finger sinks  in D major", begun.get(0));
    }

    @Test
    void oneFaultyLessonStopsNoOther() throws IOException {
        write("20-evenings/1-nothing.md", "no head\n");
        write("20-evenings/2-one-finger-sinks.md", lesson);
        List<String> said = run("lessons").lines();
        assertTrue(said.contains("  20.1  Nothing  has faults: check it"), said.toString());
        assertTrue(said.contains("  20.2  One finger sinks"), said.toString());
        assertTrue(checked(1).contains("1-nothing.md:1:1: the head is missing; write --- on the first line"));
    }

    @Test
    void aSlugOfOursIsNotUsedAgain() throws IOException {
        Path file = write("20-evenings/1-the-minor-four.md", lesson);
        assertEquals(
                file + ":1:1: the slug the-minor-four is used by lesson 5.4 already; write another name for this file",
                checked(1, file.toString()));
    }

    /** One fault of each kind, planted in the lesson that the guide shows. */
    @Test
    void checkNamesEachOfTenPlantedFaults() throws IOException {
        Path file = write("20-evenings/1-planted.md", """
                ---
                grade: nine
                needs: [the-lowered-sevent]
                skills: [borrowed-chord]
                ---

                Play ${chord IV}, and lower ${degre 6}. <b>The root stays.</b>

                ```sing
                IV iv I
                ```

                ```show
                IV bVVI I
                ```

                ```ask
                skill: borowed-chord
                subject: iv
                ```

                ```ask
                skill: borrowed-chord
                subject: iv
                keys: E, A, then H
                count: 40
                ```

                ```listen
                I
                """);
        String said = checked(1, file.toString());
        List<String> faults = List.of(
                ":1:1: the head has no title; write title: and the name of the lesson",
                ":2:8: the grade \"nine\" is no number from 1 to 8; write for example grade: 3",
                ":3:9: no lesson is called \"the-lowered-sevent\"; write the-lowered-seventh",
                ":7:29: unknown fill \"degre\"; write degree",
                ":7:41: HTML is not read; write it in Markdown, or a space after <",
                ":9:4: unknown block \"sing\"; write one of show, listen, compare, tune, ask, code",
                ":14:6: \"bVVI\" is not a numeral",
                ":18:8: unknown skill \"borowed-chord\"; write borrowed-chord",
                ":25:18: \"H\" is not a key: expected a key, or same, easy, sharps, flats or all; "
                        + "write for example easy, then E, A, then flats",
                ":26:8: the count \"40\" is no number from 1 to 20; write for example count: 4",
                ":29:1: the block is not closed; write ``` on a line below it");
        for (String fault : faults) {
            assertTrue(said.contains(file + fault), () -> fault + "\n" + said);
        }
        assertEquals(faults.size(), said.split(Pattern.quote(file + ":")).length - 1, said);
    }

    /** Several subjects take turns; one that cannot be asked is found at its place. */
    @Test
    void aFaultySubjectAmongSeveralIsFoundAtItsPlace() throws IOException {
        Path file = write("20-evenings/1-two.md", lesson.replace("subject: iv", "subject: iv; bVV"));
        assertTrue(checked(1, file.toString()).startsWith(file + ":17:16: \"bVV\" is not a numeral: "));
    }
}
