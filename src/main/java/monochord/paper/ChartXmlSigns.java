package monochord.paper;

import javax.xml.stream.XMLStreamException;

/**
 * What stands around a bar in MusicXML: repeats, endings, double lines, names of sections and cues.
 *
 * <p>Source: W3C MusicXML 4.0, {@code barline}: order of its elements, the numbers of an {@code ending}.
 */
final class ChartXmlSigns {
    private final XmlText xml;

    ChartXmlSigns(XmlText xml) {
        this.xml = xml;
    }

    /** @param name of the section that begins with it, or nothing */
    void left(ChartBar bar, String name) throws XMLStreamException {
        ChartBar.BarSigns signs = bar.signs();
        if (signs.opens() || !signs.ending().isEmpty()) {
            xml.element(
                    "barline",
                    () -> {
                        if (signs.opens()) {
                            xml.text("bar-style", "heavy-light");
                        }
                        if (!signs.ending().isEmpty()) {
                            xml.empty("ending", "number", numbers(signs.ending()), "type", "start");
                        }
                        if (signs.opens()) {
                            xml.empty("repeat", "direction", "forward");
                        }
                    },
                    "location",
                    "left");
        }
        words(name, "bold");
        words(bar.cue(), "normal");
    }

    /** The numbers of an ending, as they are written there: with commas and no spaces. */
    private static String numbers(String ending) {
        return ending.replace(" ", "").matches("[1-9][0-9]*(,[1-9][0-9]*)*") ? ending.replace(" ", "") : "1";
    }

    private void words(String words, String weight) throws XMLStreamException {
        if (!words.isEmpty()) {
            xml.element(
                    "direction",
                    () -> xml.element("direction-type", () -> xml.text("words", words, "font-weight", weight)),
                    "placement",
                    "above");
        }
    }

    /**
     * @param last whether it is the last bar of all
     * @param endingGoesOn whether the next bar belongs to the same ending
     */
    void right(ChartBar bar, boolean last, boolean endingGoesOn) throws XMLStreamException {
        ChartBar.BarSigns signs = bar.signs();
        boolean repeats = signs.times() > 0;
        boolean ends =
                !signs.ending().isEmpty() && !endingGoesOn || !signs.ending().isEmpty() && (repeats || last);
        if (repeats || last || signs.endsPart() || ends) {
            xml.element(
                    "barline",
                    () -> {
                        xml.text(
                                "bar-style",
                                repeats || last ? "light-heavy" : signs.endsPart() ? "light-light" : "regular");
                        if (ends) {
                            String type = repeats ? "stop" : "discontinue";
                            xml.empty("ending", "number", numbers(signs.ending()), "type", type);
                        }
                        if (repeats) {
                            xml.empty("repeat", "direction", "backward", "times", Integer.toString(signs.times()));
                        }
                    },
                    "location",
                    "right");
        }
    }
}
