package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.course.Course;
import monochord.record.Register;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.text.naming.InProse;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Look;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Note names of other countries at the line. Source: for the names, see {@link monochord.theory.note.NoteNaming}. */
class NotesElsewhereTest {
    private static final List<String> KEYS = List.of("Bb", "B", "Eb", "A", "F#", "Bm", "Bbm");
    private static final List<String> SENTENCES = List.of(
            "show bVImaj7/3",
            "show Bb7",
            "Bb B Eb",
            "4 1 5 b6 5 1",
            "IV iv I | bVII V7/V V",
            "voice IV iv I",
            "voice I V vi IV spread",
            "recolour 1 4 5 1",
            "key of B E F#7 B G A B",
            "harmonise | B4:2 D5 E5 | A#4:2 F#4:2 | B4:4 |",
            "harmonise G Bb under B",
            "recolour 1 6 4 5 under B4 Bb4 A4 G4",
            "fit B4 Bb4 Eb5 over Bb Eb F",
            "motion Bb3 D4 F4 | B3 D4 G4",
            "motion Bb Eb F Bb",
            "after V",
            "after bVI",
            "borrow",
            "borrow bVI",
            "transpose Bb Eb F from Bb to B",
            "name Bb D F Ab",
            "numeral V65/ii",
            "play 4 1 5 1",
            "ask borrowed-chord of bVI",
            "ask scale-spelling",
            "help",
            "lessons",
            "show Qx");

    private static Sitting sitting() {
        return new Sitting(Ear.silent(), () -> 7, Path.of("."), new Course(Run.OUR_LESSONS));
    }

    private static List<String> lines() {
        List<String> lines = new ArrayList<>();
        KEYS.forEach(key -> SENTENCES.forEach(line -> lines.add(
                List.of("help", "lessons", "show Qx", "name Bb D F Ab").contains(line) || line.startsWith("transpose")
                        ? line
                        : line + " in " + key)));
        new Verbs()
                .all()
                .forEach(verb -> lines.addAll(verb.usage().examples().stream()
                        .filter(example -> !example.matches(".* --(svg|html|musicxml|pdf|midi|abc|out) .*"))
                        .toList()));
        lines.removeIf(line -> line.startsWith("notes")
                || line.startsWith("settings notes")
                || line.contains("--wav")
                || line.contains("--file")
                || line.startsWith("check"));
        return lines;
    }

    @Test
    @DisplayName("every answer has each name once in German, in pictures and in sentences")
    void namesEachNoteOnce() {
        Verbs verbs = new Verbs();
        Look english = new Look(200, Signs.MUSIC, false, false);
        Look german = english.naming(NoteNaming.GERMAN);
        for (Look look : List.of(english, english.asPlain())) {
            for (String line : lines()) {
                Answer answer = new LineReading(verbs, sitting()).read(line);
                String expected = InProse.of(bare(answer.text(look).plain()), german.signs());
                assertEquals(
                        expected,
                        bare(answer.text(look.naming(NoteNaming.GERMAN)).plain()),
                        line);
            }
        }
        assertTrue(lines().size() > 200, "only " + lines().size());
    }

    /** What came back to lines typed through a pipe, each exchange on one line. */
    private static String said(String... lines) {
        Run run = new Run.Outside().typing(String.join("\n", lines) + "\n").run();
        return (run.out() + run.err()).replaceAll("\\s+", " ").strip();
    }

    @Test
    @DisplayName("with English names, German and Latin ones are refused, and the refusal says how to use them")
    void saysWhatToDoAboutOtherNames() {
        assertEquals(
                "Spell the D major triad, root first. \"D Fis A\" is not a row of notes: notes are the letters A to G"
                        + " with b or #, and a symbol begins with one. Example: Eb G Bb. Try again, or: hint, tell."
                        + " \"Fis\" is German for F#. To go by such names: notes german",
                said("ask triad-spelling of D", "D Fis A"));
        assertTrue(said("show fa#m7").endsWith("\"fa#\" is Latin for F#. To go by such names: notes latin"));
        assertTrue(said("H Fis Em").endsWith("\"H\" is German for B. To go by such names: notes german"));
    }

    @ParameterizedTest(name = "{0}")
    @DisplayName("as before a pattern says how to play, elsewhere it is A flat")
    @CsvSource(delimiter = '|', textBlock = """
            play F C as broken                | Playing F C in C major at 84, as broken.
            play as Es B as bass and chord    | Playing As Es B in C major at 84, as bass-and-chord.
            play F C as                       | Playing F C As in C major at 84.
            play F C in as moll as pulse      | Playing F C in As minor at 84, as pulse.
            play H as blok                    | "blok" is not a way to play chords: did you mean block. Example: play F C G as broken
            """)
    void asIsAFlatUnlessAPatternFollows(String line, String said) {
        String all = said("notes german", line);
        assertTrue(all.contains(said), all);
    }

    @Test
    @DisplayName("a refusal quotes what was typed and counts its characters")
    void quotesWhatWasTyped() {
        assertTrue(
                said("notes german", "Fis H Esq").contains("\"Esq\" is not a chord: "),
                said("notes german", "Fis H Esq"));
        assertTrue(said("notes german", "Fis h Q").endsWith("at character 1, found 'Q'. Example: Asmaj7"));
        String json = new Run.Outside()
                .typing("notes german\nnumeral Fis in Q\n")
                .run("--json")
                .out();
        assertTrue(json.contains("\"at\":8"), json);
    }

    @Test
    @DisplayName("the article A is no note, in a lesson of ours and in one of the class's own")
    void anArticleIsNoNote(@TempDir Path lessons) throws IOException {
        String ours = said("notes latin", "learn 3.10", "", "", "", "", "");
        assertTrue(ours.contains("A step up or a step down, a leap of a fourth, or home."), ours);
        assertTrue(!ours.contains("La step"), ours);

        Path book = Files.createDirectories(lessons.resolve("1-thursday"));
        Files.writeString(book.resolve("1-plan.md"), """
                ---
                title: Plan A
                grade: 1
                needs: []
                skills: []
                ---

                A major or minor third lies above ${A}. Plan A is to sing it.
                """);
        Run run = new Run.Outside()
                .withLessons(lessons)
                .typing("notes latin\nlessons\nlearn 1.1\n")
                .run();
        String own = (run.out() + run.err()).replaceAll("\\s+", " ").strip();
        assertTrue(
                own.endsWith("Thursday 1.1 Plan A learn NUMBER begins one; learn NUMBER in KEY, in a key of yours."
                        + " 1.1 Plan A in Do major A major or minor third lies above La. Plan A is to sing it."
                        + " End of Plan A. That was the last lesson there is."),
                own);
    }

    @Test
    @DisplayName("an answer longer than the window names its notes once, too")
    void namesNotesOnceOnEachScreen(@TempDir Path home) throws IOException {
        try (Typist typist = new Typist(80, 12, home)) {
            typist.types("notes german");
            String screen = typist.types("after IV in F");
            assertTrue(screen.startsWith("After B, IV in F major Goes home I F Plagal: "), screen);
        }
    }

    @Test
    @DisplayName("the choice lasts, a script knows nothing of it")
    void theChoiceLasts(@TempDir Path home) {
        Run.Outside outside = new Run.Outside().atHome(home);
        outside.run("notes", "german");
        assertEquals("H H Dis Fis", first(outside.typing("show H\n").run().out()));
        assertEquals("B B D♯ F♯", first(outside.run("show", "B").out()));
        assertEquals("B B D♯ F♯", first(outside.typing("B\n").run("show", "-").out()));
        String json = outside.typing("show B\n").run("--json").out();
        assertTrue(json.contains("[\"B\",\"D#\",\"F#\"]"), json);
        assertEquals(
                "{\"kind\":\"naming\",\"notes\":\"latin\"}",
                outside.run("notes", "latin", "--json").out().strip());
    }

    private static String first(String text) {
        return text.lines().findFirst().orElse("").replaceAll("\\s+", " ");
    }

    @Test
    void anUnknownWayIsRefused() {
        assertEquals(
                "\"C E G\" is not a way to call the notes: there are english, german and latin; to name a chord, type name"
                        + " and its notes. Example: notes german Form: notes [english, german or latin]",
                said("notes C E G"));
    }

    @Test
    @DisplayName("what is kept of an answer is English")
    void keepsEnglish(@TempDir Path home) {
        new Run.Outside()
                .atHome(home)
                .typing("notes german\nask triad-spelling of Hm\nh d fis\nask steps of major in C\nW W H W W W H\n")
                .run();
        List<String> kept = new ArrayList<>();
        try (Register register = new Register(home)) {
            register.attempts(attempt -> kept.add(attempt.answer() + " " + attempt.grade()));
        }
        assertEquals(List.of("B d F# right", "W W H W W W H right"), kept);
    }

    @Test
    @DisplayName("nobody compares signs, for there are as many as ways to call the notes")
    void nobodyComparesSigns() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            List<Path> comparing = files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> Sources.read(file).matches("(?s).*[!=]= Signs\\.(ASCII|MUSIC).*"))
                    .toList();
            assertEquals(List.of(), comparing);
        }
    }

    /** Java files as text. */
    private static final class Sources {
        static String read(Path file) {
            try {
                return Files.readString(file);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }

    /** Without what is drawn, and however it is set. */
    private static String bare(String text) {
        return text.replaceAll("[─┴█═●↗↘]", " ").replaceAll("\\s+", " ").strip();
    }
}
