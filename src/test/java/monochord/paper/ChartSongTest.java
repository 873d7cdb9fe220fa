package monochord.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import monochord.paper.page.PageSize;
import monochord.song.Song;
import monochord.song.SongReader;
import monochord.song.musicxml.LeadSheet;
import monochord.song.musicxml.LeadSheetFile;
import monochord.text.Reader;
import monochord.view.drawn.Drawn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A song as the band reads it. */
class ChartSongTest {
    private static final Song LOFT = SongReader.read("""
            ---
            title: The Net Loft
            by: Lantern Quay
            key: G
            metre: 4/4
            tempo: 96
            ---

            ## Verse

            ```chords
            |: G | Em . . D/F# | C | D! "all stop" |
            G | % | Eb | [1 D :| [2 D7 ||
            ```

            ## Chorus

            ```chords
            C | D | G . B7 | Em |
            C | Cm6 | G | r
            ```

            ## Verse

            ## Changes

            - Verse, bar 7: C to Eb. Agreed. The tune rests on its fifth.
            - Chorus, bar 6: D to Cm6. It falls to D.
            """);

    private final Chart chart = ChartSong.of(LOFT);

    @TempDir
    private Path folder;

    private static String words(PlayerPart part, ChartSheet.ChartLook look) {
        return ChartSheet.of(part, look, PageSize.A4, Reader.ENGLISH).stream()
                .flatMap(page -> page.picture().things().stream())
                .filter(Drawn.Words.class::isInstance)
                .map(thing -> ((Drawn.Words) thing).text().toString())
                .collect(Collectors.joining("\n"));
    }

    @Test
    void sectionsInPlayingOrderAndTheSongsOwnLines() {
        assertEquals(
                List.of("Verse", "Chorus", "Verse"),
                chart.sections().stream().map(Chart.ChartSection::name).toList());
        assertTrue(chart.sections().get(2).again());
        assertEquals(
                List.of(4, 5),
                ChartSheet.lines(chart.sections().get(0).bars()).stream()
                        .map(List::size)
                        .toList());
    }

    @Test
    void repeatsEndingsHitsAndCues() {
        List<ChartBar> verse = chart.sections().get(0).bars();
        assertTrue(verse.get(0).signs().opens());
        assertTrue(verse.get(3).chords().get(0).hit());
        assertEquals("all stop", verse.get(3).cue());
        assertTrue(verse.get(5).signs().same());
        assertEquals("1", verse.get(7).signs().ending());
        assertEquals(2, verse.get(7).signs().times());
        assertEquals("2", verse.get(8).signs().ending());
        assertTrue(chart.sections().get(1).bars().get(7).chords().get(0).chord().isEmpty());
    }

    @Test
    void changedBarsHaveDegreeOldChordAndReason() {
        assertEquals(
                List.of(
                        "1. ♭VI in place of C; agreed: The tune rests on its fifth.",
                        "2. ivadd6 in place of D; proposed, to be agreed with the band: It falls to D."),
                chart.changes().stream()
                        .map(ChartSheet::told)
                        .map(Object::toString)
                        .toList());
        assertEquals(1, chart.sections().get(0).bars().get(6).change());
        assertEquals(2, chart.sections().get(1).bars().get(5).change());
    }

    /** Source of the written keys: Integrated Music Theory, lesson 12a; the shapes below a capo are so many half steps down. */
    @ParameterizedTest
    @CsvSource({
        "alto sax, E major, C, A",
        "trumpet, A major, F, D",
        "horn, D major, Bb, G",
        "trombone, G major, Eb, C",
        "guitar capo 3, E major, C, A"
    })
    void eachPlayersKeyWithTheChangedChordAndTheOld(String player, String key, String now, String before) {
        PlayerPart part = PlayerPart.of(chart, player);
        assertEquals(key, part.key().toString());
        assertEquals(
                now,
                part.chart()
                        .sections()
                        .get(0)
                        .bars()
                        .get(6)
                        .chords()
                        .get(0)
                        .chord()
                        .orElseThrow()
                        .toString());
        assertEquals(before, part.chart().changes().get(0).from().toString());
    }

    @Test
    void theSecondRowOnWish() {
        PlayerPart part = PlayerPart.concert(chart);
        assertTrue(words(part, new ChartSheet.ChartLook(true, false)).contains("\nV7/vi\n"));
        String numbers = words(part, new ChartSheet.ChartLook(false, true));
        assertTrue(numbers.contains("\n6-\n"), numbers);
        String plain = words(part, new ChartSheet.ChartLook(false, false));
        assertTrue(plain.contains("Verse again, as above") && plain.contains("N.C."), plain);
    }

    /** Read back: metre, key and every bar as it is played section by section. */
    @Test
    void asMusicXmlItComesBack() throws IOException {
        Path file = folder.resolve("loft.musicxml");
        Files.writeString(file, ChartXml.of(PlayerPart.of(chart, "alto sax"), "The Net Loft"));
        String score = Files.readString(file);
        assertTrue(score.contains("<ending number=\"1\" type=\"start\"/>"), score);
        assertTrue(score.contains("<repeat direction=\"backward\" times=\"2\"/>"), score);
        assertTrue(score.contains("<words font-weight=\"bold\">Chorus</words>"), score);
        LeadSheet sheet = LeadSheetFile.read(file, "loft.musicxml");
        assertEquals("G major", sheet.key().toString());
        assertTrue(sheet.progression().toString().startsWith("G | Em . . D/F#"), sheet.progression()::toString);
    }
}
