package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every way to put a third, a fifth, a seventh, a ninth, an eleventh and a thirteenth on a root. */
class ChordKindTest {
    private static final List<String> THIRDS = List.of("", "3", "b3", "4", "2");
    private static final List<String> FIFTHS = List.of("", "5", "b5", "#5");
    private static final List<String> SEVENTHS = List.of("", "b7", "7", "bb7", "6");
    private static final List<String> NINTHS = List.of("", "2", "b2", "#2", "b2 #2");
    private static final List<String> ELEVENTHS = List.of("", "4", "#4", "b4");
    private static final List<String> THIRTEENTHS = List.of("", "6", "b6", "#6");

    static List<Set<Degree>> stacks() {
        Set<Set<Degree>> stacks = new HashSet<>();
        for (String third : THIRDS) {
            for (String fifth : FIFTHS) {
                for (String seventh : SEVENTHS) {
                    for (String ninth : NINTHS) {
                        for (String eleventh : ELEVENTHS) {
                            for (String thirteenth : THIRTEENTHS) {
                                stacks.add(stack("1", third, fifth, seventh, ninth, eleventh, thirteenth));
                            }
                        }
                    }
                }
            }
        }
        return new ArrayList<>(stacks);
    }

    private static Set<Degree> stack(String... degrees) {
        Set<Degree> stack = new HashSet<>();
        Stream.of(degrees)
                .flatMap(words -> Stream.of(words.split(" ")))
                .filter(word -> !word.isEmpty())
                .forEach(word -> stack.add(Degree.parse(word)));
        return stack;
    }

    private static List<NoteName> on(NoteName root, Set<Degree> stack) {
        return stack.stream().map(degree -> degree.above(root)).toList();
    }

    @Test
    void everyStackThatHasANameKeepsItsTonesWhenTheNameIsReadAgain() {
        int named = 0;
        for (Set<Degree> stack : stacks()) {
            Optional<ChordKind> kind = ChordKind.of(NoteName.C, on(NoteName.C, stack));
            if (kind.isPresent()) {
                named++;
                assertEquals(kind.get(), ChordKind.parse(kind.get().toString()), () -> stack + " " + kind.get());
                assertEquals(stack, degrees(kind.get()), () -> kind.get().toString());
            }
        }
        assertTrue(named > 1800, "only " + named + " of " + stacks().size() + " have a name");
    }

    private static Set<Degree> degrees(ChordKind kind) {
        Set<Degree> degrees = new HashSet<>();
        kind.intervals().forEach(interval -> degrees.add(Degree.ofFifths(interval.fifths())));
        return degrees;
    }

    @Test
    void everyNamedStackComesRoundOnEveryRoot() {
        for (Set<Degree> stack : stacks()) {
            Optional<ChordKind> kind = ChordKind.of(NoteName.C, on(NoteName.C, stack));
            for (NoteName root : kind.isPresent() ? Written.names(2) : List.<NoteName>of()) {
                Chord chord = new Chord(root, kind.get());
                assertEquals(chord, Chord.parse(chord.toString()));
                assertEquals(new HashSet<>(on(root, stack)), new HashSet<>(chord.tones()));
                assertEquals(kind, ChordKind.of(root, chord.tones()));
            }
        }
    }

    @Test
    void everyThirdWithAFifthAndASeventhHasAName() {
        for (String third : THIRDS.subList(1, 5)) {
            for (String seventh : List.of("", "b7", "7", "6")) {
                Set<Degree> stack = stack("1", third, "5", seventh);
                assertTrue(ChordKind.of(NoteName.C, on(NoteName.C, stack)).isPresent(), stack.toString());
            }
        }
    }

    /** Source: W3C MusicXML 4.0, type kind-value; the writing without the usually missing notes is common practice, no source. */
    @ParameterizedTest(name = "{0} is written {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C Eb G        | m
            C Eb Gb Bbb   | dim7
            C Eb Gb Bb    | m7b5
            C E G B       | maj7
            C E G A D     | 6/9
            C F G Bb      | 7sus4
            C E G D       | add9
            C E G Bb D A  | 13(no11)
            C E G Bb D#   | 7#9
            C E G# B      | maj7#5
            C G           | 5
            C F G Bb D    | 9sus4
            """)
    void theCustomaryNameOfASetOfTones(String tones, String suffix) {
        List<NoteName> names = Written.names(tones);
        assertEquals(suffix, ChordKind.of(names.get(0), names).orElseThrow().toString());
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            maj7  | major
            m9    | minor
            m7b5  | diminished
            dim7  | diminished
            7#5   | augmented
            9sus4 | suspended
            5     | open
            """)
    void theThirdAndTheFifthMakeTheQuality(String suffix, String quality) {
        assertEquals(quality, ChordKind.parse(suffix).quality().toString());
    }

    @Test
    void theIntervalsRiseFromTheRoot() {
        for (Set<Degree> stack : stacks()) {
            ChordKind.of(NoteName.C, on(NoteName.C, stack)).ifPresent(kind -> {
                assertEquals(Interval.UNISON, kind.intervals().get(0));
                for (int i = 1; i < kind.intervals().size(); i++) {
                    assertTrue(
                            kind.intervals()
                                            .get(i - 1)
                                            .compareTo(kind.intervals().get(i))
                                    < 0,
                            kind.toString());
                }
            });
        }
    }
}
