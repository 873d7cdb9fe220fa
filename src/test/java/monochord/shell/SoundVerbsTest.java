package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.score.Sounding;
import monochord.shell.ear.Ear;
import monochord.sound.Performance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The verbs that sound: what they play, what they say, what they refuse. */
class SoundVerbsTest {
    @TempDir
    Path folder;

    /** Keeps what it is to play. */
    private static final class Listener implements Ear {
        private final List<Performance> heard = new ArrayList<>();

        @Override
        public String play(Performance performance) {
            heard.add(performance);
            return "";
        }

        @Override
        public void stop() {
            // nothing sounds
        }

        @Override
        public void listenToTheEnd() {
            // nothing sounds
        }

        private Performance last() {
            return heard.get(heard.size() - 1);
        }
    }

    private final Listener ear = new Listener();

    private Run typed(String... lines) {
        return outside(String.join("\n", lines) + "\n").run();
    }

    private Run once(String line) {
        return outside("").run(line.split(" "));
    }

    /** At a home of its own, so that no other test's settings are met. */
    private Run.Outside outside(String typed) {
        Run.Outside usual = new Run.Outside();
        return new Run.Outside(
                typed.getBytes(StandardCharsets.UTF_8),
                Map.of("MONOCHORD_HOME", folder.toString()),
                folder,
                usual.lessons(),
                ear,
                usual.clock(),
                usual.keepers());
    }

    private static String notes(Performance performance) {
        return performance.score().soundings().stream()
                .map(Sounding::pitch)
                .map(Object::toString)
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            play bass of C F in C       | C3 F2
            play tenor of C F           | C4 C4
            play top of C F             | G4 A4
            play left hand of C F       | C3 F2
            play E4:2 D4 over C G       | C3 C4 E4 E4 G4 G2 B3 D4 D4 G4
            play melody of E4 over C    | E4
            play E4:1/2 r D4            | E4 D4
            play C4 E4 loop 2           | C4 E4 C4 E4 C4 E4 C4 E4
            play C as rolled            | C3 C4 E4 G4
            """)
    void plays(String line, String notes) {
        typed(line);
        assertEquals(notes, notes(ear.last()));
    }

    @Test
    void saysHowItPlays() {
        Run run = typed(
                "play bass of F C G at 60",
                "play F C as broken swing loop 3 count-in",
                "play G4 | C5:3 | over | C | in C");
        assertEquals(
                List.of(
                        "Playing the bass of F C G in C major at 60.",
                        "Playing F C in C major at 84, as broken, swung, 3 times, after a count-in.",
                        "Playing G4 | C5:3 | over C | in C major at 84."),
                run.lines());
    }

    @Test
    void tempoAndPatchHoldUntilTheyChange() {
        typed("tempo 100", "patch acoustic bass left", "play C", "play C at 60", "play", "tempo 72", "play");
        assertEquals(
                List.of(100, 60, 60, 72),
                ear.heard.stream().map(Performance::tempo).toList());
        assertEquals("Acoustic Bass", ear.last().left().toString());
        assertEquals("Acoustic Grand Piano", ear.last().right().toString());
    }

    @Test
    void tempoAndPatchAreKeptForOtherDaysWhereThatIsSaid() {
        typed("tempo 100 --keep", "patch vibraphone right --keep", "tempo 50");
        typed("play C");
        assertEquals(100, ear.last().tempo());
        assertEquals("Vibraphone", ear.last().right().toString());
        assertEquals("Acoustic Grand Piano", ear.last().left().toString());
    }

    @Test
    void comparesTwoVersionsAndSaysWhatDiffers() {
        Run run = typed("compare F C G Ab vs F C Gsus4 Abmaj7 in C", "", "compare first", "compare b", "play");
        String first = """
                First F C G A♭ in C major: 22 half steps moved, 2 notes held, 2 parallel fifths
                or octaves.
                Then F C Gsus4 A♭maj7 in C major: 19 half steps moved, 5 notes held, 1 parallel
                fifth or octave.
                Changed: chord 3, Gsus4 for G; chord 4, A♭maj7 for A♭.
                Agree a changed chord with the band first.
                Enter or compare hears both again, compare first or compare second one of them.
                """;
        assertEquals(
                first + first + "Playing F C G A♭ in C major at 84.\n"
                        + "Playing F C Gsus4 A♭maj7 in C major at 84.\n"
                        + "Playing F C G A♭ in C major,\nthen F C Gsus4 A♭maj7 in C major at 84.\n",
                run.out());
        List<Long> lengths =
                ear.heard.stream().map(one -> one.score().beats().numerator()).toList();
        assertEquals(List.of(18L, 18L, 8L, 8L, 18L), lengths, "two beats of breath between eight and eight");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            compare C vs Cm                  | Changed: chord 1, Cm for C.
            compare C major vs C dorian      | Changed: note 3, E♭4 for E4; note 7, B♭4 for B4.
            compare C4 D4 E4 versus C4 D4 Eb4 G4 | Only in the second: E♭ G.
            compare F C vs F C G/B Am        | Only in the second: G/B, Am.
            compare F C vs F C               | Both are the same, key for key.
            compare C D F# vs C D Gb         | Changed: chord 3
            """)
    void tellsTheDifference(String line, String said) {
        String out = typed(line).out().replaceAll("\\s+", " ");
        assertTrue(out.contains(said), out);
    }

    @Test
    void comparesWhatWasVoicedRecolouredOrRepaired() {
        Run run = typed(
                "voice F C G in C spread",
                "play",
                "compare this",
                "recolour IV I V vi V I in C",
                "compare this",
                "fit F4:4 E4 over C C in C",
                "compare this");
        String out = run.out().replaceAll("\\s+", " ");
        assertTrue(out.contains("First F C G in C major in root position:"), out);
        assertTrue(out.contains("Then F C G in C major voiced spread:"), out);
        assertTrue(out.contains("First F C G Am G C in C major: 40 half steps moved"), out);
        assertTrue(out.contains("In the tune: note 1, E4 for F4."), out);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "compare",
                "compare this",
                "compare a",
                "compare x",
                "compare vs C",
                "compare C vs",
                "compare C vs D vs E",
                "compare C vs D versus E",
                "compare C vs D in H",
                "compare C vs D loop 0",
                "play C as",
                "play C as tremolo",
                "play C loop",
                "play C loop 100",
                "play C loop -1",
                "play C swing fast",
                "play C count-in 2",
                "play over C",
                "play C over",
                "play E4 over",
                "play tune of C",
                "play left hand of D major",
                "play C metre",
                "play C metre 3",
                "play C metre 0/4",
                "play bass of",
                "play tenor",
                "tempo 0",
                "tempo 301",
                "tempo fast",
                "patch nothing",
                "patch left",
                "play E4:9999 D4:9999 loop 99 at 20"
            })
    void refuses(String line) {
        Run run = once(line);
        assertEquals(2, run.status(), line);
        assertEquals("", run.out());
        assertTrue(run.err().replaceAll("\\s+", " ").contains("Example: "), run.err());
    }

    @Test
    void aBankIsRefusedWithAReasonAndTheOldOneKept() throws IOException {
        Files.writeString(folder.resolve("song.sf2"), "no sounds at all");
        Run run = outside("").run("bank", "song.sf2");
        assertEquals(3, run.status());
        assertEquals(
                "song.sf2: is neither a SoundFont nor a DLS bank. Sounds come from Java's own bank as before.",
                run.err().strip().replaceAll("\\s+", " "));
        assertEquals("Sounds come from Java's own bank.\n", once("bank").out());
        assertEquals("Sounds come from Java's own bank.\n", once("bank own").out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "play F C G as broken count-in",
                "compare F C vs F Csus4 C",
                "voice F C G in C",
                "recolour IV I V vi V I in C",
                "fit E4:2 D4 C4 over F G Am in C",
                "play tenor of F C G"
            })
    void writesWhatItPlays(String line) throws IOException {
        List<String> words = Stream.concat(Stream.of(line.split(" ")), Stream.of("--midi", "a.mid", "--wav", "a.wav"))
                .toList();
        Run run = outside("").run(words.toArray(String[]::new));
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().replaceAll("\\s+", "").contains("a.wav"), run.out());
        byte[] head = new byte[] {'M', 'T', 'h', 'd', 0, 0, 0, 6, 0, 1};
        byte[] midi = Files.readAllBytes(folder.resolve("a.mid"));
        assertArrayEquals(head, java.util.Arrays.copyOf(midi, head.length));
        assertTrue(Files.size(folder.resolve("a.wav")) > 300_000);
    }

    @Test
    void promisesTheseFields() {
        assertEquals(
                "{\"kind\":\"compare\",\"key\":\"C major\",\"tempo\":84,"
                        + "\"first\":{\"symbols\":[\"C\",\"F\"],\"voicings\":[{\"keys\":[\"C3\",\"C4\",\"E4\",\"G4\"]},"
                        + "{\"keys\":[\"F2\",\"C4\",\"F4\",\"A4\"]}],\"line\":[],\"moved\":10,\"held\":1,\"parallels\":0},"
                        + "\"second\":{\"symbols\":[\"C\",\"Fm\"],\"voicings\":[{\"keys\":[\"C3\",\"C4\",\"E4\",\"G4\"]},"
                        + "{\"keys\":[\"F2\",\"C4\",\"F4\",\"Ab4\"]}],\"line\":[],\"moved\":9,\"held\":1,\"parallels\":0},"
                        + "\"changed\":[{\"at\":1,\"from\":\"F\",\"to\":\"Fm\"}],"
                        + "\"differences\":[\"Changed: chord 2, Fm for F.\",\"On top G4 A4, then G4 Ab4.\"],\"remark\":\"\"}\n",
                once("compare C F vs C Fm in C --json").out());
    }
}
