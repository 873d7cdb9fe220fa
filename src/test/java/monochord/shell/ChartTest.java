package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A chart goes out to each player, and comes back in. */
class ChartTest {
    @TempDir
    private Path folder;

    private Run run(String sentence) {
        return new Run.Outside().inFolder(folder).run(sentence.split(" "));
    }

    @Test
    void eachPlayerGetsAFile() {
        assertEquals(
                "trumpet: written in D major\nalto sax: written in A major\n"
                        + "Written: loop-trumpet.musicxml, loop-alto-sax.musicxml\n",
                run("chart F | C | Ab | F in C for trumpet, alto sax --musicxml loop.musicxml")
                        .result(0));
        assertTrue(Files.exists(folder.resolve("loop-trumpet.musicxml")));
        assertTrue(Files.exists(folder.resolve("loop-alto-sax.musicxml")));
    }

    @Test
    void inJsonFilesAndParts() {
        assertEquals(
                "{\"kind\":\"chart\",\"files\":[\"loop.mxl\"],\"parts\":[{\"name\":\"horn\",\"key\":\"G major\"}]}\n",
                run("chart F C in C for horn --musicxml loop.mxl --json").result(0));
    }

    @Test
    void ourOwnReaderReadsIt() {
        run("chart F | C | Ab | F in C for trumpet --musicxml loop.mxl").result(0);
        String recoloured = run("recolour --file loop.mxl").result(0);
        assertTrue(recoloured.contains("Chart in D major, in C major."), recoloured);
        assertEquals(
                "loop.mxl: chords stand in it, and no tune\n",
                run("fit --file loop.mxl").message(3));
        assertEquals(
                "loop.mxl: chords stand in it, and no tune\n",
                run("harmonise --file loop.mxl").message(3));
    }

    @Test
    void ofSeveralFilesNoneIsWrittenWhereOneIsThere() throws IOException {
        Files.writeString(folder.resolve("loop-flute.musicxml"), "mine");
        assertEquals(
                "loop-flute.musicxml is there already, and nothing was written; --over puts this\nin its place.\n",
                run("chart F C in C for trumpet, flute --musicxml loop.musicxml")
                        .message(3));
        assertTrue(Files.notExists(folder.resolve("loop-trumpet.musicxml")));
    }

    @Test
    void refusalsSayWhatWouldWork() {
        String form = "Form: chart [PROGRESSION] [in KEY] [for INSTRUMENT] [numerals or numbers] [tune]\n"
                + "[letter] [--html OUT] [--pdf OUT] [--svg OUT] [--over] [--musicxml OUT]\n";
        String example = "chart F | C |\nAb | F in C for trumpet, alto sax --musicxml loop.musicxml\n";
        assertEquals(
                "\"F C\" is not a chart: it has to be said where it goes. Example: " + example + form,
                run("chart F C").message(2));
        assertTrue(run("chart F C for trumpet, kazoo --musicxml a.musicxml")
                .message(2)
                .startsWith("\"kazoo\" is not an instrument"));
        assertEquals(
                "\"F C for trumpet, trumpet --musicxml a.mu…\" is not a sentence: each file needs a\n"
                        + "name of its own. Example: --html song.html\n" + form,
                run("chart F C for trumpet, trumpet --musicxml a.musicxml").message(2));
    }
}
