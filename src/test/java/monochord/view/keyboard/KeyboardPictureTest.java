package monochord.view.keyboard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import monochord.text.Reader;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Scale;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.Test;

/** Pictures typed and read against a keyboard by hand; the spellings are those of the theory tables. */
class KeyboardPictureTest {
    @Test
    void aFlatMajorSevenHasTwoBlackAndTwoWhiteKeys() {
        assertPicture(chord("Abmaj7", Reader.ENGLISH, 80), """
                         R                   5
                    ██   A♭   ██        ██   E♭        ██   ██   ██
                ──┴────┴────┴────┴────C────┴────┴────┴────G────┴────┴──
                                      3                   7
                """);
    }

    @Test
    void theSamePictureStandsInFortyColumnsOfAscii() {
        assertPicture(chord("Abmaj7", Reader.of(Signs.ASCII), 40), """
                     R           5
                  [] Ab []    [] Eb    [] [] []
                -+--+--+--+--C--+--+--+--G--+--+-
                             3           7
                """);
    }

    @Test
    void theChordUnderTheSixthOfDIsBFlatDFA() {
        assertPicture(chord("Bbmaj7", Reader.ENGLISH, 80), """
                              R
                    ██   ██   B♭        ██   ██        ██   ██   ██
                ──┴────┴────┴────┴────┴────D────┴────F────┴────A────┴──
                                           3         5         7
                """);
    }

    @Test
    void cFlatStandsOnTheKeyOfB() {
        assertPicture(chord("Cb", Reader.ENGLISH, 80), """
                                             3         5
                    ██   ██   ██        ██   E♭        G♭   ██   ██
                ──┴────┴────┴────C♭───┴────┴────┴────┴────┴────┴────┴──
                                 R
                """);
    }

    @Test
    void anInversionNamesItsBassAndBDoubleFlatStandsOnTheKeyOfA() {
        assertPicture(chord("Ebm7b5/Gb", Reader.ENGLISH, 80), """
                bass 3                   7    R
                     G♭   ██   ██        D♭   E♭
                 ──┴────┴────B𝄫───┴────┴────┴────┴──
                             ♭5
                """);
        assertPicture(chord("Ebm7b5/Gb", Reader.of(Signs.ASCII), 80), """
                bass 3                   7    R
                     Gb   []   []        Db   Eb
                 --+----+---Bbb---+----+----+----+--
                             b5
                """);
    }

    @Test
    void aThirteenthChordReachesOverTwoOctaves() {
        assertPicture(chord("G13", Reader.ENGLISH, 80), """
                    ██   ██   ██        ██   ██        ██   ██   ██        ██   ██
                ──┴────G────┴────B────┴────D────┴────F────┴────A────┴────C────┴────E──
                       R         3         5         7         9         11        13
                """);
        assertPicture(chord("G13", Reader.of(Signs.ASCII), 40), """
                  [] []    [] []    [] [] []    [] []
                -G--+--B--+--D--+--F--+--A--+--C--+--E-
                 R     3     5     7     9     11    13
                """);
    }

    @Test
    void aBassFromOutsideTheChordIsOnlyABass() {
        assertPicture(chord("F/G", Reader.ENGLISH, 80), """
                    ██   ██   ██        ██   ██        ██   ██   ██        ██   ██
                ──┴────G────┴────┴────┴────┴────┴────F────┴────A────┴────C────┴────┴──
                      bass                           R         3         5
                """);
    }

    @Test
    void fDoubleSharpStandsOnTheKeyOfGInGSharpHarmonicMinor() {
        assertPicture(scale("G# harmonic minor", Reader.ENGLISH, 80), """
                         1    2         4    5              1
                    ██   G♯   A♯        C♯   D♯        ██   G♯   ██
                ──┴────┴────┴────B────┴────┴────E────┴────F𝄪───┴────┴──
                                 3              6         7
                """);
        assertPicture(scale("G# harmonic minor", Reader.of(Signs.ASCII), 40), """
                     1  2     4  5        1
                  [] G# A#    C# D#    [] G# []
                -+--+--+--B--+--+--E--+-F##-+--+-
                          3        6     7
                """);
    }

    @Test
    void theBluesScaleIsCountedFromTheMajorScale() {
        assertPicture(scale("A blues", Reader.ENGLISH, 80), """
                                             ♭5
                    ██   ██   ██        ██   E♭        ██   ██   ██
                ──┴────┴────A────┴────C────D────E────┴────G────A────┴──
                            1         ♭3   4    5         ♭7   1
                """);
    }

    @Test
    void twoHandsAreDrawnAtTheirHeightsAndToldApartInWords() {
        Chord chord = Chord.parse("Fmaj7");
        StyledText drawn = KeyboardPicture.hands(
                ToneRoles.marked(pitches("F2 C3"), chord),
                ToneRoles.marked(pitches("A3 C4 E4"), chord),
                Reader.ENGLISH,
                80);
        assertPicture(drawn, """
                    ██   ██   ██        ██   ██        ██   ██   ██        ██   ██
                ──F────┴────┴────┴────C────┴────┴────┴────┴────A────┴────C────┴────E──
                  R                   5                        3         5         7
                                      C3                                 C4
                left   F2 C3
                right  A3 C4 E4
                """);
    }

    @Test
    void aWindowTooNarrowToDrawInIsToldTheSameInWords() {
        assertPicture(chord("Ebm7b5/Gb", Reader.ENGLISH, 29), """
                G♭: third, in the bass.
                B𝄫: lowered fifth.
                D♭: seventh.
                E♭: root.
                """);
    }

    @Test
    void twoNamesOnOneKeyAreSaidInWords() {
        List<MarkedKey> marks = pitches("F#4 Gb4").stream()
                .map(pitch -> new MarkedKey(pitch, ToneRole.NONE))
                .toList();
        assertPicture(KeyboardPicture.pitches(marks, Reader.of(Signs.ASCII), 80), """
                F#4.
                Gb4.
                """);
    }

    static List<Pitch> pitches(String text) {
        return Arrays.stream(text.split(" ")).map(Pitch::parse).toList();
    }

    private static StyledText chord(String symbol, Reader reader, int width) {
        return KeyboardPicture.chord(Chord.parse(symbol), reader, width);
    }

    private static StyledText scale(String name, Reader reader, int width) {
        return KeyboardPicture.scale(Scale.parse(name), reader, width);
    }

    static void assertPicture(StyledText drawn, String expected) {
        assertEquals(expected, drawn.plain() + "\n");
    }
}
