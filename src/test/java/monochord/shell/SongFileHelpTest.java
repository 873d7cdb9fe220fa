package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import monochord.song.Song;
import monochord.song.SongReader;
import org.junit.jupiter.api.Test;

/** The page on the file of a song is the grammar: what it shows is read as it says. */
class SongFileHelpTest {
    @Test
    void theExampleOfThePageIsASongWithoutFaults() {
        String page = new Run.Outside().run("help", "song-file").out();
        String file = page.lines()
                .filter(line -> line.startsWith("  "))
                .map(line -> line.substring(2))
                .collect(Collectors.joining("\n"));
        Song song = SongReader.read(file);
        assertEquals(List.of(), song.faults());
        assertEquals("The Water Is Wide", song.head().title());
        assertEquals(
                "A3 D4 E4 F#4 G4 F#4 E4 D4 D4 E4 F#4 G4 F#4 E4 D4",
                song.music().played().notes().stream()
                        .map(note -> note.pitch().toString())
                        .collect(Collectors.joining(" ")));
        assertTrue(song.sections().get(0).words().contains("The wa-ter is wide"));
    }
}
