package monochord.song.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import monochord.song.Section;
import monochord.song.Song;
import monochord.song.SongReader;
import monochord.text.Phrase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Chords over words. Source: ours, for no standard says how they are written; the layouts are those that players type. */
class TextChartTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = ';', quoteCharacter = '~', textBlock = """
            Am                          ; CHORDS
            A                           ; CHORDS
            Am F C G                    ; CHORDS
            | D | G . A . | % |         ; CHORDS
            |: D | A :| x2              ; CHORDS
            D / / / G / / /             ; CHORDS
            G - D - Em                  ; CHORDS
            N.C.  G7sus4  F/A  (x2)     ; CHORDS
            [1 D | A :| [2 D            ; CHORDS
            A boat that can carry two   ; WORDS
            Am I alone?                 ; WORDS
            Be as a ghost               ; WORDS
            [Verse 2]                   ; HEADING
            [Anything at all]           ; HEADING
            CHORUS                      ; HEADING
            Bridge (x2)                 ; HEADING
            Pre-Chorus:                 ; HEADING
            verse 3                     ; HEADING
            Chorus of angels sing       ; WORDS
            Key: D                      ; FIELD
            Tempo: 76                   ; FIELD
            """)
    void aLineIsTakenFor(String line, TextLine.LineKind kind) {
        assertEquals(kind, TextLine.of(line).kind());
    }

    private static final String WATER = """
            The Water Is Wide

            [Verse 1]
                D         G            D
            The water is wide, I can't get over
            Bm              A
            And neither have I wings to fly

            [Verse 2]
            O love is handsome and love is kind

            CHORUS (x2)
            | D | G . A . | D | % |

            Verse 1
            """;

    private static String shown(Section section) {
        return section.name() + ": "
                + section.chords().stream()
                        .map(bar ->
                                (bar.opens() ? "|: " : "") + bar.text() + (bar.times() > 0 ? " x" + bar.times() : ""))
                        .collect(Collectors.joining(" | "))
                + " / " + String.join(" / ", section.words());
    }

    @Test
    void chordsBelongToTheWordTheyStandOver() {
        TextChart.Read read = TextChart.read(WATER, "file");
        assertFalse(read.isKeySaid());
        assertEquals(
                """
                Verse 1: D | G | D | Bm | A / The water is | wide, I can't | get over / And neither have | I wings to fly
                Verse 2: D | G | D | Bm | A / O love is handsome and love is kind
                Chorus: D | G . A . | D | % /\s
                Chorus:  /\s
                Verse 1:  /\s""", read.song().sections().stream().map(TextChartTest::shown).collect(Collectors.joining("\n")));
        assertEquals("The Water Is Wide", read.song().head().title());
        assertEquals(
                List.of(
                        "No bar lines are written: each chord is taken as one bar.",
                        "Verse 2 has words alone and takes the chords of Verse 1."),
                read.song().remarks().stream().map(Phrase::toString).toList());
        Song again = SongReader.read(read.song().toString());
        assertEquals(List.of(), again.faults());
        assertEquals(read.song().toString(), again.toString());
    }

    @Test
    void aHeadAndRepeatsAreRead() {
        TextChart.Read read = TextChart.read("""
                Title: Low Water
                Key: Bm
                Time: 3/4
                Tempo: 92 bpm
                | Bm | F# | x2
                |: G | A :|
                Bm    N.C.  Bm
                """, "file");
        assertTrue(read.isKeySaid());
        assertEquals(
                "Low Water, B minor, 3/4, 92",
                read.song().head().title() + ", " + read.song().head().key() + ", "
                        + read.song().head().metre() + ", " + read.song().head().tempo());
        assertEquals(
                "Verse: |: Bm | F# x2 | |: G | A x2 | Bm | r | Bm / ",
                shown(read.song().sections().get(0)));
    }

    @Test
    void aColumnCountsCharactersAndTabs() {
        Section section = TextChart.read("\tD\tG\nwörter\tüber\tdas Wasser\n", "file")
                .song()
                .sections()
                .get(0);
        assertEquals("Verse: D | G / wörter über | das Wasser", shown(section));
    }

    @Test
    void whateverATextHoldsItIsReadInBounds() {
        for (String text : List.of(
                "", "\n\n", "A ".repeat(100_000), "|".repeat(9000), "[x]\n".repeat(9000), "D\nx\n".repeat(9000))) {
            assertTrue(TextChart.read(text, "file").song().sections().size() <= 5001);
        }
        assertFalse(TextChart.isChart("a letter to the band\nwithout any music\n"));
    }
}
