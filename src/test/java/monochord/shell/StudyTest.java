package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import monochord.practice.Grade;
import monochord.practice.mastery.Attempt;
import monochord.record.Register;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Answers over several days: kept, due, brought back and shown. */
class StudyTest {
    private static final long NOON = 1_800_000_000_000L;
    private static final long DAY = 24 * 60 * 60 * 1000;

    @TempDir
    private Path home;

    /** A sitting that many days after the first, in which a second passes whenever somebody looks at the clock. */
    private List<String> sitting(int days, String... lines) {
        long[] time = {NOON + days * DAY};
        return new Run.Outside()
                .atHome(home)
                .at(() -> time[0] += 1000)
                .typing(String.join("\n", lines) + "\nquit\n")
                .run()
                .lines();
    }

    private List<Attempt> kept() {
        List<Attempt> kept = new ArrayList<>();
        try (Register register = new Register(home)) {
            register.attempts(kept::add);
        }
        return kept;
    }

    @Test
    void eachReadableAnswerIsKeptWithWhatItTook() {
        sitting(0, "ask borrowed-chord of bVI in D", "hint", "B D F#", "what?", "Bb D F");
        List<Attempt> kept = kept();
        assertEquals(2, kept.size(), kept.toString());
        assertEquals(
                new Attempt(
                        NOON + 2000,
                        "",
                        "borrowed-chord",
                        "bVI",
                        "D major",
                        7,
                        "B D F#",
                        Grade.WRONG,
                        kept.get(0).misconception(),
                        1000,
                        1,
                        0),
                kept.get(0));
        assertFalse(kept.get(0).misconception().isEmpty());
        assertEquals(Grade.RIGHT, kept.get(1).grade());
        assertEquals(1, kept.get(1).tries());
    }

    @Test
    void answersInALessonNameTheLesson() {
        sitting(0, "learn 1.1", "", "W W H W W W H", "W W H W W W H");
        assertTrue(
                kept().stream().anyMatch(attempt -> attempt.lesson().equals("steps-and-half-steps")),
                kept().toString());
    }

    @Test
    void oneSentenceOfACommandLineLeavesNoTrace() throws IOException {
        Run.Outside outside = new Run.Outside().atHome(home);
        outside.run("ask", "interval", "of", "P5", "in", "D", "--answer", "A").result(0);
        outside.typing("ask interval of P5 in D\nA\n").run("-");
        try (var files = Files.list(home)) {
            assertEquals(List.of(), files.toList());
        }
    }

    @Test
    void aRunIsOfTenQuestionsAndEndsInTwoLines() {
        String[] ten = new String[21];
        ten[0] = "practise triad-spelling in C, D --seed 1";
        for (int i = 1; i < ten.length; i += 2) {
            ten[i] = "C E G";
            ten[i + 1] = "tell";
        }
        List<String> said = sitting(0, ten);
        assertEquals("Ten questions on triad-spelling, 2 keys mixed; skip ends it.", said.get(0));
        int end = said.indexOf(said.stream()
                .filter(line -> line.startsWith("Ten questions, "))
                .findFirst()
                .orElseThrow());
        assertTrue(said.get(end + 1).startsWith("To go over: triad-spelling in "), said.get(end + 1));
        assertEquals("Until next time.", said.get(said.size() - 1));
    }

    @Test
    void skipEndsARun() {
        List<String> said = sitting(0, "practise interval in D", "skip", "F C G");
        assertTrue(said.contains("Nothing answered this time."), said.toString());
        assertTrue(said.stream().anyMatch(line -> line.contains("IV")), said.toString());
    }

    @Test
    void whatWasForgottenIsDueTheNextDayAndComesBack() {
        sitting(0, "ask triad-spelling of major in D", "D F A", "D F# A");
        assertEquals(
                List.of(
                        "Nothing is due. practise brings something new, learn goes on with the lessons.",
                        "Until next time."),
                sitting(0, "review"));
        List<String> said = sitting(1, "review");
        assertEquals("One thing to bring back, weakest first. skip ends it.", said.get(0));
        assertTrue(said.get(2).contains("triad"), said.toString());
    }

    @Test
    void aRestIsRecommendedOnceInHalfAnHour() {
        long[] time = {NOON};
        List<String> said = new Run.Outside()
                .atHome(home)
                .at(() -> time[0] += 100_000)
                .typing("learn 1.1\n\n\ntell\n\n\ntell\ntell\ntell\ntell\ntell\ntell\ntell\ntell\n\n\n\nquit\n")
                .run()
                .lines();
        assertEquals(
                1,
                said.stream()
                        .filter(line -> line.startsWith("Half an hour has gone. "))
                        .count(),
                said.toString());
        assertTrue(sitting(0, "learn 1.1", "", "").stream().noneMatch(line -> line.startsWith("Half an hour")));
    }

    private void forget(String... keys) {
        for (String key : keys) {
            sitting(0, "ask triad-spelling of major in " + key, "C D E", "tell");
        }
    }

    private static List<String> asked(List<String> said) {
        return said.stream()
                .filter(line -> line.startsWith("Spell the "))
                .map(line -> line.replaceFirst("Spell the ([^ ]+) .*", "$1"))
                .toList();
    }

    @Test
    void whatIsMissedInAReviewComesBackOnceAtItsEnd() {
        forget("D", "E", "A");
        List<String> said = sitting(1, "review", "C D E", "tell", "tell", "tell", "tell", "tell", "tell", "");
        List<String> asked = asked(said);
        assertEquals(6, asked.size(), said.toString());
        assertEquals(asked.subList(0, 3), asked.subList(3, 6));
        assertEquals(3, Set.copyOf(asked).size());
        assertTrue(said.contains("Three questions, none right at the first try."), said.toString());
        assertTrue(said.stream().anyMatch(line -> line.startsWith("To go over: triad-spelling in ")), said.toString());
    }

    @Test
    void whatIsRightWhenItComesBackNeedsNoGoingOver() {
        forget("D");
        List<String> said = sitting(1, "review", "tell", "Bb D F");
        assertEquals(List.of("D", "B♭"), asked(said), said.toString());
        assertTrue(said.contains("One question, none right at the first try, one when it came back."), said.toString());
        assertTrue(said.contains("Nothing to go over; progress shows where you stand."), said.toString());
    }

    @Test
    void aReviewEndsWhenItsMinutesAreOver() {
        forget("D", "E", "A");
        long[] time = {NOON + DAY};
        List<String> said = new Run.Outside()
                .atHome(home)
                .at(() -> time[0] += 20_000)
                .typing("review 1\ntell\ntell\ntell\ntell\ntell\nquit\n")
                .run()
                .lines();
        assertTrue(asked(said).size() < 3, said.toString());
        assertTrue(said.stream().anyMatch(line -> line.contains(" right at the first try")), said.toString());
    }

    @Test
    void enterBringsBackWhatIsDueAndThenTheLesson() {
        sitting(0, "ask triad-spelling of major in D", "D F A", "D F# A");
        String[] told = Collections.nCopies(40, "tell").toArray(String[]::new);
        told[0] = "";
        told[told.length - 1] = "";
        List<String> said = sitting(3, told);
        assertTrue(said.get(0).startsWith("Today's set: 8 questions and one thing for the hands"), said.get(0));
        assertTrue(said.stream().anyMatch(line -> line.startsWith("Spell the ")), said.toString());
        assertTrue(said.stream().anyMatch(line -> line.startsWith("1.1  ")), said.toString());
    }

    @Test
    void aLessonThatWasBrokenOffBeginsTheNextSitting() throws IOException {
        sitting(0, "learn 1.2");
        assertTrue(Files.readString(home.resolve("agenda")).contains("lesson "));
        assertTrue(sitting(1, "").get(0).startsWith("1.2  "));
    }

    @Test
    void progressShowsEveryKeyWithinEightyColumns() {
        sitting(
                0,
                "ask triad-spelling of major in D",
                "D F A",
                "D F# A",
                "ask key-signature of minor in A",
                "3 sharps");
        List<String> said = new Run.Outside()
                .atHome(home)
                .at(() -> NOON + 2 * DAY)
                .run("progress")
                .lines();
        assertEquals("major keys           C♭ G♭ D♭ A♭ E♭ B♭ F  C  G  D  A  E  B  F♯ C♯", said.get(0));
        assertEquals("key-signature        ·  ·  ·  ·  ·  ·  ·  ·  ·  ·  -* ·  ·  ·  ·", said.get(1));
        assertEquals("triad-spelling       ·  ·  ·  ·  ·  ·  ·  ·  ·  -* ·  ·  ·  ·  ·", said.get(2));
        assertTrue(said.stream().allMatch(line -> line.codePointCount(0, line.length()) <= 80), said.toString());
        assertTrue(said.toString().contains("Next: review."), said.toString());
    }

    @Test
    void progressIsReadableInAsciiAndAloud() {
        sitting(0, "ask triad-spelling of major in Eb", "Eb G Bb");
        Run.Outside outside = new Run.Outside().atHome(home).at(() -> NOON);
        assertTrue(outside.run("progress", "--ascii").result(0).chars().allMatch(c -> c < 0x80));
        assertEquals(
                "triad-spelling in E♭ major: coming, 1 of 1 right alone, 1 s.",
                outside.run("progress", "--plain").lines().get(0));
    }

    @Test
    void progressIsATableForOtherPrograms() {
        sitting(0, "ask triad-spelling of major in D", "D F A");
        Run.Outside outside = new Run.Outside().atHome(home).at(() -> NOON + 3 * DAY);
        List<String> csv = outside.run("progress", "--csv").lines();
        assertEquals("skill,key,mastery,recall,stability_days,asked,right,seconds,last,due", csv.get(0));
        assertTrue(csv.get(1).startsWith("triad-spelling,D major,0.1231,0."), csv.get(1));
        assertEquals(2, csv.size());
        String json = outside.run("progress", "--json").result(0);
        assertTrue(json.contains("\"skill\":\"triad-spelling\",\"key\":\"D major\",\"mastery\":0.1231"), json);
        assertTrue(json.contains("\"due\":1"), json);
    }

    @Test
    void aReviewTakesWholeMinutes() {
        assertTrue(new Run.Outside().run("review", "soon").message(2).contains("expected whole minutes from 1 to 240"));
    }

    @Test
    void aSittingGoesOnWhereNothingCanBeKept() throws IOException {
        Path inTheWay = Files.writeString(home.resolve("shelf"), "a file, no folder");
        home = inTheWay;
        List<String> said =
                sitting(0, "ask triad-spelling of major in D", "D F# A", "ask triad-spelling of major in C", "C E G");
        assertEquals(
                Set.of(1L),
                said.stream()
                        .filter(line -> line.startsWith("Answers are not being kept: "))
                        .collect(Collectors.groupingBy(line -> line, Collectors.counting()))
                        .values()
                        .stream()
                        .collect(Collectors.toSet()));
        assertEquals(2, said.stream().filter(line -> line.startsWith("Yes: ")).count());
    }
}
