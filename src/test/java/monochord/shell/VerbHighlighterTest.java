package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import monochord.shell.verb.Verbs;
import monochord.theory.note.Signs;
import monochord.view.Look;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VerbHighlighterTest {
    private static final Look COLOUR = new Look(80, Signs.MUSIC, false, true);

    private static AttributedString shown(String line, Look look) {
        return new VerbHighlighter(new Verbs(), look).highlight(null, line);
    }

    private static AttributedString bold(String verb, String rest) {
        return new AttributedStringBuilder()
                .append(verb, AttributedStyle.BOLD)
                .append(rest)
                .toAttributedString();
    }

    @Test
    void aVerbIsBoldAsSoonAsItIsOne() {
        assertEquals(new AttributedString("sho"), shown("sho", COLOUR));
        assertEquals(bold("show", ""), shown("show", COLOUR));
        assertEquals(bold("Show", " C show"), shown("Show C show", COLOUR));
        assertEquals(new AttributedString("showy C"), shown("showy C", COLOUR));
        assertEquals(new AttributedString("F C G"), shown("F C G", COLOUR));
    }

    @Test
    void nothingIsMarkedWithoutColour() {
        assertEquals(new AttributedString("show C"), shown("show C", COLOUR.withoutColour()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "  show C", "play\tC", "\u2003", "x\0y", "\uD834"})
    void theLineItselfIsNeverChanged(String line) {
        assertEquals(line, shown(line, COLOUR).toString());
    }
}
