package monochord.notebook;

import java.util.List;
import java.util.Optional;
import monochord.file.Digest;
import monochord.lesson.Fault;

/**
 * What came of reading a notebook file.
 *
 * @param notebook with all that could be read of it; nothing if the file is no text or is too large
 * @param faults all of them, as they stand in the file
 * @param digest of the bytes that were read, as {@link Digest} writes it; empty if none were
 */
public record NotebookReading(Optional<Notebook> notebook, List<Fault> faults, String digest) {
    public NotebookReading {
        faults = List.copyOf(faults);
    }

    public boolean isSound() {
        return notebook.isPresent() && faults.isEmpty();
    }
}
