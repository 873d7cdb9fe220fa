package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyTest {
    /**
     * Source: Open Music Theory (2014), "scales" and "keySignatures", CC BY-SA 4.0; the number of fifths as W3C MusicXML
     * 4.0 and the Standard MIDI File count it, flats below zero.
     */
    @ParameterizedTest(name = "{0} major")
    @CsvSource(delimiter = '|', textBlock = """
            C  | 0  | ''                   | C D E F G A B        | A minor
            G  | 1  | F#                   | G A B C D E F#       | E minor
            D  | 2  | F# C#                | D E F# G A B C#      | B minor
            A  | 3  | F# C# G#             | A B C# D E F# G#     | F# minor
            E  | 4  | F# C# G# D#          | E F# G# A B C# D#    | C# minor
            B  | 5  | F# C# G# D# A#       | B C# D# E F# G# A#   | G# minor
            F# | 6  | F# C# G# D# A# E#    | F# G# A# B C# D# E#  | D# minor
            C# | 7  | F# C# G# D# A# E# B# | C# D# E# F# G# A# B# | A# minor
            F  | -1 | Bb                   | F G A Bb C D E       | D minor
            Bb | -2 | Bb Eb                | Bb C D Eb F G A      | G minor
            Eb | -3 | Bb Eb Ab             | Eb F G Ab Bb C D     | C minor
            Ab | -4 | Bb Eb Ab Db          | Ab Bb C Db Eb F G    | F minor
            Db | -5 | Bb Eb Ab Db Gb       | Db Eb F Gb Ab Bb C   | Bb minor
            Gb | -6 | Bb Eb Ab Db Gb Cb    | Gb Ab Bb Cb Db Eb F  | Eb minor
            Cb | -7 | Bb Eb Ab Db Gb Cb Fb | Cb Db Eb Fb Gb Ab Bb | Ab minor
            """)
    void theFifteenMajorKeys(String tonic, int fifths, String signature, String scale, String relative) {
        Key key = Key.parse(tonic + " major");
        assertEquals(fifths, key.signature());
        assertEquals(signature, Written.words(key.signatureNotes()));
        assertEquals(scale, Written.words(key.scale().tones()));
        assertEquals(relative, key.relative().toString());
        assertEquals(key, key.relative().relative());
        assertTrue(key.isInUse());
    }

    /** Source: Open Music Theory (2014), "keySignatures", CC BY-SA 4.0: a minor key has the signature of its relative major. */
    @ParameterizedTest(name = "{0} minor")
    @CsvSource(delimiter = '|', textBlock = """
            A  | 0  | A B C D E F G
            E  | 1  | E F# G A B C D
            B  | 2  | B C# D E F# G A
            F# | 3  | F# G# A B C# D E
            C# | 4  | C# D# E F# G# A B
            G# | 5  | G# A# B C# D# E F#
            D# | 6  | D# E# F# G# A# B C#
            A# | 7  | A# B# C# D# E# F# G#
            D  | -1 | D E F G A Bb C
            G  | -2 | G A Bb C D Eb F
            C  | -3 | C D Eb F G Ab Bb
            F  | -4 | F G Ab Bb C Db Eb
            Bb | -5 | Bb C Db Eb F Gb Ab
            Eb | -6 | Eb F Gb Ab Bb Cb Db
            Ab | -7 | Ab Bb Cb Db Eb Fb Gb
            """)
    void theFifteenMinorKeys(String tonic, int fifths, String scale) {
        Key key = Key.parse(tonic + " minor");
        assertEquals(fifths, key.signature());
        assertEquals(scale, Written.words(key.scale().tones()));
        assertTrue(key.isInUse() && key.isMinor());
    }

    /** Source: arithmetic on the key signatures; the pairs are named in every circle of fifths. */
    @ParameterizedTest(name = "{0} major sounds like {1} major")
    @CsvSource({"B, Cb", "F#, Gb", "C#, Db"})
    void threePairsOfMajorKeysSoundAlike(String one, String other) {
        assertTrue(NoteName.parse(one).soundsLike(NoteName.parse(other)));
        assertEquals(12, Key.parse(one).signature() - Key.parse(other).signature());
    }

    /** Source: circle of fifths, from memory; one step clockwise is one sharp more. */
    @Test
    void eachStepRoundTheCircleAddsASharp() {
        NoteName[] sharpward =
                Written.names("Cb Gb Db Ab Eb Bb F C G D A E B F# C#").toArray(NoteName[]::new);
        NoteName[] minors =
                Written.names("Ab Eb Bb F C G D A E B F# C# G# D# A#").toArray(NoteName[]::new);
        for (int i = 0; i < 15; i++) {
            assertEquals(i - 7, Key.major(sharpward[i]).signature());
            assertEquals(i - 7, Key.minor(minors[i]).signature());
            assertEquals(Key.minor(minors[i]), Key.major(sharpward[i]).relative());
        }
        assertEquals(new HashSet<>(Key.majorKeys()).size(), 15);
        assertEquals(new HashSet<>(Key.minorKeys()).size(), 15);
    }

    /** Source: Open Music Theory (2014), "scales2", CC BY-SA 4.0; D dorian has the notes of C major, and so on. */
    @ParameterizedTest(name = "{0} has {1} sharps")
    @CsvSource({
        "D dorian, 0",
        "E phrygian, 0",
        "F lydian, 0",
        "G mixolydian, 0",
        "B locrian, 0",
        "G dorian, -1",
        "A mixolydian, 2",
        "Ab lydian, -3",
        "C phrygian, -4"
    })
    void modesCarryTheSignatureOfTheirWhiteKeys(String key, int fifths) {
        assertEquals(fifths, Key.parse(key).signature());
    }

    /** Common practice, no source: how people write keys. */
    @ParameterizedTest(name = "\"{0}\" is read as {1}")
    @CsvSource(delimiter = '|', textBlock = """
            D               | D major
            Dm              | D minor
            d minor         | D minor
            D-minor         | D minor
            D maj           | D major
            D M             | D major
            D m             | D minor
            DM              | D major
            B♭ Major        | Bb major
            bb              | Bb major
            F# min          | F# minor
            E natural minor | E minor
            G aeolian       | G minor
            G Ionian        | G major
            """)
    void otherWritingsAreRead(String written, String key) {
        assertEquals(key, Key.parse(written).toString());
    }

    @Test
    void everyKeyComesRound() {
        for (NoteName tonic : Written.names(2)) {
            for (Mode mode : Mode.values()) {
                Key key = new Key(tonic, mode);
                assertEquals(key, Key.parse(key.toString()));
                assertEquals(key, Key.parse(key.write(Signs.MUSIC)));
            }
        }
    }

    @Test
    void relativeKeysShareTheirNotesAndParallelOnesTheirTonic() {
        for (NoteName tonic : Written.names(2)) {
            for (Key key : new Key[] {Key.major(tonic), Key.minor(tonic)}) {
                assertEquals(
                        new HashSet<>(key.scale().tones()),
                        new HashSet<>(key.relative().scale().tones()));
                assertEquals(key.signature(), key.relative().signature());
                assertEquals(tonic, key.parallel().tonic());
                assertEquals(key, key.parallel().parallel());
                assertEquals(key.isMinor() ? 3 : -3, key.parallel().signature() - key.signature());
            }
        }
    }

    @Test
    void aKeyHoldsTheNotesOfItsScaleAndNoOthers() {
        for (Key key : Key.majorKeys()) {
            for (NoteName name : Written.names(2)) {
                assertEquals(key.scale().tones().contains(name), key.holds(name));
                assertEquals(name, key.note(key.degreeOf(name)));
            }
            for (int number = 1; number <= 7; number++) {
                assertEquals(key.scale().tones().get(number - 1), key.note(number));
            }
        }
        assertFalse(Key.parse("Eb major").holds(NoteName.parse("G#")));
    }

    /**
     * Source: Open Music Theory (Shaffer, Hughes, Moseley, 2014), page "triads": in minor i iidim III iv V VI VII viidim, and i7
     * iidim7 III7 iv7 V7 VI7 VII7 viidim7; v is the triad of natural minor. The augmented III is not among them.
     */
    @ParameterizedTest(name = "{0} in {1}: {2}")
    @CsvSource({
        "Am, A minor, true",
        "Bdim, A minor, true",
        "Bm7b5, A minor, true",
        "C, A minor, true",
        "Cmaj7, A minor, true",
        "Dm7, A minor, true",
        "E, A minor, true",
        "E7, A minor, true",
        "E7b9, A minor, true",
        "Em, A minor, true",
        "Fmaj7, A minor, true",
        "G7, A minor, true",
        "G#dim, A minor, true",
        "G#dim7, A minor, true",
        "Caug, A minor, false",
        "Am(maj7), A minor, false",
        "A, A minor, false",
        "D, A minor, false",
        "G#, A minor, false",
        "E, C, false",
        "Bdim, C, true",
        "Bdim7, C, false",
        "A, D dorian, false",
        "Am, D dorian, true"
    })
    void knowsItsOwnChords(String chord, String key, boolean own) {
        assertEquals(own, Key.parse(key).isOwn(Chord.parse(chord)));
    }
}
