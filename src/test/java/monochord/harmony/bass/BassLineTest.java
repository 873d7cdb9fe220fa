package monochord.harmony.bass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sources: the stepping and the lament bass, plain and by half steps, Open Music Theory 1, "popRockHarmony", and 2 on the
 * lament; the tonic over the dominant's bass Open Music Theory 1, "cadenceTypes"; pedals Integrated Music Theory, lesson 9b;
 * dominants before a chord and a tritone away Open Music Theory 2, "Substitutions". Which of several lines is taken, and the
 * walking bass: common practice, no source.
 */
class BassLineTest {
    private static BassLine line(String chords, String key, BassLine.BassStyle style) {
        return BassLine.of(Progression.parse(chords, Key.parse(key)), style);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            Am G F E                     ; Am ; Am Am/G# G G/F# | F E |
            | C | Am | F | G | C |       ; C  ; C C/B | Am Am/G | F D7/F# | G | C |
            | C | F | C | G | C |        ; C  ; C C/Bb | F/A | C/G | G | C |
            Cm Fm G7 Cm                  ; Cm ; Cm Cm/Bb Fm/Ab . | G7 Cm |
            C C F Fm C G C               ; C  ; C . C C/Bb | F/A Fm/Ab | C/G G | C |
            | C | G | C7 | F | Fm | C | G | C | ; C ; C | G/B | C7/Bb | F/A | Fm/Ab | C/G | G | C |
            | Bb | F | Bb7 | Eb | Ebm | Bb | F | Bb | ; Bb ; Bb | F/A | Bb7/Ab | Eb/G | Ebm/Gb | Bb/F | F | Bb |
            | C | F | G7 | C | F | G | C | ; C ; C C/Bb | F/A Ab7 | G7 G7/F | C/E | F D7/F# | G | C |
            Cm G7 Cm7 F Ab G             ; Cm ; Cm G7/B Cm7/Bb F/A Ab G
            Am E7 Am7 D F E              ; Am ; Am E7/G# Am7/G D/F# F E
            | C | G/B | Am |             ; C  ; C | G/B Bb7 | Am |
            """)
    void goesBySteps(String chords, String key, String over) {
        assertEquals(
                over, line(chords, key, BassLine.BassStyle.CHROMATIC).chords().toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            C Am F G              ; C ; C Am/C F/C G   ; C, the tonic, stays in the bass from C to F, which both hold it.
            | C | Dm7 | G7 | C |  ; C ; C | Dm7/C | G7 | C | ; C, the tonic, stays in the bass from C to Dm7, which both hold it.
            C G F C               ; C ; C G/C F/C C    ; C, the tonic, stays in the bass from C to C, which both hold it.
            F C Dm7 G7 C          ; C ; F C/G Dm7/G G7 C ; G, the fifth degree, stays in the bass from C to G7, which both hold it.
            C A7 Dm G C           ; C ; C A7/G Dm/G G C ; G, the fifth degree, stays in the bass from A7 to G, which both hold it.
            C Db7 C               ; C ; C Db7 C        ;
            """)
    void holdsAPedalWhereItHolds(String chords, String key, String over, String why) {
        BassLine line = line(chords, key, BassLine.BassStyle.PEDAL);
        assertEquals(over, line.chords().toString());
        assertEquals(
                why == null ? "" : why,
                line.reasons().stream().findFirst().map(Object::toString).orElse(""));
        assertEquals(why != null, line.isNew());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            | Dm7 | G7 | Cmaj7 | A7 | Dm7 | ; C  ; D2 F2 A2 F#2 G2 F2 D2 B1 C2 E2 G2 Bb2 A2 G2 E2 C#2 D2
            Dm7 G7 C                        ; C  ; D2 F#2 G2 B2 C3
            """)
    void walks(String chords, String key, String notes) {
        assertEquals(
                notes,
                line(chords, key, BassLine.BassStyle.WALKING).walked().stream()
                        .flatMap(List::stream)
                        .map(note -> note.pitch().toString())
                        .collect(Collectors.joining(" ")));
    }

    /** In three the chord that is put in has the last beat, and the bass walks in threes; in 6/8 a bar has halves. */
    @Test
    void goesInThree() {
        Progression waltz = Progression.parse("| Am | F | G | C |", Key.parse("C"));
        Beats three = Beats.of(3);
        assertEquals(
                "Am . C7/Bb | F/A . Ab7 | G | C |",
                BassLine.of(waltz, BassLine.BassStyle.CHROMATIC, three, false)
                        .chords()
                        .toString());
        assertEquals(
                "Am C7/Bb | F/A Ab7 | G | C |",
                BassLine.of(waltz, BassLine.BassStyle.CHROMATIC, three, true)
                        .chords()
                        .toString());
        assertEquals(
                List.of(3, 3, 3, 1),
                BassLine.of(waltz, BassLine.BassStyle.WALKING, three, false).walked().stream()
                        .map(List::size)
                        .toList());
    }

    /** Laws, over progressions in every key: the bass of each chord first, a step or a fifth into the next, within reach. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "| I | vi | ii7 | V7 | I |",
                "| ii7 V7 | Imaj7 | bVII7 | VI7 |",
                "| I | I | IV | IV | bVI | V | I6 | viio7 | I |",
                "I V6 vi iii6 IV I6 ii7 V7"
            })
    void leadsIntoEachChord(String numerals) {
        for (Key key : Key.majorKeys()) {
            BassLine line = line(numerals, key.toString(), BassLine.BassStyle.WALKING);
            List<Chord> chords = line.chords().chords();
            for (int i = 0; i < chords.size(); i++) {
                List<WalkingBass.WalkedNote> notes = line.walked().get(i);
                assertEquals(chords.get(i).bass(), notes.get(0).pitch().name());
                assertTrue(notes.stream().map(WalkingBass.WalkedNote::pitch).allMatch(BassLineTest::isInReach));
                if (notes.size() > 1 && i + 1 < chords.size()) {
                    Pitch last = notes.get(notes.size() - 1).pitch();
                    int move = line.walked().get(i + 1).get(0).pitch().midiNumber() - last.midiNumber();
                    assertTrue(List.of(-7, -2, -1, 1, 2, 5).contains(move), key + " " + line.walked());
                }
            }
        }
    }

    private static boolean isInReach(Pitch pitch) {
        return pitch.midiNumber() >= 28 && pitch.midiNumber() <= 52;
    }

    /** Laws: ends on their roots, chords as they were but for what is put in, as long as they were, and each is told. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "| I | vi | IV | V | I |",
                "| I | V | vi | iii | IV | I | ii7 | V7 |",
                "| i | bVII | bVI | V7 | i |",
                "| Imaj7 | ii7 V7 | iii7 | VI7 | ii7 | V7 | I |"
            })
    void keepsTheChords(String numerals) {
        for (Key key : Key.majorKeys()) {
            Progression plain = Progression.parse(numerals, key);
            BassLine line = BassLine.of(plain, BassLine.BassStyle.CHROMATIC);
            List<Chord> chords = line.chords().chords();
            assertEquals(plain.bars().size(), line.chords().bars().size());
            assertFalse(chords.get(0).isInverted());
            assertFalse(chords.get(chords.size() - 1).isInverted());
            List<Chord> told = chords.stream()
                    .filter(chord -> !plain.chords().contains(chord))
                    .toList();
            Stream.of(told)
                    .flatMap(List::stream)
                    .forEach(chord -> assertTrue(
                            line.reasons().stream()
                                    .anyMatch(reason -> reason.toString().startsWith(chord + " ")
                                            || reason.toString().startsWith(chord.write(Signs.MUSIC) + " ")),
                            chord + " in " + line.reasons()));
        }
    }
}
