package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is shown can be written on staves, and no file is lost over it. */
class StaffFileTest {
    @TempDir
    private Path folder;

    private Run run(String sentence) {
        return new Run.Outside().inFolder(folder).run(sentence.split(" "));
    }

    private String loop() throws IOException {
        return Files.readString(folder.resolve("loop.svg"));
    }

    @Test
    void aProgressionStandsOnAStaffWithItsChordsInWords() throws IOException {
        assertEquals(
                "Written: loop.svg\n",
                run("show F | Ab | in C staff --svg loop.svg").result(0));
        assertTrue(
                loop().contains("<title>F | A♭ | in C major on a staff: F C4, F4, A4; A♭ C4, E♭4, A♭4.</title>"),
                loop());
        assertTrue(loop().contains("<g class=\"accidental Eb4\""), loop());
        assertTrue(loop().contains(">♭VI</text>"), loop());
    }

    @Test
    void handsStandOnAGrandStaff() throws IOException {
        assertEquals(
                "{\"kind\":\"staff\",\"file\":\"loop.svg\"}\n",
                run("voice F C G in C staff --svg loop.svg --json").result(0));
        assertTrue(loop().contains("class=\"brace\"") && loop().contains("bass clef"), loop());
    }

    @Test
    void aFileThatIsThereStaysUnlessOverIsSaid() throws IOException {
        Files.writeString(folder.resolve("loop.svg"), "mine");

        assertEquals(
                "loop.svg is there already, and nothing was written; --over puts this in its\nplace.\n",
                run("show F staff --svg loop.svg").message(3));
        assertEquals("mine", loop());
        run("show F staff --svg loop.svg --over").result(0);
        assertFalse(loop().contains("mine"));
    }

    @Test
    void noRecordingTakesTheirPlaceEither() throws IOException {
        Files.writeString(folder.resolve("loop.svg"), "mine");

        assertEquals(
                "loop.svg is there already, and nothing was written; --over puts this in its\nplace.\n",
                run("play F C --midi loop.svg --wav loop.wav").message(3));
        assertEquals("mine", loop());
        assertFalse(Files.exists(folder.resolve("loop.wav")));
        assertEquals(
                "Written: loop.svg\n", run("play F C --midi loop.svg --over").result(0));
    }

    @Test
    void wherePicturesGoHasToBeSaid() {
        assertEquals(
                "\"F staff\" is not a picture of staves: the word staff and a file are needed, and\n"
                        + "nothing between them. Example: show F C G Ab in C staff --svg loop.svg\n"
                        + "Form: show CHORD, SCALE, NOTES or PROGRESSION [in KEY] [staff --svg OUT\n"
                        + "[--over]]\n",
                run("show F staff").message(2));
    }
}
