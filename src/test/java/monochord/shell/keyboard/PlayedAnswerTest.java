package monochord.shell.keyboard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source: arithmetic. Keys are MIDI note numbers, 60 is middle C; spellings as in any harmony primer, right answers as
 * the skills know them.
 */
class PlayedAnswerTest {
    private static List<Integer> keys(String text) {
        return Arrays.stream(text.split(" ")).map(Integer::valueOf).toList();
    }

    private static Question question(String skill, String subject, String key) {
        return Skills.find(skill).orElseThrow().question(Key.parse(key), subject);
    }

    @ParameterizedTest(name = "{0} of {1} in {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            triad-spelling   | Abm              | C  | 56 59 63          | Ab Cb Eb          | RIGHT
            triad-spelling   | Abm              | C  | 59 63 68          | Cb Eb Ab          | REMARK
            triad-spelling   | Abm              | C  | 56 60 63          | Ab C Eb           | NEARLY
            seventh-spelling | Eb7              | C  | 63 67 70 73       | Eb G Bb Db        | RIGHT
            interval         | m6 above E       | C  | 60                | C                 | RIGHT
            lowered-degree   | b6               | E  | 72                | C                 | RIGHT
            borrowed-chord   | bVI              | D  | 58 62 65          | Bb D F            | RIGHT
            borrowed-chord   | bVI              | D  | 46 62 65 70 74    | Bb D F            | RIGHT
            borrowed-chord   | bVI              | D  | 59 62 66          | B D F#            | WRONG
            inversion        | Bb/D             | C  | 62 65 70          | Bb/D              | RIGHT
            inversion        | Bb/D             | C  | 58 62 65          | Bb                | NEARLY
            voicing          | bVI              | C  | 44 60 63 72       | 'Ab2 | C4 Eb4 C5' | RIGHT
            voicing          | I                | C  | 40 60 67          | 'E2 | C4 G4'       | NEARLY
            common-tones     | C Am             | C  | 60 64             | C E               | RIGHT
            """)
    void rightKeysAreARightAnswer(String skill, String subject, String key, String played, String line, Grade grade) {
        Question question = question(skill, subject, key);
        String written = new PlayedAnswer(question)
                .line(new Gesture.KeysTogether(keys(played)))
                .orElseThrow()
                .english();
        assertEquals(grade, question.judge(written).grade(), written);
        assertEquals(line, written);
    }

    @Test
    void aScaleMayGoUpAndDown() {
        Question question = question("scale-spelling", "F# major", "C");
        List<Integer> up = keys("66 68 70 71 73 75 77 78 77 75 73 71 70 68 66");
        String line = new PlayedAnswer(question)
                .line(new Gesture.KeysInTurn(up))
                .orElseThrow()
                .english();
        assertEquals("F# G# A# B C# D# E#", line);
        assertEquals(Grade.RIGHT, question.judge(line).grade());
    }

    @Test
    void aRowOfChordsIsNamedAsTheQuestionWantsIt() {
        Question question = question("progression-in-key", "1 6- 4 5", "Eb");
        PlayedAnswer answer = new PlayedAnswer(question);
        assertEquals(4, answer.rowLength());
        List<String> played = List.of("51 63 67 70", "48 63 67 72", "56 60 63", "58 62 65");
        List<monochord.theory.Chord> row = java.util.stream.IntStream.range(0, 4)
                .mapToObj(i -> answer.inRow(new Gesture.KeysTogether(keys(played.get(i))), i)
                        .orElseThrow())
                .toList();
        String line = answer.line(row).orElseThrow().english();
        assertEquals("Eb Cm Ab Bb", line);
        assertEquals(Grade.RIGHT, question.judge(line).grade());
    }

    /** The key of B flat is called B in German, and Si b in Latin countries. */
    @Test
    void theLineIsTypedInTheLearnersNames() {
        Question question = question("borrowed-chord", "bVI", "D");
        PlayedLine line = new PlayedAnswer(question)
                .line(new Gesture.KeysTogether(keys("58 62 65")))
                .orElseThrow();
        assertEquals("B D F", line.typed(NoteNaming.GERMAN));
        assertEquals("Sib Re Fa", line.typed(NoteNaming.LATIN));
    }

    /** By ear whatever sounds the same is right, so any row of the right keys is. */
    @Test
    void aRowHeardByEarCanBePlayed() {
        Question question = question("ear-progression", "4 1 5 b6", "C");
        PlayedAnswer answer = new PlayedAnswer(question);
        assertEquals(4, answer.rowLength(), question.expected());
        List<String> played = List.of("41 60 65 69", "48 60 64 67", "43 59 62 67", "44 60 63 68");
        List<monochord.theory.Chord> row = java.util.stream.IntStream.range(0, 4)
                .mapToObj(i -> answer.inRow(new Gesture.KeysTogether(keys(played.get(i))), i)
                        .orElseThrow())
                .toList();
        String line = answer.line(row).orElseThrow().english();
        assertEquals(Grade.RIGHT, question.judge(line).grade(), line);
    }

    /** Whatever is played, some line comes of it or none; every skill, its own right and wrong keys. */
    @Test
    void noKeysWhateverBreakAnything() {
        List<String> handfuls =
                List.of("0", "127", "60 61 62", "0 1 2 3 4 5 6 7 8 9 10", "21 108", "60 64 67 71 74 77 81");
        Skills.all()
                .forEach(skill -> skill.keys().stream().limit(3).forEach(key -> {
                    Question question = skill.question(key, 7);
                    for (String handful : handfuls) {
                        new PlayedAnswer(question).line(new Gesture.KeysTogether(keys(handful)));
                        new PlayedAnswer(question).inRow(new Gesture.KeysTogether(keys(handful)), 0);
                    }
                }));
    }

    @ParameterizedTest(name = "in {0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C  | 60 61 62 63 64 65 66 67 68 69 70 71 | C Db D Eb E F F# G Ab A Bb B
            D  | 60 61 62 63 64 65 66 67 68 69 70 71 | C C# D Eb E F F# G G# A Bb B
            Am | 56 64 71                            | G# E B
            C  | 52 56 59                            | E G# B
            C  | 54 58 61 64                         | F# A# C# E
            Eb | 56 59 63                            | Ab Cb Eb
            """)
    void keysAreSpelledInTheKeyAndChordsByTheirNames(String key, String played, String expected) {
        Spelling spelling = new Spelling(Key.parse(key));
        List<Integer> keys = keys(played);
        List<NoteName> names =
                keys.size() == 12 ? keys.stream().map(spelling::name).toList() : spelling.names(keys);
        assertEquals(expected, names.stream().map(NoteName::toString).collect(Collectors.joining(" ")));
        List<Integer> back = Spelling.pitches(names, keys).stream()
                .map(monochord.theory.note.Pitch::midiNumber)
                .toList();
        assertEquals(keys, back);
    }

    @Test
    void theVeryLowestKeyCanBeWrittenInEveryKey() {
        for (Key key : Key.majorKeys()) {
            List<Integer> lowest = List.of(0, 1, 127);
            Spelling spelling = new Spelling(key);
            assertEquals(
                    lowest,
                    Spelling.pitches(spelling.names(lowest), lowest).stream()
                            .map(monochord.theory.note.Pitch::midiNumber)
                            .toList());
        }
    }
}
