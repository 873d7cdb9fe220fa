package monochord.classroom;

import static monochord.classroom.Homework.borrowed;
import static monochord.classroom.Homework.faults;
import static monochord.classroom.Homework.handedIn;
import static monochord.classroom.Homework.marked;
import static monochord.classroom.Homework.verdicts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Answers that were written into the file in some editor: whatever it made of the rest, they are found and marked. */
class WrittenByHandTest {
    private static final TeachersFiles TEACHER = TeachersFiles.of(List.of(borrowed()), Set.of());
    private static final String FILE = handedIn(borrowed(), "Am", "C", "D");
    private static final String EMPTY = handedIn(borrowed());

    static Stream<Arguments> editors() {
        return Stream.of(
                Arguments.of("as it is", FILE),
                Arguments.of("line ends of Windows", FILE.replace("\n", "\r\n")),
                Arguments.of("line ends of old Macintoshes", FILE.replace('\n', '\r')),
                Arguments.of("a byte order mark", "\uFEFF" + FILE),
                Arguments.of("empty lines on top", "\n\n" + FILE),
                Arguments.of("tabs for spaces", FILE.replace("Answer: ", "Answer:\t\t")),
                Arguments.of("blank space behind every line", FILE.replace("\n", " \t\n")),
                Arguments.of("hyphens made dashes", FILE.replace("---", "\u2014")),
                Arguments.of("back quotes made quotation marks", FILE.replace("```", "\u2018\u2018\u2018")),
                Arguments.of("numbers changed", FILE.replace("## 2", "## 7").replace("## 3", "## 3.")),
                Arguments.of("no headings", FILE.replaceAll("(?m)^## .*\n", "")),
                Arguments.of("headings with a word", FILE.replace("## ", "### Question ")),
                Arguments.of("long lines wrapped", FILE.replace(", the major", ",\nthe major")),
                Arguments.of("empty lines gone", FILE.replace("\n\nAnswer", "\nAnswer")),
                Arguments.of("answers on the line below", FILE.replace("Answer: ", "Answer:\n")),
                Arguments.of("answers without the word", FILE.replace("Answer: ", "")),
                Arguments.of("without the word and the empty line", FILE.replace("\nAnswer: ", "")),
                Arguments.of("in bold letters", FILE.replace("Answer:", "**Answer:**")),
                Arguments.of("as list items", FILE.replace("Answer: ", "- ")),
                Arguments.of("as quotations", FILE.replace("Answer: ", "> ")),
                Arguments.of("in quotation marks", FILE.replace("Answer: Am", "Answer: \u201cAm\u201d")),
                Arguments.of("all in the end, by numbers", EMPTY + "1. Am\n2) C\n3: D\n"),
                Arguments.of("all under the first, by numbers", under(1, "1. Am\n2. C\n3. D")),
                Arguments.of("the third under the second", swapped()),
                Arguments.of("a greeting on top", FILE.replace("See you", "Here it is.\n\nSee you")));
    }

    /** The empty file with lines under one question. */
    private static String under(int item, String lines) {
        List<String> parts = new ArrayList<>(List.of(EMPTY.split("Answer:\n")));
        parts.set(item - 1, parts.get(item - 1) + lines + "\n");
        return String.join("", parts);
    }

    private static String swapped() {
        return handedIn(borrowed(), "Am", "C\n\n3. D", "");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("editors")
    void whateverTheEditorDid(String what, String file) {
        MarkedHandIn marked = marked(file, TEACHER);
        assertEquals(List.of(), faults(marked));
        assertEquals("right right right", verdicts(marked));
        assertFalse(marked.signs().altered());
        assertEquals("right right right", verdicts(marked(file)), "without the assignment beside it");
    }

    @Test
    @DisplayName("notes: german in the head: B is a half step below H")
    void notesInGerman() {
        Assignment flat = Assignment.same(
                borrowed().head(),
                Homework.STRICT,
                "",
                List.of(
                        Homework.question("borrowed-chord", "bVII", "C major"),
                        Homework.question("scale-spelling", "major", "G major"),
                        Homework.question("borrowed-chord", "iv", "Bb major")));
        String file = handedIn(flat, "B", "G A H C D E Fis", "Es-Moll");
        assertEquals("right right right", verdicts(marked(file.replace("code:", "notes: german\ncode:"))));
        assertEquals("wrong unreadable unreadable", verdicts(marked(file)));
        assertEquals(
                List.of("anna.md:11:8: what stands behind notes cannot be read; write english, german or latin"),
                faults(marked(file.replace("code:", "notes: dutch\ncode:"))));
    }

    @Test
    void twoAnswersToOneQuestionFromTwoPlacesAreTold() {
        MarkedHandIn marked = marked(handedIn(borrowed(), "Am", "C\n\n3. D", "E"), TEACHER);
        assertEquals(
                List.of("anna.md:58:9: question 3 is answered here and on line 44; leave one answer"), faults(marked));
    }

    @Test
    void aBlockThatCannotBeReadIsAFaultAndItsAnswerNoZero() {
        MarkedHandIn marked = marked(FILE.replace("item: 2", "item: two"), TEACHER);
        assertEquals("right right", verdicts(marked));
        assertEquals(2, marked.of());
        assertEquals(
                List.of("anna.md:33:7: this question has no item that can be read; write a whole number"),
                faults(marked));
    }
}
