package monochord.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;
import monochord.shell.sitting.CellAnswers;
import monochord.theory.Key;
import monochord.view.Look;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a cell's JVM says may be anything, for a cell can reach all that is in its JVM; the line takes only so much. */
class CellReportTest {
    private static final String HOSTILE = "\u001b]0;owned\u0007\u001b[2J\u009b31m\r\b";

    private final CellReportBuilder builder = new CellReportBuilder("text", Key.parse("C"));

    private String said() {
        return CellAnswers.of(builder.report(), "text").text(Look.ofPipe()).plain();
    }

    /** Guards, each enough: {@code SafeText} wherever {@code CellReportBuilder} takes a text; {@code Span}, which lets none through. */
    @ParameterizedTest
    @EnumSource(
            value = MessageKind.class,
            names = {"PRINTED", "VALUE", "SHOW", "NOTICE", "TROUBLE"})
    void noControlCharacterComesThrough(MessageKind kind) {
        builder.take(
                switch (kind) {
                    case VALUE -> Message.of(kind, HOSTILE, HOSTILE, "PLAIN", HOSTILE);
                    case SHOW -> Message.of(kind, "PLAIN", HOSTILE);
                    default -> Message.of(kind, HOSTILE);
                });
        assertTrue(said().contains("owned"), said());
        assertTrue(said().chars().allMatch(c -> c == '\n' || !Character.isISOControl(c)), said());
    }

    /** Guard: {@code room} in {@code CellReportBuilder}. */
    @Test
    void whatAJvmWithoutBoundsPrintsIsCutAllTheSame() {
        IntStream.range(0, 100).forEach(i -> builder.take(Message.of(MessageKind.PRINTED, "x".repeat(1000))));
        assertEquals("x".repeat(12_000) + "…and88000morecharactersthatarenotshown.", said().replaceAll("\\s", ""));
    }

    /** Guard: {@code MOST_PARTS} in {@code CellReportBuilder}. */
    @Test
    void valuesComeToAnEnd() {
        IntStream.range(0, 10_000)
                .forEach(i -> builder.take(Message.of(MessageKind.VALUE, "v", "int", "PLAIN", "" + i)));
        assertEquals(200, said().lines().count());
    }

    /** Guard: {@code MOST_LISTENED} in {@code CellReportBuilder}. */
    @Test
    void playingComesToAnEnd() {
        IntStream.range(0, 1000).forEach(i -> builder.take(Message.of(MessageKind.PLAY, "", "CHORD", "C")));
        assertEquals(16, builder.report().plays().size());
    }

    /** Guard: {@code CellMusicReader.music} takes what its readers refuse for no music. */
    @ParameterizedTest
    @EnumSource(monochord.cell.protocol.EncodedValue.Shape.class)
    void musicThatIsNoneIsShownAsText(monochord.cell.protocol.EncodedValue.Shape shape) {
        builder.take(Message.of(MessageKind.VALUE, "v", "Chord", shape.name(), "Hm?", "H", "loud", "999", "?"));
        builder.take(Message.of(MessageKind.PLAY, "-5", shape.name(), "Hm?", "H"));
        assertEquals("v = Hm?", said());
        assertEquals(List.of(), builder.report().plays());
    }

    /** Guard: {@code Math.min} in {@code CellReportBuilder.failure}. */
    @Test
    void aPlaceBehindTheEndIsTheEnd() {
        builder.take(Message.of(MessageKind.TROUBLE, "No.", "99999", "0"));
        assertEquals("No.\n  text\n      ^", said());
    }
}
