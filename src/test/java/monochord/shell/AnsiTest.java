package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.Collectors;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.note.Signs;
import monochord.view.Look;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Source: ECMA-48, fifth edition, section 8.3.117, select graphic rendition. */
class AnsiTest {
    private static final Look COLOUR = new Look(80, Signs.MUSIC, false, true);
    private static final Look BARE = COLOUR.withoutColour();

    @Test
    void eachSpanEndsItsOwnStyleAndEachLineItself() {
        StyledText text = StyledText.of(
                StyledLine.of("A♭", Style.STRONG).plus(" lies ").plus("under", Style.EMPHASIS), StyledLine.of("here"));
        assertEquals("\033[1mA♭\033[0m lies \033[3munder\033[0m\nhere\n", Ansi.of(text, COLOUR));
        assertEquals("A♭ lies under\nhere\n", Ansi.of(text, BARE));
        assertEquals("", Ansi.of(StyledText.EMPTY, COLOUR));
    }

    @Test
    void anEmptyLineStaysEmpty() {
        assertEquals("\n", Ansi.of(StyledText.of(StyledLine.EMPTY), COLOUR));
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    void aStyleNeverChangesWhatIsRead(Style style) {
        StyledText text = StyledText.of("C E G", style);
        assertEquals("C E G\n", Ansi.of(text, COLOUR).replaceAll("\033\\[[0-9;]*m", ""));
        assertEquals("C E G\n", Ansi.of(text, BARE));
    }

    /** Right, nearly and wrong, and the tones of a chord, must not look alike among themselves. */
    @Test
    void verdictsAndTonesAreToldApart() {
        assertEquals(3, looks(Style.RIGHT, Style.NEARLY, Style.WRONG));
        assertEquals(4, looks(Style.ROOT, Style.THIRD, Style.FIFTH, Style.SEVENTH));
    }

    private static int looks(Style... styles) {
        return Arrays.stream(styles)
                .map(style -> Ansi.of(StyledText.of("x", style), COLOUR))
                .collect(Collectors.toSet())
                .size();
    }
}
