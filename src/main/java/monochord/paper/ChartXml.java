package monochord.paper;

import java.util.List;
import javax.xml.stream.XMLStreamException;
import monochord.harmony.ChordEvent;
import monochord.song.musicxml.HarmonyElement;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/**
 * A part of a chart as MusicXML: its chords over bars of four beats, under each beat a slash on the middle line, so that
 * readers that lose chords without notes keep them. What it is transposed by is told, so that it sounds as the others.
 *
 * <p>Source: W3C MusicXML 4.0: order of elements, {@code transpose}, {@code time-modification}, {@code notehead-value}.
 */
public final class ChartXml {
    private static final int BEATS = 4;
    private static final List<String> TYPES =
            List.of("whole", "half", "quarter", "eighth", "16th", "32nd", "64th", "128th");

    private final PlayerPart part;
    private final XmlText xml = new XmlText();

    private ChartXml(PlayerPart part) {
        this.part = part;
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
        List<ChartBar> bars = ChartBar.of(part.progression());
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

    private void measures(List<ChartBar> bars) throws XMLStreamException {
        int divisions = divisions(bars);
        for (int i = 0; i < bars.size(); i++) {
            boolean first = i == 0;
            boolean last = i + 1 == bars.size();
            ChartBar bar = bars.get(i);
            xml.element(
                    "measure",
                    () -> {
                        if (first) {
                            xml.element("attributes", () -> attributes(divisions));
                        }
                        bar(bar, divisions);
                        if (last) {
                            xml.element("barline", () -> xml.text("bar-style", "light-heavy"), "location", "right");
                        }
                    },
                    "number",
                    Integer.toString(i + 1));
        }
    }

    /** Parts of a quarter in which each share of each bar can be counted. */
    private static int divisions(List<ChartBar> bars) {
        int divisions = 1;
        for (ChartBar bar : bars) {
            int needed = bar.shares() / common(bar.shares(), BEATS);
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
            xml.text("beats", BEATS);
            xml.text("beat-type", BEATS);
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
        for (ChordEvent chord : bar.chords()) {
            if (!chord.held()) {
                xml.element("harmony", () -> harmony(chord.chord()));
            }
            boolean byBeats = BEATS % bar.shares() == 0;
            int slashes = byBeats ? BEATS / bar.shares() * chord.shares() : chord.shares();
            int duration = byBeats ? divisions : divisions * BEATS / bar.shares();
            for (int i = 0; i < slashes; i++) {
                xml.element("note", () -> slash(duration, byBeats ? BEATS : bar.shares()));
            }
        }
    }

    private void harmony(Chord chord) throws XMLStreamException {
        HarmonyElement written = HarmonyElement.of(chord);
        xml.element("root", () -> note("root", chord.root()));
        xml.text("kind", written.kind(), "text", chord.kind().write(Signs.MUSIC));
        if (chord.isInverted()) {
            xml.element("bass", () -> note("bass", chord.bass()));
        }
        for (HarmonyElement.Degree degree : written.degrees()) {
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

    /** @param perBar how many equal shares the bar has: four beats, or shares that are tuplets where that is no power of 2 */
    private void slash(int duration, int perBar) throws XMLStreamException {
        int plain = Integer.highestOneBit(perBar);
        xml.element("unpitched", () -> {
            xml.text("display-step", part.isLow() ? "D" : "B");
            xml.text("display-octave", part.isLow() ? 3 : 4);
        });
        xml.text("duration", duration);
        xml.text("voice", 1);
        xml.text("type", TYPES.get(Integer.numberOfTrailingZeros(plain)));
        if (plain != perBar) {
            xml.element("time-modification", () -> {
                xml.text("actual-notes", perBar);
                xml.text("normal-notes", plain);
            });
        }
        xml.text("notehead", "slash");
    }
}
