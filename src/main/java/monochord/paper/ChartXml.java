package monochord.paper;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.stream.XMLStreamException;
import monochord.song.SongMetre;
import monochord.song.musicxml.HarmonyElement;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/**
 * A part of a chart as MusicXML: its chords over bars of its metre, under each beat a slash on the middle line, so that
 * readers that lose chords without notes keep them. What it is transposed by is told, so that it sounds as the others.
 *
 * <p>Source: W3C MusicXML 4.0: order of elements, {@code transpose}, {@code time-modification}, {@code notehead-value}.
 */
public final class ChartXml {
    private static final int QUARTER = 4;
    /** Quarters in a whole note. */
    private static final int WHOLE = 4;

    private static final List<String> TYPES =
            List.of("whole", "half", "quarter", "eighth", "16th", "32nd", "64th", "128th");

    private final PlayerPart part;
    private final SongMetre metre;
    private final XmlText xml = new XmlText();
    private final ChartXmlSigns signs = new ChartXmlSigns(xml);

    private ChartXml(PlayerPart part) {
        this.part = part;
        this.metre =
                part.chart().metre().isFree() ? SongMetre.COMMON : part.chart().metre();
    }

    /** A whole file. */
    public static String of(PlayerPart part, String title) {
        ChartXml chart = new ChartXml(part);
        try {
            chart.score(title);
        } catch (XMLStreamException never) {
            throw new IllegalStateException("nothing is written to but memory", never);
        }
        return chart.xml.toString();
    }

    private void score(String title) throws XMLStreamException {
        List<NamedBar> bars = bars();
        xml.element(
                "score-partwise",
                () -> {
                    xml.element("work", () -> xml.text("work-title", title));
                    xml.element(
                            "part-list",
                            () -> xml.element("score-part", () -> xml.text("part-name", part.name()), "id", "P1"));
                    xml.element("part", () -> measures(bars), "id", "P1");
                },
                "version",
                "4.0");
    }

    /** As they are played section by section, each section that comes again written out. */
    private List<NamedBar> bars() {
        Map<String, Chart.ChartSection> written = new HashMap<>();
        List<NamedBar> bars = new ArrayList<>();
        for (Chart.ChartSection section : part.chart().sections()) {
            written.putIfAbsent(section.name().toLowerCase(Locale.ROOT), section);
            List<ChartBar> all = section.again()
                    ? written.get(section.name().toLowerCase(Locale.ROOT)).bars()
                    : section.bars();
            for (int i = 0; i < all.size(); i++) {
                bars.add(new NamedBar(all.get(i), i == 0 ? section.name() : ""));
            }
        }
        return bars;
    }

    /** A bar, and the name of the section that begins with it, or nothing. */
    private record NamedBar(ChartBar bar, String name) {}

    private void measures(List<NamedBar> bars) throws XMLStreamException {
        int divisions = divisions(bars);
        for (int i = 0; i < bars.size(); i++) {
            boolean first = i == 0;
            boolean last = i + 1 == bars.size();
            boolean endingGoesOn = !last && bars.get(i + 1).bar.signs().ending().isEmpty();
            NamedBar named = bars.get(i);
            xml.element(
                    "measure",
                    () -> {
                        if (first) {
                            xml.element("attributes", () -> attributes(divisions));
                        }
                        signs.left(named.bar, named.name);
                        bar(named.bar, divisions);
                        signs.right(named.bar, last, endingGoesOn);
                    },
                    "number",
                    Integer.toString(i + 1));
        }
    }

    /** Parts of a quarter in which each share of each bar and each beat can be counted. */
    private int divisions(List<NamedBar> bars) {
        int divisions = metre.value() > QUARTER ? metre.value() / QUARTER : 1;
        for (NamedBar named : bars) {
            int parts = named.bar.shares() * metre.value();
            int needed = parts / common(parts, metre.beats() * QUARTER);
            divisions = divisions / common(divisions, needed) * needed;
        }
        return divisions;
    }

    private static int common(int one, int other) {
        return other == 0 ? one : common(other, one % other);
    }

    private void attributes(int divisions) throws XMLStreamException {
        Key key = part.key();
        xml.text("divisions", divisions);
        xml.element("key", () -> {
            xml.text("fifths", key.signature());
            xml.text("mode", key.mode().label());
        });
        xml.element("time", () -> {
            xml.text("beats", metre.beats());
            xml.text("beat-type", metre.value());
        });
        xml.element("clef", () -> {
            xml.text("sign", part.isLow() ? "F" : "G");
            xml.text("line", part.isLow() ? 4 : 2);
        });
        if (!part.up().equals(Interval.UNISON)) {
            xml.element("transpose", this::transposition);
        }
    }

    /** From what is written to what sounds, whole octaves apart. */
    private void transposition() throws XMLStreamException {
        int steps = -part.up().staffSteps();
        int octaves = steps / 7;
        xml.text("diatonic", steps % 7);
        xml.text("chromatic", -part.up().semitones() - 12 * octaves);
        if (octaves != 0) {
            xml.text("octave-change", octaves);
        }
    }

    private void bar(ChartBar bar, int divisions) throws XMLStreamException {
        int whole = divisions * QUARTER * metre.beats() / metre.value();
        if (bar.chords().isEmpty()) {
            xml.element("note", () -> silence(whole));
        }
        for (ChartBar.ChartChord chord : bar.chords()) {
            if (!chord.held() && chord.chord().isPresent()) {
                xml.element("harmony", () -> harmony(chord.chord().get()));
            }
            boolean byBeats = metre.beats() % bar.shares() == 0;
            int slashes = byBeats ? metre.beats() / bar.shares() * chord.shares() : chord.shares();
            int duration = byBeats ? whole / metre.beats() : whole / bar.shares();
            for (int i = 0; i < slashes; i++) {
                if (chord.chord().isEmpty()) {
                    xml.element("note", () -> silence(duration));
                } else {
                    xml.element("note", () -> slash(duration, divisions));
                }
            }
        }
    }

    private void silence(int duration) throws XMLStreamException {
        xml.empty("rest");
        xml.text("duration", duration);
        xml.text("voice", 1);
    }

    private void harmony(Chord chord) throws XMLStreamException {
        HarmonyElement written = HarmonyElement.of(chord);
        xml.element("root", () -> note("root", chord.root()));
        xml.text("kind", written.kind(), "text", chord.kind().write(Signs.MUSIC));
        if (chord.isInverted()) {
            xml.element("bass", () -> note("bass", chord.bass()));
        }
        for (HarmonyElement.AlteredDegree degree : written.degrees()) {
            xml.element(
                    "degree",
                    () -> {
                        xml.text("degree-value", degree.value());
                        xml.text("degree-alter", degree.alter());
                        xml.text("degree-type", degree.type());
                    },
                    "print-object",
                    "no");
        }
    }

    private void note(String what, NoteName name) throws XMLStreamException {
        xml.text(what + "-step", name.letter());
        if (name.alteration() != 0) {
            xml.text(what + "-alter", name.alteration());
        }
    }

    /** As a plain or dotted value where it is one, else as part of a tuplet of the next longer one. */
    private void slash(int duration, int divisions) throws XMLStreamException {
        int inWhole = WHOLE * divisions;
        xml.element("unpitched", () -> {
            xml.text("display-step", part.isLow() ? "D" : "B");
            xml.text("display-octave", part.isLow() ? 3 : 4);
        });
        xml.text("duration", duration);
        xml.text("voice", 1);
        boolean dotted = isPower(inWhole * 3, duration * 2);
        int plain = dotted ? duration * 2 / 3 : duration;
        int type = Math.max(0, Integer.numberOfTrailingZeros(Integer.highestOneBit(inWhole / plain)));
        xml.text("type", TYPES.get(Math.min(type, TYPES.size() - 1)));
        if (dotted) {
            xml.empty("dot");
        } else if (!isPower(inWhole, duration)) {
            int in = inWhole / common(inWhole, duration);
            xml.element("time-modification", () -> {
                xml.text("actual-notes", in);
                xml.text("normal-notes", Integer.highestOneBit(in));
            });
        }
        xml.text("notehead", "slash");
    }

    /** Whether one length is the other halved some number of times. */
    private static boolean isPower(int longer, int shorter) {
        return longer % shorter == 0 && Integer.bitCount(longer / shorter) == 1;
    }
}
