package monochord.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/** The program that copies what is newer, with its time, and counts it; {@code /L} only counts. */
final class Xcopy {
    private Xcopy() {}

    static int run(WindowsHouse house, List<String> words, WindowsHouse.Sink out) throws IOException {
        Path from = house.path(words.get(0));
        Path to = house.path(words.get(1));
        int count = 0;
        for (Path file : WindowsHouse.files(from, 99)) {
            Path copy = to.resolve(
                    Files.isDirectory(from)
                            ? from.relativize(file).toString()
                            : from.getFileName().toString());
            boolean isNewer = !Files.exists(copy)
                    || Files.getLastModifiedTime(file).toMillis()
                            > Files.getLastModifiedTime(copy).toMillis();
            if (isNewer || !words.contains("/D")) {
                count++;
                out.write(file + "\n");
                if (!words.contains("/L")) {
                    Files.createDirectories(copy.getParent());
                    Files.copy(file, copy, StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
        out.write(count + " File(s)\n");
        return 0;
    }
}
