package monochord.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The one file in which names stand beside codes. */
class ClassListTest {
    @TempDir
    private Path home;

    private ClassList list(String text) throws IOException {
        return ClassList.read(Files.writeString(ClassList.file(home), text), "class.csv");
    }

    private static List<String> told(ClassList list) {
        return list.pupils().stream()
                .map(one -> one.code() + "|" + one.name() + "|" + one.group())
                .toList();
    }

    @Test
    void commasAndSemicolonsHeadsAndMarksOfOtherProgramsAreRead() throws IOException {
        List<String> both = List.of("7b-04|Ana|Thursday", "7b-05|Ben, the younger|");
        assertEquals(both, told(list("code,name,group\n7b-04,Ana,Thursday\n\n7B-05,\"Ben, the younger\"\n")));
        assertEquals(both, told(list("\uFEFFcode;name;group\r\n7b-04;Ana;Thursday\r\n7b-05;Ben, the younger;\r\n")));
        assertEquals(both.subList(0, 1), told(list("\uFEFF7b-04,Ana,Thursday")));
    }

    @Test
    void whoIsAdmittedAndWhoIsInAGroup() throws IOException {
        ClassList list = list("7b-04,Ana,Thursday\n7b-05,Ben,Monday\n");
        assertTrue(list.admits("7b-04"));
        assertFalse(list.admits("7b-06"));
        assertTrue(ClassList.NONE.admits("7b-06"), "where there is no list, all are");
        assertEquals(Set.of("7b-05"), list.group("monday"));
        assertEquals(Set.of(), list.group(""));
    }

    @Test
    void aFaultHasItsPlaceAndTheOthersStay() throws IOException {
        ClassList list = list("code,name\n7b-04,Ana\n7b-05,\"Cleo\n");
        assertEquals(List.of("7b-04|Ana|"), told(list));
        assertEquals(
                List.of("class.csv:3:7: this quotation mark is not closed, or not at the end; write for example"
                        + " 7b-04,Ana,Thursday"),
                list.faults().stream().map(Object::toString).toList());
        assertEquals(
                List.of(
                        "class.csv:2:1: no pupil's code stands here; write for example 7b-04,Ana,Thursday",
                        "class.csv:3:1: 7b-04 stands on the list twice; give each pupil a code of their own"),
                list("7b-04,Ana\n../etc,Eve\n7b-04,Ben\n").faults().stream()
                        .map(Object::toString)
                        .toList());
    }

    @Test
    void whoIsTakenOffLeavesTheOtherLinesAsTheyAre() throws IOException {
        Path file = ClassList.file(home);
        Files.writeString(file, "code,name,group\r\n7b-04,\"Ana\r\nLane\",x\r\n# mine,,\r\n7b-05,Ben,y");
        assertTrue(ClassList.remove(file, PupilCode.parse("7B-04")));
        assertEquals("code,name,group\r\n# mine,,\r\n7b-05,Ben,y", Files.readString(file));
        assertFalse(ClassList.remove(file, PupilCode.parse("7b-04")));
        assertFalse(ClassList.remove(home.resolve("none.csv"), PupilCode.parse("7b-04")));
    }

    @Test
    void aListThatCannotBeReadStays() throws IOException {
        Path file = Files.writeString(ClassList.file(home), "7b-04,\"Ana");
        assertEquals(
                file + ": a quotation mark in it is not closed",
                assertThrows(IOException.class, () -> ClassList.remove(file, PupilCode.parse("7b-04")))
                        .getMessage());
        assertEquals("7b-04,\"Ana", Files.readString(file));
        Path folder = Files.createDirectory(home.resolve("folder"));
        assertEquals(
                folder + ": this is no list of pupils",
                assertThrows(IOException.class, () -> ClassList.read(folder, "folder"))
                        .getMessage());
    }
}
