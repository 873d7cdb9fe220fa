package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.sound.MidiWalk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A song at the line: opened, shown, worked on by its places, changed, kept. */
class SongTest {
    private static final String WALTZ = """
            ---
            title: Quay Waltz
            key: C
            metre: 3/4
            tempo: 96
            ---

            ## Verse

            ```chords
            C | F | G | C
            ```

            ```tune
            E4:3 | F4:2 A4 | G4:3 | E4:3
            ```

            ## Chorus

            ```chords
            vi | IV | V . V7 | I
            ```
            """;

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void writeTheSong() throws IOException {
        file = Files.writeString(folder.resolve("waltz.md"), WALTZ);
    }

    private String typed(String... lines) {
        Run run = new Run.Outside()
                .inFolder(folder)
                .typing("song waltz.md\n" + String.join("\n", lines) + "\n")
                .run();
        return run.out() + run.err();
    }

    private void says(String wanted, String out) {
        assertTrue(out.contains(wanted), () -> "expected\n" + wanted + "\nin\n" + out);
    }

    @Test
    void aSongIsShownWithFormBarsAndNumerals() {
        says("""
                Quay Waltz
                C major, 3/4, 96 to the minute
                Form: Verse (4 bars) – Chorus (4 bars)

                Verse
                  C  |  F   |  G  |  C  |
                  I  |  IV  |  V  |  I  |
                Tune: E4 F4 A4 G4 E4

                Chorus
                  Am  |  F   |  G  .  G7  |  C  |
                  vi  |  IV  |  V  .  V7  |  I  |
                """, typed());
    }

    @Test
    void aPlaceStandsForItsMusic() {
        says(
                "C major\n  C | F | G | C | Am | F | G . G7 | C |\nF major\n  F | B♭ | C | F | Dm | B♭ | C . C7 | F |",
                typed("transpose to F"));
        says("After G7, V7 in C major", typed("after chorus bar 3"));
        says("In C major, with a bass player", typed("voice chorus with bass"));
        says("Nothing clashes.", typed("fit verse"));
        says("Playing Chorus, bars 1 to 2 in C major, in 3/4, at 96, as waltz.", typed("play chorus bars 1 to 2"));
        says("Playing Chorus in C major, in 3/4, at 60.", typed("play chorus at 60 as block"));
        says("Playing Quay Waltz in C major, in 3/4, at 96, as waltz.", typed("play song"));
        says("Playing the bass of Quay Waltz in F major, in 3/4, at 96, as waltz.", typed("play bass of song in F"));
        says("Playing | E4:3 | F4:2 A4 | G4:3 | E4:3 | over Am", typed("play verse over Am"));
        says("vi IV V V7 I", typed("key of chorus"));
    }

    @Test
    void theSongIsAPlaceForWhatTakesAllOfIt() {
        says("I IV V I vi IV V V7 I", typed("key of song"));
        says("change key to F puts the song there.", typed("transpose song to F"));
        says("In C major, with a bass player", typed("voice song with bass"));
        says("Quay Waltz in C major, from 67 towards 96, for 2 minutes.", typed("rehearse song for 2", "skip"));
        says(
                "\"song\" is not a place in the song: its sections are Verse; Chorus. Example:\nrecolour verse",
                typed("recolour song"));
        says(
                "\"bridge\" is not a place in the song: its sections are Verse; Chorus. Example:\nrecolour verse",
                typed("voice bridge"));
        says(
                "\"bridge\" is not a place in the song: its sections are Verse; Chorus. Example:\nrehearse song",
                typed("rehearse bridge"));
        Run none = new Run.Outside().inFolder(folder).run("voice", "chorus");
        assertEquals(
                "\"chorus\" is not a place in a song: no song is open. Example: song my-song.md",
                none.err().lines().findFirst().orElseThrow());
    }

    @Test
    void aBarThatIsNotThereIsSaid() {
        says(
                "\"chorus bar 9\" is not a place in the song: Chorus has bars 1 to 4. Example:\nrecolour verse bar 1",
                typed("voice chorus bar 9"));
        says(
                "\"Chorus\" is not a place in the song: no tune is written for Chorus. Example:\nrecolour verse",
                typed("fit chorus"));
    }

    @Test
    void aChangeIsKeptWithItsReasonAndTakenBack() throws IOException {
        says("Changed: Chorus, bar 2: F to Fm. it sinks\n", typed("change chorus bar 2 to iv because it sinks"));
        assertEquals(
                WALTZ.replace("vi | IV | V . V7 | I", "vi | iv | V . V7 | I")
                        + "\n## Changes\n\n- Chorus, bar 2: F to Fm. it sinks\n",
                Files.readString(file));
        writeTheSong();
        says("The last change is taken back.", typed("change chorus bar 3 to Ab Bb", "undo"));
        assertEquals(WALTZ, Files.readString(file));
    }

    @Test
    void whatWasProposedIsTakenByItsNumber() throws IOException {
        says("change 1 puts the first into Chorus.", typed("recolour chorus", "change 1"));
        assertTrue(Files.readString(file).contains("## Changes\n\n- Chorus, bar"), Files.readString(file));
        writeTheSong();
        says(
                "\"9\" is not a change: nothing was just proposed for the song. Example: recolour\nverse",
                typed("change 9"));
    }

    @Test
    void aBrokenSongIsShownAndNeverWrittenOver() throws IOException {
        Files.writeString(file, WALTZ.replace("V . V7", "V . Gq"));
        String broken = Files.readString(file);
        String out = typed("change verse bar 1 to Am");
        says("line 21, column 16:", out);
        says("It is not saved, for its file has faults: song --out my-song.md saves it\nelsewhere.", out);
        assertEquals(broken, Files.readString(file));
    }

    @Test
    void fieldsAreAsPromised() {
        String json = new Run.Outside()
                .inFolder(folder)
                .run("song", "waltz.md", "--json")
                .out();
        assertEquals(
                "{\"kind\":\"song\",\"title\":\"Quay Waltz\",\"by\":\"\",\"key\":\"C major\",\"metre\":\"3/4\",\"tempo\":96,"
                        + "\"sections\":[{\"name\":\"Verse\",\"bars\":4,\"repeat\":false},{\"name\":\"Chorus\",\"bars\":4,\"repeat\":false}],"
                        + "\"notes\":[{\"pitch\":\"E4\",\"beats\":3},{\"pitch\":\"F4\",\"beats\":2},{\"pitch\":\"A4\",\"beats\":1},"
                        + "{\"pitch\":\"G4\",\"beats\":3},{\"pitch\":\"E4\",\"beats\":3}],"
                        + "\"chords\":[{\"beat\":0,\"symbol\":\"C\"},{\"beat\":3,\"symbol\":\"F\"},{\"beat\":6,\"symbol\":\"G\"},"
                        + "{\"beat\":9,\"symbol\":\"C\"},{\"beat\":12,\"symbol\":\"Am\"},{\"beat\":15,\"symbol\":\"F\"},"
                        + "{\"beat\":18,\"symbol\":\"G\"},{\"beat\":20,\"symbol\":\"G7\"},{\"beat\":21,\"symbol\":\"C\"}],"
                        + "\"words\":[],\"played\":[\"E4\",\"F4\",\"A4\",\"G4\",\"E4\"],\"changes\":[],\"faults\":[],\"remarks\":[]}",
                json.strip());
    }

    @Test
    void checkFindsTheFaultsOfASong() throws IOException {
        assertEquals(
                "waltz.md: no faults.",
                new Run.Outside()
                        .inFolder(folder)
                        .run("check", "waltz.md")
                        .out()
                        .strip());
        Files.writeString(file, WALTZ.replace("metre: 3/4", "metre: 4/4"));
        says(
                "waltz.md:15:8: bar 2 has 3 quarters where 4/4 has 4;",
                new Run.Outside().inFolder(folder).run("check", "waltz.md").out());
    }

    @Test
    void theWholeSongMovesToAnotherKeyAndItsNumeralsStay() throws IOException {
        says("Changed: Key: C major to A major. for Piet\n", typed("change key to A because for Piet"));
        assertEquals(
                WALTZ.replace("key: C", "key: A")
                                .replace("C | F | G | C", "A | D | E | A")
                                .replace("E4:3 | F4:2 A4 | G4:3 | E4:3", "C#4:3 | D4:2 F#4 | E4:3 | C#4:3")
                        + "\n## Changes\n\n- Key: C major to A major. for Piet\n",
                Files.readString(file));
        says("The last change is taken back.", typed("change key to F up", "undo", "undo"));
        writeTheSong();
        says("Tune: A4 B♭4 D5 C5 A4", typed("change key to F up", "song"));
        writeTheSong();
        says("Tune: A3 B♭3 D4 C4 A3", typed("change key to F major down", "song"));
        writeTheSong();
        says(
                "\"Am\" is not a key for this song: it stays in its mode: A major. Example: change\nkey to F",
                typed("change key to Am"));
        says("It is in C major already; nothing is changed.", typed("change key to C"));
    }

    @Test
    void whatIsNotChangedIsNotCompared() {
        says(
                "\"Verse\" is not a comparison: its chords are as they were when the song was\n"
                        + "opened; change some first. Example: change verse bar 3 to Bb",
                typed("compare verse"));
        says("Dm", typed("change verse bar 2 to Dm", "compare verse"));
    }

    /** Source: Standard MIDI-File Format Spec. 1.1: marker 06, tempo 51, time signature 58. */
    @Test
    void aMidiFileHasAMarkerForEachSection() throws IOException {
        says("Written: waltz.mid.", typed("song --midi waltz.mid"));
        List<String> meta = MidiWalk.through(Files.readAllBytes(folder.resolve("waltz.mid"))).events().stream()
                .filter(event -> event.track() == 0)
                .filter(event -> List.of(0xFF06, 0xFF51, 0xFF58).contains(event.status()))
                .map(MidiWalk.Event::toString)
                .sorted()
                .toList();
        assertEquals(
                List.of(
                        "0: FF06 56 65 72 73 65",
                        "0: FF51 9 89 68",
                        "0: FF58 3 2 18 8",
                        "5760: FF06 43 68 6F 72 75 73"),
                meta);
    }

    @Test
    void otherFormatsOpenAsSongs() throws IOException {
        Files.writeString(folder.resolve("water.txt"), "Water\n\n[Verse]\nD    G   A   D\nThe water is wide\n");
        says("No key is written; by its chords it is in D major.", typed("song water.txt"));
        Files.writeString(folder.resolve("letter.txt"), "Dear band,\nsee you on Thursday\n");
        says(
                "letter.txt: it is no song: it is read from Markdown, ABC, MusicXML, or a text\nwith chords over words",
                typed("song letter.txt"));
        says("letter.txt: it is not well-formed XML", sheet("<?xml version='1.0'?><score-partwise"));
    }

    private String sheet(String text) throws IOException {
        Files.writeString(folder.resolve("letter.txt"), text);
        return typed("song letter.txt");
    }

    @Test
    void nothingIsOpenAtFirst() {
        assertEquals(
                "No song is open. song my-song.md opens one.",
                new Run.Outside().inFolder(folder).run("song").out().strip());
    }
}
