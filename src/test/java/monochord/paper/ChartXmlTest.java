package monochord.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import monochord.Thorough;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Instrument;
import monochord.harmony.Progression;
import monochord.song.musicxml.LeadSheet;
import monochord.song.musicxml.LeadSheetFile;
import monochord.song.musicxml.SheetFault;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written as MusicXML is read as the same music. */
class ChartXmlTest {
    private static final List<String> KINDS = List.of(
            (" m dim aug 5 sus2 sus4 6 m6 6/9 m6/9 add9 madd9 add4 7 maj7 m7 m7b5 dim7 m(maj7) 7sus4 maj7#5 7#5 7b5 9 maj9 m9"
                            + " 7b9 7#9 7b9#9 7b9b13 7#9b13 7alt 9sus4 11 m11 maj11 maj7#11 7#11 13 maj13 m13 13#11 13b9"
                            + " 13(no11) 7(no3) maj7b5 m7#5 m9b5 13sus4")
                    .split(" "));

    @TempDir
    private Path folder;

    static List<Key> keys() {
        return Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream()).toList();
    }

    static List<String> players() {
        return Instrument.allNames();
    }

    private LeadSheet read(PlayerPart part) throws IOException {
        return read(Files.writeString(folder.resolve("chart.musicxml"), ChartXml.of(part, "Chart")));
    }

    private LeadSheet read(Path file) throws SheetFault {
        return LeadSheetFile.read(file, file.getFileName().toString());
    }

    private static ChordEvent event(Chord chord, Key key) {
        return new ChordEvent(chord, Numeral.of(chord, key), 1, false);
    }

    /** Every kind on every root over every tone of its own and over one from outside. */
    @Thorough.FirstOf(5)
    @ParameterizedTest(name = "{0}")
    @MethodSource("keys")
    void eachKindRootAndBassComesBack(Key key) throws IOException {
        List<Chord> chords = new ArrayList<>();
        for (String kind : KINDS) {
            Chord chord = new Chord(key.tonic(), ChordKind.parse(kind));
            chord.tones().forEach(bass -> chords.add(chord.over(bass)));
            chords.add(chord.over(key.note(2)));
        }
        assertTrue(chords.size() > 4 * KINDS.size(), chords::toString);
        List<Bar> bars = chords.stream()
                .map(chord -> new Bar(List.of(event(chord, key)), false))
                .toList();
        LeadSheet sheet = read(PlayerPart.concert(new Progression(key, bars, true)));
        assertEquals(chords, sheet.progression().chords());
        assertEquals(key, sheet.key());
        assertEquals(List.of(), sheet.remarks());
    }

    /** Whoever reads it, what sounds is the same, and no part has more than six signs. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("players")
    void eachPartSoundsAsTheOthers(String player) throws IOException {
        for (Key key : Thorough.spread(keys(), 6, players().indexOf(player))) {
            Progression concert = Progression.parse("1 bVI7 | bIImaj7/4 #IVm7b5 . V7 |", key);
            PlayerPart part = PlayerPart.of(concert, player);
            LeadSheet sheet = read(part);
            assertEquals(concert.chords(), sheet.progression().chords(), player + " in " + key);
            assertEquals(key, sheet.key());
            boolean respelled = Instrument.parse(player) != Instrument.CONCERT;
            assertTrue(Math.abs(part.key().signature()) <= (respelled ? 6 : 7), part.key() + " for " + player);
        }
    }

    /** Source of the written keys: Integrated Music Theory, lesson 12a; C♯ major gives way to D♭, common practice. */
    @ParameterizedTest
    @CsvSource({
        "C, trumpet, D major, 1, -1, -2, none",
        "C, alto sax, A major, 5, -5, -9, none",
        "Eb, tenor sax, F major, 1, -1, -2, -1",
        "F, horn, C major, 4, -4, -7, none",
        "B, trumpet, Db major, 2, -2, -2, none",
        "C, guitar, C major, 0, 0, 0, -1",
        "C, piccolo, C major, 0, 0, 0, 1",
    })
    void partsTellWhatTheyAreTransposedBy(
            String key, String player, String written, int letters, int diatonic, int chromatic, String octaves) {
        PlayerPart part = PlayerPart.of(Progression.parse("1", Key.parse(key)), player);
        assertEquals(written, part.key().toString());
        assertEquals(letters, Math.floorMod(part.up().staffSteps(), 7));
        String score = ChartXml.of(part, "Chart").replace("\n", "");
        String told = octaves.equals("none") ? "" : "<octave-change>" + octaves + "</octave-change>";
        assertTrue(
                score.contains("<transpose><diatonic>" + diatonic + "</diatonic><chromatic>" + chromatic
                        + "</chromatic>" + told + "</transpose>"),
                score);
    }

    /** Shares of a bar, also such as no plain note has, and chords that go on over a bar line. */
    @ParameterizedTest
    @CsvSource({"C | F G | C", "C F G | Am . F . . | G", "C . F | . | G . . . . F C | C", "C F G C F | % | C"})
    void barsAndSharesComeBack(String music) throws IOException {
        Progression written = Progression.parse(music + " |", Key.major(NoteName.C));
        Progression back = read(PlayerPart.concert(written)).progression();
        assertEquals(spans(written), spans(back));
    }

    /** Each chord with the share of its bar. */
    private static List<String> spans(Progression progression) {
        return progression.bars().stream()
                .flatMap(bar -> bar.slots().stream()
                        .map(slot -> slot.chord() + " " + (double) slot.shares() / bar.shares() + " " + slot.held()))
                .toList();
    }

    @Test
    void withoutBarLinesTwoChordsShareABar() throws IOException {
        Progression back = read(PlayerPart.concert(Progression.parse("C Am F", Key.major(NoteName.C))))
                .progression();
        assertEquals("C Am | F |", back.toString());
    }

    @Test
    void titlesAreEscapedAndCleaned() throws IOException {
        PlayerPart part = PlayerPart.concert(Progression.parse("C", Key.major(NoteName.C)));
        Path file = Files.writeString(
                folder.resolve("chart.musicxml"), ChartXml.of(part, "<b>&\"Quay\u0007\u001b[31m\" ]]>"));
        assertEquals("<b>&\"Quay��[31m\" ]]>", read(file).title());
    }

    @Test
    void packedAndPlainAreTheSameMusicAndTheSameBytes() throws IOException {
        String score = ChartXml.of(PlayerPart.concert(Progression.parse("C F", Key.major(NoteName.C))), "Chart");
        Path packed = folder.resolve("a.mxl");
        PackedXml.write(packed, "a.mxl", score);
        assertEquals("C F |", read(packed).progression().toString());
        byte[] first = Files.readAllBytes(packed);
        PackedXml.write(packed, "a.mxl", score);
        assertEquals(-1, Arrays.mismatch(first, Files.readAllBytes(packed)));
        assertEquals('P', first[0]);
    }

    private String fault(String container, String name, String content) throws IOException {
        Path file = folder.resolve("a.mxl");
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream archive = new ZipOutputStream(out)) {
            archive.putNextEntry(new ZipEntry("META-INF/container.xml"));
            archive.write(container.getBytes());
            archive.putNextEntry(new ZipEntry(name));
            archive.write(content.getBytes());
        }
        return assertThrows(SheetFault.class, () -> read(file)).getMessage();
    }

    /** Source of the attacks: OWASP, "Zip Slip" and decompression bombs, from memory. */
    @Test
    void hostileArchivesAreRefused() throws IOException {
        String names = "<container><rootfiles><rootfile full-path=\"%s\"/></rootfiles></container>";
        String bomb = " ".repeat((10 << 20) + 1);
        assertEquals(
                "a.mxl: it is longer than 10 MB, which no lead sheet is",
                fault(names.formatted("s.xml"), "s.xml", bomb));
        assertEquals("a.mxl: it is longer than 10 MB, which no lead sheet is", fault(bomb, "s.xml", "<a/>"));
        String missing = "a.mxl: it is an archive without the score in it that a .mxl file has";
        Path outside = Files.writeString(folder.resolve("outside.xml"), "<score-partwise/>");
        assertEquals(missing, fault(names.formatted("../outside.xml"), "s.xml", "<a/>"));
        assertEquals(missing, fault(names.formatted(outside), "s.xml", "<a/>"));
        assertEquals(missing, fault("<container/>", "s.xml", "<a/>"));
        assertEquals("a.mxl: it is not well-formed XML at line 1, column 1", fault("", "s.xml", "<a/>"));
    }

    @Test
    void aDamagedArchiveIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("a.mxl"), "PK\u0003\u0004 and no more");
        assertEquals(
                "a.mxl: it is a damaged archive",
                assertThrows(SheetFault.class, () -> read(file)).getMessage());
    }

    @Test
    void kindsAreEnough() {
        assertEquals(50, KINDS.stream().distinct().count());
    }
}
