package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.course.Course;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.theory.Key;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.StrictJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every verb in many keys and looks, thoroughly in every one: nothing too wide, nothing that is not ASCII where ASCII was asked for. */
class EveryKeyTest {
    private static final Course OURS = new Course(Run.OUR_LESSONS);
    private static final Verbs VERBS = new Verbs();

    private static final List<String> SENTENCES = List.of(
            "key",
            "show I",
            "show major",
            "show harmonic minor",
            "show IV I V bVI V I",
            "show viio7/V bIImaj7 V13#11 I",
            "show I, III, V",
            "numeral bVI",
            "numeral bVImaj7",
            "numeral Ger65",
            "numeral V7/V",
            "borrow",
            "borrow phrygian",
            "after V",
            "after bVI",
            "after viiø7",
            "motion IV I V bVI V I",
            "voice IV I V bVI V I",
            "voice IV I V bVI V I spread",
            "fit E4:2 D4 C4 Bb4 over IV bVI I",
            "recolour IV I V vi V I",
            "key of IV I V bVI V I IV I",
            "key of E4:2 D4 C4 Bb4 | Ab4:2 Bb4:2 | C5:4 over I bVI",
            "harmonise | E4:2 D4 C4 | F#4:2 G4:2 | C5:4 |",
            "harmonise IV I under Ab",
            "name C Eb Gb Bbb",
            "transpose IV I V bVI to F#",
            "transpose IV bVI for alto sax",
            "play IV I V bVI V I at 84",
            "play",
            "keys",
            "tempo 96",
            "patch electric piano 1 left",
            "compare IV I V I vs IV I V bVI",
            "compare",
            "bank",
            "note G stays where it is.",
            "save",
            "open nothing.md",
            "replay nothing.md",
            "publish nothing.md --html nothing.html",
            "ask borrowed-chord",
            "hint",
            "hint",
            "hint",
            "x",
            "why",
            "Cb",
            "why",
            "tell",
            "ask scale-spelling",
            "skip",
            "ask progression-in-key",
            "lessons",
            "skills",
            "learn 5.2",
            "",
            "tell",
            "present 1.1",
            "",
            "back",
            "skip",
            "hear interval",
            "hear",
            "m9",
            "why",
            "tell",
            "hear quality",
            "13#11",
            "hear progression in Cb",
            "1 2 3 4",
            "bVI bVI bVI bVI",
            "hear dictation in F#",
            "hint",
            "hint",
            "tell",
            "practise ear-quality",
            "aug",
            "skip",
            "practise interval",
            "skip",
            "review",
            "progress",
            "help music",
            "notes german",
            "notes",
            "notes english",
            "help writing",
            "help ears",
            "help hands",
            "help",
            "check nothing.md",
            "stop",
            "sheet chords",
            "assign degree-chord",
            "mark nothing.md",
            "class",
            "bass IV I V I",
            "rehearse keys F Bb Eb",
            "settings",
            "answers",
            "doctor",
            "bass walking F C G C",
            "chart IV I V bVI",
            "song",
            "change 1",
            "undo",
            "quit",
            "4 1 5 b6",
            "\u266d\u266fé漢 \uD83C\uDFB9");

    static Stream<Key> keys() {
        return Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream());
    }

    @Test
    void thereAreThirtyKeysAndEveryVerbIsTried() {
        assertEquals(30, keys().count());
        VERBS.words()
                .forEach(verb ->
                        assertTrue(SENTENCES.stream().anyMatch(sentence -> sentence.split(" ")[0].equals(verb)), verb));
    }

    static List<Key> tried() {
        return Thorough.spread(keys().toList(), 8, 0);
    }

    @ParameterizedTest
    @MethodSource("tried")
    void answersKeepToTheWidthAndToTheSigns(Key key) {
        Sitting sitting = new Sitting(Ear.silent(), () -> 7, Path.of(""), OURS.afresh());
        sitting.settle(key);
        LineReading reading = new LineReading(VERBS, sitting);
        int turn = keys().toList().indexOf(key);
        for (String sentence : SENTENCES) {
            Answer answer = reading.read(sentence);
            Looks.check(sentence + " in " + key, answer, Thorough.spread(Looks.ALL, 3, turn++));
            StrictJson.object(json(answer));
        }
    }

    private static String json(Answer answer) {
        Json json = new Json();
        answer.json(json);
        return json.toString();
    }

    /** An answer in several looks. */
    static final class Looks {
        /** Three widths, all signs, in pictures and in words. */
        static final List<Look> ALL = IntStream.of(20, 40, 80)
                .boxed()
                .flatMap(width -> Signs.values().stream()
                        .flatMap(signs -> Stream.of(false, true).map(plain -> new Look(width, signs, plain, false))))
                .toList();

        private Looks() {}

        static void check(String what, Answer answer, List<Look> looks) {
            looks.forEach(look -> check(what, Ansi.of(answer.text(look), Look.ofPipe()), look.width(), look.signs()));
        }

        private static void check(String what, String shown, int width, Signs signs) {
            Optional<String> wide =
                    shown.lines().filter(line -> columns(line) > width).findFirst();
            assertFalse(wide.isPresent(), () -> what + " is wider than " + width + ": " + wide);
            boolean clean = shown.chars().allMatch(c -> c == '\n' || !Character.isISOControl(c));
            assertTrue(clean, () -> what + " holds control characters: " + shown);
            boolean ascii = !signs.isAscii() || shown.chars().allMatch(c -> c < 0x7F);
            assertTrue(ascii, () -> what + " is not ASCII: " + shown);
        }

        private static int columns(String line) {
            return line.codePoints()
                    .map(c -> Character.isIdeographic(c) || c > 0x1F000 ? 2 : 1)
                    .sum();
        }
    }
}
