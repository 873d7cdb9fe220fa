package monochord.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import monochord.text.Phrase;
import monochord.text.Span;
import monochord.text.Style;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;
import monochord.view.Table.Column;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class TableTest {
    private static final Look WIDE = new Look(80, Signs.MUSIC, false, false);

    private static Table table() {
        return Table.of(
                        Column.left(Phrase.of("chord")),
                        Column.left(Phrase.of("notes")),
                        Column.right(Phrase.of("songs")),
                        Column.left(Phrase.of("why")))
                .row(
                        Phrase.of("{0}", Chord.parse("Bbbmaj7")),
                        notes("Bbb", "Db", "Fb", "Ab"),
                        Phrase.of("{0}", 5),
                        Phrase.of("two tones stay, and the root sinks by a half step onto the dominant below it"))
                .row(
                        Phrase.of("{0}", Chord.parse("Gb")),
                        notes("Gb", "Bb", "Db"),
                        Phrase.of("{0}", 112),
                        Phrase.of("home"));
    }

    private static Phrase notes(String... names) {
        return Phrase.row(List.of(names).stream().map(NoteName::parse).toList());
    }

    private static String text(Table table, Look look) {
        return table.text(look).plain() + "\n";
    }

    @Test
    @DisplayName("at 80 columns the cells stand below each other, and the last is wrapped within itself")
    void atEightyColumns() {
        assertEquals("""
                chord   notes        songs  why
                B𝄫maj7  B𝄫 D♭ F♭ A♭      5  two tones stay, and the root sinks by a half step
                                            onto the dominant below it
                G♭      G♭ B♭ D♭       112  home
                """, text(table(), WIDE));
    }

    @Test
    @DisplayName("at 40 columns what has no room follows on a second line")
    void atFortyColumns() {
        assertEquals("""
                chord   notes        songs
                  why
                B𝄫maj7  B𝄫 D♭ F♭ A♭      5
                  two tones stay, and the root sinks by
                    a half step onto the dominant below
                    it
                G♭      G♭ B♭ D♭       112
                  home
                """, text(table(), WIDE.inWidth(40)));
    }

    @Test
    @DisplayName("at 20 columns every line still fits")
    void atTwentyColumns() {
        assertEquals("""
                chord   notes
                  songs  why
                B𝄫maj7  B𝄫 D♭ F♭ A♭
                  5  two tones stay,
                    and the root
                    sinks by a half
                    step onto the
                    dominant below
                    it
                G♭      G♭ B♭ D♭
                  112  home
                """, text(table(), WIDE.inWidth(20)));
    }

    @Test
    @DisplayName("signs in ASCII and other note names are measured as they are written")
    void measuresWhatIsWritten() {
        assertEquals("""
                chord    notes         songs  why
                Bbbmaj7  Bbb Db Fb Ab      5  two tones stay, and the root sinks by a half step
                                              onto the dominant below it
                Gb       Gb Bb Db        112  home
                """, text(table(), WIDE.inAscii()));
        assertEquals("""
                chord      notes             songs  why
                Hesesmaj7  Heses Des Fes As      5  two tones stay, and the root sinks by a half
                                                    step onto the dominant below it
                Ges        Ges B Des           112  home
                """, text(table(), WIDE.naming(NoteNaming.GERMAN)));
    }

    @Test
    @DisplayName("in plain looks each cell is a line behind its heading")
    void plainIsOneFactALine() {
        assertEquals("""
                chord: B𝄫maj7
                notes: B𝄫 D♭ F♭ A♭
                songs: 5
                why: two tones stay, and the root sinks by a half step onto the dominant below
                it
                chord: G♭
                notes: G♭ B♭ D♭
                songs: 112
                why: home
                """, text(table(), WIDE.asPlain()));
    }

    @Test
    @DisplayName("ideographs are two columns wide")
    void wideSignsTakeTwoColumns() {
        Table table =
                Table.of(2).row(Phrase.typed("琴"), Phrase.of("first")).row(Phrase.typed("abc"), Phrase.of("second"));
        assertEquals("琴   first\nabc  second\n", text(table, WIDE));
    }

    @Test
    @DisplayName("a least width holds where there is room, and gives way where there is none")
    void leastWidths() {
        Table table = Table.of(Column.left().atLeast(12), Column.left())
                .indentedBy(2)
                .across(Phrase.of("From {0}", NoteName.C))
                .row(Phrase.of("{0}", NoteName.C), Phrase.of("the tonic of it all"));
        assertEquals("From C\n  C           the tonic of it all\n", text(table, WIDE));
        assertEquals("From C\n  C\n    the tonic of it\n      all\n", text(table, WIDE.inWidth(20)));
        assertEquals("From C\n  C  the tonic of it all\n", text(table, WIDE.inWidth(26)));
        assertEquals("From C\nC the tonic of it all\n", text(table, WIDE.asPlain()));
    }

    @Test
    @DisplayName("a column without a cell takes no room, and an empty cell leaves its place")
    void emptyCells() {
        Table table = Table.of(3)
                .row(Phrase.of("one"), Phrase.NOTHING, Phrase.of("a"))
                .row(Phrase.NOTHING, Phrase.NOTHING, Phrase.of("b"))
                .row(Phrase.of("three"));
        assertEquals("one    a\n       b\nthree\n", text(table, WIDE));
    }

    @Test
    @DisplayName("many columns go in blocks, each under its labels")
    void manyColumnsGoInBlocks() {
        Table table = Table.of(4)
                .row(Phrase.of("Triads"), chord("F#m7b5"), chord("G"), chord("Cdim"))
                .row(Phrase.of("Roots"), chord("F#"), chord("G"), chord("C"));
        assertEquals("""
                Triads  F♯m7♭5  G
                Roots   F♯      G
                Triads  Cdim
                Roots   C
                """, table.inBlocks(WIDE.inWidth(20), 1).plain() + "\n");
        assertEquals("""
                Triads  F♯m7♭5  G  Cdim
                Roots   F♯      G  C
                """, table.inBlocks(WIDE, 1).plain() + "\n");
    }

    private static Phrase chord(String symbol) {
        return Phrase.of("{0}", Chord.parse(symbol));
    }

    @Test
    @DisplayName("cells keep their styles")
    void cellsKeepTheirStyles() {
        Table table = Table.of(Column.left(Phrase.of("n")), Column.left())
                .row(Phrase.of("a").styled(Style.STRONG), Phrase.of("b"));
        assertEquals(
                List.of(new Span("a", Style.STRONG), new Span("  b", Style.PLAIN)),
                table.text(WIDE).lines().get(1).spans());
        assertEquals(
                List.of(new Span("n", Style.QUIET)),
                table.text(WIDE).lines().get(0).spans());
    }

    @Test
    @DisplayName("no line is wider than the look allows, whatever the width")
    void neverTooWide() {
        for (int width = 20; width <= 120; width++) {
            for (Look look : List.of(WIDE.inWidth(width), WIDE.inAscii().inWidth(width))) {
                assertTrue(table().text(look).columns() <= width, "at " + width);
                assertTrue(table().text(look.asPlain()).columns() <= width, "at " + width);
            }
        }
    }

    @Test
    void moreCellsThanColumnsAreRefused() {
        var refused =
                assertThrows(IllegalArgumentException.class, () -> Table.of(1).row(Phrase.of("a"), Phrase.of("b")));
        assertEquals("2 cells in a table of 1 columns", refused.getMessage());
    }
}
