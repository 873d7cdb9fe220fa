package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.OptionalInt;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {
    /** Source: Open Music Theory (2014), "scales", CC BY-SA 4.0; the spellings in all keys are arithmetic on its steps. */
    @ParameterizedTest(name = "{0} minor")
    @CsvSource(delimiter = '|', textBlock = """
            A  | A B C D E F G        | G#  | A B C D E F G#        | A B C D E F# G#
            E  | E F# G A B C D       | D#  | E F# G A B C D#       | E F# G A B C# D#
            B  | B C# D E F# G A      | A#  | B C# D E F# G A#      | B C# D E F# G# A#
            F# | F# G# A B C# D E     | E#  | F# G# A B C# D E#     | F# G# A B C# D# E#
            C# | C# D# E F# G# A B    | B#  | C# D# E F# G# A B#    | C# D# E F# G# A# B#
            G# | G# A# B C# D# E F#   | F## | G# A# B C# D# E F##   | G# A# B C# D# E# F##
            D# | D# E# F# G# A# B C#  | C## | D# E# F# G# A# B C##  | D# E# F# G# A# B# C##
            A# | A# B# C# D# E# F# G# | G## | A# B# C# D# E# F# G## | A# B# C# D# E# F## G##
            D  | D E F G A Bb C       | C#  | D E F G A Bb C#       | D E F G A B C#
            G  | G A Bb C D Eb F      | F#  | G A Bb C D Eb F#      | G A Bb C D E F#
            C  | C D Eb F G Ab Bb     | B   | C D Eb F G Ab B       | C D Eb F G A B
            F  | F G Ab Bb C Db Eb    | E   | F G Ab Bb C Db E      | F G Ab Bb C D E
            Bb | Bb C Db Eb F Gb Ab   | A   | Bb C Db Eb F Gb A     | Bb C Db Eb F G A
            Eb | Eb F Gb Ab Bb Cb Db  | D   | Eb F Gb Ab Bb Cb D    | Eb F Gb Ab Bb C D
            Ab | Ab Bb Cb Db Eb Fb Gb | G   | Ab Bb Cb Db Eb Fb G   | Ab Bb Cb Db Eb F G
            """)
    void theThreeMinorScalesOfFifteenTonics(
            String tonic, String natural, String raisedSeventh, String harmonic, String melodic) {
        assertEquals(natural, tones(tonic + " minor"));
        assertEquals(harmonic, tones(tonic + " harmonic minor"));
        assertEquals(melodic, tones(tonic + " melodic minor"));
        assertTrue(Scale.parse(tonic + " harmonic minor").holds(NoteName.parse(raisedSeventh)));
    }

    /**
     * Source: Open Music Theory (2014), "scales2", CC BY-SA 4.0, for major pentatonic, whole-tone and half-whole octatonic
     * (which its page misnames by one pitch class); minor pentatonic, the blues scales, whole-half octatonic and the
     * degrees of the acoustic scale from memory.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            C major pentatonic     | 0 2 4 7 9        | C D E G A
            F# major pentatonic    | 0 2 4 7 9        | F# G# A# C# D#
            Gb major pentatonic    | 0 2 4 7 9        | Gb Ab Bb Db Eb
            C minor pentatonic     | 0 3 5 7 10       | C Eb F G Bb
            A minor pentatonic     | 0 3 5 7 10       | A C D E G
            C minor blues          | 0 3 5 6 7 10     | C Eb F Gb G Bb
            A minor blues          | 0 3 5 6 7 10     | A C D Eb E G
            C major blues          | 0 2 3 4 7 9      | C D Eb E G A
            C whole-tone           | 0 2 4 6 8 10     | C D E F# G# A#
            C half-whole octatonic | 0 1 3 4 6 7 9 10 | C Db Eb E F# G A Bb
            C whole-half octatonic | 0 2 3 5 6 8 9 11 | C D Eb F Gb Ab A B
            C acoustic             | 0 2 4 6 7 9 10   | C D E F# G A Bb
            """)
    void otherCollections(String scale, String halfSteps, String tones) {
        assertEquals(tones, tones(scale));
        assertEquals(
                halfSteps,
                Written.words(Scale.parse(scale).kind().degrees().stream()
                        .map(Degree::semitones)
                        .toList()));
    }

    private static String tones(String scale) {
        return Written.words(Scale.parse(scale).tones());
    }

    /** Source: step patterns, Open Music Theory (2014), "scales", CC BY-SA 4.0: whole step 2, half step 1, augmented second 3. */
    @ParameterizedTest(name = "{0} steps {1}")
    @CsvSource({
        "major, 2 2 1 2 2 2 1",
        "minor, 2 1 2 2 1 2 2",
        "harmonic minor, 2 1 2 2 1 3 1",
        "melodic minor, 2 1 2 2 2 2 1",
        "whole-tone, 2 2 2 2 2 2",
        "half-whole octatonic, 1 2 1 2 1 2 1 2"
    })
    void scalesClimbByTheirSteps(String kind, String steps) {
        assertEquals(steps, Written.words(ScaleKind.parse(kind).steps()));
    }

    /** Source: Open Music Theory (2014), "scales2", CC BY-SA 4.0: two whole-tone collections, three octatonic ones. */
    @ParameterizedTest(name = "there are {1} {0} collections in sound")
    @CsvSource({
        "whole-tone, 2",
        "half-whole octatonic, 3",
        "whole-half octatonic, 3",
        "major, 12",
        "major pentatonic, 12"
    })
    void evenScalesRepeatInSound(String kind, int collections) {
        HashSet<Object> seen = new HashSet<>();
        for (NoteName tonic : Written.names("C Db D Eb E F F# G Ab A Bb B")) {
            seen.add(new HashSet<>(new Scale(tonic, ScaleKind.parse(kind))
                    .tones().stream().map(NoteName::pitchClass).toList()));
        }
        assertEquals(collections, seen.size());
    }

    /** Source: the signature follows from the mode; "none" for even scales is common practice, no source. */
    @ParameterizedTest(name = "{0} is written with {1}")
    @CsvSource({"A major, 3", "E harmonic minor, 1", "G# melodic minor, 5", "D dorian, 0", "G# major, 8", "Fb major, -8"
    })
    void scalesCarryTheSignatureOfTheirKey(String scale, int fifths) {
        assertEquals(OptionalInt.of(fifths), Scale.parse(scale).signature());
        assertEquals(OptionalInt.empty(), Scale.parse("C whole-tone").signature());
    }

    /** Each of the 17 kinds on each of the 35 names with up to two accidentals. */
    @Test
    void everyScaleComesRound() {
        int seen = 0;
        for (ScaleKind kind : ScaleKind.all()) {
            assertEquals(kind, ScaleKind.parse(kind.toString()));
            for (NoteName tonic : Written.names(2)) {
                Scale scale = new Scale(tonic, kind);
                assertEquals(scale, Scale.parse(scale.toString()));
                assertEquals(scale, Scale.parse(scale.write(Signs.MUSIC)));
                seen++;
            }
        }
        assertEquals(17 * 35, seen);
    }

    @Test
    void aScaleOfSevenUsesEachLetterOnce() {
        for (ScaleKind kind : ScaleKind.all()) {
            for (NoteName tonic : Written.names(2)) {
                Scale scale = new Scale(tonic, kind);
                assertEquals(tonic, scale.tones().get(0));
                assertEquals(scale.tones().size(), new HashSet<>(scale.tones()).size());
                if (scale.tones().size() == 7) {
                    assertEquals(
                            7,
                            scale.tones().stream()
                                    .map(NoteName::letter)
                                    .distinct()
                                    .count(),
                            scale.toString());
                }
            }
        }
    }

    @Test
    void theStepsOfEveryScaleFillTheOctave() {
        for (ScaleKind kind : ScaleKind.all()) {
            assertEquals(12, kind.steps().stream().mapToInt(Integer::intValue).sum(), kind.toString());
            assertTrue(kind.steps().stream().allMatch(step -> step >= 1 && step <= 3), kind.toString());
        }
    }

    @Test
    void theNotesOfAScaleRiseToTheOctave() {
        for (ScaleKind kind : ScaleKind.all()) {
            for (NoteName tonic : Written.names(2)) {
                var pitches = new Scale(tonic, kind).pitches(Pitch.parse("C4"));
                for (int i = 1; i < pitches.size(); i++) {
                    int step = pitches.get(i).midiNumber() - pitches.get(i - 1).midiNumber();
                    assertEquals(kind.steps().get(i - 1), step, kind + " on " + tonic);
                }
            }
        }
    }

    /** Common practice, no source: how people write scales. */
    @ParameterizedTest(name = "\"{0}\" is read as {1}")
    @CsvSource({
        "C-major, C major",
        "E Harmonic Minor, E harmonic minor",
        "g natural minor, G minor",
        "A pentatonic minor, A minor pentatonic",
        "Bb whole tone, Bb whole-tone",
        "F aeolian, F minor",
        "C lydian dominant, C acoustic",
        "A blues, A minor blues"
    })
    void otherWritingsAreRead(String written, String scale) {
        assertEquals(scale, Scale.parse(written).toString());
    }
}
