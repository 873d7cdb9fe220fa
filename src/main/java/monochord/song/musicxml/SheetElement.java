package monochord.song.musicxml;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** An element of a MusicXML file, with those elements in it that a lead sheet is made of; all others are passed over. */
final class SheetElement {
    private static final int LONGEST_TEXT = 1000;

    /** Source of the names: W3C MusicXML 4.0. */
    private static final Set<String> READ =
            Set.of(("work,work-title,movement-title,part,measure,note,backup,forward,harmony,attributes,barline,"
                            + "repeat,grace,cue,chord,rest,pitch,step,alter,octave,duration,voice,tie,divisions,key,fifths,"
                            + "mode,transpose,diatonic,chromatic,octave-change,root,root-step,root-alter,numeral,numeral-root,"
                            + "numeral-alter,kind,bass,bass-step,bass-alter,inversion,degree,degree-value,degree-alter,"
                            + "degree-type,offset,time,beats,beat-type,bar-style,ending,print,lyric,syllabic,text,extend,"
                            + "direction,direction-type,rehearsal,words,segno,coda,sound,metronome,beat-unit,"
                            + "beat-unit-dot,per-minute,identification,creator,notehead")
                    .split(","));

    /** Attributes that say something of a lead sheet. */
    private static final Set<String> KEPT =
            Set.of(("type,direction,times,number,tempo,dacapo,dalsegno,segno,coda,tocoda,"
                            + "fine,new-system,new-page,location")
                    .split(","));

    private final String name;
    private final Map<String, String> attributes = new HashMap<>(2);
    private final List<SheetElement> parts = new ArrayList<>(0);
    private String text = "";

    private SheetElement(XMLStreamReader start) {
        name = start.getLocalName();
        for (int i = 0; i < start.getAttributeCount(); i++) {
            String attribute = start.getAttributeLocalName(i);
            if (KEPT.contains(attribute)) {
                String value = start.getAttributeValue(i);
                attributes.put(attribute, value.substring(0, Math.min(value.length(), LONGEST_TEXT)));
            }
        }
    }

    /**
     * Reads the element that begins here, and the file to its end.
     *
     * @throws XMLStreamException if it is not well-formed, or names an entity
     */
    static SheetElement read(XMLStreamReader reader) throws XMLStreamException {
        SheetElement root = new SheetElement(reader);
        Deque<SheetElement> open = new ArrayDeque<>(List.of(root));
        while (reader.hasNext()) {
            switch (reader.next()) {
                case XMLStreamConstants.START_ELEMENT -> begin(reader, open);
                case XMLStreamConstants.END_ELEMENT -> open.pop();
                case XMLStreamConstants.ENTITY_REFERENCE ->
                    throw new XMLStreamException("entity", reader.getLocation());
                case XMLStreamConstants.CHARACTERS -> open.peek().add(reader.getText());
                default -> {}
            }
        }
        return root;
    }

    private static void begin(XMLStreamReader reader, Deque<SheetElement> open) throws XMLStreamException {
        if (!READ.contains(reader.getLocalName())) {
            pass(reader);
            return;
        }
        SheetElement part = new SheetElement(reader);
        open.peek().parts.add(part);
        open.push(part);
    }

    private static void pass(XMLStreamReader reader) throws XMLStreamException {
        for (int depth = 1; depth > 0; ) {
            int event = reader.next();
            depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
            depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
        }
    }

    private void add(String more) {
        if (parts.isEmpty() && text.length() < LONGEST_TEXT) {
            text += more.substring(0, Math.min(more.length(), LONGEST_TEXT - text.length()));
        }
    }

    String name() {
        return name;
    }

    /** The attribute of that name, or null. */
    String type() {
        return attribute("type");
    }

    /** An attribute, or null. */
    String attribute(String wanted) {
        return attributes.get(wanted);
    }

    String text() {
        return text.strip();
    }

    /** In the order of the file. */
    List<SheetElement> parts() {
        return parts;
    }

    List<SheetElement> parts(String wanted) {
        return parts.stream().filter(part -> part.name.equals(wanted)).toList();
    }

    boolean has(String wanted) {
        return part(wanted).isPresent();
    }

    Optional<SheetElement> part(String wanted) {
        return parts.stream().filter(part -> part.name.equals(wanted)).findFirst();
    }

    /** The text of the first part of that name, or null. */
    String text(String wanted) {
        return part(wanted).map(SheetElement::text).orElse(null);
    }
}
