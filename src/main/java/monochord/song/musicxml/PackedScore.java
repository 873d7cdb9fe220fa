package monochord.song.musicxml;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import monochord.text.Phrase;

/**
 * A packed MusicXML file, {@code .mxl}: a zip archive whose container names the score in it. Of the archive the container
 * and the one score are unpacked, into memory and up to 10 MB each, whatever the archive says of their size; the name in
 * the container is looked up in the archive and never leads to a file.
 *
 * <p>Source: W3C MusicXML 4.0, "Compressed .mxl files" and container.xsd.
 */
final class PackedScore {
    private static final String CONTAINER = "META-INF/container.xml";
    private static final byte[] ZIP = {'P', 'K', 3, 4};

    private PackedScore() {}

    /** Whether a file begins as a zip archive does. */
    static boolean isPacked(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return Arrays.equals(in.readNBytes(ZIP.length), ZIP);
        }
    }

    /** The score that the container names first. */
    static InputStream open(Path file) throws IOException, XMLStreamException {
        try (ZipFile archive = new ZipFile(file.toFile())) {
            String named = rootFile(unpacked(archive, CONTAINER));
            return unpacked(archive, named);
        } catch (ZipException damaged) {
            throw new SheetFault(Phrase.of("it is a damaged archive"));
        }
    }

    private static InputStream unpacked(ZipFile archive, String name) throws IOException {
        ZipEntry entry = archive.getEntry(name);
        if (entry == null || entry.isDirectory()) {
            throw new SheetFault(Phrase.of("it is an archive without the score in it that a .mxl file has"));
        }
        try (InputStream packed = archive.getInputStream(entry)) {
            byte[] content = packed.readNBytes(LeadSheetFile.LARGEST + 1);
            if (content.length > LeadSheetFile.LARGEST) {
                throw LeadSheetFile.tooLong();
            }
            return new ByteArrayInputStream(content);
        }
    }

    private static String rootFile(InputStream container) throws IOException, XMLStreamException {
        XMLStreamReader reader =
                LeadSheetFile.factory().createXMLStreamReader(new StringReader(SheetText.of(container.readAllBytes())));
        while (reader.hasNext()) {
            reader.next();
            if (reader.isStartElement() && reader.getLocalName().equals("rootfile")) {
                String path = reader.getAttributeValue(null, "full-path");
                return path == null ? "" : path;
            }
        }
        return "";
    }
}
