package monochord.shell.verb.music;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import monochord.harmony.after.Classical;
import monochord.harmony.after.Corpus;

/** The counts of what came next that travel with the program, read when they are first asked for. */
final class Counts {
    static final Corpus SONGS = Corpus.parse(text("next-chord.tsv"));
    static final Classical SCORES = Classical.parse(text("next-chord-classical.tsv"));

    private Counts() {}

    private static String text(String file) {
        try (InputStream in = Counts.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
