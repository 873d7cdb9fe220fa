package monochord.shell.storage;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import monochord.file.OwnerOnly;
import monochord.file.WholeFile;

/**
 * What a learner has settled for good, name by name, in a text file of the learner's own.
 *
 * <p>A file that is missing or cannot be read counts as empty, a value that no longer fits as not set: settings are a
 * comfort, never a condition.
 */
public final class Settings {
    /** The names by which notes go. */
    public static final String NOTES = "notes";
    /** How long a cell of Java may take, up to 999 seconds; with 0 there are none. */
    public static final String CELL_SECONDS = "cell-seconds";

    private static final String FILE = "settings.properties";
    private static final long LARGEST = 1 << 16;

    private final Path file;
    private Map<String, String> values;

    private Settings(Path file) {
        this.file = file;
    }

    /** Those kept in this folder; nothing is read until something is asked for. */
    public static Settings in(Path folder) {
        return new Settings(folder.resolve(FILE));
    }

    /** Those of one sitting, gone when it ends. */
    public static Settings inMemory() {
        Settings settings = new Settings(null);
        settings.values = new TreeMap<>();
        return settings;
    }

    public Optional<String> get(String name) {
        return Optional.ofNullable(values().get(name));
    }

    /**
     * Settles it, for this sitting in any case.
     *
     * @throws IOException if it cannot be kept for the next
     */
    public void put(String name, String value) throws IOException {
        values().put(name, value);
        if (file != null) {
            write();
        }
    }

    /** The same for what may as well be forgotten; says whether it is kept. */
    public boolean keep(String name, String value) {
        try {
            put(name, value);
            return true;
        } catch (IOException unkept) {
            return false;
        }
    }

    private Map<String, String> values() {
        if (values == null) {
            values = read();
        }
        return values;
    }

    private Map<String, String> read() {
        Map<String, String> found = new TreeMap<>();
        Properties kept = new Properties();
        try {
            if (Files.size(file) <= LARGEST) {
                try (Reader reader = Files.newBufferedReader(file)) {
                    kept.load(reader);
                }
            }
        } catch (IOException | IllegalArgumentException unreadable) {
            return found;
        }
        kept.stringPropertyNames().forEach(name -> found.put(name, kept.getProperty(name)));
        return found;
    }

    private void write() throws IOException {
        OwnerOnly.folder(file.getParent());
        Properties kept = new Properties();
        kept.putAll(values);
        WholeFile.writePrivately(file, part -> {
            try (Writer writer = Files.newBufferedWriter(part)) {
                kept.store(writer, null);
            }
        });
    }
}
