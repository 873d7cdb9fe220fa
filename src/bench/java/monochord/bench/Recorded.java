package monochord.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.score.Arrangement;
import monochord.score.Piece;
import monochord.sound.Directions;
import monochord.sound.file.WavFile;
import monochord.theory.Key;

/**
 * How fast a progression is rendered to a WAV file, and in how much memory. Prints how many seconds of sound were made,
 * how many seconds the median run took, and the most memory the process held, in megabytes.
 */
final class Recorded {
    private static final String CHORDS = "F C G Ab Bb C Am Dm7";
    private static final Key C = Key.parse("C major");
    private static final int HEADER_BYTES = 44;
    private static final double BYTES_PER_SECOND = 176_400;

    private Recorded() {}

    /** @param arguments the file to write, how long it is to be in minutes, how often to write it before it is timed, and how often then */
    public static void main(String[] arguments) throws IOException {
        Path file = Path.of(arguments[0]);
        int minutes = Integer.parseInt(arguments[1]);
        int before = Integer.parseInt(arguments[2]);
        double[] seconds = new double[Integer.parseInt(arguments[3])];
        for (int i = -before; i < seconds.length; i++) {
            long began = System.nanoTime();
            write(minutes, file);
            if (i >= 0) {
                seconds[i] = (System.nanoTime() - began) / 1e9;
            }
        }
        Arrays.sort(seconds);
        System.out.printf(
                "%.1f %.3f %d%n",
                (Files.size(file) - HEADER_BYTES) / BYTES_PER_SECOND, seconds[seconds.length / 2], megabytes());
        Files.delete(file);
    }

    /** Eight chords of two beats each, over and over. */
    private static void write(int minutes, Path file) throws IOException {
        Music music = MusicText.read((CHORDS + " ").repeat(Math.max(1, minutes)), C);
        Piece piece = Arrangement.piece(music);
        Directions directions = Directions.USUAL.at(80).times(5);
        WavFile.write(directions.perform(piece, C), file);
    }

    private static long megabytes() throws IOException {
        return Files.readAllLines(Path.of("/proc/self/status")).stream()
                .filter(line -> line.startsWith("VmHWM:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")) / 1024)
                .findFirst()
                .orElse(0);
    }
}
