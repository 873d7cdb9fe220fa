package monochord.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder that passes for a computer with Windows: its files, which of them are open, and the few programs that the launcher
 * may use. Time passes only while somebody pings.
 */
final class WindowsHouse {
    /** Where the launcher lies, as {@code %~dp0} says it. */
    static final String ROOT = "C:\\the house (ours)\\";

    /** Where something is written: a text that is kept, or a file. */
    interface Sink {
        void write(String text);

        default void close() {}

        static Sink of(StringBuilder text) {
            return text::append;
        }
    }

    private final Path drive;
    private final Map<String, String> environment = new TreeMap<>();
    /** Files that somebody writes, which nobody else may open for writing. */
    private final Set<Path> written = new HashSet<>();
    /** Files that a program has open, which can be neither moved nor replaced. */
    final Set<Path> inUse = new HashSet<>();
    /** Whether the folder target can be written. */
    boolean isReadOnly;
    /** Whether a java and a mvn are on the PATH. */
    String javaOnPath = "";

    boolean hasMaven = true;
    /** What the next program reads. */
    String input = "";
    /** The Maven that goes on, or null. */
    PretendedMaven maven;
    /** For how many pings Maven does nothing. */
    int pause;
    /** What happens at the next pings, one after the other. */
    final List<Runnable> events = new ArrayList<>();

    WindowsHouse(Path drive) {
        this.drive = drive;
    }

    Map<String, String> environment() {
        return environment;
    }

    // --- files -------------------------------------------------------------------

    Path path(String named) {
        String whole = unquoted(named);
        if (!whole.startsWith("C:\\")) {
            throw new IllegalArgumentException("not a whole path: " + named);
        }
        return drive.resolve(whole.substring(3).replace('\\', '/')).normalize();
    }

    static String unquoted(String text) {
        String bare = text.strip();
        return bare.length() > 1 && bare.startsWith("\"") && bare.endsWith("\"")
                ? bare.substring(1, bare.length() - 1)
                : bare;
    }

    static String name(String path) {
        return unquoted(path).replaceAll(".*\\\\", "");
    }

    boolean exists(String path) {
        return Files.exists(path(path));
    }

    String read(String path) {
        try {
            return Files.readString(path(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String size(String path) {
        try {
            return exists(path) ? Long.toString(Files.size(path(path))) : "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The names of a loop: what holds a star stands for the files there are. */
    List<String> named(String set) {
        if (!set.contains("*")) {
            return List.of(set);
        }
        String folder = unquoted(set).replaceAll("\\\\[^\\\\]*$", "");
        return files(path(folder), 1).stream()
                .filter(file -> file.toString().endsWith(".jar"))
                .map(file -> folder + "\\" + file.getFileName())
                .toList();
    }

    static List<Path> files(Path folder, int depth) {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder, depth)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean mayWrite(Path file) {
        return !isReadOnly || !file.startsWith(path(ROOT + "target"));
    }

    /** @return null where it cannot be opened for writing */
    Sink open(String target, boolean append) {
        if (target.equals("nul")) {
            return text -> {};
        }
        Path file = path(target);
        if (!mayWrite(file) || !Files.isDirectory(file.getParent()) || !written.add(file)) {
            return null;
        }
        put(file, "", append);
        return new Sink() {
            @Override
            public void write(String text) {
                put(file, text, true);
            }

            @Override
            public void close() {
                if (maven == null || !maven.log().equals(file)) {
                    written.remove(file);
                }
            }
        };
    }

    /** Somebody else opens a file for writing, or closes it again. */
    void setWritten(String file, boolean isWritten) {
        if (isWritten) {
            written.add(path(file));
        } else {
            written.remove(path(file));
        }
    }

    static void put(Path file, String text, boolean append) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(
                    file,
                    text,
                    StandardOpenOption.CREATE,
                    append ? StandardOpenOption.APPEND : StandardOpenOption.TRUNCATE_EXISTING,
                    StandardOpenOption.WRITE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The words of a row by number; {@code *} is what is left of it. */
    static List<String> tokens(String row, String asked, String delimiters) {
        List<String> words = new ArrayList<>();
        String rest = row;
        for (String which : asked.replace("*", ",*").replaceFirst("^,", "").split(",")) {
            rest = rest.replaceFirst("^[\\Q" + delimiters + "\\E]+", "");
            if (which.equals("*")) {
                words.add(rest);
                break;
            }
            int number = Integer.parseInt(which);
            String[] all =
                    row.replaceFirst("^[\\Q" + delimiters + "\\E]+", "").split("[\\Q" + delimiters + "\\E]+", -1);
            words.add(number <= all.length ? all[number - 1] : "");
            rest = rest.substring(Math.min(rest.length(), all[0].length()));
        }
        return words;
    }

    // --- programs ------------------------------------------------------------------

    int piped(String left, UnaryOperator<String> right, Sink out) {
        out.write(right.apply(left));
        return 0;
    }

    int run(String program, String rest, Map<Integer, Sink> handles) {
        try {
            List<String> words = words(rest);
            return switch (program) {
                case "mkdir" -> mkdir(path(words.get(0)));
                case "rmdir" -> remove(path(words.get(words.size() - 1)));
                case "del" -> delete(path(words.get(words.size() - 1)));
                case "move" -> move(words.get(1), words.get(2));
                case "findstr" -> Findstr.run(this, words, handles.get(1));
                case "xcopy" -> Xcopy.run(this, words, handles.get(1));
                case "ping" -> ping();
                case "where" -> hasMaven ? 0 : 1;
                default -> java(program, rest, handles);
            };
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> words(String rest) {
        List<String> words = new ArrayList<>();
        Matcher found = Pattern.compile("(?:[^\\s\"]|\"[^\"]*\")+").matcher(rest);
        while (found.find()) {
            words.add(found.group().replace("\"", ""));
        }
        return words;
    }

    private int mkdir(Path folder) throws IOException {
        if (Files.exists(folder) || !mayWrite(folder)) {
            return 1;
        }
        Files.createDirectories(folder);
        return 0;
    }

    private int remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        }
        return 0;
    }

    private int delete(Path file) throws IOException {
        if (!inUse.contains(file)) {
            Files.deleteIfExists(file);
        }
        return 0;
    }

    private int move(String from, String to) throws IOException {
        Path target = to.endsWith("\\") ? path(to).resolve(name(from)) : path(to);
        if (inUse.contains(target) || inUse.contains(path(from)) || !Files.exists(path(from))) {
            return 1;
        }
        Files.move(path(from), target, StandardCopyOption.REPLACE_EXISTING);
        return 0;
    }

    private int ping() {
        if (!events.isEmpty()) {
            events.remove(0).run();
        }
        if (pause > 0) {
            pause--;
        } else if (maven != null && maven.goOn()) {
            endMaven();
        }
        return 0;
    }

    private int java(String program, String rest, Map<Integer, Sink> handles) {
        if (program.equals("java") && !javaOnPath.isEmpty()) {
            String told = "Property settings:\n    java.home = " + javaOnPath + "\n    java.io.tmpdir = C:\\x\n";
            handles.get(2).write(told);
            return 0;
        } else if (program.endsWith("\\bin\\java.exe")) {
            handles.get(1).write(rest + "\n");
            return 7;
        }
        handles.get(2).write("'" + program + "' is not recognized as an internal or external command.\n");
        return 9009;
    }

    // --- Maven ---------------------------------------------------------------------

    void start(String command, Map<String, String> variables, Sink log) {
        List<String> words = words(command);
        String out = words.stream()
                .filter(word -> word.startsWith("-Dbuild.folder="))
                .findFirst()
                .orElseThrow();
        put(path(ROOT + "builds"), "with " + variables.get("JAVA_HOME") + "\n", true);
        maven = new PretendedMaven(path(out.substring(15)), path(ROOT + "target\\build.log"), exists(ROOT + "broken"));
    }

    /** It has ended, or was killed: Windows closes its files. */
    void endMaven() {
        written.remove(maven.log());
        maven = null;
    }
}
