package monochord.song.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.harmony.melody.Fit;
import monochord.text.Phrase;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("attack")
class LeadSheetFileTest {
    private static final Path AULD_LANG_SYNE =
            Path.of("src", "test", "resources", "monochord", "song", "musicxml", "auld-lang-syne.musicxml");
    private static final String C = "<harmony><root><root-step>C</root-step></root><kind>major</kind></harmony>";

    @TempDir
    Path folder;

    private static String note(String step, int octave, int duration, String more) {
        return "<note><pitch><step>" + step + "</step><octave>" + octave + "</octave></pitch><duration>" + duration
                + "</duration>" + more + "</note>";
    }

    private static String whole(String step) {
        return note(step, 4, 4, "");
    }

    private static String sheet(String... measures) {
        return "<score-partwise><part-list/><part id='P1'>"
                + Stream.of(measures)
                        .map(one -> "<measure>" + one + "</measure>")
                        .collect(Collectors.joining())
                + "</part></score-partwise>";
    }

    private LeadSheet read(String xml) throws IOException {
        Path file = folder.resolve("tune.musicxml");
        Files.writeString(file, xml);
        return LeadSheetFile.read(file, "tune.musicxml");
    }

    private String fault(String xml) {
        return assertThrows(SheetFault.class, () -> read(xml)).getMessage();
    }

    /** The tune is traditional, written down from memory with chords of our own. */
    @Test
    void readsATraditionalTune() throws IOException {
        LeadSheet sheet = LeadSheetFile.read(AULD_LANG_SYNE, "auld-lang-syne.musicxml");
        assertEquals("Auld Lang Syne", sheet.title());
        assertEquals("F major", sheet.key().toString());
        assertEquals(
                "C4 | F4:3/2 F4:1/2 F4 A4 | G4:3/2 F4:1/2 G4 A4 | F4:3/2 F4:1/2 A4 C5 | D5:3 D5 | "
                        + "C5:3/2 A4:1/2 A4 F4 | G4:3/2 F4:1/2 G4 A4 | F4:3/2 D4:1/2 D4 C4 | F4:3 r |",
                sheet.tune().orElseThrow().toString());
        assertEquals(
                "F | C7 | F | Bb | F | C7 | Bb C7 | F |", sheet.progression().toString());
        assertEquals(List.of(), sheet.remarks());
        assertEquals(0, Fit.of(sheet.tune().orElseThrow(), sheet.progression()).friction());
    }

    /** Source: W3C MusicXML 4.0, kind-value and the intervals it says for each. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            major              | C
            minor              | Cm
            augmented          | Caug
            diminished         | Cdim
            dominant           | C7
            major-seventh      | Cmaj7
            minor-seventh      | Cm7
            diminished-seventh | Cdim7
            augmented-seventh  | C7#5
            half-diminished    | Cm7b5
            major-minor        | Cm(maj7)
            major-sixth        | C6
            minor-sixth        | Cm6
            dominant-ninth     | C9
            major-ninth        | Cmaj9
            minor-ninth        | Cm9
            dominant-11th      | C11
            major-11th         | Cmaj11
            minor-11th         | Cm11
            dominant-13th      | C13
            major-13th         | Cmaj13
            minor-13th         | Cm13
            suspended-second   | Csus2
            suspended-fourth   | Csus4
            power              | C5
            """)
    void readsEveryKindOfChordThatHasASymbol(String kind, String symbol) throws IOException {
        LeadSheet sheet = read(sheet(C.replace("major", kind) + whole("C")));
        assertEquals(
                monochord.theory.Chord.parse(symbol),
                sheet.progression().chords().get(0));
    }

    /** Source: W3C MusicXML 4.0, kind-value, those that are left of it. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"Neapolitan", "Italian", "French", "German", "pedal", "Tristan", "other", "none", "loud"})
    void leavesOutTheKindsThatHaveNoSymbolOfTheirOwn(String kind) throws IOException {
        String g = C.replace(">C<", ">G<").replace("major", kind);
        LeadSheet sheet = read(sheet(C + whole("C"), g + whole("G")));
        assertEquals("C | . |", sheet.progression().toString());
        assertEquals(
                List.of("A harmony without a chord symbol is left out; the chord before it goes on."),
                sheet.remarks().stream().map(Phrase::toString).toList());
    }

    /** Source: W3C MusicXML 4.0, degree-value, degree-alter and degree-type. */
    @ParameterizedTest(name = "{0} with {1} {2} altered {3} is {4}")
    @CsvSource(delimiter = '|', textBlock = """
            major    | add      | 9 | 0  | Cadd9
            dominant | add      | 9 | -1 | C7b9
            dominant | alter    | 5 | -1 | C7b5
            minor    | add      | 7 | 0  | Cm7
            major    | add      | 7 | 1  | Cmaj7
            dominant | subtract | 3 | 0  | C7(no3)
            major    | add      | 6 | 0  | C6
            dominant | add      | 11 | 1 | C7#11
            other    | add      | 5 | 0  | C5
            """)
    void readsDegrees(String kind, String type, String value, String alter, String symbol) throws IOException {
        String degree = "<degree><degree-value>" + value + "</degree-value><degree-alter>" + alter
                + "</degree-alter><degree-type>" + type + "</degree-type></degree></harmony>";
        LeadSheet sheet = read(sheet(C.replace("major", kind).replace("</harmony>", degree) + whole("C")));
        assertEquals(
                monochord.theory.Chord.parse(symbol),
                sheet.progression().chords().get(0));
    }

    @Test
    void readsBassInversionAndNumerals() throws IOException {
        String key = "<attributes><key><fifths>-3</fifths><mode>minor</mode></key></attributes>";
        String bass =
                C.replace("</harmony>", "<bass><bass-step>B</bass-step><bass-alter>-1</bass-alter></bass></harmony>");
        String turned = C.replace("</harmony>", "<inversion>1</inversion></harmony>");
        String numeral = "<harmony><numeral><numeral-root>6</numeral-root></numeral><kind>major</kind></harmony>";
        LeadSheet sheet = read(sheet(key + bass + whole("C"), turned + whole("C"), numeral + whole("C")));
        assertEquals("C/Bb | C/E | Ab |", sheet.progression().toString());
        assertEquals("C minor", sheet.key().toString());
    }

    /** Source for the interval of a B flat instrument: Integrated Music Theory, lesson 12a. */
    @Test
    void movesATransposedPartToWhatSounds() throws IOException {
        String part = "<attributes><divisions>1</divisions><key><fifths>2</fifths></key>"
                + "<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose></attributes>";
        String d7 = C.replace(">C<", ">D<").replace("major", "dominant");
        LeadSheet sheet = read(sheet(part + d7 + note("E", 4, 2, "") + note("D", 4, 2, "")));
        assertEquals("C major", sheet.key().toString());
        assertEquals("| D4:2 C4:2 |", sheet.tune().orElseThrow().toString());
        assertEquals("C7 |", sheet.progression().toString());
    }

    @Test
    void joinsTiesKeepsTheTopNoteAndLeavesOutGraceNotesAndOtherVoices() throws IOException {
        LeadSheet sheet = read(
                sheet(
                        C + note("C", 4, 2, "<voice>1</voice>") + note("E", 4, 2, "<tie type='start'/><voice>1</voice>")
                                + "<backup><duration>4</duration></backup>" + note("C", 3, 4, "<voice>2</voice>"),
                        note("E", 4, 1, "<tie type='stop'/><voice>1</voice>")
                                + "<note><grace/><pitch><step>F</step><octave>4</octave></pitch><voice>1</voice></note>"
                                + note("G", 4, 3, "<voice>1</voice>")
                                + "<note><chord/><pitch><step>B</step><octave>4</octave></pitch><duration>3</duration></note>"));
        assertEquals(
                "| C4:2 E4:2 | .:1 B4:3 |".replace(".:1", "."),
                sheet.tune().orElseThrow().toString());
        assertEquals(
                List.of(
                        "Only the first voice is read.",
                        "Grace and cue notes are left out.",
                        "Of notes struck together the top one is read."),
                sheet.remarks().stream().map(Phrase::toString).toList());
        assertEquals("C | . |", sheet.progression().toString());
    }

    @Test
    void sharesABarAsItsChordsDo() throws IOException {
        String g = C.replace(">C<", ">G<");
        LeadSheet sheet = read(sheet(
                C + note("C", 4, 3, "") + g + note("D", 4, 1, ""), note("E", 4, 2, "") + C + note("C", 4, 2, "")));
        assertEquals("C . . G | . C |", sheet.progression().toString());
    }

    @Test
    void oneClearLineForWhatIsNoLeadSheet() {
        assertEquals(
                "tune.musicxml: it is not well-formed XML at line 1, column 1",
                fault("").replaceAll("column .*", "column 1"));
        assertTrue(fault("<score-partwise><part>").startsWith("tune.musicxml: it is not well-formed XML at line 1"));
        assertEquals(
                "tune.musicxml: it begins with <html>; a lead sheet in MusicXML begins with <score-partwise>",
                fault("<html/>"));
        assertEquals("tune.musicxml: no notes stand in it", fault("<score-partwise/>"));
        assertEquals("tune.musicxml: no chord symbols stand over its notes", fault(sheet(whole("C"))));
        assertEquals(
                "tune.musicxml: bar 2 has 3 beats where the others have 4; one metre is read",
                fault(sheet(C + whole("C"), note("C", 4, 3, ""), whole("C"), whole("C"))));
        assertEquals(
                "tune.musicxml: a note in it has no letter",
                fault(sheet(C + "<note><pitch><octave>4</octave></pitch><duration>4</duration></note>")));
        assertEquals(
                "tune.musicxml: a length in it cannot be counted",
                fault(sheet(C + whole("C")).replace(">4</d", ">1e999999</d")));
        assertEquals(
                "tune.musicxml: a length in it is below nothing",
                fault(sheet(C + whole("C")).replace(">4</d", ">-4</d")));
        assertEquals(
                "tune.musicxml: a length in it cannot be counted",
                fault(sheet(C + whole("C")).replace(">4</d", ">long</d")));
        assertEquals(
                "tune.musicxml: an octave of high cannot be read",
                fault(sheet(C + whole("C")).replace(">4</octave", ">high</octave")));
        assertEquals(
                "tune.musicxml: a note in it has no letter",
                fault(sheet(C + whole("C")).replace("<step>C", "<step>H")));
    }

    /** Numbers and texts of a length that nobody writes. */
    @Test
    void nothingTakesLongOrMuch() throws IOException {
        assertEquals(
                "tune.musicxml: a length in it cannot be counted",
                fault(sheet(C + whole("C")).replace(">4</d", ">" + "4".repeat(1_000_000) + "</d")));
        LeadSheet named = read(sheet(C + whole("C"))
                .replace("<part-list/>", "<movement-title>" + "la ".repeat(100_000) + "</movement-title>"));
        assertEquals(1000, named.title().length());
    }

    /** Source: W3C XML 1.0, 4.3.3: a file names its encoding or begins with a mark; else it is UTF-8. */
    @Test
    void theEncodingIsTheOneThatIsNamed() {
        String xml = "<?xml version='1.0' encoding='ISO-8859-1'?><t>Frère</t>";
        assertEquals(xml, SheetText.of(xml.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1)));
        assertEquals("<t>Frère</t>", SheetText.of("<t>Frère</t>".getBytes(java.nio.charset.StandardCharsets.UTF_16)));
        assertEquals(
                "<t>Frère</t>",
                SheetText.of("\ufeff<t>Frère</t>".getBytes(java.nio.charset.StandardCharsets.UTF_16LE)));
        assertEquals(
                "<t>Fr\ufffdre</t>",
                SheetText.of("<t>Fr\u00e8re</t>".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1)));
        assertEquals(
                "<?xml encoding='odd'?>é",
                SheetText.of("<?xml encoding='odd'?>é".getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    }

    @Test
    void filesThatAreNotThere() throws IOException {
        assertEquals(
                "no.musicxml: there is no such file",
                assertThrows(SheetFault.class, () -> LeadSheetFile.read(folder.resolve("no.musicxml"), "no.musicxml"))
                        .getMessage());
        assertEquals(
                "here: is a folder, not a file",
                assertThrows(SheetFault.class, () -> LeadSheetFile.read(folder, "here"))
                        .getMessage());
        Path large = folder.resolve("large.musicxml");
        Files.writeString(large, " ".repeat(10 * 1024 * 1024 + 1));
        assertEquals(
                "large.musicxml: it is longer than 10 MB, which no lead sheet is",
                assertThrows(SheetFault.class, () -> LeadSheetFile.read(large, "large.musicxml"))
                        .getMessage());
    }

    @Test
    void nothingOutsideTheFileIsRead() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "Hush");
        String outside = "<!DOCTYPE score-partwise [<!ENTITY s SYSTEM '" + secret.toUri() + "'>]>"
                + sheet(C + whole("C")).replace("<part-list/>", "<movement-title>&s;</movement-title><part-list/>");
        try {
            assertTrue(!read(outside).title().contains("Hush"));
        } catch (SheetFault refused) {
            assertTrue(refused.getMessage().startsWith("tune.musicxml: it is not"), refused::getMessage);
        }
        String usual =
                "<!DOCTYPE score-partwise PUBLIC \"-//X//DTD MusicXML 4.0 Partwise//EN\" \"http://127.0.0.1:1/x.dtd\">";
        assertEquals("C |", read(usual + sheet(C + whole("C"))).progression().toString());
    }

    @Test
    void entitiesThatGrowAndDeepNestingEnd() throws IOException {
        StringBuilder laughs = new StringBuilder("<!DOCTYPE score-partwise [<!ENTITY a0 'ha'>");
        for (int i = 1; i < 30; i++) {
            laughs.append("<!ENTITY a")
                    .append(i)
                    .append(" '")
                    .append(("&a" + (i - 1) + ";").repeat(10))
                    .append("'>");
        }
        String bomb = laughs + "]>"
                + sheet(C + whole("C")).replace("<part-list/>", "<movement-title>&a29;</movement-title><part-list/>");
        String deep = "<score-partwise>" + "<x>".repeat(200_000) + "</x>".repeat(200_000) + "</score-partwise>";
        try {
            assertTrue(read(bomb).title().length() < 1000);
        } catch (SheetFault refused) {
            assertTrue(refused.getMessage().startsWith("tune.musicxml: "), refused::getMessage);
        }
        assertTrue(fault(deep).startsWith("tune.musicxml: "));
        assertTrue(fault(sheet(C + note("C", 4, 1, "").repeat(4000))).endsWith("more than 2000 notes"));
    }
}
