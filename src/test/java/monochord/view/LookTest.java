package monochord.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import monochord.theory.note.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LookTest {
    @ParameterizedTest(name = "a terminal of {0} columns gets lines of {1} and pictures of {2}")
    @CsvSource({"0, 20, 20", "19, 20, 20", "20, 20, 20", "80, 80, 80", "132, 132, 80", "200, 200, 80", "9999, 200, 80"})
    void linesStayReadableAndPicturesWithinEighty(int columns, int width, int picture) {
        Look look = Look.ofPipe().inWidth(columns);
        assertEquals(width, look.width());
        assertEquals(picture, look.pictureWidth());
    }

    @Test
    void eachWishChangesOneThing() {
        Look look = new Look(60, Signs.MUSIC, false, true);
        assertEquals(new Look(60, Signs.ASCII, false, true), look.inAscii());
        assertEquals(new Look(60, Signs.MUSIC, true, true), look.asPlain());
        assertEquals(new Look(60, Signs.MUSIC, false, false), look.withoutColour());
        assertEquals(new Look(40, Signs.MUSIC, false, true), look.inWidth(40));
        assertEquals(new Look(80, Signs.MUSIC, false, false), Look.ofPipe());
    }
}
