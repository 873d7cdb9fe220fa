package monochord.shell.trust;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import monochord.file.OwnerOnly;
import monochord.file.WholeFile;

/**
 * Trusts what lies in the program's own folders, and what a learner has said yes to; whoever changes a file has to be
 * trusted again.
 *
 * <p>Text form of the learner's list: a line for each file, its digest, a space and the name that it had.
 */
public final class Trusted implements Trust {
    private static final String FILE = "trusted";
    private static final int MOST = 1000;
    private static final int DIGEST = 64;

    private final Path list;
    private final List<Path> ours;

    /**
     * @param home the folder for the learner's own things
     * @param ours folders whose files came with the program
     */
    public Trusted(Path home, List<Path> ours) {
        this.list = home.resolve(FILE);
        this.ours = List.copyOf(ours);
    }

    @Override
    public boolean isTrusted(Path file, String digest) {
        return isOurs(file) || isListed(digest);
    }

    /** Looks where links and dots really lead. */
    private boolean isOurs(Path file) {
        try {
            Path real = file.toRealPath();
            for (Path folder : ours) {
                if (Files.isDirectory(folder) && real.startsWith(folder.toRealPath())) {
                    return true;
                }
            }
            return false;
        } catch (IOException nowhere) {
            return false;
        }
    }

    private boolean isListed(String digest) {
        return digest.length() == DIGEST && lines().stream().anyMatch(line -> line.startsWith(digest + " "));
    }

    @Override
    public void trust(String digest, String name) throws IOException {
        if (isListed(digest)) {
            return;
        }
        Set<String> lines = new LinkedHashSet<>(lines());
        lines.add(digest + " " + name.replaceAll("\\R", " "));
        List<String> kept =
                lines.stream().skip(Math.max(0, lines.size() - MOST)).toList();
        OwnerOnly.folder(list.toAbsolutePath().getParent());
        WholeFile.writePrivately(list, part -> Files.write(part, kept));
    }

    private List<String> lines() {
        try {
            return Files.exists(list) ? Files.readAllLines(list) : List.of();
        } catch (IOException | RuntimeException unreadable) {
            return List.of();
        }
    }
}
