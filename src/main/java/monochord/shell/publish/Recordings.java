package monochord.shell.publish;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import monochord.shell.sitting.Progress;
import monochord.sound.Performance;
import monochord.sound.file.Mp3;
import monochord.text.Phrase;
import monochord.view.web.EmbeddedSound;

/** The recordings of one page: as many as it can carry. */
final class Recordings {
    /** A piece that lasts longer is not recorded. */
    static final int MOST_SECONDS = 180;

    /** Bytes that all of them may have, before they are written as text. */
    static final int MOST_BYTES = 12 << 20;

    private static final int SECONDS_PER_MINUTE = 60;

    private int room = MOST_BYTES;
    private int made;
    /** What is heard again is not recorded again. */
    private final Map<Performance, byte[]> recorded = new HashMap<>();

    private int leftOut;
    private final int pieces;
    private final Progress progress;

    /** @param pieces how many there are to record */
    Recordings(int pieces, Progress progress) {
        this.pieces = pieces;
        this.progress = progress;
    }

    /**
     * @param name what is heard
     * @return none if the page cannot carry it
     * @throws IOException if nothing can be recorded here
     */
    Optional<EmbeddedSound> of(Performance performance, Phrase name) throws IOException {
        long seconds = performance.score().beats().ticks(SECONDS_PER_MINUTE) / performance.tempo();
        // Counted before it is encoded: what the page cannot carry costs no time.
        if (seconds > MOST_SECONDS || Mp3.bytes(seconds) > room) {
            leftOut++;
            return Optional.empty();
        }
        byte[] content = recorded.get(performance);
        if (content == null) {
            content = Mp3.of(performance);
            recorded.put(performance, content);
        }
        if (content.length > room) {
            leftOut++;
            return Optional.empty();
        }
        room -= content.length;
        made++;
        progress.step(() -> Phrase.sentence("Recorded: {0} of {1}.", made + leftOut, pieces));
        return Optional.of(new EmbeddedSound(name, Mp3.TYPE, (int) seconds, content));
    }

    int made() {
        return made;
    }

    int leftOut() {
        return leftOut;
    }
}
