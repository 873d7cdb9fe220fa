package monochord.song.abc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import monochord.song.SectionMusic;
import monochord.song.Song;
import monochord.song.SongFault;
import monochord.song.SongMusic;
import monochord.song.SongReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: the ABC standard 2.1 (December 2011), by the section named in each row; the notes are worked out by hand. */
class AbcReaderTest {
    static Song song(String abc) {
        AbcBook book = AbcBook.of(abc);
        return AbcReader.read(book, book.tunes().get(0));
    }

    private static Song tune(String head, String body) {
        return song("X:1\nT:Case\n" + head.replace(' ', '\n') + "\n" + body.replace("~", "\n") + "\n");
    }

    private static String notes(SongMusic.Timeline timeline) {
        return timeline.notes().stream()
                .map(note -> note.pitch() + (note.beats().toString().equals("1") ? "" : ":" + note.beats()))
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = ';', quoteCharacter = '$', textBlock = """
            4.1 octaves              ; M:4/4 L:1/4 K:C    ; C, C c c'|B,, d'',2 z2    ; C3 C4 C5 C6 B2 D6:2
            4.2 accidentals          ; M:4/4 L:1/4 K:C    ; ^C __D =E ^^F             ; C#4 Dbb4 E4 F##4
            11.3 all octaves, bar    ; M:4/4 L:1/4 K:G    ; ^c C =F f | c C F f       ; C#5 C#4 F4 F5 C5 C4 F#4 F#5
            3.1.14 a mode            ; M:4/4 L:1/4 K:Ador ; c f B F                   ; C5 F#5 B4 F#4
            3.1.14 three letters     ; M:4/4 L:1/4 K:AMIXolydian ; c g f B            ; C#5 G5 F#5 B4
            3.1.14 minor             ; M:4/4 L:1/4 K:Cm   ; E A B c                   ; Eb4 Ab4 Bb4 C5
            3.1.14 M is major        ; M:4/4 L:1/4 K:EM   ; C D F G                   ; C#4 D#4 F#4 G#4
            3.1.14 none              ; M:4/4 L:1/4 K:none ; F B c f                   ; F4 B4 C5 F5
            3.1.14 changed notes     ; M:4/4 L:1/4 K:D=c  ; C F c f                   ; C4 F#4 C5 F#5
            3.1.14 exp               ; M:4/4 L:1/4 K:Dexp^f ; C F c f                 ; C4 F#4 C5 F#5
            3.1.7 unit of 2/4        ; M:2/4 K:C          ; C4 D4                     ; C4 D4
            3.1.7 unit of 6/8        ; M:6/8 K:C          ; C3 D3                     ; C4:3/2 D4:3/2
            3.1.7 unit of C|         ; M:C| K:C           ; C4 D4                     ; C4:2 D4:2
            4.3 lengths              ; M:4/4 L:1/4 K:C    ; A2 A/2 A/ A3/2 A// A/4    ; A4:2 A4:1/2 A4:1/2 A4:3/2 A4:1/4 A4:1/4
            4.4 broken               ; M:4/4 L:1/4 K:C    ; A>B c<d | A>>B c<<d       ; A4:3/2 B4:1/2 C5:1/2 D5:3/2 A4:7/4 B4:1/4 C5:1/4 D5:7/4
            4.4 broken, three        ; M:4/4 L:1/4 K:C    ; A2>>>B2 z                 ; A4:15/4 B4:1/4
            4.5 rests                ; M:4/4 L:1/4 K:C    ; A z B x | Z2 | C4         ; A4 B4 C4:4
            4.8 repeat               ; M:4/4 L:1/4 K:C    ; |: C4 :| D4 |]            ; C4:4 C4:4 D4:4
            4.8 repeat not opened    ; M:4/4 L:1/4 K:C    ; C4 | D4 :| E4             ; C4:4 D4:4 C4:4 D4:4 E4:4
            4.8 two repeats          ; M:4/4 L:1/4 K:C    ; C4 :: D4 :|               ; C4:4 C4:4 D4:4 D4:4
            4.8 no bracket is lost   ; M:4/4 L:1/4 K:C    ; C4|[EG]4|[K:G]F4          ; C4:4 G4:4 F#4:4
            4.9 endings              ; M:4/4 L:1/4 K:C    ; |: C4 |1 D4 :|2 E4 |]     ; C4:4 D4:4 C4:4 E4:4
            4.9 endings in brackets  ; M:4/4 L:1/4 K:C    ; |: C4 | [1 D4 :| [2 E4 |] ; C4:4 D4:4 C4:4 E4:4
            4.10 many endings        ; M:4/4 L:1/4 K:C    ; |: C4 |[1,3 D4 :|[2 E4 :|] ; C4:4 D4:4 C4:4 E4:4 C4:4 D4:4
            4.11 tie                 ; M:4/4 L:1/4 K:C    ; C2 ^D2- | D2 D2           ; C4:2 D#4:4 D4:2
            4.11 slur                ; M:4/4 L:1/4 K:C    ; (C C) D2                  ; C4 C4 D4:2
            4.12 grace               ; M:4/4 L:1/4 K:C    ; {gf}C2 {/a}D2             ; C4:2 D4:2
            4.13 three in two        ; M:4/4 L:1/4 K:C    ; (3CDE F2                  ; C4:2/3 D4:2/3 E4:2/3 F4:2
            4.13 unequal             ; M:4/4 L:1/8 K:C    ; (3 C2D2E2 F4              ; C4:2/3 D4:2/3 E4:2/3 F4:2
            4.13 two in three        ; M:6/8 L:1/8 K:C    ; (2CD E3                   ; C4:3/4 D4:3/4 E4:3/2
            4.13 five, compound      ; M:6/8 L:1/8 K:C    ; (5CDEFG A3                ; C4:3/10 D4:3/10 E4:3/10 F4:3/10 G4:3/10 A4:3/2
            4.13 p, q, r             ; M:4/4 L:1/8 K:C    ; (3:2:2 C2 D E2            ; C4:2/3 D4:1/3 E4
            4.17 stack               ; M:4/4 L:1/4 K:C    ; [CEG]2 [C2e]              ; G4:2 E5:2
            4.14 decorations         ; M:4/4 L:1/4 K:C    ; !trill!C .D TE vF         ; C4 D4 E4 F4
            7.4 a line that goes on  ; M:4/4 L:1/4 K:C    ; C D \\~E F |              ; C4 D4 E4 F4
            3.1.9 parts              ; M:4/4 L:1/4 P:ABA K:C ; P:A~C4 |~P:B~D4 |      ; C4:4 D4:4 C4:4
            3.1.9 parts by number    ; M:4/4 L:1/4 P:(AB)2.A K:C ; P:A~C4 |~P:B~D4 |  ; C4:4 D4:4 C4:4 D4:4 C4:4
            2.2.2 comment            ; M:4/4 L:1/4 K:C    ; C2 % no note: D2~E2       ; C4:2 E4:2
            """)
    void aRuleGivesTheseNotes(String rule, String head, String body, String expected) {
        Song song = tune(head, body);
        assertEquals(expected, notes(song.music().played()), song::toString);
        assertEquals(List.of(), song.faults());
        Song again = SongReader.read(song.toString());
        assertEquals(notes(song.music().played()), notes(again.music().played()), song::toString);
        assertEquals(
                notes(song.music().played()),
                notes(song(AbcWriter.write(song)).music().played()),
                song::toString);
    }

    @Test
    void aSongIsWrittenAsATune() {
        String written = AbcWriter.write(song(WATER));
        assertEquals("""
                %abc-2.1
                X:1
                T:The Water Is Wide
                C:trad.
                M:4/4
                L:1/4
                Q:1/4=76
                K:D
                A, | "D"D D E F | "G"E "D/F#"D B,2 | "Bm7"B, D E B | "A7sus4"A2 "A7"A2 ||
                w: The wa-ter is wide, I can-not get o'er, and nei-ther have~I
                w: O love is hand-some, and love is kind
                """, written);
        Song again = song(written);
        assertEquals(song(WATER).toString(), again.toString());
    }

    private static final String WATER = """
            X:7
            T:The Water Is Wide
            C:trad.
            M:4/4
            L:1/4
            Q:1/4=76
            K:D
            A, | "D"D D E F | "G"E "D/f+"D B,2 | "Bm7"B, "^slow"D E B | "A7sus4"A2 "A7(A)"A2 |]
            w: The wa-ter is wide, I can-not get o'er, and nei-ther have~I
            w: O love is hand-some, and love is kind
            """;

    @Test
    void chordsStandWhereTheyAreWritten() {
        Song song = song(WATER);
        SongMusic.Timeline written = song.music().written();
        assertEquals("1", written.pickup().toString());
        assertEquals(
                "D@1 G@5 D/F#@6 Bm7@9 A7sus4@13 A7@15",
                written.chords().stream()
                        .map(change -> change.chord() + "@" + change.start())
                        .collect(Collectors.joining(" ")));
        assertEquals("D major", song.head().key().toString());
        assertEquals(76, song.head().tempo());
        assertEquals("trad.", song.head().by());
        assertEquals(
                "The wa-ter is wide, I can-not get o'er, and nei-ther have~I",
                song.sections().get(0).words().get(0));
        assertEquals(SongReader.read(song.toString()).toString(), song.toString());
        assertEquals(List.of(), SongReader.read(song.toString()).faults());
    }

    @Test
    void whatIsNotReadIsSaidWithItsLine() {
        Song song = song("""
                X:1
                T:Faults
                M:4/4
                L:1/4
                K:C
                V:1
                "3"C "f#"D & E F | G
                [V:2] C4 |
                E ° F
                """);
        assertEquals("""
                line 7, column 1: "3" is no chord and is left out; write a chord such as Am7
                line 7, column 6: "f#" is no chord and is left out; write a chord such as Am7
                line 7, column 12: a second part in one bar is left out; write one part a tune
                line 9, column 1: it has 2 voices; the first is read; write each voice as a tune of its own to have it read""", song.faults().stream().map(SongFault::toString).collect(Collectors.joining("\n")));
        assertEquals("C4 D4 G4", notes(song.music().played()));
    }

    @Test
    void aBookHoldsManyTunes() {
        AbcBook book = AbcBook.of(
                "M:3/4\r\nL:1/4\r\n\r\nX:1\r\nT:One\r\nK:C\r\nCDE\r\n\r\nfree text\r\n\r\nX:2\r\nT:Two\r\nM:2/4\r\nK:G\r\nF2\r\n");
        assertEquals(2, book.tunes().size());
        assertEquals(
                "C4 D4 E4",
                notes(AbcReader.read(book, book.find("1").orElseThrow()).music().played()));
        assertEquals(
                "3/4",
                AbcReader.read(book, book.find("one").orElseThrow())
                        .head()
                        .metre()
                        .toString());
        assertEquals(
                "F#4:2",
                notes(AbcReader.read(book, book.find("Two").orElseThrow())
                        .music()
                        .played()));
    }

    /** {@code Part A 2 in 4: G | C}: how many bars are written and played, and the chords of the full ones. */
    private static List<String> parts(Song song) {
        return song.sections().stream()
                .map(section -> {
                    SectionMusic music = SectionMusic.of(section, song.head());
                    return section.name() + " " + music.count() + " in "
                            + music.inOrder().size()
                            + music.progression(0, music.count())
                                    .map(chords -> ": " + chords)
                                    .orElse("");
                })
                .toList();
    }

    /** Players count full bars, and speak of the A part and the B part. Common practice, no source. */
    @Test
    void aTuneIsCutWhereARepeatBeginsOrEnds() {
        String head = "X:1\nM:3/4\nL:1/4\nK:C\n";
        assertEquals(
                List.of("Part A 2 in 4: C | F |", "Part B 2 in 4: F | C |"),
                parts(song(head + "G|\"C\"c2c|\"F\"c2:|\n|:A|c2c|\"C\"c2:|\n")));
        assertEquals(
                List.of("Part A 2 in 4: C | F |", "Part B 2 in 2: G | C |"),
                parts(song(head + "\"G7\"G|\"C\"c2c|\"F\"c2:|A|\"G\"c2c|\"C\"c2|]\n")));
        assertEquals(List.of("Tune 3 in 4: C | F | C |"), parts(song(head + "|:\"C\"c2c|1\"F\"c3:|2\"C\"c3|]\n")));
        assertEquals(
                List.of("Tune 4 in 8"), parts(song(head + "c3|d3:|:e3|f3:|\nw: la la la la\n")), "words stand below");
    }

    /** In ABC each tied note has a sign of its own below it, here none; section 5 of the standard. */
    @Test
    void somethingIsSungToWhatIsStruck() {
        Song song = song("X:1\nM:3/4\nL:1/4\nK:C\nc3-|c2d|e3-|\nw: wide _ I can-\ne2f|\nw: -not\n");
        assertEquals(List.of("wide I can-", "not"), song.sections().get(0).words());
        String written = AbcWriter.write(song);
        assertTrue(written.contains("c3- | c2 d | e3- |\nw: wide_ I can-\n"), written);
        assertTrue(written.contains("e2 f |\nw: _ not\n"), written);
        AbcBook book = AbcBook.of(written);
        assertEquals(
                song.sections().get(0).words(),
                AbcReader.read(book, book.tunes().get(0)).sections().get(0).words());
    }

    /** Another reader would go back to the beginning. */
    @Test
    void aRepeatThatNothingOpenedIsOpenedWhereItIsWritten() {
        String written = AbcWriter.write(song("X:1\nM:3/4\nL:1/4\nK:C\nc3|d3||e3|f3:|g3|a3:|\nw: a b c d e f\n"));
        assertTrue(written.contains("c3 | d3 || |: e3 | f3 :| |: g3 | a3 :|"), written);
    }

    /** Whatever a file holds, it is read in bounded time and memory. */
    @Test
    void hostileTunesAreBounded() {
        String head = "X:1\nM:4/4\nL:1/4\nK:C\n";
        for (String body : List.of(
                "C".repeat(200_000),
                "P:A\nC\n".repeat(3000),
                "[".repeat(15_000),
                "((((((3".repeat(3000),
                "\"".repeat(9999),
                "C999999999999999/99999999999",
                "C,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,",
                "Z999|".repeat(500),
                "|:".repeat(4000) + "C" + ":|".repeat(4000),
                "C/3/7/9>>>>>>>>>>D",
                "[K:Z][M:99/99][L:0/0][Q:]C",
                "C:::::::::::::::::::::::::|")) {
            Song song = song(head + body);
            assertTrue(song.music().played().notes().size() <= 500_000, body.substring(0, 9));
        }
        Song nested = song("X:1\nP:" + "(".repeat(500) + "A" + ")99".repeat(500) + "\nK:C\nP:A\nC\n");
        assertTrue(nested.sections().size() <= AbcOrder.MOST);
        assertEquals(0, AbcBook.of("no tune\n".repeat(9)).tunes().size());
    }
}
