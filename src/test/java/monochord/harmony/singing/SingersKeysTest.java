package monochord.harmony.singing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import monochord.harmony.melody.Melody;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ten songs long in the public domain, their tunes from memory of a print of each: Southern Harmony 1835, Thomson 1799,
 * Playford 1686, Beethoven 1826, Zillertal print 1832, Masefield 1906, Lomax 1910, Vocal Melodies of Scotland 1841, Sharp
 * 1906, Hauser 1858. The three keys of each were worked out a second
 * time apart from this program, by a script that knows key numbers and the order alone (notes outside, how far, off the
 * middle, signs over three, distance). That this order is a good one: common practice, no source.
 */
class SingersKeysTest {
    private static List<SingersKey> keys(String tune, String key, String range, String... players) {
        return SingersKeys.of(Melody.parse(tune), Key.parse(key), VocalRange.parse(range), List.of(players));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = ';', textBlock = """
            Amazing Grace        ; G ; A3 to D5 ; D4 G4:2 B4:1/2 G4:1/2 B4:2 A4 G4:2 E4 D4:2 D4 G4:2 B4:1/2 G4:1/2 B4:2 A4 D5:5 ; F major C4 C5, Eb major Bb3 Bb4, D major A3 A4
            Auld Lang Syne       ; F ; G3 to C5 ; C4 F4:3/2 F4:1/2 F4 A4 G4:3/2 F4:1/2 G4 A4 F4:3/2 F4:1/2 A4 C5 D5:3 ; Eb major Bb3 C5, D major A3 B4, C major G3 A4
            Greensleeves         ; Am ; A3 to D5 ; A4 C5:2 D5 E5:3/2 F5:1/2 E5 D5:2 B4 G4:3/2 A4:1/2 B4 C5:2 A4 A4:3/2 G#4:1/2 A4 B4:2 G#4 E4:2 ; F# minor C#4 D5, E minor B3 C5, D minor A3 Bb4
            Ode to Joy           ; D ; F2 to C4 ; F#4 F#4 G4 A4 A4 G4 F#4 E4 D4 D4 E4 F#4 F#4:3/2 E4:1/2 E4:2 ; C major C3 G3, Bb major Bb2 F3, Db major Db3 Ab3
            Silent Night         ; C ; A3 to D5 ; G4:3/2 A4:1/2 G4 E4:3 G4:3/2 A4:1/2 G4 E4:3 D5:2 D5 B4:3 C5:2 C5 G4:3 F5:2 D5 B4 C5 G4 E4 G4 F4 D4 C4:6 ; A major A3 D5, Bb major Bb3 Eb5, Ab major Ab3 Db5
            The Drunken Sailor   ; D dorian ; A3 to D5 ; A4 A4:1/2 A4:1/2 A4 A4:1/2 A4:1/2 A4 D4 F4 A4 G4 G4:1/2 G4:1/2 G4 G4:1/2 G4:1/2 G4 C4 E4 G4 ; D dorian C4 A4, C dorian Bb3 G4, B dorian A3 F#4
            Home on the Range    ; F ; C3 to F4 ; C4 C4 F4 G4 A4:2 F4:1/2 E4:1/2 D4 Bb4 Bb4 Bb4:2 A4 Bb4 C5:3 ; G major D3 D4, F major C3 C4, Ab major Eb3 Eb4
            Loch Lomond          ; F ; A2 to E4 ; C4 F4 F4 G4 A4 G4 F4 D4 C4 C4 F4:2 A4 D5 C5:3 ; F major C3 D4, Eb major Bb2 C4, E major B2 C#4
            The Water Is Wide    ; D ; A3 to D5 ; A3 D4 D4 E4 F#4 E4 D4 B3:2 A3 F#4 G4 A4:2 B4 A4 F#4 A4:3 ; D major A3 B4, Eb major Bb3 C5, E major B3 C#5
            Wayfaring Stranger   ; Dm ; C4 to F5 ; D4 F4 G4 A4:3 D5:1/2 C5:1/2 A4:3 G4 F4:3 D4 F4:2 D4:1/2 C4:1/2 D4:4 ; E minor D4 E5, F minor Eb4 F5, Eb minor Db4 Eb5
            """)
    void aTuneLiesWellInThreeKeys(String name, String key, String range, String tune, String expected) {
        assertEquals(
                expected,
                keys(tune, key, range).stream()
                        .map(one -> one.key() + " " + one.low() + " " + one.high())
                        .collect(Collectors.joining(", ")));
    }

    /** Whatever the key, no note that is said to fit lies outside, and the tune keeps its intervals. */
    @Test
    void whatFitsFitsInEveryKey() {
        String tune = "D4 G4:2 B4 A4 D5 E5";
        for (Key key : Key.majorKeys()) {
            Melody melody = Melody.parse(tune).plus(Key.parse("G").tonic().to(key.tonic()));
            for (String range : List.of("A3 to D5", "E2 to D4", "C4 to G5", "G3 to C4")) {
                VocalRange voice = VocalRange.parse(range);
                List<SingersKey> found = SingersKeys.of(melody, key, voice, List.of());
                assertEquals(SingersKeys.OFFERED, found.size());
                for (SingersKey one : found) {
                    boolean inside = one.low().midiNumber() >= voice.low().midiNumber()
                            && one.high().midiNumber() <= voice.high().midiNumber();
                    assertEquals(inside, one.fits(), () -> one.key() + " in " + voice);
                    assertEquals(14, one.high().midiNumber() - one.low().midiNumber());
                    assertTrue(one.key().isInUse());
                }
            }
        }
    }

    @Test
    void theReasonsAreSaid() {
        SingersKey best =
                keys("D4 G4:2 B4 D5", "G", "G3 to C5", "alto sax", "guitar").get(0);
        assertEquals(
                List.of(
                        "It goes from B♭3 to B♭4, inside G3 to C5.",
                        "It dwells on E♭4 to G4, in the middle of the voice.",
                        "The keyboard has three flats, B♭, E♭ and A♭.",
                        "alto sax reads C major, no sharps or flats.",
                        "guitar plays shapes of D major above a capo on fret 1.",
                        "That is 4 half steps down."),
                best.why(VocalRange.parse("G3 to C5")).stream()
                        .map(Object::toString)
                        .toList());
        SingersKey wide = keys("C4 C6", "C", "C4 to G4").get(0);
        assertEquals(
                "It goes from C4 to C6: 1 note lies outside, 17 half steps off at most.",
                wide.why(VocalRange.parse("C4 to G4")).get(0).toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            A3         ; "A3" is not what a voice can sing: expected the lowest and the highest note, with to between. Example: A3 to D5
            D5 to A3   ; "D5 to A3" is not what a voice can sing: D5 is not below A3. Example: A3 to D5
            """)
    void aRangeThatIsNoneIsRefused(String text, String message) {
        assertEquals(
                message,
                assertThrows(Unreadable.class, () -> VocalRange.parse(text)).getMessage());
    }
}
