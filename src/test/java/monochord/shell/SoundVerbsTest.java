package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.score.Sounding;
import monochord.sound.Performance;
import monochord.sound.TinyBank;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The verbs that sound: what they play, what they say, what they refuse. Source: keys counted by hand from our own
 * rules of arrangement, see {@link monochord.score.Arrangement}.
 */
class SoundVerbsTest {
    @TempDir
    Path folder;

    private Hall hall;

    @BeforeEach
    void opens() {
        hall = new Hall(folder);
    }

    @Test
    void twoFilesGoToTwoPlaces() throws IOException {
        assertEquals("""
                "./song" is not a MIDI file: the WAV is written there. Example: --midi song.mid
                Form: play [PART of] MUSIC [over CHORDS] [in KEY] [metre 3/4] [as PATTERN] [at
                BPM] [with PATCH] [swing] [loop N] [count-in] [--wav FILE] [--midi FILE]
                [--over]
                """, hall.once("play C --wav song --midi ./song").message(2));
        assertFalse(Files.exists(folder.resolve("song")));
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
        hall.typed(line);
        assertEquals(notes, notes(hall.ear().last()));
    }

    @ParameterizedTest(name = "{0} has the signature of {1}")
    @CsvSource(delimiter = '|', textBlock = """
            play D major                  | D major
            play E harmonic minor in C    | E minor
            play D dorian in Ab           | C major
            play F C in Ab                | Ab major
            play C4 D4 in F               | F major
            """)
    void aScaleHasASignatureOfItsOwn(String line, String key) {
        hall.typed(line);
        assertEquals(key, hall.ear().last().key().orElseThrow().toString());
    }

    @Test
    void saysHowItPlays() {
        Run run = hall.typed(
                "play bass of F C G at 60",
                "play F C as broken swing loop 3 count-in",
                "play G4 | C5:3 | over | C | in C",
                "play bass of | F | C | in C metre 3/4");
        assertEquals(
                List.of(
                        "Playing the bass of F C G in C major at 60.",
                        "Playing F C in C major at 84, as broken, swung, 3 times, after a count-in.",
                        "Playing G4 | C5:3 | over C | in C major at 84.",
                        "Playing the bass of F | C | in C major, in 3/4, at 84."),
                run.lines());
    }

    @Test
    void saysWhatSoundsWhereItIsNotThePianoAlone() {
        Run run = hall.typed(
                "play F C with vibes",
                "patch left acoustic bass",
                "play F C as pulse",
                "patch right vibraphone left vibraphone",
                "play F C");
        assertEquals(
                List.of(
                        "Playing F C in C major at 84, with Vibraphone.",
                        "The left hand plays Acoustic Bass, the right hand Acoustic Grand Piano.",
                        "Playing F C in C major at 84, with Acoustic Bass on the left and Acoustic Grand",
                        "Piano on the right, as pulse.",
                        "Both hands play Vibraphone.",
                        "Playing F C in C major at 84, with Vibraphone."),
                run.lines());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            play F C as brokn               | "brokn" is not a way to play chords: did you mean broken. Example: play F C G as broken
            play F C as bass and cord       | "bass and cord" is not a way to play chords: did you mean bass-and-chord. Example: play F C G as broken
            play F C as tremolo             | "tremolo" is not a way to play chords: expected one of block, broken, rolled, bass-and-chord, pulse, waltz, ballad, off-beats, bossa, push, walking. Example: as broken
            play F C with vibrafone         | "vibrafone" is not a patch: did you mean Vibraphone. Example: with electric piano 1
            play F C with pinao             | "pinao" is not a patch: did you mean Acoustic Grand Piano. Example: with electric piano 1
            play F C with elektric pianno   | "elektric pianno" is not a patch: did you mean Electric Piano 1. Example: with electric piano 1
            play F C with kazoo             | "kazoo" is not a patch: expected a General MIDI name or a number from 1 to 128. Example: electric piano 1
            patch acustic bass left         | "acustic bass" is not a patch: did you mean Acoustic Bass. Example: with electric piano 1
            compare C vs Cm as puls         | "puls" is not a way to play chords: did you mean pulse. Example: play F C G as broken
            play tennor of F C G            | "tennor" is not a part: did you mean tenor. Example: play tenor of F C G
            play guitar of F C G            | "guitar" is not a part: expected one of both hands, left hand, right hand, bass, tenor, alto, soprano, tune, chords. Example: play tenor of F C G
            """)
    void offersTheNearestName(String line, String message) {
        String said = hall.once(line).err().replaceAll("\\s+", " ");
        assertEquals(message, said.substring(0, said.indexOf(" Form: ")));
    }

    @Test
    void tempoAndPatchHoldUntilTheyChange() {
        hall.typed("tempo 100", "patch acoustic bass left", "play C", "play C at 60", "play", "tempo 72", "play");
        assertEquals(
                List.of(100, 60, 60, 72),
                hall.ear().performances().stream().map(Performance::tempo).toList());
        assertEquals("Acoustic Bass", hall.ear().last().left().toString());
        assertEquals("Acoustic Grand Piano", hall.ear().last().right().toString());
    }

    @Test
    void tempoAndPatchAreKeptForOtherDaysWhereThatIsSaid() {
        hall.typed("tempo 100 --keep", "patch vibraphone right --keep", "tempo 50");
        hall.typed("play C");
        assertEquals(100, hall.ear().last().tempo());
        assertEquals("Vibraphone", hall.ear().last().right().toString());
        assertEquals("Acoustic Grand Piano", hall.ear().last().left().toString());
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
        Run run = hall.once(line);
        assertEquals(2, run.status(), line);
        assertEquals("", run.out());
        assertTrue(run.err().replaceAll("\\s+", " ").contains("Example: "), run.err());
    }

    @Test
    void aBankIsRefusedWithAReasonAndTheOldOneKept() throws IOException {
        Files.writeString(folder.resolve("song.sf2"), "no sounds at all");
        Run run = hall.outside("").run("bank", "song.sf2");
        assertEquals(3, run.status());
        assertEquals(
                "song.sf2: is neither a SoundFont nor a DLS bank. Sounds come from our own bank as before.",
                run.err().strip().replaceAll("\\s+", " "));
        assertEquals("Sounds come from our own bank.\n", hall.once("bank").out());
        assertEquals("Sounds come from our own bank.\n", hall.once("bank own").out());
    }

    @Test
    void aBankIsRememberedUntilOursIsWantedOrItIsGone() throws IOException {
        Path tiny = Files.write(folder.resolve("tiny.sf2"), TinyBank.file());
        String ours = "Sounds come from our own bank.";
        assertEquals("Sounds come from tiny.sf2.", said("bank tiny.sf2"));
        assertEquals("Sounds come from tiny.sf2.", said("bank"));
        assertEquals(ours, said("bank own"));
        assertEquals(ours, said("bank"));
        said("bank tiny.sf2");
        Files.delete(tiny);
        assertEquals(ours + " " + tiny + " cannot be read any more.", said("bank"));
    }

    private String said(String line) throws IOException {
        Run run = hall.once(line);
        assertEquals(0, run.status(), run.err());
        return run.out().strip().replaceAll("\\s+", " ");
    }

    /** Once, where it is chosen: who plays what the bank has not. */
    @Test
    void saysWhoPlaysInPlaceOfWhatTheBankHasNot() throws IOException {
        assertEquals("Both hands play Acoustic Bass.", said("patch acoustic bass"));
        assertEquals(
                "Both hands play Oboe. The bank has no Oboe; Clarinet plays in its place.", said("patch oboe --keep"));
        assertEquals("Both hands play Oboe.", said("patch"));
        assertEquals(
                "The left hand plays Church Organ, the right hand Trumpet."
                        + " The bank has no Church Organ; Drawbar Organ plays in its place."
                        + " The bank has no Trumpet; Brass Section plays in its place.",
                said("patch left church organ right trumpet"));
    }

    /** A bank that is read sounds; whatever is then tried in vain, it goes on sounding. */
    @Test
    void whatSoundsKeepsSoundingWhenAnotherBankIsRefused() throws IOException {
        byte[] tiny = TinyBank.file();
        Files.write(folder.resolve("tiny.sf2"), tiny);
        Files.write(folder.resolve("cut.sf2"), Arrays.copyOf(tiny, tiny.length / 2));
        Files.createDirectory(folder.resolve("folder.sf2"));
        Run run = hall.typed(
                "bank tiny.sf2",
                "play A4:4 r --wav before.wav",
                "bank cut.sf2",
                "bank folder.sf2",
                "bank missing.sf2",
                "play A4:4 r --wav after.wav",
                "bank own",
                "play A4:4 r --wav own.wav");
        String kept = ". Sounds come from tiny.sf2 as before.";
        assertEquals(
                List.of(
                        "cut.sf2: is cut off: it should have " + tiny.length + " bytes and has " + tiny.length / 2
                                + kept,
                        "folder.sf2: is a folder, not a file" + kept,
                        "missing.sf2: there is no such file" + kept),
                run.err()
                        .replaceAll("\\n(?!(cut|folder|missing)\\.)", " ")
                        .lines()
                        .map(String::strip)
                        .toList());
        byte[] before = Files.readAllBytes(folder.resolve("before.wav"));
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("after.wav")));
        assertFalse(Arrays.equals(before, Files.readAllBytes(folder.resolve("own.wav"))), "the sine is no piano");
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
        Run run = hall.outside("").run(words.toArray(String[]::new));
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().replaceAll("\\s+", "").contains("a.wav"), run.out());
        byte[] head = new byte[] {'M', 'T', 'h', 'd', 0, 0, 0, 6, 0, 1};
        byte[] midi = Files.readAllBytes(folder.resolve("a.mid"));
        assertArrayEquals(head, Arrays.copyOf(midi, head.length));
        assertTrue(Files.size(folder.resolve("a.wav")) > 300_000);
    }

    @Test
    void promisesHowItPlays() throws IOException {
        String rest = "\"bank\":null,\"message\":";
        String piano = "\"Acoustic Grand Piano\"";
        assertEquals(
                "{\"kind\":\"sound\",\"tempo\":96,\"left\":" + piano + ",\"right\":" + piano + "," + rest
                        + "\"From now on 96 beats a minute.\"}\n",
                hall.once("tempo 96 --json").out());
        assertEquals(
                "{\"kind\":\"sound\",\"tempo\":84,\"left\":\"Acoustic Bass\",\"right\":" + piano + "," + rest
                        + "\"The left hand plays Acoustic Bass, the right hand Acoustic Grand Piano.\"}\n",
                hall.once("patch acoustic bass left --json").out());
        assertEquals(
                "{\"kind\":\"sound\",\"tempo\":84,\"left\":" + piano + ",\"right\":" + piano + "," + rest
                        + "\"Sounds come from our own bank.\"}\n",
                hall.once("bank --json").out());
        assertEquals(
                "{\"kind\":\"play\",\"titles\":[\"the tenor of F Ab in C major\"],\"tempo\":60,\"left\":\"Vibraphone\","
                        + "\"right\":\"Vibraphone\",\"pattern\":\"broken\",\"swing\":true,\"times\":2,"
                        + "\"countIn\":true,\"remark\":\"\"}\n",
                hall.once("play tenor of F Ab at 60 with vibes as broken swing loop 2 count-in --json")
                        .out());
        assertEquals(
                "{\"kind\":\"message\",\"message\":\"Written: a.mid\"}\n",
                hall.once("play F C --midi a.mid --json").out());
    }
}
