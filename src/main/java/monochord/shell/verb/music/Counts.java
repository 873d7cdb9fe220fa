package monochord.shell.verb.music;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import monochord.harmony.after.ClassicalCounts;
import monochord.harmony.after.SongCounts;
import monochord.harmony.key.KeyCounts;

/** The counts that travel with the program, read when they are first asked for. */
public final class Counts {
    static final SongCounts SONGS = SongCounts.parse(text("next-chord.tsv"));
    public static final KeyCounts KEYS = KeyCounts.of(text("key-profiles.tsv"), SONGS);
    static final ClassicalCounts SCORES = ClassicalCounts.parse(text("next-chord-classical.tsv"));

    private Counts() {}

    private static String text(String file) {
        try (InputStream in = Counts.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
