package monochord.harmony.melody;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import monochord.harmony.Progression;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitTest {
    private static Fit fit(String melody, String chords, String key) {
        return Fit.of(Melody.parse(melody), Progression.parse(chords, Key.parse(key)));
    }

    private static String roles(Fit fit) {
        return fit.notes().stream().map(note -> note.role().toString()).collect(Collectors.joining(", "));
    }

    /**
     * Source: the definitions of Open Music Theory (2014), "embellishingTones", CC BY-SA 4.0; the notes are ours. C means a
     * chord tone.
     */
    @ParameterizedTest(name = "{0} over {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            E4 D4 C4 C4          | C . C .   | C, passing, C, C
            E4 F4 G4 G4          | C . C .   | C, passing, C, C
            C4 B3 C4 C4          | C . C .   | C, neighbour, C, C
            G4 A4 G4 G4          | C . C .   | C, neighbour, C, C
            C5:2 C5 B4           | F G       | C, suspension, C
            F4:2 F4 E4           | G7 C      | C, suspension, C
            B4:2 B4 C5           | G C       | C, suspension, C
            A4:2 A4:2 G4:2       | F Fm C    | C, clash, C
            D4:3/2 C4:1/2 C4:2   | G C       | C, anticipation, C
            E4:3/2 F4:1/2 C4:2   | C C       | C, escape, C
            C4:3/2 A4:1/2 G4:2   | C C       | C, appoggiatura, C
            F4 E4                | C         | appoggiatura, C
            F4 G4                | C         | clash, C
            F4:2                 | C         | clash
            D4:2                 | C         | tension
            E4:2                 | Ab        | clash
            D4:2                 | Ab        | tension
            """)
    void tellsEmbellishingTonesByTheNotesAround(String melody, String chords, String roles) {
        assertEquals(roles.replaceAll("\\bC\\b", "chord tone"), roles(fit(melody, chords, "C")));
    }

    /** Common practice, no source: the tone of the chord on the same letter first. */
    @ParameterizedTest(name = "{0} over {1} becomes {2}")
    @CsvSource(delimiter = '|', textBlock = """
            E4  | Ab   | Eb4 | 2
            A4  | Ab   | Ab4 | 2
            B4  | Ab   | C5  | 3
            B4  | Bb   | Bb4 | 2
            A4  | Fm   | Ab4 | 2
            E4  | Eb   | Eb4 | 2
            B4  | Eb   | Bb4 | 2
            E4  | Cm   | Eb4 | 2
            A4  | Ddim | Ab4 | 2
            D4  | Db   | Db4 | 2
            F4  | C    | E4  | 3
            C4  | G    | B3  | 3
            """)
    void namesTheNearestNoteThatWouldFit(String note, String chord, String change, int cost) {
        FitNote clash = fit(note + ":2", chord, "C").notes().get(0);
        assertEquals(change, clash.change().orElseThrow().to().toString());
        assertEquals(cost, clash.change().orElseThrow().cost());
    }

    @Test
    void aNoteAcrossAChangeOfChordIsJudgedOverBoth() {
        Fit fit = fit("E4:4", "C Ab", "C");
        assertEquals("chord tone, clash", roles(fit));
        assertEquals(
                List.of(false, true), fit.notes().stream().map(FitNote::held).toList());
        assertEquals(Beats.of(2), fit.notes().get(1).start());
        assertEquals(
                "suspension", fit("F4:3 E4", "Dm C", "C").notes().get(1).role().toString());
    }

    @Test
    void aPickUpIsFreeAndALongTuneGoesRound() {
        Fit fit = fit("G3 | C4:3 B3 | C4:4", "C | G |", "C");
        assertEquals("free, chord tone, neighbour, clash", roles(fit));
        assertTrue(!fit.goesRound());
        Fit round = fit("C4:2 B3:2 C4:2 B3:2", "C G", "C");
        assertEquals("chord tone, chord tone, chord tone, chord tone", roles(round));
        assertTrue(round.goesRound());
    }

    @Test
    void theBarsOfTheTuneCountWhereBothHaveBars() {
        Fit waltz = fit("| E4 F4 G4 | A4:3 |", "C | F |", "C");
        assertEquals(
                List.of("C", "C", "C", "F"),
                waltz.notes().stream()
                        .map(note -> note.chord().orElseThrow().toString())
                        .toList());
    }

    /** Strength by length in half beats, as the class comment says. */
    @Test
    void weighsByBeatAndLength() {
        List<Integer> weights = fit("C4 C4:1/2 C4:1/2 C4:2 | C4:4", "C | C |", "C").notes().stream()
                .map(FitNote::weight)
                .toList();
        assertEquals(List.of(8, 2, 1, 12, 32), weights);
    }

    @Test
    void theSameInEveryKey() {
        String melody = "G4 E4:2 F4:1/2 E4:1/2 | D4:3 r | C5:3/2 B4:1/2 A4:2 | G4:4";
        String chords = "bVI | bVII iv | IV V7 | I |";
        Fit inC = fit(melody, chords, "C");
        for (Key key : Key.majorKeys()) {
            Interval up = Key.parse("C").tonic().to(key.tonic());
            Fit there = Fit.of(Melody.parse(melody).plus(up), Progression.parse(chords, key));
            assertEquals(roles(inC), roles(there), key::toString);
            assertEquals(inC.friction(), there.friction());
            assertEquals(inC.repaired().plus(up), there.repaired());
        }
        assertTrue(!inC.clashes().isEmpty());
    }

    @Test
    void aRepairedTuneOverChordsThatItFillsClashesNoMore() {
        for (String chord : List.of("bVI", "bVII", "bIII", "iv", "iio", "bII", "i")) {
            for (int degree = 1; degree <= 7; degree++) {
                Key key = Key.parse("D");
                Melody melody = Melody.parse(key.note(degree) + "4:4");
                Progression chords = Progression.parse(chord + " |", key);
                Melody repaired = Fit.of(melody, chords).repaired();
                assertEquals(List.of(), Fit.of(repaired, chords).clashes(), degree + " over " + chord);
            }
        }
    }

    @Test
    void says() {
        Fit fit = fit("E4:2 D4 C4", "Ab G", "C");
        assertEquals(
                "E4 rubs against the E♭ of A♭. Sing E♭4 there, the chord's own colour, or change the chord.",
                FitExplanation.say(fit.notes().get(0), fit).toString());
        assertEquals(
                "D4 is the fifth of G.",
                FitExplanation.say(fit.notes().get(1), fit).toString());
    }

    /**
     * A name follows from the two spelled notes. Source for the names: Open Music Theory (2014), "intervals"; ninth and
     * raised eleventh over a chord, common practice, no source.
     */
    @ParameterizedTest(name = "{0} over {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            Cb4:2  | C  | C♭4 colours C as its diminished octave.
            B4:2   | C  | B4 colours C as its major seventh.
            Gb4:2  | C7 | G♭4 colours C7 as its lowered fifth.
            F#4:2  | C7 | F♯4 colours C7 as its raised eleventh.
            D4:2   | C  | D4 colours C as its ninth.
            A4:2   | C  | A4 colours C as its sixth.
            Bbb4:2 | C  | B𝄫4 colours C as its diminished seventh.
            Cx4:2  | C  | C𝄪4 colours C as its doubly augmented octave.
            E4:2   | C  | E4 is the third of C.
            Fb4:2  | C  | F♭4 sounds as E, the third of C.
            Ab4:2  | E7 | A♭4 sounds as G♯, the third of E7.
            E4:2   | G13 | E4 is the thirteenth of G13.
            F4:2   | C/F | F4 is the bass note of C/F.
            """)
    void namesANoteByItsSpelling(String melody, String chord, String sentence) {
        Fit fit = fit(melody, chord, "C");
        assertEquals(sentence, FitExplanation.say(fit.notes().get(0), fit).toString());
    }

    @Test
    @DisplayName("over one root no two spelled notes have one name, and a name is the same over every root")
    void everySpellingHasAName() {
        Set<String> names = new HashSet<>();
        for (int fifths = -15; fifths <= 15; fifths++) {
            String name = FitExplanation.beyond(NoteName.at(fifths), NoteName.C).toString();
            assertTrue(names.add(name), name);
            assertEquals(
                    name,
                    FitExplanation.beyond(NoteName.at(fifths + 3), NoteName.at(3))
                            .toString());
        }
        assertTrue(names.contains("lowered sixth") && names.contains("raised ninth"), names::toString);
    }
}
