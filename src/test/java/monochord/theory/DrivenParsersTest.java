package monochord.theory;

import java.util.List;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/** Every parser, with all short texts over its alphabet, up to a million longer ones in all, and lines of up to a megabyte. */
@Tag("attack")
class DrivenParsersTest {
    private static final long SEED = 20260101;
    private static final int PIECES = Thorough.times(3, 4);
    private static final int LONGER_TEXTS = Thorough.times(5_000, 100_000);
    private static final int LONGER_NUMERALS = Thorough.times(3_000, 60_000);
    private static final List<String> NAME =
            List.of("C", "B", "e", "H", "b", "#", "x", "♭", "𝄪", " ", "-", "4", "\u0000");
    private static final List<String> WORDS = List.of("major", "minor", "harmonic", "maj", "m", "M");

    private static List<String> and(List<String> some, List<String> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    private static List<String> pieces(String spaced) {
        return List.of(spaced.split(" "));
    }

    @TestFactory
    Stream<DynamicTest> noteNames() {
        return driven(new Driver<>(
                NoteName::parse, and(NAME, List.of("G", "A", "0")), List.of("Eb", "F##", "B𝄫"), NoteName::simplest));
    }

    @TestFactory
    Stream<DynamicTest> pitches() {
        return driven(new Driver<>(
                Pitch::parse, and(NAME, List.of("1", "0", "9", "−")), List.of("Ab3", "C-1", "B#10"), Pitch::hertz));
    }

    @TestFactory
    Stream<DynamicTest> intervals() {
        List<String> pieces = and(pieces("P M m A d - 0 1 3 4 9 x"), List.of(" ", "minor", "doubly", "third", "é"));
        return driven(new Driver<>(
                Interval::parse, pieces, List.of("m3", "-AA11", "doubly diminished fifth"), Interval::inWords));
    }

    @TestFactory
    Stream<DynamicTest> degrees() {
        List<String> pieces = and(pieces("b # x ♭ ♯ 𝄪 𝄫 0 1 2 6 7 8 9 - é"), List.of(" ", "\n"));
        return driven(new Driver<>(Degree::parse, pieces, List.of("b6", "##4", "7"), Degree::inWords));
    }

    @TestFactory
    Stream<DynamicTest> modes() {
        List<String> pieces = and(WORDS, pieces("dorian ı l y d i a n"));
        return driven(new Driver<>(Mode::parse, pieces, List.of("mixolydian", "major", "Aeolian"), Mode::degrees));
    }

    @TestFactory
    Stream<DynamicTest> kindsOfScale() {
        List<String> pieces =
                and(WORDS, List.of(" ", "-", "  ", "pentatonic", "octatonic", "whole", "tone", "blues", "ı"));
        return driven(new Driver<>(
                ScaleKind::parse,
                pieces,
                List.of("harmonic minor", "whole-tone", "lydian dominant"),
                ScaleKind::steps));
    }

    @TestFactory
    Stream<DynamicTest> scales() {
        return driven(new Driver<>(
                Scale::parse, and(NAME, WORDS), List.of("E harmonic minor", "Cb dorian", "A blues"), Scale::tones));
    }

    @TestFactory
    Stream<DynamicTest> keys() {
        return driven(new Driver<>(Key::parse, and(NAME, WORDS), List.of("D major", "F#m", "Bb dorian"), key -> {
            key.scale().tones();
            key.relative();
        }));
    }

    @TestFactory
    Stream<DynamicTest> chords() {
        List<String> pieces = pieces("C b # m maj 7 9 13 6 5 / ( ) sus add no + - ø E");
        List<String> texts = List.of("Abmaj7/C", "F#m7b5", "C7(b9,#11)", "Bb6/9", "G13sus4", "Dm(maj9)", "Calt");
        return driven(new Driver<>(Chord::parse, and(pieces, List.of("\u0000")), texts, chord -> {
            chord.fromBass();
            chord.plus(Interval.MINOR_THIRD);
        }));
    }

    @TestFactory
    Stream<DynamicTest> numerals() {
        List<String> pieces = pieces("I V i v b # o ø + 6 4 7 / maj sus N Ger");
        List<String> texts = List.of("bVImaj7", "V65/ii", "viio7/V", "IV/5", "Ger65", "N6", "I6/9", "Cad64/V/vi");
        Key minor = Key.minor(NoteName.parse("G#"));
        return driven(
                new Driver<>(Numeral::parse, and(pieces, List.of(" ")), texts, each -> each.in(minor)),
                LONGER_NUMERALS);
    }

    @TestFactory
    Stream<DynamicTest> numbers() {
        Key key = Key.major(NoteName.parse("Db"));
        List<String> pieces = pieces("1 3 6 7 b # - M maj 9 sus4 / ( ) ø");
        List<String> texts = List.of("b6maj7", "57", "2-7", "1/3", "5sus4/b7", "16/9");
        return driven(
                new Driver<>(
                        text -> new Number(text, key),
                        and(pieces, List.of(" ")),
                        texts,
                        each -> each.chord().tones()),
                LONGER_NUMERALS);
    }

    /** A number with the chord it means in a key; its text form is the number that is written for the chord. */
    private record Number(Chord chord, Key key) {
        Number(String text, Key key) {
            this(BandNumber.parse(text, key).in(key), key);
        }

        @Override
        public String toString() {
            return BandNumber.write(chord, key, Signs.ASCII);
        }
    }

    private static Stream<DynamicTest> driven(Driver<?> driver) {
        return driven(driver, LONGER_TEXTS);
    }

    private static Stream<DynamicTest> driven(Driver<?> driver, int longerTexts) {
        return Stream.of(
                DynamicTest.dynamicTest("all short texts", () -> driver.driveAllUpTo(PIECES)),
                DynamicTest.dynamicTest("longer texts", () -> driver.driveAtRandom(longerTexts, SEED)),
                DynamicTest.dynamicTest("long lines", driver::driveWithLongLines));
    }
}
