package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;

/**
 * Our answers beside those of {@code tonal} and {@code chord-symbol}. Where we differ, the list of differences says who is
 * right and why; a difference that is not in its list fails, and so does one that has gone.
 */
class ReferenceLibrariesTest {
    private static final List<NoteName> ROOTS = Stream.concat(
                    Written.names(1).stream(), Stream.of(NoteName.parse("F##")))
            .toList();

    /** Our name of a kind of chord where tonal has another. */
    private static final Map<String, String> KINDS_IN_TONAL = Map.of("maj", "", "add4", "add4");

    /**
     * We hold the whole stack of thirds and are right: W3C MusicXML 4.0, type kind-value, builds an eleventh on the ninth
     * and a thirteenth on the eleventh; tonal leaves out what players leave out (common practice, no source), and has no
     * chord with an added fourth.
     */
    private static final Map<String, String> CHORDS_THAT_DIFFER = Map.of(
            "add4", "tonal does not know it",
            "7b13", "tonal leaves out the fifth",
            "11", "tonal leaves out the third",
            "13", "tonal leaves out the eleventh",
            "maj13", "tonal leaves out the eleventh",
            "m13", "tonal leaves out the eleventh");

    private static final Map<String, String> SCALES_IN_TONAL = Map.of(
            "whole-tone", "whole tone",
            "half-whole octatonic", "half-whole diminished",
            "whole-half octatonic", "whole-half diminished",
            "acoustic", "lydian dominant");

    @Test
    void chordsAreSpelledAsTonalSpellsThem() throws IOException, InterruptedException {
        List<List<String>> questions = new ArrayList<>();
        List<Chord> ours = new ArrayList<>();
        List<String> kinds = new ArrayList<>();
        for (String[] row : Table.rows("chord-kinds.csv")) {
            for (NoteName root : ROOTS) {
                questions.add(List.of("chord", root.toString(), KINDS_IN_TONAL.getOrDefault(row[0], row[0])));
                ours.add(new Chord(root, ChordKind.parse(row[0].equals("maj") ? "" : row[0])));
                kinds.add(row[0]);
            }
        }
        assertEquals(37 * 22, questions.size());
        List<List<String>> theirs = ReferenceLibraries.answers(questions);
        Set<String> differing = new HashSet<>();
        for (int i = 0; i < ours.size(); i++) {
            Set<String> tones =
                    ours.get(i).tones().stream().map(NoteName::toString).collect(Collectors.toSet());
            boolean alike = tones.equals(new HashSet<>(theirs.get(i)));
            assertTrue(alike || CHORDS_THAT_DIFFER.containsKey(kinds.get(i)), ours.get(i) + ": " + theirs.get(i));
            assertTrue(tones.containsAll(theirs.get(i)), ours.get(i) + ": " + theirs.get(i));
            differing.addAll(alike ? Set.of() : Set.of(kinds.get(i)));
        }
        assertEquals(CHORDS_THAT_DIFFER.keySet(), differing);
    }

    @Test
    void scalesAreSpelledAsTonalSpellsThem() throws IOException, InterruptedException {
        List<Scale> ours = new ArrayList<>();
        for (ScaleKind kind : ScaleKind.all()) {
            ROOTS.forEach(tonic -> ours.add(new Scale(tonic, kind)));
        }
        assertEquals(17 * 22, ours.size());
        List<List<String>> theirs = ReferenceLibraries.answers(ours.stream()
                .map(scale -> List.of("scale", scale.tonic().toString(), inTonal(scale.kind())))
                .toList());
        for (int i = 0; i < ours.size(); i++) {
            assertEquals(
                    theirs.get(i),
                    ours.get(i).tones().stream().map(NoteName::toString).toList(),
                    ours.get(i).toString());
        }
    }

    private static String inTonal(ScaleKind kind) {
        return SCALES_IN_TONAL.getOrDefault(kind.toString(), kind.toString());
    }

    @Test
    void pitchesMoveAsTonalMovesThem() throws IOException, InterruptedException {
        List<List<String>> questions = new ArrayList<>();
        List<String> ours = new ArrayList<>();
        for (NoteName name : ROOTS) {
            for (Interval interval : Written.intervals()) {
                for (Interval by : List.of(interval, interval.reversed())) {
                    Pitch pitch = new Pitch(name, 4);
                    questions.add(List.of("transpose", pitch.toString(), numberFirst(by)));
                    ours.add(pitch.plus(by).toString());
                }
            }
        }
        assertEquals(22 * 81 * 2, questions.size());
        List<List<String>> theirs = ReferenceLibraries.answers(questions);
        for (int i = 0; i < ours.size(); i++) {
            assertEquals(theirs.get(i), List.of(ours.get(i)), questions.get(i).toString());
        }
    }

    /** Tonal writes {@code 3m} for a minor third and {@code -3m} for one going down. */
    private static String numberFirst(Interval interval) {
        return (interval.goesDown() ? "-" : "") + interval.number() + interval.quality();
    }

    /**
     * Symbols on which we and chord-symbol differ. We follow W3C MusicXML 4.0, type kind-value, and the letter suffixes of
     * Open Music Theory (2014), "triads", CC BY-SA 4.0; the rest is common practice, no source.
     */
    private static final Map<String, String> SYMBOLS_THAT_DIFFER = Map.ofEntries(
            Map.entry("C11", "whole stack, as MusicXML has it; theirs leaves out the third"),
            Map.entry("C11b9", "whole stack, as MusicXML has it; theirs leaves out the third"),
            Map.entry("C13", "whole stack, as MusicXML has it; theirs leaves out the eleventh"),
            Map.entry("C13b9", "whole stack, as MusicXML has it; theirs leaves out the eleventh"),
            Map.entry("Cmaj13", "whole stack, as MusicXML has it; theirs leaves out the eleventh"),
            Map.entry("C7b13", "a dominant seventh and one tone, as MusicXML writes it; theirs leaves out the fifth"),
            Map.entry("C7b9b13", "as C7b13"),
            Map.entry("C7(#9,b13)", "as C7b13"),
            Map.entry("C7-9", "a minus before a number lowers it; theirs makes the chord minor. Common practice"),
            Map.entry("C7+9", "a plus before a number raises it; theirs raises the fifth. Common practice"),
            Map.entry("Cm7(11)", "the bracket adds one tone; theirs stacks a ninth too. Books differ, common practice"),
            Map.entry(
                    "Calt",
                    "fifth and ninth altered both ways; theirs adds #11 and b13, the same keys. Common practice"),
            Map.entry("C7alt", "as Calt"),
            Map.entry("Cdom7", "dom for dominant is not known to theirs. Common practice"),
            Map.entry("Cdom9", "as Cdom7"),
            Map.entry("C[add9]", "square brackets, as RomanText has them, are not known to theirs"),
            Map.entry("Cj7", "j for the large seventh is not known to theirs. Common practice"));

    private static final List<String> MORE_SYMBOLS = List.of(
            "C7(b9,#11)",
            "C7(#9,b13)",
            "C9#11",
            "Cm7/Bb",
            "C/E",
            "F/G",
            "Ab/C",
            "Cmaj7/E",
            "C7/Bb",
            "Cm/Eb",
            "Cadd9/E",
            "Cmaj9#11",
            "Cm6/9",
            "C13sus4",
            "C13b9",
            "C9b5",
            "C9#5",
            "Cm9b5",
            "Cm11b5",
            "Cmaj7b5",
            "C7b5b9",
            "C7#5#9",
            "C7#5b9",
            "C7b5#9",
            "C7b9#9",
            "C7b9b13",
            "C7no5",
            "Cno3",
            "C9no3",
            "Cm(maj9)",
            "Cdim(maj7)",
            "C7sus2",
            "Cmaj7sus4",
            "C6sus4",
            "C11b9",
            "C13#11",
            "Cmaj13#11",
            "C7add13",
            "Cmaj7add13",
            "Cm7add11",
            "Cmadd9",
            "Cm7(11)",
            "Cmi7",
            "Cj7",
            "Calt",
            "C7alt",
            "Cmin7b5",
            "C-7b5",
            "Cø7",
            "Csus24",
            "C7-5",
            "C7+5");

    @Test
    void symbolsMeanWhatChordSymbolReadsInThem() throws IOException, InterruptedException {
        List<String> symbols = Stream.concat(
                        Table.rows("chord-symbols.csv").stream().map(row -> row[1]), MORE_SYMBOLS.stream())
                .toList();
        List<List<String>> theirs = ReferenceLibraries.answers(
                symbols.stream().map(symbol -> List.of("symbol", symbol)).toList());
        Set<String> differing = new HashSet<>();
        for (int i = 0; i < symbols.size(); i++) {
            String symbol = symbols.get(i);
            if (!degreesWithBass(symbol).equals(degreesWithBass(theirs.get(i)))) {
                String known = "C"
                        + symbol.substring(Chord.parse(symbol).root().toString().length());
                assertTrue(
                        SYMBOLS_THAT_DIFFER.containsKey(known),
                        symbol + " " + degreesWithBass(symbol) + " " + theirs.get(i));
                differing.add(known);
            }
        }
        assertEquals(SYMBOLS_THAT_DIFFER.keySet(), differing);
    }

    private static Set<Object> degreesWithBass(String symbol) {
        Chord chord = Chord.parse(symbol);
        Set<Object> degrees = new HashSet<>(Set.of(chord.bass()));
        chord.kind().intervals().forEach(interval -> degrees.add(Degree.ofFifths(interval.fifths())));
        return degrees;
    }

    private static Set<Object> degreesWithBass(List<String> theirs) {
        Function<String, String> withinOctave =
                degree -> degree.replace("13", "6").replace("11", "4").replace("9", "2");
        Set<Object> degrees = new HashSet<>();
        for (int i = 0; i < theirs.size(); i++) {
            degrees.add(i == 0 ? NoteName.parse(theirs.get(0)) : Degree.parse(withinOctave.apply(theirs.get(i))));
        }
        return degrees;
    }
}
