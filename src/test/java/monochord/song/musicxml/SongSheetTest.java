package monochord.song.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import monochord.song.Song;
import monochord.song.SongMusic;
import monochord.song.SongReader;
import monochord.song.abc.AbcBook;
import monochord.song.abc.AbcReader;
import monochord.song.abc.AbcWriter;
import monochord.text.Phrase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets as songs: bars, repeats, endings, words, sections and jumps. Source: W3C MusicXML 4.0; the notes are worked out by hand. */
class SongSheetTest {
    @TempDir
    Path folder;

    private static String note(String pitch, int eighths, String more) {
        return "<note><pitch><step>" + pitch.charAt(0) + "</step><octave>" + pitch.charAt(1)
                + "</octave></pitch><duration>" + eighths + "</duration>" + more + "</note>";
    }

    private static String sung(String way, String text) {
        return "<lyric number='1'><syllabic>" + way + "</syllabic><text>" + text + "</text></lyric>";
    }

    private static String chord(String root, String kind) {
        return "<harmony><root><root-step>" + root + "</root-step></root><kind>" + kind + "</kind></harmony>";
    }

    private static String score(String... measures) {
        return "<score-partwise version='4.0'><work><work-title>Quay Song</work-title></work>"
                + "<identification><creator type='composer'>trad.</creator></identification><part id='P1'><measure><attributes>"
                + "<divisions>2</divisions><key><fifths>0</fifths><mode>major</mode></key>"
                + "<time><beats>3</beats><beat-type>4</beat-type></time></attributes><direction><sound tempo='96'/></direction>"
                + String.join("</measure><measure>", measures) + "</measure></part></score-partwise>";
    }

    private Song song(String text) throws SheetFault {
        try {
            return LeadSheetFile.song(Files.writeString(folder.resolve("s.musicxml"), text), "s.musicxml");
        } catch (SheetFault fault) {
            throw fault;
        } catch (IOException failed) {
            throw new AssertionError(failed);
        }
    }

    private static String played(Song song) {
        return song.music().played().notes().stream()
                .map(note -> note.pitch() + ":" + note.beats())
                .collect(Collectors.joining(" "));
    }

    private static final String REPEATED = score(
            note("E4", 2, sung("single", "The")),
            "<barline location='left'><repeat direction='forward'/></barline>" + chord("A", "minor")
                    + note("A4", 4, "<tie type='start'/>" + sung("begin", "wa"))
                    + note("A4", 2, "<tie type='stop'/>"),
            chord("E", "dominant") + note("G4", 6, sung("end", "ter")),
            "<barline location='left'><ending number='1' type='start'/></barline>" + chord("A", "minor")
                    + note("A4", 4, "") + "<barline location='right'><repeat direction='backward'/></barline>",
            "<barline location='left'><ending number='2' type='start'/></barline>" + note("B4", 6, "")
                    + "<barline location='right'><bar-style>light-heavy</bar-style></barline>");

    @Test
    void repeatsEndingsAndWordsAreKept() throws SheetFault {
        Song song = song(REPEATED);
        assertEquals("E4:1 A4:3 G4:3 A4:2 A4:3 G4:3 B4:3", played(song));
        assertEquals("""
                ---
                title: Quay Song
                by: trad.
                key: C
                metre: 3/4
                tempo: 96
                ---

                ## Tune

                ```chords
                |: Am | E7 | [1 Am :| [2 . ||
                ```

                ```tune
                E4 | |: A4:3 | G4:3 | [1 A4:2 :| [2 B4:3 ||
                ```

                ```words
                The wa-ter
                ```
                """, song.toString());
        assertEquals(List.of(), SongReader.read(song.toString()).faults());
        AbcBook book = AbcBook.of(AbcWriter.write(song));
        assertEquals(played(song), played(AbcReader.read(book, book.tunes().get(0))));
    }

    @Test
    void aPackedSheetIsTheSame() throws IOException {
        Path packed = folder.resolve("s.mxl");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(packed))) {
            zip.putNextEntry(new ZipEntry("META-INF/container.xml"));
            zip.write("<container><rootfiles><rootfile full-path='a/s.xml'/></rootfiles></container>".getBytes());
            zip.putNextEntry(new ZipEntry("a/s.xml"));
            zip.write(REPEATED.getBytes());
        }
        assertEquals(
                song(REPEATED).toString(), LeadSheetFile.song(packed, "s.mxl").toString());
    }

    @Test
    void rehearsalMarksAreSectionsAndJumpsAreTheirOrder() throws SheetFault {
        String mark = "<direction><direction-type><rehearsal>%s</rehearsal></direction-type></direction>";
        String said = "<direction><direction-type><words>%s</words></direction-type></direction>";
        Song song = song(score(
                String.format(mark, "Verse") + chord("C", "major") + note("C4", 6, "") + String.format(said, "Fine"),
                String.format(mark, "Changes")
                        + chord("F", "major")
                        + note("F4", 6, "")
                        + String.format(said, "D.C. al Fine")));
        assertEquals(
                "Verse, Changes 1, Verse",
                song.sections().stream().map(section -> section.name()).collect(Collectors.joining(", ")));
        assertEquals("C4:3 F4:3 C4:3", played(song));
        Song coda = song(score(
                note("C4", 6, "") + "<sound tocoda='x'/>",
                note("D4", 6, "") + "<sound dacapo='yes'/>",
                "<direction><sound coda='x'/></direction>" + note("E4", 6, "")));
        assertEquals("C4:3 D4:3 C4:3 E4:3", played(coda));
    }

    @Test
    void aBarSplitAtARepeatIsTakenWithARemark() throws SheetFault {
        Song song = song(score(
                note("C4", 6, ""),
                note("D4", 4, "") + "<barline location='right'><repeat direction='backward'/></barline>",
                note("E4", 2, ""),
                note("F4", 6, "")));
        assertEquals("C4:3 D4:2 C4:3 D4:2 E4:1 F4:3", played(song));
        assertEquals(
                List.of("Bar 2 is split at a repeat sign; both halves are taken as they stand."),
                song.remarks().stream().map(Phrase::toString).toList());
        assertEquals(List.of(), SongReader.read(song.toString()).faults());
    }

    @Test
    void aChartWithoutATuneAndATuneWithoutChordsAreSongs() throws SheetFault {
        Song chart = song(score(
                chord("C", "major") + "<note><rest/><duration>6</duration></note>",
                chord("F", "major-seventh") + "<forward><duration>4</duration></forward>" + chord("G", "dominant"),
                "<harmony><kind>none</kind></harmony>"));
        assertEquals(
                "C | Fmaj7 . G7 | r",
                chart.sections().get(0).chords().stream().map(bar -> bar.text()).collect(Collectors.joining(" | ")));
        assertEquals("", played(chart));
        assertEquals("C4:3", played(song(score(note("C4", 6, "")))));
    }

    @Test
    void aTransposingPartSoundsAtConcertPitch() throws SheetFault {
        Song song = song(
                score("<attributes><transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose></attributes>"
                        + chord("D", "minor") + note("D5", 6, "")));
        assertEquals("C5:3", played(song));
        assertEquals("Bb major", song.head().key().toString());
        assertEquals("Cm", song.music().played().chords().get(0).chord().toString());
    }

    @Test
    void whatCannotBeReadIsRefusedWithAReason() {
        assertEquals(
                "s.musicxml: two notes of one voice sound at once in bar 1",
                refused(score(note("C4", 6, "") + "<backup><duration>6</duration></backup>" + note("D4", 6, ""))));
        assertEquals("s.musicxml: a length in it cannot be counted", refused(score(note("C4", 900_000, ""))));
        assertEquals(
                "s.musicxml: it is not well-formed XML at line 1, column 104",
                refused(
                        "<!DOCTYPE s [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;'>]><score-partwise><work><work-title>&b;</work-title></work>"
                                + "</score-partwise>"));
        assertEquals("s.musicxml: no notes stand in it", refused("<score-partwise/>"));
        assertEquals(
                "s.musicxml: it has more than 4000 bars",
                refused(score("<note/>"
                        .repeat(4100)
                        .replace("<note/><note/>", "<note/></measure><measure><note/></measure><measure>"))));
    }

    private String refused(String text) {
        return assertThrows(SheetFault.class, () -> song(text)).getMessage();
    }

    @Test
    void aPlayerNamedNowhereHasNoPitchLost() throws SheetFault {
        SongMusic.Timeline written = song(REPEATED).music().written();
        assertEquals(5, written.notes().size());
        assertEquals("1", written.pickup().toString());
    }
}
