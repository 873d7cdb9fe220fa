package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.sound.Spectrum;
import monochord.view.web.Browser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A notebook becomes one page, and nothing of anybody's is lost or run on the way. */
class PublishTest {
    private static final Path DEMOS = Path.of("transcripts-demo").toAbsolutePath();
    private static final int RATE = 44_100;

    @TempDir
    private Path folder;

    private Run publish(String sentence) {
        return new Run.Outside().inFolder(folder).run(("publish " + sentence).split(" "));
    }

    private static String oneLine(String wrapped) {
        return wrapped.replaceAll("\\s+", " ");
    }

    private Path notebook(String... typed) throws IOException {
        String console = String.join("\n\n", Stream.of(typed).map("▸ "::concat).toList());
        return Files.writeString(
                folder.resolve("evening.md"), "# An evening\n\nOne note, held.\n\n```console\n" + console + "\n```\n");
    }

    private String page() throws IOException {
        return Files.readString(folder.resolve("out.html"));
    }

    @Test
    void wordsLinesPicturesAndSoundStandInOnePage() throws IOException {
        notebook("show Abmaj7", "play F C G Ab");

        assertTrue(publish("evening.md --html out.html").result(0).contains("1 piece can be heard in it."));
        String page = page();
        assertTrue(page.contains("<h1>An evening</h1>") && page.contains("<p>One note, held.</p>"), page);
        assertTrue(page.contains("<code>show Abmaj7</code>"), page);
        assertTrue(page.contains("A♭4 root, C5 third, E♭5 fifth, G5 seventh"), page);
        assertTrue(page.contains("aria-label=\"Listen: play F C G Ab\""), page);
        assertTrue(page.contains("src=\"data:audio/mpeg;base64,"), page);
    }

    @Test
    void whatIsThereStays() throws IOException {
        notebook("show Ab");
        Path out = Files.writeString(folder.resolve("out.html"), "my own page");

        assertEquals(
                "out.html is there already, and nothing was written; --over puts this in its\nplace.\n",
                publish("evening.md --html out.html").message(3));
        assertEquals("my own page", Files.readString(out));
        assertEquals(2, filesHere());
    }

    @Test
    void aPageIsWrittenAnewWhereThatIsSaid() throws IOException {
        notebook("show Ab");
        publish("evening.md --html out.html").result(0);
        notebook("show Bb");
        publish("evening.md --html out.html --over").result(0);

        assertTrue(page().contains("show Bb"));
    }

    @Test
    void theTitleIsSaidOnceAndMayBeMissing() throws IOException {
        Files.writeString(folder.resolve("bare.md"), "```console\n▸ show Ab\n```\n");
        publish("bare --html out.html").result(0);

        assertTrue(page().contains("<h1>A sitting</h1>"));
    }

    @Test
    void aTitleThatComesLateOrFromTheHeadIsSaidOnceToo() throws IOException {
        String console = "```console\n▸ show Ab\n\n▸\n```\n";
        Files.writeString(folder.resolve("late.md"), console + "\n# Getting *Saturday* ready\n\n## Verse\n");
        publish("late --html out.html").result(0);
        assertEquals(1, page().split("Getting Saturday ready</h").length - 1, page());
        assertTrue(page().contains("<h1>Getting Saturday ready</h1>") && page().contains("<h2>Verse</h2>"), page());
        assertTrue(page().contains("<kbd>Enter</kbd>"), page());

        Files.writeString(folder.resolve("head.md"), "---\ntitle: Saturday\n---\n\n# The verse\n\n" + console);
        publish("head --html out.html --over").result(0);
        assertTrue(page().contains("<h1>Saturday</h1>") && page().contains("<h2>The verse</h2>"), page());
    }

    @Test
    void somebodyElsesJavaIsShownAndNotRun() throws IOException {
        Path mark = folder.resolve("mark");
        notebook("java.nio.file.Files.createFile(java.nio.file.Path.of(\"" + mark + "\"));");

        String said = publish("evening.md --html out.html").result(1);

        assertTrue(said.contains("Somebody else's Java was not run"), said);
        assertFalse(Files.exists(mark));
        assertTrue(page().contains("createFile"));
    }

    @Test
    void aPieceTooLongForAPageIsLeftOut() throws IOException {
        notebook("play C at 20 loop 16");

        String said = publish("evening.md --html out.html").result(0);

        assertTrue(said.contains("1 is too long for a page and left out."), said);
        assertFalse(page().contains("<audio"));
    }

    @Test
    void whatIsMissingIsSaid() throws IOException {
        notebook("show Ab");

        assertTrue(oneLine(publish("evening.md").message(2)).contains("it has to be said where the page goes"));
        assertTrue(oneLine(publish("--html out.html").message(2)).contains("a name is needed"));
        assertTrue(publish("no.md --html out.html").status() != 0);
        assertTrue(oneLine(publish("evening.md --html no/out.html").message(3)).contains("no folder"));
        assertEquals(1, filesHere());
    }

    @Test
    void scriptsLearnWhatCameOfIt() throws IOException {
        notebook("play C4");

        assertEquals(
                "{\"kind\":\"publish\",\"file\":\"out.html\",\"recordings\":1,\"leftOut\":0,\"differing\":1,"
                        + "\"untried\":0}\n",
                publish("evening.md --html out.html --json").result(0));
    }

    private Path published(Path demo) {
        String name = demo.getFileName().toString().replace(".md", ".html");
        publish(demo + " --html " + name).result(0);
        return folder.resolve(name);
    }

    private static List<Path> demos() throws IOException {
        try (Stream<Path> files = Files.list(DEMOS)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void aDemoIsPublished() throws IOException {
        String page = Files.readString(published(DEMOS.resolve("a-thursday-class.md")));
        assertTrue(page.contains("<kbd>Enter</kbd>") && page.contains("src=\"data:audio/mpeg;base64,"), page);
    }

    /** Pitches: ISO 16, A4 at 440 Hz. */
    @Thorough.Only
    @Test
    void everyDemoOpensInABrowserAndSoundsRight() throws IOException, InterruptedException {
        notebook("play A4:8 at 60 with clarinet");
        publish("evening.md --html out.html").result(0);
        List<Path> pages = new ArrayList<>(List.of(folder.resolve("out.html")));
        demos().forEach(demo -> pages.add(published(demo)));

        assertEquals(List.of(), Browser.open(pages, folder));
        int cents = new Spectrum(decoded("out.html.1.pcm", 0.5, 2.5)).centsOff(440);
        assertTrue(Math.abs(cents) <= 5, () -> cents + " cents from A4");
    }

    private double[] decoded(String name, double from, double to) throws IOException {
        ByteBuffer pcm =
                ByteBuffer.wrap(Files.readAllBytes(folder.resolve(name))).order(ByteOrder.LITTLE_ENDIAN);
        double[] samples = new double[(int) ((to - from) * RATE)];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = pcm.getShort(2 * ((int) (from * RATE) + i));
        }
        return samples;
    }

    private long filesHere() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }
}
