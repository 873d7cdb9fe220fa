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

    /** An image says where it is: classes out of its archive name the place where that was made. */
    private static Path beside(String name) {
        String said = System.getProperty("monochord.folder");
        if (said != null) {
            return Path.of(said).resolve(name).normalize();
        }
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
