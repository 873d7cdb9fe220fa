package monochord.harmony.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import monochord.harmony.Progression;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One idiom asked for by name, as the books have it. Source: in each row, by OMT for Open Music Theory (2014), OMT 2 for
 * its second edition (2021 to 2023), IMT for Integrated Music Theory.
 */
class AskedIdiomTest {
    private static String with(String idiom, String row, String key, String at) {
        OptionalInt place = at == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(at) - 1);
        return AskedIdiom.parse(idiom)
                .in(Progression.parse(row, Key.parse(key)), Optional.empty(), place)
                .map(idea -> symbols(idea.progression()))
                .orElse("nowhere");
    }

    private static String symbols(Progression progression) {
        return progression.chords().stream().map(Object::toString).collect(Collectors.joining(" "));
    }

    /** A line over a standing chord, from the root down or from the fifth up, is in the ideas. Common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            | Am | Dm |     ; Am ; Am Am(maj7) Am7 Dm     ; A G# G
            | C | . | G |   ; C  ; C Cmaj7 C7 C6 G        ; C B Bb A
            | Am | Dm |     ; Am ; Am F/A Am6 Am7 Dm      ; E F F# G
            | Am | . | E |  ; Am ; Am Am(maj7) Am7 Am6 E  ; A G# G F#
            | C | F |       ; C  ; C Cmaj7 C7 F           ; C B Bb
            | C | F |       ; C  ; C Caug C6 C7 F         ; G G# A Bb
            | Eb | Ab |     ; Eb ; Eb Ebaug Eb6 Eb7 Ab    ; Bb B C Db
            """)
    void aLineMovesOverAStandingChord(String row, String key, String with, String line) {
        List<Idea> ideas = Recolour.of(Progression.parse(row, Key.parse(key)), Optional.empty()).ideas().stream()
                .filter(idea -> List.of("line cliche", "rising line").contains(idea.name()))
                .toList();
        Optional<Idea> found = ideas.stream()
                .filter(idea -> symbols(idea.progression()).equals(with))
                .findFirst();
        assertTrue(
                found.isPresent(),
                () -> ideas.stream()
                        .map(idea -> symbols(idea.progression()))
                        .toList()
                        .toString());
        String said = found.get().reasons().get(0).toString().replace('♯', '#').replace('♭', 'b');
        assertTrue(said.endsWith(": " + line + "."), said);
    }

    /**
     * Third and seventh of a dominant and of the one a tritone away are the same two keys, swapped. Source: Open Music Theory
     * 2, "Substitutions".
     */
    @Test
    void theTritoneSubstituteSwapsThirdAndSeventh() {
        for (Key key : Key.majorKeys()) {
            Progression row = Progression.parse("ii7 V7 Imaj7", key);
            List<Chord> changed = AskedIdiom.parse("tritone")
                    .in(row, Optional.empty(), OptionalInt.empty())
                    .orElseThrow()
                    .progression()
                    .chords();
            List<NoteName> dominant = row.chords().get(1).tones();
            List<NoteName> instead = changed.get(1).tones();
            assertEquals(dominant.get(1).pitchClass(), instead.get(3).pitchClass(), changed::toString);
            assertEquals(dominant.get(3).pitchClass(), instead.get(1).pitchClass(), changed::toString);
        }
    }

    @ParameterizedTest(name = "{1} in {2} with {0} at {3}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
            borrowed iv            | C F G C       | C  | 2 | C Fm G C                           | OMT alteredSubdominants
            borrowed iv            | C F G C       | C  |   | C Fm G C                           | OMT alteredSubdominants
            borrowed bVImaj7       | C G Am F      | C  |   | C G Abmaj7 F                       | IMT 16a
            borrowed bVI           | D A Bm G      | D  | 3 | D A Bb G                           | IMT 16a
            applied                | C Am Dm G C   | C  | 2 | C A7 Dm G C                        | OMT 2 Substitutions
            applied                | C F G C       | C  | 2 | C C7 F G C                         | OMT 2 Substitutions
            applied                | C Am F G C    | C  | 3 | C Am C7 F G C                      | OMT 2 Substitutions
            two-five               | C Am          | C  |   | C Bm7b5 E7 Am                      | OMT 2 Embellishing chords
            two five               | C G7 C        | C  | 2 | C Dm7 G7 C                         | OMT 2 Embellishing chords
            tritone                | Dm7 G7 Cmaj7  | C  |   | Dm7 Db7 Cmaj7                      | OMT 2 Substitutions
            tritone                | Eb A7 Dm      | Dm |   | Eb Eb7 Dm                          | OMT 2 Substitutions
            backdoor               | C F C         | C  | 3 | C F Bb7 C                          | common practice, no source
            backdoor               | C F C         | C  | 2 | C Fm Bb7 C                         | common practice, no source
            passing diminished     | C Dm G C      | C  |   | C C#dim7 Dm G C                    | IMT 14c
            passing diminished     | A D E A       | A  |   | A D D#dim7 E A                     | IMT 14c
            passing diminished     | C G Am F      | C  | 3 | C G G#dim7 Am F                    | IMT 14c
            passing diminished     | C Dm Em F     | C  | 3 | C Dm D#dim7 Em F                   | IMT 14c
            common-tone diminished | C G G C       | C  | 3 | C G A#dim7/G G C                   | IMT 18b
            common-tone diminished | C C G C       | C  | 2 | C D#dim7/C C G C                   | IMT 18b
            suspended              | C F G C       | C  | 3 | C F G7sus4 G C                     | OMT embellishingTones
            suspended              | C F G C       | C  | 2 | C Fsus4 F G C                      | OMT embellishingTones
            line cliché            | Am Dm E Am    | Am | 1 | Am Am(maj7) Am7 Am6 Dm E Am        | common practice, no source
            line cliche            | C F G C       | C  | 1 | C Cmaj7 C7 F G C                   | common practice, no source
            rising line            | C F G C       | C  | 1 | C Caug C6 C7 F G C                 | common practice, no source
            rising line            | Am Dm E Am    | Am | 1 | Am F/A Am6 Am7 Dm E Am             | common practice, no source
            stepping bass          | C G Am Em F C | C  | 2 | C G/B Am Em F C                    | OMT popRockHarmony
            stepping bass          | C G Am Em F C | C  | 4 | C G Am Em/G F C                    | OMT popRockHarmony
            stepping bass          | F C Dm G C    | C  | 2 | F C/E Dm G C                       | OMT popRockHarmony
            stepping bass          | Am E F E Am   | Am | 2 | Am E/G# F E Am                     | OMT popRockHarmony
            chromatic descent      | C G F C       | C  |   | C G/B Gm/Bb F/A C                  | OMT popRockHarmony
            chromatic descent      | Am G F E      | Am |   | Am Am7/G D/F# F E                  | OMT popRockHarmony
            pedal on 1             | C F G C       | C  |   | C F/C G/C C                        | IMT 9b
            pedal on 5             | C Am F G      | C  | 3 | C Am F/G G                         | IMT 9b
            neapolitan             | Am Dm E Am    | Am | 2 | Am Bb/D E Am                       | IMT 16b
            mediant                | C Em F G      | C  |   | C E F G                            | IMT 19b
            walk up                | C F G C       | C  |   | C Ab Bb C                          | OMT popRockHarmony
            double plagal          | C G F C       | C  |   | C Bb F C                           | OMT plagal
            applied                | C F Bdim C    | C  | 3 | nowhere                            | OMT 2 Embellishing chords, never to a diminished one
            tritone                | C F G C       | C  | 2 | nowhere                            | OMT 2 Substitutions
            passing diminished     | C G C         | C  |   | nowhere                            | IMT 14c
            passing diminished     | C Dm Em       | C  | 3 | C Dm D#dim7 Em                     | IMT 14c
            passing diminished     | C G Am        | C  | 3 | C G G#dim7 Am                      | IMT 14c
            passing diminished     | G C D G       | G  | 3 | G C C#dim7 D G                     | IMT 14c
            common-tone diminished | G D C         | C  | 1 | G A#dim7/G G D C                   | IMT 18b
            applied                | G Em A7 D G   | G  | 2 | G B7 Em A7 D G                     | OMT 2 Substitutions
            two-five               | F Gm C F      | F  | 2 | F Am7b5 D7 Gm C F                  | OMT 2 Embellishing chords
            tritone                | D A7 D        | D  | 2 | D Eb7 D                            | OMT 2 Substitutions
            chromatic descent      | Am G F E      | Am |   | Am Am7/G D/F# F E                  | OMT popRockHarmony, the lament
            stepping bass          | C G Am F      | C  |   | C G/B Am F                         | OMT popRockHarmony, the canon's bass
            flat nine              | C Dm G7 C     | C  |   | C Dm G7b9 C                        | OMT 2 Substitutions
            borrowed I             | Am Dm E Am    | Am | 4 | Am Dm E A                          | OMT modalMixture
            borrowed iiø7          | C Dm G C      | C  |   | C Dm7b5 G C                        | IMT 16a
            """)
    void putsIt(String idiom, String row, String key, String at, String expected, String source) {
        assertEquals(expected, with(idiom, row, key, at));
    }

    @Test
    void saysWhatItCannotRead() {
        assertEquals(
                "\"shine\" is not an idiom: expected borrowed and a numeral, or walk up, double plagal, neapolitan,"
                        + " applied, two-five, tritone, backdoor, flat nine, passing diminished, common-tone diminished,"
                        + " line cliche, rising line, pedal on 1, pedal on 5, chromatic descent, stepping bass, mediant, suspended,"
                        + " added tone. Example: borrowed bVI",
                assertThrows(Unreadable.class, () -> AskedIdiom.parse("shine")).getMessage());
        assertThrows(Unreadable.class, () -> AskedIdiom.parse("borrowed X"));
        assertTrue(AskedIdiom.names().contains("line cliche"));
    }
}
