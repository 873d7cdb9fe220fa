package monochord.shell.verb.song;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import monochord.file.WholeFile;
import monochord.shell.sitting.Sitting;
import monochord.song.Song;
import monochord.song.SongFile;
import monochord.text.Phrase;

/** Writes the open song into files. */
final class SongKeeping {
    private SongKeeping() {}

    private static boolean wasChangedElsewhere(Path file, String known) throws IOException {
        return known != null
                && Files.exists(file)
                && !SongFile.text(file, file.toString()).equals(known);
    }

    /** Into its own file, whole; what there is to say about that. */
    static Phrase save(Sitting sitting) {
        Song song = sitting.song().song().orElseThrow();
        Optional<Path> file = sitting.song().file();
        if (file.isEmpty()) {
            return Phrase.sentence("It is not saved yet: {0} does.", Phrase.verb("song --out my-song.md"));
        }
        if (!song.faults().isEmpty()) {
            return Phrase.sentence(
                    "It is not saved, for its file has faults: {0} saves it elsewhere.",
                    Phrase.verb("song --out my-song.md"));
        }
        try {
            if (wasChangedElsewhere(file.get(), sitting.song().inFile())) {
                return Phrase.sentence(
                        "It is not saved, for its file was changed elsewhere since it was opened: {0} saves it elsewhere.",
                        Phrase.verb("song --out my-song.md"));
            }
            String content = song.toString();
            WholeFile.write(file.get(), part -> Files.writeString(part, content));
            sitting.song().holds(sitting.song().name(), content);
            return Phrase.NOTHING;
        } catch (IOException failed) {
            return Phrase.sentence(
                    "It could not be saved: {0}.", sitting.outside().told(failed));
        }
    }
}
