package monochord.lesson.read;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.song.Song;
import monochord.song.SongFile;
import monochord.song.SongReader;

/**
 * Where lessons find their tunes: song files {@code tunes/NAME.md} beside the books of a library. The first folder that has
 * a name counts.
 */
public final class Tunes {
    static final Tunes NONE = new Tunes(List.of());

    private static final String FOLDER = "tunes";
    private static final String ENDING = ".md";
    private static final Pattern NAME = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*+");

    private final List<Path> folders;
    /** What was read, until its file changes: many lessons name the same tunes. */
    private final Map<Path, ReadSong> songs = new ConcurrentHashMap<>();

    private record ReadSong(FileTime written, long bytes, Song song) {}

    private Tunes(List<Path> folders) {
        this.folders = folders;
    }

    /** Those beside the books in this folder. */
    static Tunes in(Path library) {
        return new Tunes(List.of(library.resolve(FOLDER)));
    }

    /** Those beside the book in which a lesson's file lies; the file need not be there. */
    static Tunes beside(Path lesson) {
        Path book = lesson.toAbsolutePath().getParent();
        return book == null || book.getParent() == null ? NONE : in(book.getParent());
    }

    /** With those beside the books in another folder. */
    Tunes and(Path library) {
        return and(in(library));
    }

    Tunes and(Tunes others) {
        return new Tunes(Stream.concat(folders.stream(), others.folders.stream())
                .distinct()
                .toList());
    }

    /** The song file of this name; none if there is none or the text is no name. */
    public Optional<Path> find(String name) {
        return NAME.matcher(name).matches()
                ? folders.stream()
                        .map(folder -> folder.resolve(name + ENDING))
                        .filter(Files::isRegularFile)
                        .findFirst()
                : Optional.empty();
    }

    /**
     * The song of a file of tunes, as it stands now.
     *
     * @throws IOException with the message {@code path: what is wrong}
     */
    Song song(Path file) throws IOException {
        FileTime written = Files.getLastModifiedTime(file);
        long bytes = Files.size(file);
        ReadSong read = songs.get(file);
        if (read == null || read.bytes != bytes || !read.written.equals(written)) {
            read = new ReadSong(written, bytes, SongReader.read(SongFile.text(file, file.toString())));
            songs.put(file, read);
        }
        return read.song;
    }

    /** All song files, folder by folder in the order of their names. */
    public List<Path> files() {
        return folders.stream().flatMap(folder -> files(folder).stream()).toList();
    }

    private static List<Path> files(Path folder) {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*" + ENDING)) {
            all.forEach(files::add);
        } catch (IOException | DirectoryIteratorException none) {
            return List.of();
        }
        files.sort(null);
        return files;
    }

    /** What the files are called. */
    List<String> names() {
        return files().stream()
                .map(file -> file.getFileName().toString())
                .map(name -> name.substring(0, name.length() - ENDING.length()))
                .toList();
    }
}
