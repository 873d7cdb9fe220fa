package monochord.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.harmony.after.ClassicalCounts;
import monochord.harmony.after.SongCounts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the lessons say of songs and scores, beside the counts that {@code after} shows. Each test quotes the words that it
 * stands for.
 */
class SongsInLessonsTest {
    private static final String COUNTS = "/monochord/shell/verb/music/";

    private static List<SongCounts.SongCount> after(String chord, SongCounts.Collection collection) throws IOException {
        return SongCounts.parse(resource("next-chord.tsv")).rows().stream()
                .filter(row -> row.collection() == collection
                        && !row.minor()
                        && row.from().equals(chord))
                .sorted((one, other) -> other.times() - one.times())
                .toList();
    }

    private static String resource(String name) throws IOException {
        try (var in = SongsInLessonsTest.class.getResourceAsStream(COUNTS + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The commonest chords after one, in the chart songs and in the rock songs; Source: the counts that the verb after has. */
    @ParameterizedTest(name = "after {0}: {1} in charts, {2} in rock")
    @CsvSource(delimiter = '|', textBlock = """
            bVI  | bVII V I    | bVII I V    | Then V and I in the chart songs; I and then V in the rock songs
            bVII | I IV        | IV I        | In the chart songs I is a little ahead, in the rock songs IV
            bIII | IV bVII I   | bVII IV I   | IV first in the chart songs, ♭VII first in the rock songs
            iv   | I           | I           | After iv comes I, more than half the time in both
            """)
    void whatComesNextInSongs(String chord, String charts, String rock, String words) throws IOException {
        LessonText.says("5.10", words);
        assertEquals(charts, commonest(chord, SongCounts.Collection.BILLBOARD, charts.split(" ").length));
        assertEquals(rock, commonest(chord, SongCounts.Collection.RS200, rock.split(" ").length));
    }

    private static String commonest(String chord, SongCounts.Collection collection, int most) throws IOException {
        return String.join(
                " ",
                after(chord, collection).stream()
                        .limit(most)
                        .map(SongCounts.SongCount::to)
                        .toList());
    }

    @Test
    @DisplayName("5.4, 5.10: after iv comes I, between half and two thirds of the time")
    void theMinorFourGoesHome() throws IOException {
        LessonText.says(
                "5.4",
                "After iv they play I, in songs rather more than one time in two, and V less than half as often");
        for (SongCounts.Collection collection : SongCounts.Collection.values()) {
            List<SongCounts.SongCount> rows = after("iv", collection);
            int all = rows.stream().mapToInt(SongCounts.SongCount::times).sum();
            assertTrue(2 * rows.get(0).times() > all && 3 * rows.get(0).times() < 2 * all, collection.toString());
            assertEquals("V", rows.get(1).to());
            assertTrue(2 * rows.get(1).times() < rows.get(0).times(), collection.toString());
        }
    }

    @Test
    @DisplayName("5.4: in classical scores V comes more often than I after iv")
    void theMinorFourInScores() throws IOException {
        LessonText.says("5.4", "in classical music V is the commoner");
        ClassicalCounts counts = ClassicalCounts.parse(resource("next-chord-classical.tsv"));
        Map<String, Integer> after = counts.rows().stream()
                .filter(row -> row.from().toString().equals("iv"))
                .collect(Collectors.toMap(row -> row.to().toString(), ClassicalCounts.ScoreCount::times));
        assertTrue(after.get("V") + after.get("V7") > after.get("I"), after.toString());
    }

    @Test
    @DisplayName("5.10: in classical scores V comes first after ♭VI and ♭II")
    void whatComesNextInScores() throws IOException {
        LessonText.says("5.10", "V comes first for ♭VI, though not by much, and for the Neapolitan too");
        ClassicalCounts counts = ClassicalCounts.parse(resource("next-chord-classical.tsv"));
        for (String from : List.of("bVI", "bII")) {
            assertEquals(
                    "V",
                    counts.rows().stream()
                            .filter(row -> row.from().toString().equals(from))
                            .findFirst()
                            .orElseThrow()
                            .to()
                            .toString());
        }
    }

    @Test
    @DisplayName("every number of songs in a lesson is that of the collection")
    void numbersOfSongsAreThoseOfTheTable() throws IOException {
        Set<Integer> samples = new HashSet<>();
        SongCounts.parse(resource("next-chord.tsv")).rows().stream()
                .filter(row -> !row.minor())
                .forEach(row -> samples.add(row.sample()));
        Set<Integer> named = new HashSet<>();
        try (Stream<Path> files = Files.walk(LessonText.FOLDER, 2)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".md"))
                    .filter(path -> path.getNameCount() > 2)
                    .toList()) {
                Matcher number = Pattern.compile("(\\d+) (?:\\w+ )?songs").matcher(Files.readString(file));
                while (number.find()) {
                    named.add(Integer.parseInt(number.group(1)));
                }
            }
        }
        assertEquals(samples, named);
    }
}
