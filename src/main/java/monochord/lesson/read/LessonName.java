package monochord.lesson.read;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the names of a file and its folder say: {@code 5-borrowed-colour/3-the-lowered-seventh.md}.
 *
 * @param book the book's number, 0 if the folder has none
 * @param place the lesson's number in its book, 0 if the file has none
 */
record LessonName(int book, String bookTitle, int place, String slug) {
    private static final Pattern NUMBERED = Pattern.compile("([1-9][0-9]{0,2})-([a-z0-9]+(?:-[a-z0-9]+)*+)");
    private static final String ENDING = ".md";

    static LessonName of(Path file) {
        String name = withoutEnding(fileName(file));
        String folder = fileName(file.getParent());
        Optional<Matcher> lesson = numbered(name);
        Optional<Matcher> book = numbered(folder);
        return new LessonName(
                book.map(LessonName::number).orElse(0),
                book.map(found -> inWords(found.group(2))).orElse(""),
                lesson.map(LessonName::number).orElse(0),
                lesson.map(found -> found.group(2)).orElse(name));
    }

    static boolean isBook(Path folder) {
        return numbered(fileName(folder)).isPresent();
    }

    static boolean isLesson(Path file) {
        String name = fileName(file);
        return name.endsWith(ENDING) && numbered(withoutEnding(name)).isPresent();
    }

    private static String fileName(Path path) {
        return path == null || path.getFileName() == null
                ? ""
                : path.getFileName().toString();
    }

    private static String withoutEnding(String name) {
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    private static Optional<Matcher> numbered(String name) {
        return Optional.of(NUMBERED.matcher(name)).filter(Matcher::matches);
    }

    private static int number(Matcher numbered) {
        return Integer.parseInt(numbered.group(1));
    }

    /** {@code how-scales-are-built} as {@code How scales are built}. */
    static String inWords(String slug) {
        return slug.isEmpty()
                ? ""
                : Character.toUpperCase(slug.charAt(0)) + slug.substring(1).replace('-', ' ');
    }

    /** {@code 3.2}, or nothing if one of the numbers is missing. */
    String number() {
        return book == 0 || place == 0 ? "" : book + "." + place;
    }
}
