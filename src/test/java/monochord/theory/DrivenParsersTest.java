package monochord.theory;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every parser, with all short texts over its alphabet, a million longer ones in all, and lines of a megabyte. */
class DrivenParsersTest {
    private static final long SEED = 20260101;
    private static final int LONGER_TEXTS = 90_000;
    private static final List<String> NAME =
            List.of("C", "B", "e", "H", "b", "#", "x", "♭", "𝄪", "𝄫", " ", "-", "4", "\u0000");
    private static final List<String> WORDS = List.of("major", "minor", "harmonic", "dorian", "maj", "m", "M", "ı");

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
        List<String> pieces = and(
                pieces("P M m A d p - − 0 1 3 4 8 9 x"),
                List.of(" ", "minor", "perfect", "doubly", "third", "octave", "é"));
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
        List<String> pieces = and(WORDS, pieces("l y d i a n"));
        return driven(new Driver<>(Mode::parse, pieces, List.of("mixolydian", "major", "Aeolian"), Mode::degrees));
    }

    @TestFactory
    Stream<DynamicTest> kindsOfScale() {
        List<String> pieces = and(WORDS, List.of(" ", "-", "  ", "pentatonic", "octatonic", "whole", "tone", "blues"));
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

    private static Stream<DynamicTest> driven(Driver<?> driver) {
        return Stream.of(
                DynamicTest.dynamicTest("all texts of up to four pieces", () -> driver.driveAllUpTo(4)),
                DynamicTest.dynamicTest("longer texts", () -> driver.driveAtRandom(LONGER_TEXTS, SEED)),
                DynamicTest.dynamicTest("lines of a megabyte", driver::driveWithMegabytes));
    }
}
