package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import monochord.Growth;
import monochord.Thorough;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A text that cannot be read never counts as wrong, and says what would be read. */
class UnreadableAnswersTest {
    private static final int ANSWERS = Thorough.times(12_000, 1_000_000);
    private static final List<String> PIECES = List.of(
            "A",
            "B",
            "C",
            "D",
            "E",
            "F",
            "G",
            "a",
            "b",
            "c",
            "d",
            "e",
            "f",
            "g",
            "H",
            "#",
            "♭",
            "♯",
            "𝄫",
            "𝄪",
            "♮",
            "x",
            "m",
            "maj",
            "min",
            "dim",
            "aug",
            "sus",
            "7",
            "6",
            "9",
            "b5",
            "°",
            "ø",
            "o",
            "+",
            "-",
            "–",
            "/",
            "|",
            ",",
            " ",
            "  ",
            "1",
            "2",
            "3",
            "4",
            "5",
            "0",
            "½",
            ".",
            "%",
            "(",
            ")",
            "I",
            "V",
            "iv",
            "vii",
            "N6",
            "Ger65",
            "W",
            "H",
            "whole",
            "half",
            "flat",
            "sharp",
            "natural",
            "the",
            "is",
            "and",
            "sharps",
            "flats",
            "none",
            "minor",
            "major",
            "C minor",
            "relative",
            "third",
            "perfect",
            "sixth",
            "double ",
            "\t",
            "\n",
            "\u0000",
            "\u001b[2J",
            "é",
            "漢",
            "😀",
            "\ud83d");

    @ParameterizedTest(name = "{0} of {1} cannot read \"{2}\"")
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            borrowed-chord | bVI | hm | "hm" is not a chord symbol or a row of notes: notes are the letters A to G with b or #, and a symbol begins with one. Example: Ebm.
            borrowed-chord | bVI | bVI | "bVI" is not a chord symbol or a row of notes: it says the degree; name the chord that stands there. Example: Ebm.
            triad-spelling | Cm | Cm | "Cm" is not a row of notes: that is the name of the chord; spell it, root first. Example: Eb G Bb.
            triad-spelling | Ebm | '' | "" is not a row of notes: nothing is written. Example: Eb G Bb.
            scale-spelling | major | C D H | "H" is not a note: notes are the letters A to G with b or #. Example: G A B C D E F#.
            lowered-degree | b6 | A B | "A B" is not a note: one note is asked for, and several stand here. Example: F#.
            lowered-degree | b6 | Abbbbbb | "Abbbbbb" is not a note: no note has so many accidentals. Example: F#.
            degree-quality | 2 | sad | "sad" is not a quality: one word is enough. Example: major, minor, diminished or augmented.
            degree-quality | 2 | Em | "Em" is not a quality: the chord here stands on D. Example: major, minor, diminished or augmented.
            key-signature | major | 8 sharps | "8 sharps" is not a key signature: no more than seven signs are printed. Example: 2 sharps.
            key-signature | major | F C | "F C" is not a key signature: each note in it takes a sharp or a flat. Example: 2 sharps.
            interval | C G | tritone | "tritone" is not one interval: it may be an augmented fourth or a diminished fifth. Example: minor third.
            steps | major | up up | "up" is not a step: W is a whole step, H a half step, 3 three half steps. Example: W H W W.
            progression-in-key | 1 4 | 1 4 | "1 4" is not a row of chord names: those are numbers; name the chords. Example: Eb Cm Ab Bb.
            progression-numbers | 1 4 | C F | "C F" is not a row of numbers: those are chord names; give their degrees. Example: 1 6- 4 5.
            borrowed-source | bVI | whatever | "whatever" is not a scale: say minor, mixolydian or another, with its tonic or without. Example: dorian.
            chord-degree | 6 | Am | "Am" is not a numeral or a number: it begins like the name of a chord; say the degree. Example: bVII.
            """)
    void saysWhatWouldBeRead(String skill, String subject, String answer, String message) {
        Verdict verdict = Asked.verdict(skill, subject, "C", answer);
        assertEquals(message, verdict.message().toString());
        assertEquals(Grade.UNREADABLE, verdict.grade());
        assertNull(verdict.misconception());
    }

    @Test
    @DisplayName("the example is never the answer itself")
    void theExampleIsNotTheAnswer() {
        Verdict verdict = Asked.verdict("triad-spelling", "Eb", "C", "?");
        assertTrue(
                verdict.message().toString().endsWith("Example: D F# A."),
                () -> verdict.message().toString());
    }

    @Test
    @DisplayName("nothing, a missing text and a very long one are unreadable, in due time")
    void emptyAndEndless() {
        for (Skill skill : Skills.all()) {
            Question question = skill.question(Key.parse("Eb"), 1);
            for (String text : new String[] {null, "", "   ", "the", "C ".repeat(1000), "b".repeat(1000)}) {
                Verdict verdict = question.judge(text);
                assertEquals(Grade.UNREADABLE, verdict.grade());
                assertTrue(
                        verdict.message().toString().length() < 250,
                        () -> verdict.message().toString());
            }
            for (String piece : List.of("C ", "b")) {
                Growth.assertLinear(
                        skill.id() + " answered " + piece,
                        Thorough.times(20_000, 1_000_000),
                        length -> piece.repeat(length / piece.length()),
                        text -> assertEquals(
                                Grade.UNREADABLE, question.judge(text).grade()));
            }
        }
    }

    @Test
    @DisplayName("many seeded answers are judged, whatever they say")
    void anyAnswer() {
        List<Question> questions = new ArrayList<>();
        for (Skill skill : Skills.all()) {
            for (String key : List.of("C", "A", "Gb", "C#", "F minor")) {
                skill.subjects(Key.parse(key))
                        .forEach(subject -> questions.add(skill.question(Key.parse(key), subject)));
            }
        }
        SplittableRandom random = new SplittableRandom(20240607);
        int[] grades = new int[Grade.values().length];
        for (int i = 0; i < ANSWERS; i++) {
            Question question = questions.get(random.nextInt(questions.size()));
            String text = text(random);
            Verdict verdict = judged(question, text);
            assertNotNull(verdict.message().toString());
            grades[verdict.grade().ordinal()]++;
        }
        assertTrue(grades[Grade.WRONG.ordinal()] > ANSWERS / 100 && grades[Grade.UNREADABLE.ordinal()] > ANSWERS / 100);
    }

    private static Verdict judged(Question question, String text) {
        try {
            return question.judge(text);
        } catch (RuntimeException e) {
            throw new AssertionError(question + " with \"" + text + "\"", e);
        }
    }

    private static String text(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        int pieces = 1 + random.nextInt(random.nextInt(8) == 0 ? 30 : 6);
        for (int i = 0; i < pieces; i++) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.toString();
    }
}
