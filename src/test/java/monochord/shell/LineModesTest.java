package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import monochord.practice.drill.Turn;
import monochord.practice.skill.Skills;
import monochord.shell.line.LineMode;
import monochord.shell.playback.LiveStrip;
import monochord.shell.sitting.Sitting;
import monochord.shell.trust.Trusted;
import monochord.text.Phrase;
import monochord.theory.Key;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every cell of the table of modes, typed into the real line reader: what it says is what happens. */
class LineModesTest {
    /** Mode, what is typed, what the table says, what the answer begins with, the mode afterwards. */
    private static final String CELLS = """
            REST            |      | begins the next | 1.1 Steps and half steps           | LESSON_PAGE
            REST            | skip | –               | There is nothing to skip           | REST
            REST            | back | –               | There is nothing to go back to     | REST
            REST            | hint | what to type    | Type music, such as Am7            | REST
            REST            | quit | leaves, and keeps your place | Until next time.      | REST
            NAMES           |      | keeps A B C     | Can you name a major scale?        | FIRST_QUESTION
            NAMES           | skip | ends them       | Then we begin at the beginning     | REST
            NAMES           | back | –               | There is nothing to go back to     | NAMES
            NAMES           | hint | says more       | If you call the white keys         | NAMES
            NAMES           | quit | leaves, and keeps your place | Until next time.      | NAMES
            FIRST_QUESTION  |      | passes it       | Then we begin at the beginning     | REST
            FIRST_QUESTION  | skip | ends them       | Then we begin at the beginning     | REST
            FIRST_QUESTION  | back | –               | There is nothing to go back to     | FIRST_QUESTION
            FIRST_QUESTION  | hint | helps           | Write the letters first            | FIRST_QUESTION
            FIRST_QUESTION  | quit | leaves, and keeps your place | Until next time.      | FIRST_QUESTION
            QUESTION        |      | leaves it       | We leave it.                       | REST
            QUESTION        | skip | leaves it       | We leave it.                       | REST
            QUESTION        | back | –               | There is nothing to go back to     | QUESTION
            QUESTION        | hint | helps           | Find the letter first              | QUESTION
            QUESTION        | quit | leaves, and keeps your place | Until next time.      | QUESTION
            ANSWERED        |      | asks another    | Which                              | QUESTION
            ANSWERED        | skip | is done with it | Done with that.                    | REST
            ANSWERED        | back | –               | There is nothing to go back to     | ANSWERED
            ANSWERED        | hint | –               | There is nothing to help with      | ANSWERED
            ANSWERED        | quit | leaves, and keeps your place | Until next time.      | ANSWERED
            RUN             |      | passes it       | Spell the                          | RUN
            RUN             | skip | ends the run    | Nothing answered this time.        | REST
            RUN             | back | –               | There is nothing to go back to     | RUN
            RUN             | hint | helps           | Three letters first                              | RUN
            RUN             | quit | leaves, and keeps your place | Nothing answered      | REST
            REVIEW          |      | passes it       | Spell the                          | REVIEW
            REVIEW          | skip | ends the review | Nothing answered this time.        | REST
            REVIEW          | back | –               | There is nothing to go back to     | REVIEW
            REVIEW          | hint | helps           | Three letters first                              | REVIEW
            REVIEW          | quit | leaves, and keeps your place | Nothing answered      | REST
            SET             |      | passes it       | Walk up                            | SET
            SET             | skip | leaves the rest for later | The rest of the set waits | REST
            SET             | back | –               | There is nothing to go back to     | SET
            SET             | hint | helps           | Count moves, not keys              | SET
            SET             | quit | leaves, and keeps your place | The rest of the set   | REST
            AT_INSTRUMENT   |      | goes on         | Nothing answered this time.        | REST
            AT_INSTRUMENT   | skip | goes on         | Nothing answered this time.        | REST
            AT_INSTRUMENT   | back | –               | There is nothing to go back to     | AT_INSTRUMENT
            AT_INSTRUMENT   | hint | helps           | Write the letters first            | AT_INSTRUMENT
            AT_INSTRUMENT   | quit | leaves, and keeps your place | Nothing answered      | REST
            ROUND_PLAYED    |      | says it was clean | Clean; on a little quicker, at 62. | ROUND_PLAYED
            ROUND_PLAYED    | skip | ends it         | Tomorrow: go on in C major at 59.  | REST
            ROUND_PLAYED    | back | plays it again  | Once more, at 59.                  | ROUND_PLAYED
            ROUND_PLAYED    | hint | helps           | How did it go?                     | ROUND_PLAYED
            ROUND_PLAYED    | quit | leaves, and keeps your place | Tomorrow: go on in C  | REST
            REHEARSAL       |      | plays on        | Once more, at 59.                  | REHEARSAL
            REHEARSAL       | skip | ends it         | Tomorrow: go on in C major at 59.  | REST
            REHEARSAL       | back | –               | There is nothing to go back to     | REHEARSAL
            REHEARSAL       | hint | helps           | How did it go?                     | REHEARSAL
            REHEARSAL       | quit | leaves, and keeps your place | Tomorrow: go on in C  | REST
            TOLD            |      | goes on         | Two notes                          | RUN
            TOLD            | skip | ends it         | One question, none right           | REST
            TOLD            | back | –               | There is nothing to go back to     | TOLD
            TOLD            | hint | –               | There is nothing to help with      | TOLD
            TOLD            | quit | leaves, and keeps your place | One question, none right | REST
            NO_SOUND        |      | leaves ear out  | Left out in this sitting           | REST
            NO_SOUND        | skip | leaves ear out  | Left out in this sitting           | REST
            NO_SOUND        | back | –               | There is nothing to go back to     | NO_SOUND
            NO_SOUND        | hint | –               | There is nothing to help with      | NO_SOUND
            NO_SOUND        | quit | leaves, and keeps your place | Nothing answered      | REST
            LESSON_PAGE     |      | goes on         | Walk up one octave of C major.     | LESSON_QUESTION
            LESSON_PAGE     | skip | leaves it here  | 1.1 Steps and half steps keeps your place, page 2 of 10; learn 1.1 goes on there. | REST
            LESSON_PAGE     | back | a page back     | The Thursday class                 | LESSON_PAGE
            LESSON_PAGE     | hint | what to do      | A lesson is open:                  | LESSON_PAGE
            LESSON_PAGE     | quit | leaves, and keeps your place | Until next time.      | LESSON_PAGE
            LESSON_QUESTION |      | passes it       | Spell F major, from F. Question 2 of 6. | LESSON_QUESTION
            LESSON_QUESTION | skip | passes them all | The slip to know beforehand        | LESSON_QUESTION
            LESSON_QUESTION | back | page again      | The letters never change                           | LESSON_QUESTION
            LESSON_QUESTION | hint | helps           | Write the letters first                              | LESSON_QUESTION
            LESSON_QUESTION | quit | leaves, and keeps your place | Until next time.      | LESSON_QUESTION
            LESSON_JAVA     |      | runs it         | x = 42 After.                    | REST
            LESSON_JAVA     | skip | passes it by    | After.                             | REST
            LESSON_JAVA     | back | a page back     | Before.                            | LESSON_JAVA
            LESSON_JAVA     | hint | –               | There is nothing to help with      | LESSON_JAVA
            LESSON_JAVA     | quit | leaves, and keeps your place | Until next time.      | LESSON_JAVA
            CLASS           |      | goes on         | 1.2 Seven letters, each once in C major Letters first | CLASS
            CLASS           | skip | ends it         | The lesson is closed               | REST
            CLASS           | back | a step back     | 1.2 Seven letters, each once in C major You can find a major scale | CLASS
            CLASS           | hint | –               | There is nothing to help with      | CLASS
            CLASS           | quit | leaves, and keeps your place | Until next time.      | CLASS
            CLASS_QUESTION  |      | tells           | From                               | CLASS
            CLASS_QUESTION  | skip | ends it         | The lesson is closed               | REST
            CLASS_QUESTION  | back | a step back     | 1.2 Seven letters, each once in C major Playing C major | CLASS
            CLASS_QUESTION  | hint | helps           | Write the letters first            | CLASS_QUESTION
            CLASS_QUESTION  | quit | leaves, and keeps your place | Until next time.      | CLASS_QUESTION
            CONSENT         |      | goes on without | After.                             | REST
            CONSENT         | skip | goes on without | After.                             | REST
            CONSENT         | back | –               | There is nothing to go back to     | CONSENT
            CONSENT         | hint | –               | There is nothing to help with      | CONSENT
            CONSENT         | quit | leaves, and keeps your place | Until next time.      | LESSON_PAGE
            OPEN_CELL       |      | twice leaves it |                                    | OPEN_CELL
            OPEN_CELL       | skip | leaves it       | The cell is left                   | REST
            OPEN_CELL       | back | is Java         |                                    | OPEN_CELL
            OPEN_CELL       | hint | is Java         |                                    | OPEN_CELL
            OPEN_CELL       | quit | leaves, and keeps your place | Until next time.      | REST
            NEW_SONG        |      | goes on         | In which key?                      | NEW_SONG
            NEW_SONG        | skip | leaves off      | Nothing was begun.                 | REST
            NEW_SONG        | back | a step back     | There is nothing to go back to     | NEW_SONG
            NEW_SONG        | hint | helps           | Any words; they stand at its head. | NEW_SONG
            NEW_SONG        | quit | leaves, and keeps your place | Until next time.      | REST
            LONG_ANSWER     |      | shows more      | leaving                            | REST
            LONG_ANSWER     | skip | leaves the rest |                                    | REST
            LONG_ANSWER     | back | a screen back   | exploring                          | LONG_ANSWER
            LONG_ANSWER     | hint | leaves the rest | Type music, such as Am7            | REST
            LONG_ANSWER     | quit | leaves, and keeps your place | Until next time.      | REST
            """;

    private static final String JAVA_LESSON = """
            ---
            title: Forty and two
            grade: 1
            needs: []
            skills: []
            ---

            Before.

            ```code
            int x = 42;
            ```

            After.
            """;

    @TempDir
    private Path home;

    /** One cell. */
    private record Cell(LineMode mode, String typed, String says, String answer, LineMode then) {
        static Cell of(String row) {
            List<String> parts =
                    Arrays.stream(row.split("\\|")).map(String::strip).toList();
            return new Cell(
                    LineMode.valueOf(parts.get(0)),
                    parts.get(1),
                    parts.get(2),
                    parts.get(3),
                    LineMode.valueOf(parts.get(4)));
        }

        String inTheTable() {
            Phrase said = switch (typed) {
                case "skip" -> mode.skip();
                case "back" -> mode.back();
                case "hint" -> mode.hint();
                case "quit" -> LineMode.QUIT;
                default -> mode.enter();
            };
            return said.toString();
        }

        @Override
        public String toString() {
            return mode.where() + ", " + (typed.isEmpty() ? "Enter" : typed);
        }
    }

    static Stream<Cell> cells() {
        return CELLS.lines().map(Cell::of);
    }

    @Test
    @DisplayName("the table is whole: five cells for each mode")
    void theTableIsWhole() {
        TreeSet<String> walked = new TreeSet<>();
        cells().forEach(cell -> walked.add(cell.mode + " " + cell.typed));
        TreeSet<String> all = new TreeSet<>();
        for (LineMode mode : LineMode.values()) {
            List.of("", "skip", "back", "hint", "quit").forEach(word -> all.add(mode + " " + word));
        }
        assertEquals(all, walked);
    }

    /** What leads into a mode; the lines are typed one after the other. */
    private List<String> wayTo(LineMode mode, Sitting sitting) throws IOException {
        switch (mode) {
            case FIRST_QUESTION:
                return List.of("");
            case QUESTION:
                return List.of("ask interval of P5 in C");
            case ANSWERED:
                return List.of("ask interval of P5 in C", "G");
            case RUN:
                return List.of("practise triad-spelling in C");
            case REVIEW:
                Turn turn = new Turn(Skills.find("triad-spelling").orElseThrow(), Key.parse("C"));
                sitting.teaching().runs().review(List.of(turn, turn, turn), 10);
                return List.of("notes");
            case TOLD:
                return List.of("practise ear-interval in C", "m9", "m9");
            case ROUND_PLAYED:
                sitting.stage().take(LiveStrip.none()); // nothing is played, and each round is asked about at once
                return List.of("rehearse C G in C");
            case REHEARSAL:
                return List.of("rehearse C G in C");
            case NO_SOUND:
                return List.of("practise ear-interval in C");
            case SET:
                return List.of("practise");
            case AT_INSTRUMENT:
                return List.of("practise", "", "", "", "", "", "", "", "");
            case LESSON_PAGE:
                return List.of("learn 1.1", "");
            case LESSON_QUESTION:
                return List.of("learn 1.2", "", "", "");
            case CLASS:
                return List.of("present 1.2");
            case CLASS_QUESTION:
                return List.of("present 1.2", "", "", "", "");
            case LESSON_JAVA:
                sitting.outside().take(new Trusted(home, List.of(home.resolve("lessons"))));
                return javaLesson();
            case CONSENT:
                return javaLesson();
            case OPEN_CELL:
                return List.of("int twice(int x) {");
            case NEW_SONG:
                return List.of("song new.md");
            case LONG_ANSWER:
                return List.of("help");
            default:
                return List.of();
        }
    }

    private List<String> javaLesson() throws IOException {
        Path file = home.resolve("lessons/20-numbers/1-forty-and-two.md");
        Files.createDirectories(file.getParent());
        Files.writeString(file, JAVA_LESSON);
        return List.of("learn 20.1");
    }

    @AfterAll
    static void close() {
        SpareCell.close();
    }

    private static boolean needsJava(LineMode mode) {
        return mode == LineMode.OPEN_CELL || mode == LineMode.LESSON_JAVA;
    }

    private Typist typist(LineMode mode) throws IOException {
        boolean isFirst = mode == LineMode.NAMES || mode == LineMode.FIRST_QUESTION;
        int rows = mode == LineMode.LONG_ANSWER ? 12 : 24;
        if (mode == LineMode.NO_SOUND) {
            return new Typist(80, rows, home, new NoCard());
        }
        return isFirst ? Typist.newcomer(80, rows, home) : new Typist(80, rows, home);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cells")
    @DisplayName("each cell does what it says")
    void eachCellDoesWhatItSays(Cell cell) throws IOException {
        assertEquals(cell.says, cell.inTheTable());
        try (Typist typist = typist(cell.mode)) {
            if (needsJava(cell.mode)) {
                SpareCell.lend(typist);
            }
            for (String line : wayTo(cell.mode, typist.sitting())) {
                typist.types(line);
            }
            while (typist.sitting().teaching().rehearsing().isRunning()) {
                typist.pressOn(" ");
            }
            assertEquals(cell.mode, typist.sitting().mode(), typist::screen);
            String said = typist.types(cell.typed);
            assertTrue(said.startsWith(cell.answer), said);
            assertEquals(cell.then, typist.sitting().mode(), said);
            assertEquals(cell.typed.equals("quit"), typist.sitting().hasEnded());
            if (needsJava(cell.mode)) {
                SpareCell.takeBack(typist);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(LineMode.class)
    @DisplayName("so many Enters lead to rest, and none of them counts as an answer")
    void enterTrapsNobody(LineMode mode) throws IOException {
        try (Typist typist = typist(mode)) {
            if (needsJava(mode)) {
                SpareCell.lend(typist);
            }
            LineMode way = mode == LineMode.REHEARSAL ? LineMode.ROUND_PLAYED : mode; // a round takes its time
            for (String line : wayTo(way, typist.sitting())) {
                typist.types(line);
            }
            List<String> said = new ArrayList<>();
            boolean answered = mode == LineMode.ANSWERED || mode == LineMode.TOLD;
            int kept = answered ? 1 : 0;
            do {
                assertTrue(said.size() < 80, () -> "still going on after " + said);
                said.add(typist.types(""));
            } while (typist.sitting().mode() != LineMode.REST && !(mode == LineMode.REST && said.size() > 40));
            assertEquals(kept, typist.sitting().study().knowledge().standings().size());
            assertFalse(typist.sitting().hasEnded());
            if (needsJava(mode)) {
                SpareCell.takeBack(typist);
            }
        }
    }
}
