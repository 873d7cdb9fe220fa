package monochord.paper;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import monochord.text.SafeText;

/** Writes XML element by element, in UTF-8 and escaped; an element is closed by the action that fills it. */
final class XmlText {
    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter writer;

    /** Fills an element that is open. */
    interface ElementBody {
        void write() throws XMLStreamException;
    }

    XmlText() {
        try {
            writer = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            writer.writeStartDocument("UTF-8", "1.0");
            writer.writeCharacters("\n");
        } catch (XMLStreamException never) {
            throw new IllegalStateException("nothing is written to but memory", never);
        }
    }

    /** @param attributes names and values in turn */
    void element(String name, ElementBody content, String... attributes) throws XMLStreamException {
        writer.writeStartElement(name);
        attributes(attributes);
        content.write();
        writer.writeEndElement();
        writer.writeCharacters("\n");
    }

    void empty(String name, String... attributes) throws XMLStreamException {
        writer.writeEmptyElement(name);
        attributes(attributes);
        writer.writeCharacters("\n");
    }

    void text(String name, Object content, String... attributes) throws XMLStreamException {
        writer.writeStartElement(name);
        attributes(attributes);
        writer.writeCharacters(SafeText.oneLine(content.toString()));
        writer.writeEndElement();
        writer.writeCharacters("\n");
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            writer.writeAttribute(attributes[i], SafeText.oneLine(attributes[i + 1]));
        }
    }

    /** All that was written. */
    @Override
    public String toString() {
        return text.toString();
    }
}
