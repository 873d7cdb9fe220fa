package monochord.song.musicxml;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import monochord.song.Song;
import monochord.text.Phrase;

/**
 * Reads a lead sheet from a MusicXML file, partwise, plain or packed, up to 10 MB.
 *
 * <p>Kept: the first voice of the first part with notes, of notes struck together the top one, ties joined; chord
 * symbols with their degrees and bass; the first key and the first metre; transposition. Left out, with a remark: grace
 * and cue notes, other voices, repeats, changes of key, chords that have no symbol.
 *
 * <p>Nothing a file names outside itself is fetched: document types are passed over and entities refused.
 *
 * <p>Source: W3C MusicXML 4.0.
 */
public final class LeadSheetFile {
    static final int LARGEST = 10 << 20;
    private static final String ROOT = "score-partwise";

    private LeadSheetFile() {}

    /**
     * @param name the file as the person wrote it, for the message
     * @throws SheetFault if it cannot be read as a lead sheet; its message is one line
     */
    public static LeadSheet read(Path file, String name) throws SheetFault {
        try {
            check(file, name);
            return new SheetReading(score(file)).sheet();
        } catch (SheetFault fault) {
            throw new SheetFault(Phrase.of("{0}: {1}", Phrase.typed(name), fault.phrase()));
        } catch (IOException failed) {
            throw new SheetFault(Phrase.of("{0}: it could not be read", Phrase.typed(name)));
        }
    }

    /**
     * The whole sheet as a song: bars as they are written, with repeats, endings and words; with or without chords.
     *
     * @param name the file as the person wrote it, for the message
     * @throws SheetFault if it cannot be read so; its message is one line
     */
    public static Song song(Path file, String name) throws SheetFault {
        try {
            check(file, name);
            return new SongSheetReading(score(file)).song();
        } catch (SheetFault fault) {
            throw new SheetFault(Phrase.of("{0}: {1}", Phrase.typed(name), fault.phrase()));
        } catch (IOException failed) {
            throw new SheetFault(Phrase.of("{0}: it could not be read", Phrase.typed(name)));
        }
    }

    /**
     * The sheet itself as text, unpacked.
     *
     * @throws SheetFault if it cannot be read
     */
    public static String text(Path file, String name) throws SheetFault {
        try (InputStream in = PackedScore.isPacked(file) ? PackedScore.open(file) : Files.newInputStream(file)) {
            return SheetText.of(in.readNBytes(LARGEST));
        } catch (IOException | XMLStreamException failed) {
            throw new SheetFault(Phrase.of("{0}: it could not be read", Phrase.typed(name)));
        }
    }

    private static void check(Path file, String name) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new SheetFault(
                    Phrase.of(Files.isDirectory(file) ? "is a folder, not a file" : "there is no such file"));
        }
        if (Files.size(file) > LARGEST) {
            throw tooLong();
        }
    }

    static SheetFault tooLong() {
        return new SheetFault(Phrase.of("it is longer than 10 MB, which no lead sheet is"));
    }

    private static SheetElement score(Path file) throws IOException {
        try (InputStream in = PackedScore.isPacked(file) ? PackedScore.open(file) : Files.newInputStream(file)) {
            XMLStreamReader reader =
                    factory().createXMLStreamReader(new StringReader(SheetText.of(in.readNBytes(LARGEST))));
            toRoot(reader);
            return SheetElement.read(reader);
        } catch (XMLStreamException broken) {
            throw broken(broken.getLocation());
        }
    }

    static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing outside the file is read");
        });
        return factory;
    }

    private static void toRoot(XMLStreamReader reader) throws XMLStreamException, SheetFault {
        while (!reader.isStartElement()) {
            reader.next();
        }
        if (!reader.getLocalName().equals(ROOT)) {
            throw new SheetFault(Phrase.of(
                    "it begins with <{0}>; a lead sheet in MusicXML begins with <{1}>",
                    Phrase.quoted(reader.getLocalName()), Phrase.typed(ROOT)));
        }
    }

    private static SheetFault broken(Location place) {
        return new SheetFault(
                place == null || place.getLineNumber() < 1
                        ? Phrase.of("it is not well-formed XML")
                        : Phrase.of(
                                "it is not well-formed XML at line {0}, column {1}",
                                place.getLineNumber(), place.getColumnNumber()));
    }
}
