package monochord.harmony.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tunes long in the public domain and their keys. Source: the first line of the table. */
class KeyOfTunesTest {
    private static final List<String[]> TUNES = Counted.rows("/monochord/harmony/key/tunes-and-keys.csv");

    private static KeyFinding find(String[] row) {
        return KeyFinding.of(Melody.parse(row[3]), Counted.KEYS);
    }

    private static List<String[]> wrong(List<String[]> tunes) {
        return tunes.stream()
                .filter(row -> !find(row).key().equals(Key.parse(row[1])))
                .toList();
    }

    private static List<String[]> inMajorOrMinor() {
        return TUNES.stream().filter(row -> row[1].matches(".* (major|minor)")).toList();
    }

    /** Tonic and mode. */
    @Test
    void findsTheKeyOfEachTuneInMajorOrMinor() {
        assertTrue(inMajorOrMinor().size() >= 40, () -> inMajorOrMinor().size() + " tunes");
        assertEquals(
                List.of(), wrong(inMajorOrMinor()).stream().map(row -> row[0]).toList());
    }

    /** A mixolydian tune may be taken for one in the key of the same notes; its own key is then among the next. */
    @Test
    void findsTheKeyOfMostTunesInOtherModes() {
        List<String[]> others =
                TUNES.stream().filter(row -> !inMajorOrMinor().contains(row)).toList();
        assertTrue(others.size() >= 7, () -> others.size() + " tunes");
        assertEquals(
                "Banish Misfortune, The Red-Haired Boy, The Blarney Pilgrim",
                wrong(others).stream().map(row -> row[0]).collect(Collectors.joining(", ")));
        for (String[] row : others) {
            assertTrue(find(row).keys().stream().anyMatch(likely -> likely.key().equals(Key.parse(row[1]))), row[0]);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"P5", "m2", "M3", "A4"})
    void movesWithTheTune(String up) {
        Interval interval = Interval.parse(up);
        for (String[] row : TUNES) {
            Melody tune = Melody.parse(row[3]);
            Key here = KeyFinding.of(tune, Counted.KEYS).key();
            Key there = new Key(here.tonic().plus(interval), here.mode());
            if (Math.abs(there.signature()) <= 7) {
                assertEquals(
                        there, KeyFinding.of(tune.plus(interval), Counted.KEYS).key(), row[0]);
            }
        }
    }

    /** Tunes of ours: eight bars in one key, eight in another. What of a tune passes by is no change. */
    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '!', textBlock = """
            C4 D E C | F A G:2 | E4 F G E | D E D:2 | G4 A B G | C5 B A:2 | G4 F E D | C4:4 | D4 E F# D | G4 B A:2 | F#4 G A F# | E F# E:2 | A4 B C#5 A4 | D5 C# B4:2 | A4 G F# E | D4:4 ! 1-8 C major; 9-16 D major
            C5 B C5 G4 | A4 F G:2 | E4 F G E | D4:4 | G4 A B C5 | D5 B4 C5 A4 | G4 F E D | C4:4 | Eb4 D C D | Eb F G:2 | Ab4 G F Eb | D4:4 | G4 Ab G F | Eb D C:2 | B3 C4 D B3 | C4:4 ! 1-8 C major; 9-16 C minor
            G4 B D5 B4 | C5 A4 D5:2 | B4 G A F# | G4:4 | D5 C5 B4 A | G4 A B:2 | C5 B4 A F# | G4:4 | A4 C#5 E5 C#5 | D5 F#5 E5 C#5 | D5 C#5 B4 C#5 | A4:4 | C#5 D5 E5 C#5 | D5 B4 A:2 | G4 F# E C#5 | D5:4 ! 1-8 G major; 9-16 D major by G
            C4 E G C5 | B4 G F# G | A4 G F E | D4:4 | C4 E G C5 | B4 G F# G | A4 G F D | C4:4 ! 1-8 C major
            """)
    void marksWhereATuneChangesKey(String tune, String spans) {
        String found = KeyFinding.of(Melody.parse("| " + tune + " |"), Counted.KEYS).ofTune().stream()
                .map(span -> span.bars().orElseThrow().first() + "-"
                        + span.bars().orElseThrow().last() + " " + span.key()
                        + span.pivot().map(pivot -> " by " + pivot).orElse(""))
                .collect(Collectors.joining("; "));
        assertEquals(spans, found);
    }

    /** A degree that passes once in a long tune makes no mode: Common practice, no source. */
    @Test
    void namesNoModeForAPassingNote() {
        String tune = "A4 C#5 E5 C#5 D5 B4 E5 D5 C#5 A4 B4 C#5 A4:4 ".repeat(4);
        assertEquals(
                Key.parse("A major"),
                KeyFinding.of(Melody.parse(tune + "A4 G4:1/2 A4:1/2 B4 C#5 A4:4"), Counted.KEYS)
                        .key());
    }

    /** Source: worked out by hand from the notes. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            C4 E G C5 B4 C5:4          | C major      | It begins and ends on C, the tonic. The leading note B rises to C. C, E and G, the notes of the tonic chord, sound more than half of the time. All its notes are in C major.
            A4 B C5 E5 G#4 A4:2        | A minor      | It begins and ends on A, the tonic. The leading note G♯ rises to A. A, C and E, the notes of the tonic chord, sound more than half of the time. All its notes but G♯ are in A minor.
            D4 E F A G E C4 B D4:3     | D dorian     | It begins and ends on D, the tonic. D, F and A, the notes of the tonic chord, sound more than half of the time. All its notes are in D dorian. B sounds and B♭ never does: that makes it D dorian.
            G4 D5 B4 G4 D4 F4 G4:4     | G mixolydian | It begins and ends on G, the tonic. G, B and D, the notes of the tonic chord, sound more than half of the time. All its notes are in G mixolydian. F sounds and F♯ never does: that makes it G mixolydian.
            """)
    void saysWhatSpeaksForTheKey(String tune, String key, String why) {
        LikelyKey best = KeyFinding.of(Melody.parse(tune), Counted.KEYS).keys().get(0);
        assertEquals(key, best.key().toString());
        assertEquals(why, best.why().stream().map(Phrase::toString).collect(Collectors.joining(" ")));
    }

    @Test
    void namesNoChordThatDoesNotSoundWhole() {
        LikelyKey best = KeyFinding.of(Melody.parse("E4 D C D E E E"), Counted.KEYS)
                .keys()
                .get(0);
        assertTrue(best.why().stream().noneMatch(sentence -> sentence.toString().contains("notes of the tonic chord"))
                || best.key().equals(Key.parse("C major")));
    }
}
