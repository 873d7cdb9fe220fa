package monochord.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.song.SongHead;
import monochord.song.SongReader;
import org.junit.jupiter.api.Test;

/**
 * Whose the tunes are: each that a lesson or a sitting of the demo names or quotes stands in the table of the guide to
 * lessons, with a print before 1925 or as one of ours.
 */
class TunesInPrintTest {
    private static final Path GUIDE = Path.of("lessons", "README.md");

    /** Emphasised for another reason. */
    private static final Set<String> NO_TUNES = Set.of("Letters", "Half steps", "Suspended");

    private static final Pattern TITLE = Pattern.compile("\\p{Lu}[\\p{L}'’]+(?:,? [\\p{L}'’]+){0,8}");
    private static final Pattern CODE = Pattern.compile("```.*?```", Pattern.DOTALL);
    private static final Pattern LABEL = Pattern.compile("- \\*.*", Pattern.DOTALL);

    /** Notes with beats, {@code E4:2 D4 C4}. */
    private static final Pattern MELODY =
            Pattern.compile("\\b[A-G][b#]*[0-9]:[0-9/]+(?:[ |]+[A-G][b#]*[0-9](?::[0-9/]+)?)+");

    /** Degrees in a row that come back to where they were, as only tunes do: {@code 1 1 5 5 6 6 5}. */
    private static final Pattern DEGREES = Pattern.compile("begins (?:[♭♯]?[1-7] ){3,}[♭♯]?[1-7]");

    private static final Pattern YEAR = Pattern.compile("\\b1[5-9][0-9]{2}\\b");

    private record Tune(String where, String known) {}

    private static Map<String, Tune> table() throws IOException {
        String guide = Files.readString(GUIDE);
        String section = guide.substring(guide.indexOf("## The tunes\n"));
        Map<String, Tune> table = new LinkedHashMap<>();
        section.lines()
                .takeWhile(line -> !line.startsWith("## Where"))
                .filter(line -> line.startsWith("| "))
                .skip(2)
                .map(line -> line.substring(2, line.length() - 2).split(" \\| "))
                .forEach(row -> table.put(row[0].replace("`", ""), new Tune(row[1], row[2])));
        return table;
    }

    private static List<Path> texts() throws IOException {
        try (Stream<Path> lessons = Files.walk(Path.of("lessons"));
                Stream<Path> demos = Files.walk(Path.of("transcripts-demo"))) {
            return Stream.concat(lessons, demos)
                    .filter(file -> file.toString().endsWith(".md") && !file.equals(GUIDE))
                    .sorted()
                    .toList();
        }
    }

    /** The paragraphs of a text without what stands in fences. */
    private static List<String> paragraphs(String text) {
        return Arrays.stream(CODE.matcher(text).replaceAll("").split("\\n\\s*\\n|\\n(?=- |[0-9]+\\. )"))
                .map(paragraph -> paragraph.strip().replaceAll("\\s+", " ").replace("**", ""))
                .toList();
    }

    /** What is emphasised like a title; where a whole paragraph is emphasised, what is not. */
    private static List<String> titles(String paragraph) {
        if (LABEL.matcher(paragraph).matches()) {
            return List.of();
        }
        List<String> parts = List.of(paragraph.split("\\*"));
        return parts.stream()
                .skip(1)
                .map(part -> part.strip().replaceAll(",$", ""))
                .filter(part -> TITLE.matcher(part).matches() && !NO_TUNES.contains(part))
                .toList();
    }

    @Test
    void eachTuneThatIsNamedIsInTheTable() throws IOException {
        Map<String, Tune> table = table();
        Set<String> seen = new TreeSet<>();
        for (Path file : texts()) {
            for (String paragraph : paragraphs(Files.readString(file))) {
                titles(paragraph).forEach(title -> {
                    seen.add(title);
                    assertTrue(table.containsKey(title), () -> title + " in " + file + " is in no print of the table");
                });
            }
        }
        Set<String> listed = table.keySet().stream()
                .filter(title -> !MELODY.matcher(title).matches())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(listed, seen, "what is listed is what is named");
    }

    /** Notes or degrees of a tune: their text says whose they are, or the table lists them by themselves. */
    @Test
    void eachMelodyBelongsToATuneInTheTable() throws IOException {
        Set<String> tunes = table().keySet();
        List<String> seen = new ArrayList<>();
        for (Path file : texts()) {
            String text = Files.readString(file);
            for (Pattern melody : List.of(MELODY, DEGREES)) {
                Matcher found = melody.matcher(text);
                while (found.find()) {
                    String around = melody == DEGREES ? paragraphAt(text, found.start()) : text;
                    seen.add(found.group());
                    assertTrue(
                            tunes.contains(found.group()) || tunes.stream().anyMatch(around::contains),
                            () -> found.group() + " in " + file + ": whose is it?");
                }
            }
        }
        assertTrue(seen.size() > 10, seen::toString);
    }

    private static String paragraphAt(String text, int place) {
        int begin = text.lastIndexOf("\n\n", place);
        int end = text.indexOf("\n\n", place);
        return text.substring(Math.max(0, begin), end < 0 ? text.length() : end);
    }

    /** The files of the lessons' tunes: each is in the table, as ours or with the year that its head says. */
    @Test
    void eachTuneThatIsKeptIsInTheTable() throws IOException {
        Map<String, Tune> table = table();
        try (Stream<Path> files = Files.list(Path.of("lessons", "tunes"))) {
            List<Path> tunes = files.sorted().toList();
            assertTrue(tunes.size() >= 20, tunes::toString);
            for (Path file : tunes) {
                SongHead head = SongReader.read(Files.readString(file)).head();
                Tune tune = table.get(head.title());
                assertTrue(tune != null, file + ": " + head.title());
                Matcher year = YEAR.matcher(head.by());
                assertEquals(tune.known().equals("ours"), head.by().equals("the Lantern Quay band"), file.toString());
                assertTrue(
                        tune.known().equals("ours")
                                || year.find() && tune.where().contains(year.group()),
                        file.toString());
            }
        }
    }

    @Test
    void theTitleOfEachLeadSheetOfTheTestsIsInTheTable() throws IOException {
        Pattern title = Pattern.compile("<work-title>(.*)</work-title>");
        try (Stream<Path> files = Files.walk(Path.of("src", "test", "resources"))) {
            List<Path> sheets =
                    files.filter(file -> file.toString().endsWith(".musicxml")).toList();
            assertTrue(!sheets.isEmpty());
            for (Path sheet : sheets) {
                Matcher found = title.matcher(Files.readString(sheet));
                assertTrue(found.find() && table().containsKey(found.group(1)), sheet::toString);
            }
        }
    }

    @Test
    void eachPrintIsOlderThan1925() throws IOException {
        Map<String, Tune> table = table();
        assertTrue(table.size() > 20, table::toString);
        table.forEach((title, tune) -> {
            if (tune.known().equals("ours")) {
                return;
            }
            assertTrue(List.of("seen", "from memory").contains(tune.known()), title);
            List<Integer> years = YEAR.matcher(tune.where())
                    .results()
                    .map(year -> Integer.parseInt(year.group()))
                    .toList();
            assertEquals(1, years.size(), title + ": one year");
            assertTrue(years.get(0) < 1925, title);
        });
    }
}
