package monochord.lesson.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.lesson.Fault;
import monochord.lesson.Reading;
import monochord.text.Nearest;
import monochord.text.Phrase;

/**
 * The lessons in a folder, or in several: the files {@code N-slug/N-slug.md} in the order of their numbers, folder by
 * folder. Other files are left alone.
 *
 * <p>Only heads are read until a lesson is asked for, and a lesson that cannot be read never stops the others.
 */
public final class Library {
    private static final int LONGEST_HEAD = 4096;
    private static final Pattern NUMBERED = Pattern.compile("(\\d+)\\.(\\d+) .*");
    private static final Comparator<Path> IN_ORDER = Comparator.<Path>comparingInt(
                    file -> LessonName.of(file).book())
            .thenComparingInt(file -> LessonName.of(file).place())
            .thenComparing(Path::toString);

    private final List<LibraryEntry> entries;
    private final Tunes tunes;

    private Library(List<LibraryEntry> entries, Tunes tunes) {
        this.entries = entries;
        this.tunes = tunes;
    }

    /** The lessons of a folder; none if there is no such folder or it cannot be read. */
    public static Library in(Path folder) {
        return new Library(entries(folder), Tunes.in(folder));
    }

    /** With the lessons of another folder behind these, as a teacher keeps a folder of one's own. */
    public Library and(Path folder) {
        return new Library(
                Stream.concat(entries.stream(), entries(folder).stream()).toList(), tunes.and(folder));
    }

    private static List<LibraryEntry> entries(Path folder) {
        return list(folder, LessonName::isBook).stream()
                .filter(Files::isDirectory)
                .flatMap(book -> list(book, LessonName::isLesson).stream())
                .filter(Files::isRegularFile)
                .sorted(IN_ORDER)
                .map(Library::entry)
                .toList();
    }

    /**
     * Whether a folder holds a lesson's file, without reading it.
     *
     * @param title with its number before it: {@code 1.2 Seven letters}
     */
    public static boolean holds(Path folder, String title, String slug) {
        Matcher number = NUMBERED.matcher(title);
        return number.matches()
                && list(folder, book -> book.getFileName().toString().startsWith(number.group(1) + "-")).stream()
                        .anyMatch(book -> Files.isRegularFile(book.resolve(number.group(2) + "-" + slug + ".md")));
    }

    private static List<Path> list(Path folder, Predicate<Path> wanted) {
        List<Path> paths = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, wanted::test)) {
            all.forEach(paths::add);
        } catch (IOException | DirectoryIteratorException unreadable) {
            return List.of();
        }
        return paths;
    }

    private static LibraryEntry entry(Path file) {
        Faults faults = new Faults(file.toString());
        Optional<List<SourceLine>> lines = new Source(faults).lines(start(file));
        LessonName name = LessonName.of(file);
        HeadValues head = new HeadValues(Head.read(lines.orElseThrow(), faults), faults);
        Optional<String> title = head.title();
        OptionalInt grade = head.grade();
        head.skills();
        head.needs();
        return new LibraryEntry(
                file,
                name.number(),
                name.bookTitle(),
                name.slug(),
                title.orElse(LessonName.inWords(name.slug())),
                grade.orElse(0),
                !faults.inOrder().isEmpty());
    }

    private static String start(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(LONGEST_HEAD), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            return "";
        }
    }

    public List<LibraryEntry> entries() {
        return entries;
    }

    /** The tunes beside its books. */
    public Tunes tunes() {
        return tunes;
    }

    public Set<String> slugs() {
        Set<String> slugs = new HashSet<>();
        entries.forEach(entry -> slugs.add(entry.slug()));
        return slugs;
    }

    /** By number, {@code 2.1}; else by the slug; else the first whose slug or title begins so. */
    public Optional<LibraryEntry> find(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        return wanted.isEmpty()
                ? Optional.empty()
                : first(entry -> entry.number().equals(wanted))
                        .or(() -> first(entry -> entry.slug().equals(wanted)))
                        .or(() -> first(entry -> entry.slug().startsWith(wanted.replace(' ', '-'))))
                        .or(() -> first(
                                entry -> entry.title().toLowerCase(Locale.ROOT).startsWith(wanted)));
    }

    private Optional<LibraryEntry> first(Predicate<LibraryEntry> wanted) {
        return entries.stream().filter(wanted).findFirst();
    }

    /** The lesson that was probably meant by a text that {@link #find} does not know. */
    public Optional<LibraryEntry> didYouMean(String text) {
        String wanted = text.strip().replace(' ', '-');
        return Nearest.to(wanted, slugs())
                .flatMap(slug -> first(entry -> entry.slug().equals(slug)))
                .or(() -> nearestTitle(text.strip()));
    }

    private Optional<LibraryEntry> nearestTitle(String text) {
        List<String> titles = entries.stream().map(LibraryEntry::title).toList();
        return Nearest.to(text, titles)
                .flatMap(title -> first(entry -> entry.title().equals(title)));
    }

    /** The lesson after this one in the library. */
    public Optional<LibraryEntry> after(LibraryEntry entry) {
        int next = entries.indexOf(entry) + 1;
        return next > 0 && next < entries.size() ? Optional.of(entries.get(next)) : Optional.empty();
    }

    public Reading read(LibraryEntry entry) {
        Reading reading = LessonReader.read(entry.file(), slugs(), tunes);
        return first(other -> other.slug().equals(entry.slug()))
                .filter(other -> !other.equals(entry))
                .map(other -> withFault(reading, duplicate(entry, other)))
                .orElse(reading);
    }

    private static Fault duplicate(LibraryEntry entry, LibraryEntry other) {
        Phrase what = Phrase.of(
                "the slug {0} is used by lesson {1} already", Phrase.typed(entry.slug()), Phrase.typed(other.number()));
        return new Fault(entry.file().toString(), 1, 1, what, Phrase.of("write another name for this file"));
    }

    private static Reading withFault(Reading reading, Fault fault) {
        return new Reading(
                reading.lesson(),
                Stream.concat(Stream.of(fault), reading.faults().stream()).toList());
    }

    /**
     * Reads any lesson file. One that lies in a book of a library is held against the other lessons there too.
     *
     * @param file need not be there; a fault says so
     */
    public static Reading check(Path file) {
        return new Library(List.of(), Tunes.NONE).checkBeside(file);
    }

    /** The same, held against the lessons of this library too. */
    public Reading checkBeside(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        Path book = whole.getParent();
        boolean inLibrary = LessonName.isLesson(whole) && book != null && LessonName.isBook(book);
        return inLibrary
                ? with(book.getParent()).checked(file, whole)
                : LessonReader.read(file, null, tunes.and(Tunes.beside(file)));
    }

    /** With the lessons of that folder too, once. */
    private Library with(Path folder) {
        List<LibraryEntry> others = entries(folder).stream()
                .filter(entry ->
                        entries.stream().noneMatch(known -> whole(known).equals(whole(entry))))
                .toList();
        return new Library(Stream.concat(entries.stream(), others.stream()).toList(), tunes.and(folder));
    }

    private static Path whole(LibraryEntry entry) {
        return entry.file().toAbsolutePath().normalize();
    }

    private Reading checked(Path asNamed, Path whole) {
        return first(entry -> whole(entry).equals(whole))
                .map(entry -> renamed(read(entry), asNamed))
                .orElseGet(() -> LessonReader.read(asNamed, slugs(), tunes));
    }

    private static Reading renamed(Reading reading, Path asNamed) {
        return new Reading(
                reading.lesson(),
                reading.faults().stream()
                        .map(fault -> new Fault(
                                asNamed.toString(), fault.line(), fault.column(), fault.what(), fault.instead()))
                        .toList());
    }
}
