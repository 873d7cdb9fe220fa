package monochord.song.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import monochord.song.Song;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets and archives that would take all memory, or lead out of themselves. */
class HostileSheetTest {
    private static final String SHEET =
            "<score-partwise><work><work-title>A</work-title></work><part id='P'><measure><note><pitch><step>C</step>"
                    + "<octave>4</octave></pitch><duration>4</duration></note></measure></part></score-partwise>";

    @TempDir
    Path folder;

    private Path packed(String container, String name, byte[] content) throws IOException {
        Path packed = folder.resolve("s.mxl");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(packed))) {
            zip.putNextEntry(new ZipEntry("META-INF/container.xml"));
            zip.write(container.getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry(name));
            zip.write(content);
        }
        return packed;
    }

    private static String container(String path) {
        return "<container><rootfiles><rootfile full-path='" + path + "'/></rootfiles></container>";
    }

    private static void refused(Path file, String message) {
        assertEquals(
                message,
                assertThrows(SheetFault.class, () -> LeadSheetFile.song(file, "s.mxl"))
                        .getMessage());
    }

    /** A name in an archive leads to nothing but an entry of it, wherever it points. */
    @Test
    void namesInAnArchiveLeadNowhere() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.xml"), SHEET);
        String none = "s.mxl: it is an archive without the score in it that a .mxl file has";
        for (String path :
                List.of("../secret.xml", secret.toString(), secret.toUri().toString(), "", "a/")) {
            refused(packed(container(path), "a/s.xml", SHEET.getBytes(StandardCharsets.UTF_8)), none);
        }
        Path climbing = packed(container("../s.xml"), "../s.xml", SHEET.getBytes(StandardCharsets.UTF_8));
        assertEquals("A", LeadSheetFile.song(climbing, "s.mxl").head().title());
        assertFalse(Files.exists(folder.resolve("../s.xml")));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    List.of("s.mxl", "secret.xml"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    /** A few kilobytes that would be gigabytes are left where they are. */
    @Test
    void anArchiveThatGrowsIsLeft() throws IOException {
        byte[] spaces = new byte[40 << 20];
        Arrays.fill(spaces, (byte) ' ');
        Path bomb = packed(container("a/s.xml"), "a/s.xml", spaces);
        assertTrue(Files.size(bomb) < 100_000);
        refused(bomb, "s.mxl: it is longer than 10 MB, which no lead sheet is");
        Path inContainer = packed(new String(spaces, StandardCharsets.US_ASCII), "a/s.xml", new byte[1]);
        refused(inContainer, "s.mxl: it is longer than 10 MB, which no lead sheet is");
        String entities = "<!DOCTYPE container [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;'>]>";
        refused(
                packed(entities + container("&b;"), "aaaaaaaaaaaaaaaaaaaa", SHEET.getBytes(StandardCharsets.UTF_8)),
                "s.mxl: it is not well-formed XML at line 1, column 133");
    }

    @Test
    void aDamagedArchiveIsRefused() throws IOException {
        Path whole = packed(container("a/s.xml"), "a/s.xml", SHEET.getBytes(StandardCharsets.UTF_8));
        byte[] bytes = Files.readAllBytes(whole);
        Files.write(whole, Arrays.copyOf(bytes, bytes.length / 2));
        refused(whole, "s.mxl: it is a damaged archive");
    }

    /** A hundred thousand bars, notes by the million, and repeats that never end. */
    @Test
    void whatNobodyPlaysIsRefusedOrCut() throws IOException {
        String start = "<score-partwise><part id='P'>";
        String end = "</part></score-partwise>";
        String note = "<note><pitch><step>C</step><octave>4</octave></pitch><duration>1</duration></note>";
        fault(start + "<measure/>".repeat(100_000) + end, "no notes stand in it");
        fault(start + ("<measure>" + note + "</measure>").repeat(5000) + end, "it has more than 4000 bars");
        fault(
                start + ("<measure>" + note.repeat(200) + "</measure>").repeat(150) + end,
                "it has more than 20000 notes");
        String again = "<barline location='right'><repeat direction='backward' times='32'/></barline>";
        fault(
                start + "<measure>" + note + again.replace("32", "999999999") + "</measure>" + end,
                "a repeat of more than 32 cannot be read");
        Path file = Files.writeString(
                folder.resolve("s.mxl"), start + ("<measure>" + note + again + "</measure>").repeat(300) + end);
        Song song = LeadSheetFile.song(file, "s.mxl");
        assertTrue(song.music().played().notes().size() <= 20_000);
    }

    private void fault(String sheet, String message) throws IOException {
        refused(Files.writeString(folder.resolve("s.mxl"), sheet), "s.mxl: " + message);
    }
}
