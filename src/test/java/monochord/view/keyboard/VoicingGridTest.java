package monochord.view.keyboard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.voicing.Voicing;
import monochord.text.MadeUpLanguage;
import monochord.text.Reader;
import monochord.theory.Chord;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class VoicingGridTest {
    private static final List<VoicingRow> ROWS =
            List.of(row("C", "C3 G3 | E4 G4"), row("Gsus4", "G2 D3 | C4 G4"), row("Abmaj7", "Ab2 Eb3 | C4 G4"));

    private static VoicingRow row(String chord, String voicing) {
        return new VoicingRow(Chord.parse(chord), Voicing.parse(voicing));
    }

    @Test
    @DisplayName("a held note is a string that sounds on, a moving one says which way and how far")
    void draws() {
        assertEquals("""
                            C       Gsus4   A♭maj7
                right       G4══════●═══════●
                            E4   ↘4 C4══════●
                left        G3   ↘5 D3   ↗1 E♭3
                            C3   ↘5 G2   ↗1 A♭2\
                """, VoicingGrid.of(ROWS, Reader.ENGLISH, 80).plain());
    }

    @Test
    @DisplayName("longer words move all columns alike")
    void makesRoomForLongerWords() {
        assertEquals(
                """
                              C       Gsus4   A♭maj7
                ⟦right~~⟧     G4══════●═══════●
                              E4   ↘4 C4══════●
                ⟦left~~⟧      G3   ↘5 D3   ↗1 E♭3
                              C3   ↘5 G2   ↗1 A♭2\
                """,
                VoicingGrid.of(ROWS, new Reader(Signs.MUSIC, new MadeUpLanguage()), 80)
                        .plain());
    }

    @Test
    @DisplayName("in ASCII alone")
    void drawsInAscii() {
        assertEquals("""
                            C       Gsus4   Abmaj7
                right       G4======o=======o
                            E4   v4 C4======o
                left        G3   v5 D3   ^1 Eb3
                            C3   v5 G2   ^1 Ab2\
                """, VoicingGrid.of(ROWS, Reader.of(Signs.ASCII), 80).plain());
    }

    @Test
    @DisplayName("a narrow page gets several rows of chords, and each goes on where the last one ended")
    void splits() {
        assertEquals("""
                            C       Gsus4
                right       G4══════●
                            E4   ↘4 C4
                left        G3   ↘5 D3
                            C3   ↘5 G2

                            A♭maj7
                right    ═══G4
                         ═══C4
                left     ↗1 E♭3
                         ↗1 A♭2\
                """, VoicingGrid.of(ROWS, Reader.ENGLISH, 30).plain());
    }

    @Test
    @DisplayName("no line is wider than the page, at any width")
    void fits() {
        List<VoicingRow> many = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            many.addAll(ROWS);
        }
        for (int width = 24; width <= 80; width++) {
            int room = width;
            for (Signs signs : Signs.values()) {
                assertTrue(VoicingGrid.of(many, Reader.of(signs), width).columns() <= width, () -> room + " " + signs);
            }
        }
    }

    @Test
    @DisplayName("in words, one chord a line")
    void words() {
        assertEquals("""
                C: left hand C3 G3, right hand E4 G4.
                Gsus4: left hand G2 D3, right hand C4 G4. G4 stays.
                A♭maj7: left hand A♭2 E♭3, right hand C4 G4. C4 G4 stay.\
                """, VoicingGrid.words(ROWS, Reader.ENGLISH).plain());
    }
}
