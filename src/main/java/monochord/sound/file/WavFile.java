package monochord.sound.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javax.sound.midi.Sequence;
import monochord.file.WholeFile;
import monochord.sound.Performance;

/** A sequence as sound: a WAV file, 44,100 Hz, 16 bits, stereo. */
public final class WavFile {
    private WavFile() {}

    /** As {@link #write(Sequence, Path)}, from the performance's own bank. */
    public static void write(Performance performance, Path file) throws IOException {
        WholeFile.write(file, of(performance));
    }

    /** What stands in such a file; the file must not be there yet. */
    public static WholeFile.Content of(Performance performance) {
        return file -> Wave.record(performance.sequence(), performance.bank(), file);
    }

    /**
     * Replaces the file if there is one. The whole is brought to -18 LUFS (EBU R 128); what would then be too loud is turned
     * down where it is, so that nothing clips. The file ends when the last note has died away, at most two seconds after the music.
     *
     * @throws IOException with the message {@code path: what is wrong}; what stood there before stays
     */
    public static void write(Sequence sequence, Path file) throws IOException {
        WholeFile.write(file, part -> Wave.record(sequence, Optional.empty(), part));
    }
}
