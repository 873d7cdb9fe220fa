package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Settings in one place, a record that can be taken along, and a look at what is there. */
class KeepingVerbsTest {
    @TempDir
    private Path folder;

    private Run run(String home, String sentence) {
        return outside(home).run(sentence.split(" "));
    }

    private Run.Outside outside(String home) {
        return new Run.Outside().atHome(folder.resolve(home)).inFolder(folder);
    }

    @Test
    @DisplayName("each setting is listed, and what was changed is so on another day")
    void settingsAreListedAndChanged() {
        assertEquals(
                "From now on 90 beats a minute.\n",
                run("here", "settings tempo 90").result(0));
        assertEquals(
                "Settled, from the next sitting on.\n",
                run("here", "settings code seconds 5").result(0));
        run("here", "settings right patch organ").result(0);
        run("here", "settings notes german").result(0);
        String listed = run("here", "settings").result(0);
        assertTrue(listed.contains("\ntempo         90 "), listed);
        assertTrue(listed.contains("\nright patch   Drawbar Organ "), listed);
        assertTrue(listed.contains("\nleft patch    Acoustic Grand Piano "), listed);
        assertTrue(listed.contains("\nnotes         german "), listed);
        assertTrue(listed.contains("\ncode seconds  5 "), listed);
        assertEquals(
                "90 beats a minute, where nothing else is said.\n",
                run("here", "tempo").result(0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    settings temp 90          | "temp" is not a setting: did you mean tempo. Example: settings tempo 96
                    settings blue             | "blue" is not a setting: settings alone lists them. Example: settings tempo 96
                    settings tempo            | "tempo" is not a setting: its new value is missing. Example: settings tempo 96
                    settings code seconds 1e9 | "1e9" is not a number of seconds: it is 0 to 999. Example: settings code seconds 20
                    answers burn              | "burn" is not wanted here: copy or restore and a file is. Example: answers copy my-answers.db
                    """)
    @DisplayName("what cannot be settled is told with what would work")
    void refusals(String sentence, String message) {
        assertEquals(
                message,
                run("here", sentence)
                        .message(2)
                        .replace("\n", " ")
                        .split(" Form: ")[0]
                        .strip());
    }

    private void answer(String home, String answer) {
        outside(home)
                .typing("ask scale-spelling of major in D\n" + answer + "\nquit\n")
                .run()
                .result(0);
    }

    @Test
    @DisplayName("a copy holds the answers, and brings back what is missing and nothing twice")
    void theRecordIsCopiedAndBroughtBack() throws IOException {
        answer("here", "D E F# G A B C#");
        answer("here", "D E F# G A B C");
        assertEquals(
                "2 answers are in mine.db now, and here as before.\n",
                run("here", "answers copy mine.db").result(0));
        assertEquals(
                "rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("mine.db"))));
        assertEquals(
                "2 answers came back; what was here stays.\n",
                run("there", "answers restore mine.db").result(0));
        assertEquals(
                "All of it was here already.\n",
                run("there", "answers restore mine.db").result(0));
        assertEquals(
                run("here", "progress --csv").result(0),
                run("there", "progress --csv").result(0));
    }

    @Test
    @DisplayName("a copy takes no file's place unasked, and what is no record is not brought back")
    void nothingIsLostOverACopy() throws IOException {
        assertEquals(
                "nothing is on record yet\n",
                run("here", "answers copy mine.db").message(3));
        answer("here", "D E F# G A B C#");
        Files.writeString(folder.resolve("mine.db"), "my shopping");
        assertEquals(
                "mine.db is there already, and nothing was written; --over puts this in its\nplace.\n",
                run("here", "answers copy mine.db").message(3));
        String refused = run("here", "answers restore mine.db").message(3);
        assertTrue(refused.contains("mine.db cannot be used"), refused);
        assertEquals(
                "gone.db: there is no such file\n",
                run("here", "answers restore gone.db").message(3).replace(folder + "/", ""));
        assertEquals("my shopping", Files.readString(folder.resolve("mine.db")));
        assertEquals(
                "1 answer is in mine.db now, and here as before.\n",
                run("here", "answers copy mine.db --over").result(0));
    }

    @Test
    @DisplayName("the doctor closes what others might read, and says what is there")
    void theDoctorLooks() throws IOException {
        answer("here", "D E F# G A B C#");
        Path record = folder.resolve("here").resolve("record.db");
        Files.setPosixFilePermissions(record, PosixFilePermissions.fromString("rw-r--r--"));
        Run looked = run("here", "doctor");
        assertTrue(looked.status() <= 1, looked.err());
        assertTrue(looked.out().contains("\nyour things       " + folder.resolve("here")), looked.out());
        assertTrue(looked.out().contains("\nJava lines        there"), looked.out());
        assertTrue(looked.out().matches("(?s).*\nlessons           [1-9][0-9]+ lessons\n.*"), looked.out());
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(record)));
        String mended = "; 1 file was open to others and is yours alone now";
        assertTrue(flat(looked).contains(folder.resolve("here") + mended), looked.out());
        assertTrue(run("here", "doctor --json").out().contains("{\"what\":\"home\",\"state\":\"fine\",\"message\":\""));
        assertTrue(flat(run("here", "doctor")).contains(folder.resolve("here") + ", for you alone"));
    }

    /** Lines of a table that ran over their column, put together again. */
    private static String flat(Run run) {
        return run.out().replaceAll("\n {5,}", " ");
    }

    @Test
    @DisplayName("a folder that others may look into is not said to be for the learner alone")
    void anOpenFolderIsSaidToBe() throws IOException {
        answer("here", "D E F# G A B C#");
        Files.setPosixFilePermissions(folder.resolve("here"), PosixFilePermissions.fromString("rwxr-xr-x"));
        String looked = flat(run("here", "doctor"));
        assertTrue(looked.contains("; others may see what lies there, only you can read it"), looked);
        assertFalse(looked.contains("for you alone"), looked);
        assertTrue(looked.contains("\nroom on the disk  "), looked);
        assertTrue(looked.contains("\nJava kept apart   "), looked);
    }
}
