package monochord.theory.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import monochord.theory.Written;
import org.junit.jupiter.api.Test;

/** What holds for all intervals, names and pitches; every law is tried over the whole domain. */
class IntervalLawsTest {
    private static final List<Interval> INTERVALS = Written.intervals();
    private static final List<NoteName> NAMES = Written.names(2);

    @Test
    void stepsAndHalfStepsAddUpWhenIntervalsAreAdded() {
        for (Interval one : INTERVALS) {
            for (Interval other : INTERVALS) {
                Interval sum = one.plus(other);
                assertEquals(one.staffSteps() + other.staffSteps(), sum.staffSteps());
                assertEquals(one.semitones() + other.semitones(), sum.semitones());
                assertEquals(sum, other.plus(one));
                assertEquals(one, sum.minus(other));
            }
        }
    }

    @Test
    void aThirdAndAThirdAndAThirdGroupAsTheyLike() {
        for (Interval one : INTERVALS) {
            for (Interval two : INTERVALS) {
                for (Interval three : INTERVALS) {
                    assertEquals(one.plus(two).plus(three), one.plus(two.plus(three)));
                }
            }
        }
    }

    /**
     * Up to the octave; an augmented octave is more than an octave and has nothing left to fill.
     *
     * <p>Source: Open Music Theory (2014), "intervals", CC BY-SA 4.0: nine and twelve; major and minor, A and d change.
     */
    @Test
    void anIntervalAndItsInversionMakeNineAndTwelve() {
        int seen = 0;
        for (Interval interval : INTERVALS) {
            if (interval.compareTo(Interval.OCTAVE) <= 0) {
                Interval inversion = interval.inverted();
                assertEquals(9, interval.number() + inversion.number(), interval.toString());
                assertEquals(12, interval.semitones() + inversion.semitones(), interval.toString());
                assertEquals(opposite(interval.quality()), inversion.quality(), interval.toString());
                assertEquals(interval, inversion.inverted());
                seen++;
            }
        }
        assertEquals(40, seen);
    }

    private static String opposite(String quality) {
        return quality.equals("P")
                ? "P"
                : quality.startsWith("M")
                        ? "m"
                        : quality.startsWith("m")
                                ? "M"
                                : quality.startsWith("A") ? "d".repeat(quality.length()) : "A".repeat(quality.length());
    }

    @Test
    void reversingTurnsAnIntervalRound() {
        for (Interval interval : INTERVALS) {
            assertEquals(Interval.UNISON, interval.plus(interval.reversed()));
            assertEquals(interval, interval.reversed().size());
            assertEquals(interval, interval.reversed().reversed());
            assertEquals(interval.number(), interval.reversed().number());
            assertEquals(interval.quality(), interval.reversed().quality());
        }
    }

    @Test
    void theIntervalBetweenTwoNamesLeadsFromOneToTheOther() {
        for (NoteName low : NAMES) {
            for (NoteName high : NAMES) {
                Interval between = low.to(high);
                assertEquals(high, low.plus(between));
                assertEquals(low, high.minus(between));
                assertTrue(between.number() <= 7 && !between.reversed().goesDown() == between.equals(Interval.UNISON)
                        || between.number() == 1);
                assertEquals(
                        Math.floorMod(high.pitchClass() - low.pitchClass(), 12),
                        Math.floorMod(between.semitones(), 12));
            }
        }
    }

    @Test
    void theIntervalBetweenTwoPitchesLeadsFromOneToTheOther() {
        for (NoteName lowName : NAMES) {
            for (NoteName highName : NAMES) {
                for (int octave = 2; octave <= 6; octave++) {
                    Pitch low = new Pitch(lowName, 4);
                    Pitch high = new Pitch(highName, octave);
                    assertEquals(high, low.plus(low.to(high)));
                    assertEquals(low, high.minus(low.to(high)));
                    assertEquals(low.to(high), high.to(low).reversed());
                    assertEquals(
                            high.midiNumber() - low.midiNumber(), low.to(high).semitones());
                    assertEquals(
                            high.staffPosition() - low.staffPosition(),
                            low.to(high).staffSteps());
                }
            }
        }
    }

    @Test
    void transposingKeepsEveryInterval() {
        for (Interval by : INTERVALS) {
            for (NoteName low : NAMES) {
                for (NoteName high : NAMES) {
                    assertEquals(low.to(high), low.plus(by).to(high.plus(by)));
                }
            }
        }
    }

    @Test
    void twelveFifthsPassSevenOctavesByTheSmallestStepThereIs() {
        Interval twelveFifths = Interval.UNISON;
        Interval sevenOctaves = Interval.UNISON;
        for (int i = 0; i < 12; i++) {
            twelveFifths = twelveFifths.plus(Interval.PERFECT_FIFTH);
            sevenOctaves = i < 7 ? sevenOctaves.plus(Interval.OCTAVE) : sevenOctaves;
        }
        assertEquals(sevenOctaves.semitones(), twelveFifths.semitones());
        assertEquals("B#", NoteName.C.plus(twelveFifths).toString());
        assertEquals("d2", sevenOctaves.minus(twelveFifths).size().toString());
    }
}
