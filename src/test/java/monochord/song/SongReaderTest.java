package monochord.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The song file; the tune is "Amazing Grace" (New Britain) as hymn books of the nineteenth century print it. */
class SongReaderTest {
    static final String GRACE = """
            ---
            title: Amazing Grace
            by: traditional
            key: G
            metre: 3/4
            tempo: 84
            ---

            *For the last dance at Lantern Quay.*

            ## Verse

            ```chords
            |: G | . | C | G |
            G | . | [1 D7 "all stop" | D! :| [2 D | G ||
            ```

            ```tune
            D4 | G4:2 B4:1/2 G4:1/2 | B4:2 A4 | G4:2 E4 | D4:2 D4 |
            G4:2 B4:1/2 G4:1/2 | B4:2 A4 | D5:3 | .:2 D4 | A4:3 | G4:2
            ```

            ```words
            A-ma-zing grace, how sweet the sound
            that saved a wretch like me.
            ```

            ## Ending

            Slower each time.

            ```chords
            I | bVI . bVII | %
            ```

            ## Verse

            ## Changes

            - Verse, bar 7: G to D7. The tune rests on its root.
            """;

    private static String pitches(SongMusic.Timeline timeline) {
        return timeline.notes().stream()
                .map(note -> note.pitch() + ":" + note.beats())
                .collect(Collectors.joining(" "));
    }

    private static String chords(SongMusic.Timeline timeline) {
        return timeline.chords().stream()
                .map(change -> change.chord() + "@" + change.start())
                .collect(Collectors.joining(" "));
    }

    @Test
    void aSongIsReadWithoutAFault() {
        Song song = SongReader.read(GRACE);
        assertEquals(List.of(), song.faults());
        assertEquals("Amazing Grace", song.head().title());
        assertEquals("G major", song.head().key().toString());
        assertEquals("3/4", song.head().metre().toString());
        assertEquals(84, song.head().tempo());
        assertEquals(
                List.of("Verse", "Ending", "Verse"),
                song.sections().stream().map(Section::name).toList());
        assertEquals(List.of(new SongChange("Verse, bar 7", "G", "D7", "The tune rests on its root.")), song.changes());
    }

    @Test
    void whatIsWrittenIsReadBack() {
        String written = SongReader.read(GRACE).toString();
        assertEquals(GRACE, written);
        assertEquals(written, SongReader.read(written).toString());
    }

    @Test
    void chordsStandUnderTheBarsOfTheTune() {
        SongMusic.Timeline written = SongReader.read(GRACE).music().written();
        assertEquals("1", written.pickup().toString());
        assertTrue(
                pitches(written).startsWith("D4:1 G4:2 B4:1/2 G4:1/2 B4:2 A4:1 G4:2 E4:1 D4:2 D4:1"), pitches(written));
        assertEquals("G@1 C@7 G@10 G@13 D7@19 D@22 D@25 G@28 G@30 Eb@33 F@35 Eb@36 F@38", chords(written));
    }

    @Test
    void repeatsAndTheSecondVerseArePlayedOut() {
        Song song = SongReader.read(GRACE);
        List<Integer> order =
                SectionMusic.of(song.sections().get(0), song.head()).order();
        assertEquals(List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 1, 2, 3, 4, 5, 6, 9, 10), order);
        SongMusic.Timeline played = song.music().played();
        assertEquals(12 + 5 + 12, played.chords().size());
    }

    @Test
    void numeralsStayAndFollowTheKey() {
        Song song = SongReader.read(GRACE.replace("key: G", "key: F"));
        assertTrue(
                chords(song.music().written()).contains("F@30 Db@33 Eb@35"),
                chords(song.music().written()));
        assertTrue(song.toString().contains("I | bVI . bVII | %"));
    }

    /** Every fault has its place and what to write. */
    @Test
    void faultsAreFoundWithLineAndColumn() {
        Song song = SongReader.read("""
                ---
                title: Quay Waltz
                key: H
                metre: 3/5
                mood: low
                ---
                ## Verse
                ```chords
                C | Fq | F %
                ```
                ```tune
                C4:4 | D4:2 | E9x | F4:4
                ```
                ```sound
                ```
                ## Bridge
                ## Changes
                nothing much
                """);
        assertEquals("""
                line 3, column 6: "H" is not a key: expected a letter from A to G at character 1, found 'H'; write key: and its key, such as D
                line 4, column 8: "3/5" is not a metre: expected beats and their value, such as 3/4 or 6/8; write metre: and for example 4/4
                line 5, column 1: a song has no field "mood"; write title, by, key, metre, tempo or swing, a colon, and what it is
                line 9, column 6: "Fq" is not a chord: expected b5, #9, add9, sus4, no5, /bass at character 2, found 'q'; write for example IV I | V . bVI
                line 9, column 12: no bar stands before this repeat; write the bar out
                line 12, column 1: the tune has 4 bars and the chords have 3; write as many, or end the shorter with ...
                line 12, column 8: bar 2 has 2 quarters where 4/4 has 4; make the lengths of its notes come to 4
                line 12, column 16: "E9x" is not a note name: expected b, bb, #, x or the end at character 2, found '9'; write for example Eb
                line 14, column 1: a song has no block "sound"; write chords, tune or words behind ```
                line 16, column 1: nothing is written for "Bridge"; write a block of chords below it, or above it the section that is played again
                line 18, column 1: this line says no change; write for example - Verse, bar 3: Bm to Bb. The tune rests on D there.""", song.faults().stream().map(SongFault::toString).collect(Collectors.joining("\n")));
    }

    @Test
    void anythingComesBackAsASong() {
        for (String text : List.of("", "---", "## ", "```chords", "---\n---\n## A\n```tune\n" + "C4 | ".repeat(3000))) {
            Song song = SongReader.read(text);
            assertTrue(!song.faults().isEmpty(), text);
            assertTrue(song.music().played().notes().size() <= 3000);
        }
    }

    private static final String HEAD = "---\ntitle: T\nkey: C\nmetre: 4/4\n---\n";

    private static String block(String name, String content) {
        return "## " + name + "\n```chords\n" + content + "\n```\n";
    }

    /** What nobody wrote by hand is not read whole, that is said, and so it is never written over. */
    @Test
    void aSongWithoutEndIsReadInBounds() {
        Song bars = SongReader.read(HEAD + block("A", ("C|".repeat(3000) + "\n").repeat(50)));
        assertEquals(5000, bars.sections().get(0).chords().size());
        assertEquals(
                "line 7, column 1: more bars than 5000 are not read; make several songs of it",
                bars.faults().get(0).toString());
        Song blocks = SongReader.read(HEAD + block("A", "C|".repeat(3999)).repeat(9));
        assertTrue(blocks.sections().stream()
                        .mapToInt(section -> section.chords().size())
                        .sum()
                <= 10_000);
        Song sections = SongReader.read(HEAD + block("A", "C").repeat(501));
        assertEquals(500, sections.sections().size());
        assertEquals(
                "line 2006, column 1: more sections than 500 are not read; make several songs of it",
                sections.faults().get(0).toString());
        Song lines = SongReader.read(HEAD + block("A", "C") + "words\n".repeat(20_000));
        assertEquals(
                "line 20001, column 1: more lines than 20000 are not read; make several songs of it",
                lines.faults().get(0).toString());
        Song line = SongReader.read(HEAD + block("A", "C " + "\"la\" ".repeat(3000)));
        assertEquals(
                "line 8, column 1: of this line only 8000 characters are read; write it on several lines",
                line.faults().get(0).toString());
    }

    /** However often it says. */
    @Test
    void whatIsRepeatedIsPlayedInBounds() {
        Song song = SongReader.read(HEAD + block("A", "|: C " + ":".repeat(7000) + "|"));
        assertEquals(
                32, SectionMusic.of(song.sections().get(0), song.head()).order().size());
        StringBuilder many = new StringBuilder(HEAD);
        for (int i = 0; i < 500; i++) {
            many.append(block("A" + i, "|: " + "C|".repeat(19) + "C " + ":".repeat(99) + "|"));
        }
        Song long500 = SongReader.read(many.toString());
        assertEquals(500, long500.sections().size());
        assertTrue(long500.music().played().chords().size() <= PlayingOrder.MOST);
    }

    /** A change is agreed where a sentence of its reason says so, and only there. */
    @Test
    void aChangeIsAgreedWhereItSaysSo() {
        assertEquals(
                List.of(
                        "true It falls to D.",
                        "true It falls to D.",
                        "true It falls to D.",
                        "true the tune rests on D.",
                        "false To be agreed with Piet.",
                        "false It falls. Not agreed yet.",
                        "true "),
                List.of(
                                "Agreed. It falls to D.",
                                "It falls to D. Agreed on Tuesday.",
                                "Agreed by the band. It falls to D.",
                                "Agreed: the tune rests on D.",
                                "To be agreed with Piet.",
                                "It falls. Not agreed yet.",
                                "Agreed by the band")
                        .stream()
                        .map(why -> new SongChange("Verse, bar 3", "Bm", "Bb", why))
                        .map(change -> change.isAgreed() + " " + change.reason())
                        .toList());
    }
}
