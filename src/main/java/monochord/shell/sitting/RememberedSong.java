package monochord.shell.sitting;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import monochord.text.Phrase;

/**
 * The song a player works on, remembered from sitting to sitting.
 *
 * @param name of its file, as it can be typed here
 */
record RememberedSong(String name, String title) {
    private static final String FILE = "song";
    private static final String TITLE = "song-title";

    /** From now on it is this one; where no person sits, nothing is remembered. */
    static void keep(Path file, String title, Sitting sitting) {
        boolean isPersons = sitting.isSeated() && sitting.outside().seal().isEmpty();
        String path = file.toAbsolutePath().normalize().toString();
        if (isPersons && !sitting.settings().get(FILE).equals(Optional.of(path))) {
            sitting.settings().keep(FILE, path);
            sitting.settings().keep(TITLE, title);
        }
    }

    /** None where no song was open, or its file has gone. */
    static Optional<RememberedSong> of(Sitting sitting) {
        try {
            return sitting.settings()
                    .get(FILE)
                    .filter(path -> Files.isRegularFile(Path.of(path)))
                    .map(path -> new RememberedSong(
                            sitting.outside().named(path),
                            sitting.settings().get(TITLE).orElse("")));
        } catch (InvalidPathException none) {
            return Optional.empty();
        }
    }

    Phrase offer() {
        return title.isEmpty()
                ? Phrase.sentence("{0} opens your song.", Phrase.verb("song " + name))
                : Phrase.sentence("Your song is {0}; {1} opens it.", Phrase.typed(title), Phrase.verb("song " + name));
    }
}
