package monochord.song.abc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import monochord.song.Song;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole tunes sound as an independent player of ABC plays them, pitch for pitch and length for length, repeats played out.
 * Left out there: chords, grace notes, and of notes struck together all but the top one. Skipped where Debian's
 * {@code abcmidi} is not installed.
 */
class AbcPlayedOutsideTest {
    private static final Path TUNES = Path.of("src/test/resources/monochord/song/abc/tunes.abc");

    @TempDir
    Path folder;

    static Stream<String> numbers() throws IOException {
        return AbcBook.of(Files.readString(TUNES)).tunes().stream().map(AbcBook.Tune::number);
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void aTuneSoundsAsElsewhere(String number) throws IOException, InterruptedException, InvalidMidiDataException {
        assumeTrue(Stream.of("/usr/bin/abc2midi", "/usr/local/bin/abc2midi")
                .map(Path::of)
                .anyMatch(Files::exists));
        AbcBook book = AbcBook.of(Files.readString(TUNES));
        AbcBook.Tune tune = book.find(number).orElseThrow();
        Song song = AbcReader.read(book, tune);
        assertEquals(played(tune.lines().stream().map(AbcBook.Line::text).toList()), ours(song), song::toString);
    }

    private static List<String> ours(Song song) {
        return song.music().played().notes().stream()
                .map(note -> note.pitch().midiNumber() + "@" + note.start().ticks(480) + " "
                        + note.start().plus(note.beats()).ticks(480))
                .toList();
    }

    private List<String> played(List<String> lines) throws IOException, InterruptedException, InvalidMidiDataException {
        List<String> plain = lines.stream()
                .map(line -> line.replaceAll("\\{[^}]*\\}", "")
                        .replaceAll("[~.](?=[A-Ga-g])|!trill!", "")
                        .replace("[Bd]", "d"))
                .map(line -> line.startsWith("K:") ? line + "\n%%MIDI gchordoff" : line)
                .toList();
        Path abc = Files.write(folder.resolve("t.abc"), plain, StandardCharsets.UTF_8);
        Path midi = folder.resolve("t.mid");
        Process process = new ProcessBuilder("abc2midi", abc.toString(), "-o", midi.toString(), "-NGRA")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
        process.waitFor();
        return notes(MidiSystem.getSequence(midi.toFile()));
    }

    private static List<String> notes(Sequence sequence) {
        List<String> notes = new ArrayList<>();
        long[] start = new long[128];
        int per = sequence.getResolution();
        List<long[]> found = new ArrayList<>();
        for (Track track : sequence.getTracks()) {
            for (int i = 0; i < track.size(); i++) {
                MidiEvent event = track.get(i);
                if (event.getMessage() instanceof ShortMessage note) {
                    boolean on = note.getCommand() == ShortMessage.NOTE_ON && note.getData2() > 0;
                    boolean off = note.getCommand() == ShortMessage.NOTE_OFF
                            || note.getCommand() == ShortMessage.NOTE_ON && note.getData2() == 0;
                    if (on) {
                        start[note.getData1()] = event.getTick();
                    } else if (off) {
                        found.add(new long[] {start[note.getData1()], note.getData1(), event.getTick()});
                    }
                }
            }
        }
        found.sort((one, other) -> Long.compare(one[0], other[0]));
        // it begins each note one tick late, so that one struck again is heard
        found.forEach(note -> notes.add(note[1] + "@" + (note[0] - 1) * 480 / per + " " + note[2] * 480 / per));
        return notes;
    }
}
