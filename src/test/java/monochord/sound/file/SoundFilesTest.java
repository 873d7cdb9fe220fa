package monochord.sound.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.sound.midi.Sequence;
import monochord.score.Score;
import monochord.sound.MidiWalk;
import monochord.sound.Performance;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SoundFilesTest {
    private static final Sequence ONE_NOTE =
            Performance.of(Score.note(Pitch.parse("C4"), Beats.ONE)).sequence();

    @TempDir
    Path folder;

    @Test
    void replaceWhatWasThereAndLeaveNothingBeside() throws IOException {
        Path file = folder.resolve("tune.mid");
        Files.writeString(file, "an older tune");
        MidiFile.write(ONE_NOTE, file);
        WavFile.write(ONE_NOTE, folder.resolve("tune.wav"));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    List.of("tune.mid", "tune.wav"),
                    files.map(found -> found.getFileName().toString()).sorted().toList());
        }
        assertEquals(2, MidiWalk.through(Files.readAllBytes(file)).trackCount());
    }
}
