package monochord.theory.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import monochord.theory.Written;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PitchTest {
    /**
     * Source: A4 = 440 Hz, ISO 16:1975; note 60 is middle C, MIDI 1.0 Detailed Specification 4.2; the octave numbers, W3C
     * MusicXML 4.0, type {@code octave}. Frequencies and periods are arithmetic on twelve equal half steps.
     */
    @ParameterizedTest(name = "{0} is note {1} at {2} Hz")
    @CsvSource(delimiter = '|', textBlock = """
            A0  | 21  | 27.500   | 36363.6
            C1  | 24  | 32.703   | 30578.1
            E2  | 40  | 82.407   | 12134.9
            A2  | 45  | 110.000  | 9090.9
            C3  | 48  | 130.813  | 7644.5
            G3  | 55  | 195.998  | 5102.1
            C4  | 60  | 261.626  | 3822.3
            C#4 | 61  | 277.183  | 3607.7
            Db4 | 61  | 277.183  | 3607.7
            D4  | 62  | 293.665  | 3405.2
            Eb4 | 63  | 311.127  | 3214.1
            D#4 | 63  | 311.127  | 3214.1
            E4  | 64  | 329.628  | 3033.7
            F4  | 65  | 349.228  | 2863.5
            F#4 | 66  | 369.994  | 2702.7
            G4  | 67  | 391.995  | 2551.1
            Ab4 | 68  | 415.305  | 2407.9
            A4  | 69  | 440.000  | 2272.7
            Bb4 | 70  | 466.164  | 2145.2
            B4  | 71  | 493.883  | 2024.8
            C5  | 72  | 523.251  | 1911.1
            E5  | 76  | 659.255  | 1516.9
            A5  | 81  | 880.000  | 1136.4
            C6  | 84  | 1046.502 | 955.6
            C8  | 108 | 4186.009 | 238.9
            """)
    void soundsAtItsTemperedFrequency(String pitch, int midiNumber, double hertz, double microseconds) {
        assertEquals(midiNumber, Pitch.parse(pitch).midiNumber());
        assertEquals(hertz, Pitch.parse(pitch).hertz(), 0.0005);
        assertEquals(microseconds, 1e6 / Pitch.parse(pitch).hertz(), 0.06);
    }

    /** Source: Open Music Theory (2014), "pitches", CC BY-SA 4.0: the number follows the letter. */
    @ParameterizedTest(name = "{0} sounds as {1}")
    @CsvSource(delimiter = '|', textBlock = """
            Cb4  | B3 | 59
            B#3  | C4 | 60
            B#4  | C5 | 72
            Cbb4 | Bb3 | 58
            B##3 | C#4 | 61
            """)
    void theOctaveFollowsTheLetter(String written, String sounding, int midiNumber) {
        assertTrue(Pitch.parse(written).soundsLike(Pitch.parse(sounding)));
        assertEquals(midiNumber, Pitch.parse(written).midiNumber());
    }

    /** Source: the ratio of a half step and cents, arithmetic; just ratios 3:2, 5:4, 6:5 and 4:3 from memory. */
    @ParameterizedTest(name = "{0} is {1} cents away from the pure interval above C4")
    @CsvSource(delimiter = '|', textBlock = """
            G4  | 1.5 | 701.955
            E4  | 1.25 | 386.314
            Eb4 | 1.2 | 315.641
            F4  | 1.333333333 | 498.045
            """)
    void temperedIntervalsDifferFromPureOnes(String upper, double ratio, double pureCents) {
        double tempered = Pitch.parse(upper).hertz() / Pitch.parse("C4").hertz();
        double difference = 1200 * Math.log(ratio / tempered) / Math.log(2);
        assertEquals(pureCents, 100 * (Pitch.parse(upper).midiNumber() - 60) + difference, 0.001);
        assertEquals(1.059463, Pitch.parse("C#4").hertz() / Pitch.parse("C4").hertz(), 5e-7);
    }

    /** Source: MusicXML 4.0, type {@code octave}, and MIDI 1.0: octave = floor(number / 12) - 1. */
    @Test
    void everyMidiNumberFallsInItsOctave() {
        for (int number = 0; number < 128; number++) {
            for (NoteName name : Written.names("C Db D Eb E F F# G Ab A Bb B")) {
                if (name.pitchClass() == number % 12) {
                    assertEquals(number, new Pitch(name, number / 12 - 1).midiNumber());
                }
            }
        }
    }

    @Test
    void everyPitchWithUpToTripleAccidentalsComesRound() {
        int seen = 0;
        for (NoteName name : Written.names(3)) {
            for (int octave = -1; octave <= 10; octave++, seen++) {
                Pitch pitch = new Pitch(name, octave);
                assertEquals(pitch, Pitch.parse(pitch.toString()));
                assertEquals(pitch, Pitch.parse(pitch.write(Signs.MUSIC)));
            }
        }
        assertEquals(49 * 12, seen);
    }

    @Test
    void pitchesStandInTheOrderTheySoundThenInTheOrderOfTheStaff() {
        for (NoteName one : Written.names(2)) {
            for (NoteName other : Written.names(2)) {
                Pitch lower = new Pitch(one, 3);
                Pitch upper = new Pitch(other, 4);
                int bySound = Integer.signum(Integer.compare(lower.midiNumber(), upper.midiNumber()));
                assertEquals(bySound == 0 ? -1 : bySound, Integer.signum(lower.compareTo(upper)));
                assertEquals(lower.equals(upper), lower.compareTo(upper) == 0);
            }
        }
    }

    @Test
    void theNearestPitchUpIsLessThanAnOctaveAway() {
        for (NoteName name : Written.names(2)) {
            for (NoteName floor : Written.names(2)) {
                int rise = Pitch.atOrAbove(name, new Pitch(floor, 4)).midiNumber() - new Pitch(floor, 4).midiNumber();
                assertTrue(rise >= 0 && rise < 12, name + " above " + floor);
            }
        }
    }

    @Test
    void anOctaveOutOfReachIsAProgrammersSlip() {
        assertEquals(
                "octave must be from -1 to 10, not 11",
                assertThrows(IllegalArgumentException.class, () -> new Pitch(NoteName.C, 11))
                        .getMessage());
    }
}
