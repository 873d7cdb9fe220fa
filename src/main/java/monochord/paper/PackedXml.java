package monochord.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.xml.stream.XMLStreamException;

/**
 * A score as a packed {@code .mxl} file: an archive with a container that names it. The same score gives the same bytes.
 *
 * <p>Source: W3C MusicXML 4.0, "Compressed .mxl files".
 */
public final class PackedXml {
    private static final String SCORE = "score.musicxml";
    private static final String MEDIA_TYPE = "application/vnd.recordare.musicxml+xml";
    /** The first moment that such an archive can tell, in the local time that it keeps. */
    private static final LocalDateTime ALWAYS = LocalDateTime.of(1980, 1, 1, 0, 0);

    private PackedXml() {}

    /** Writes packed where the name ends in {@code .mxl}, else as it is. */
    public static void write(Path file, String name, String score) throws IOException {
        if (!name.toLowerCase(Locale.ROOT).endsWith(".mxl")) {
            Files.writeString(file, score);
            return;
        }
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream archive = new ZipOutputStream(out)) {
            entry(archive, "META-INF/container.xml", container());
            entry(archive, SCORE, score);
        }
    }

    private static String container() {
        XmlText xml = new XmlText();
        try {
            xml.element(
                    "container",
                    () -> xml.element(
                            "rootfiles", () -> xml.empty("rootfile", "full-path", SCORE, "media-type", MEDIA_TYPE)));
        } catch (XMLStreamException never) {
            throw new IllegalStateException("nothing is written to but memory", never);
        }
        return xml.toString();
    }

    private static void entry(ZipOutputStream archive, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(ALWAYS);
        archive.putNextEntry(entry);
        archive.write(text.getBytes(StandardCharsets.UTF_8));
        archive.closeEntry();
    }
}
