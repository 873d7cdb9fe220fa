package monochord.view.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.Thorough;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.lesson.ProseBlock;
import monochord.lesson.TextRun;
import monochord.text.MadeUpLanguage;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;
import monochord.view.keyboard.Drawing;
import monochord.view.keyboard.ToneRoles;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page stands alone: it shows what it is given, asks for nothing, and runs nothing. */
class WebPageTest {
    private static final String HOSTILE = "</pre><script>alert(1)</script><img src=\"http://elsewhere.example/x\">";

    @TempDir
    private Path folder;

    private static ProseBlock paragraph(String text) {
        return new ProseBlock.Paragraph(List.of(new TextRun(text, TextRun.RunStyle.PLAIN)));
    }

    private static Drawing drawing(String symbol) {
        Music.OneChord one = (Music.OneChord) MusicText.read(symbol, Key.parse("C"));
        Chord chord = one.chord();
        return Drawing.of(Phrase.of("{0}", chord), ToneRoles.close(chord));
    }

    private static WebPage page(PageSection... sections) {
        return new WebPage(Phrase.of("The Thursday class"), List.of(sections), Reader.ENGLISH);
    }

    private static WebPage hostile() {
        return new WebPage(
                Phrase.typed(HOSTILE),
                List.of(new PageSection.OwnWords(List.of(paragraph(HOSTILE))), shown(HOSTILE, HOSTILE)),
                Reader.ENGLISH);
    }

    private static PageSection shown(String typed, String answer, Drawing... drawings) {
        return new PageSection.AnsweredLine(
                List.of(typed),
                StyledText.of(answer, Style.STRONG),
                List.of(drawings),
                Optional.empty(),
                Reader.ENGLISH);
    }

    @Test
    void whatWasTypedAndWhatCameBackStandInIt() {
        String written = page(
                        new PageSection.OwnWords(List.of(paragraph("Tonight: one chord."))),
                        shown("show Ab", "A♭ C E♭"))
                .write();

        assertTrue(written.contains("<h1>The Thursday class</h1><p>Tonight: one chord.</p>"), written);
        assertTrue(written.contains("<code>show Ab</code>"), written);
        assertTrue(written.contains("<span class=\"strong\">A♭ C E♭</span>"), written);
    }

    @Test
    void aPictureIsToldInWordsAsWell() {
        String written = page(shown("show Ab/C", "", drawing("Ab/C"))).write();

        assertTrue(
                written.contains("aria-label=\"A♭/C on a keyboard: C4 third, in the bass, E♭4 fifth, A♭4 root.\""),
                written);
    }

    @Test
    @DisplayName("a picture names its notes as the answer beside it does")
    void namesNotesAsItsReader() {
        Reader german = Reader.of(Signs.MUSIC.with(NoteNaming.GERMAN));
        PageSection bFlat = new PageSection.AnsweredLine(
                List.of("show B"), StyledText.of("B D F"), List.of(drawing("Bb")), Optional.empty(), german);
        String written = page(bFlat).write();

        assertTrue(written.contains("aria-label=\"B on a keyboard: B4 root, D5 third, F5 fifth.\""), written);
        assertTrue(written.contains("<figcaption>B</figcaption>"), written);
    }

    @Test
    @DisplayName("what a page says around the answers is in its reader's language")
    void speaksTheLanguageOfItsReader() {
        Reader reader = new Reader(Signs.MUSIC, new MadeUpLanguage());
        EmbeddedSound sound =
                new EmbeddedSound(Phrase.of("what is played here"), "audio/mpeg", 4, new byte[] {1, 2, 3});
        PageSection heard = new PageSection.AnsweredLine(
                List.of(""), StyledText.of("C"), List.of(drawing("C")), Optional.of(sound), reader);
        String written = new WebPage(Phrase.of("A sitting"), List.of(heard), reader).write();

        for (String said : List.of(
                "<html lang=\"x-made-up\">",
                "<h1>⟦A sitting~~⟧</h1>",
                ">⟦Start with the volume low, most of all in headphones~~⟧.</p>",
                "aria-label=\"⟦At the prompt~~⟧, 1\"",
                "aria-label=\"⟦Answer~~⟧ 1\"",
                "aria-label=\"C ⟦on a keyboard~~⟧: C4 ⟦root~~⟧, E4 ⟦third~~⟧, G4 ⟦fifth~~⟧.\"",
                "aria-label=\"⟦Listen~~⟧: ⟦what is played here~~⟧\"",
                "<figcaption>⟦Listen~~⟧: ⟦what is played here~~⟧, 4 ⟦s~~⟧</figcaption>")) {
            assertTrue(written.contains(said), () -> said + " in " + written);
        }
    }

    @Test
    void thePageForbidsItselfScriptsAndTheNetwork() {
        String written = page(shown("F", "F A C")).write();

        assertTrue(written.contains("default-src &apos;none&apos;; media-src data:;"), written);
        assertFalse(written.contains("<script"), written);
        assertFalse(written.matches("(?s).*(src|href)=\"(?!data:).*"), written);
    }

    @Test
    void noTextBecomesMarkup() {
        String written = hostile().write();

        assertFalse(written.contains("<script"), written);
        assertFalse(written.contains("<img"), written);
    }

    @Test
    void theLoudnessIsSpokenOfWhereSomethingSounds() {
        EmbeddedSound sound = new EmbeddedSound(Phrase.typed("C"), "audio/mpeg", 4, new byte[] {1, 2, 3});
        PageSection heard = new PageSection.AnsweredLine(
                List.of("play C"), StyledText.EMPTY, List.of(), Optional.of(sound), Reader.ENGLISH);

        assertTrue(page(heard).write().contains("Start with the volume low"));
        assertFalse(page(shown("C", "C E G")).write().contains("volume"));
        assertTrue(page(heard).write().contains("src=\"data:audio/mpeg;base64,AQID\""));
    }

    @Thorough.Only
    @Test
    void aBrowserOpensItWithoutComplaint() throws IOException, InterruptedException {
        Path good = Files.writeString(
                folder.resolve("good.html"),
                page(
                                new PageSection.OwnWords(List.of(paragraph("Tonight: one chord."))),
                                shown("show Abmaj7", "A♭maj7  A♭ C E♭ G ".repeat(8), drawing("Abmaj7"), drawing("F")))
                        .write());
        Path hostile =
                Files.writeString(folder.resolve("hostile.html"), hostile().write());

        assertEquals(List.of(), Browser.open(List.of(good, hostile), folder));
    }

    @Thorough.Only
    @Test
    void theBrowserWouldComplain() throws IOException, InterruptedException {
        Path bad = Files.writeString(
                folder.resolve("bad.html"),
                "<!DOCTYPE html><html lang=en><title>x</title><h1>x</h1><script>console.log('heard')</script>"
                        + "<button></button><img src=\"missing.png\"><div style=\"width:2000px\">wide</div>"
                        + "<audio src=\"data:audio/mpeg;base64,AQID\"></audio>");

        List<String> complaints = Browser.open(List.of(bad), folder);

        for (String expected : List.of(
                "bad.html: console: heard",
                "bad.html: a button without a name",
                "bad.html: DIV is wider than 360",
                "bad.html: recording 1 cannot be decoded")) {
            assertTrue(
                    complaints.stream().anyMatch(one -> one.startsWith(expected)),
                    () -> expected + " is not among " + complaints);
        }
        assertTrue(complaints.stream().anyMatch(one -> one.contains("asks for") && one.contains("missing.png")));
    }
}
