package monochord.sound.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import monochord.file.WholeFile;

/** A sequence as a Standard MIDI File, format 1. */
public final class MidiFile {
    private static final int FORMAT = 1;

    private MidiFile() {}

    /**
     * Replaces the file if there is one.
     *
     * @throws IOException with the message {@code path: what is wrong}; what stood there before stays
     */
    public static void write(Sequence sequence, Path file) throws IOException {
        WholeFile.write(file, of(sequence));
    }

    /** What stands in such a file. */
    public static WholeFile.Content of(Sequence sequence) {
        return file -> Files.write(file, bytes(sequence));
    }

    public static byte[] bytes(Sequence sequence) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        MidiSystem.write(sequence, FORMAT, bytes);
        return bytes.toByteArray();
    }
}
