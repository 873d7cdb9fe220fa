package monochord.shell;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;

/** What came with the program: the folders beside the one with the jar. */
final class ProgramFolders {
    private ProgramFolders() {}

    /** The folder of lessons. */
    static Path lessons() {
        return beside("lessons");
    }

    /** All folders whose files came with the program. */
    static List<Path> folders() {
        return List.of(lessons(), beside("transcripts-demo"));
    }

    private static Path beside(String name) {
        try {
            Path jar = Path.of(ProgramFolders.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            return jar.resolveSibling("..").resolve(name).normalize();
        } catch (URISyntaxException | RuntimeException unknown) {
            return Path.of(name);
        }
    }
}
