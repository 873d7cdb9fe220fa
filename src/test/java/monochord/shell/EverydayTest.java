package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.course.Course;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.shell.playback.Ear;
import monochord.shell.sentence.Everyday;
import monochord.shell.sitting.Sitting;
import monochord.shell.sitting.Teaching;
import monochord.shell.verb.Verbs;
import monochord.theory.Key;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Newcomers say what people say; from wherever they stand they are shown the next step. */
class EverydayTest {
    private static final String WAYS =
            " Type what you think, or: hint helps a step, tell shows the answer, skip leaves it.";
    private static final String IDLE =
            "Type music, such as Am7, F C G or D major, and see what it is; play F C G sounds it."
                    + " lessons lists what can be learnt, help all the rest.";
    private static final String LESSON =
            "A lesson is open: Enter goes on with it. play hears the last example again, help lists what else there is.";
    private static final String NAMES = "If you call the white keys A B C D E F G, press Enter."
            + " If one of them is H to you, type german; if they are La Si Do, type latin.";

    @TempDir
    private Path home;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            exit                        | LEAVES
            Good bye!                   | LEAVES
            I want to stop.             | LEAVES
            next please                 | NEXT
            go on                       | NEXT
            OK                          | AGREES
            yes                         | AGREES
            I don't know                | LOST
            i dont know...              | LOST
            idk                         | LOST
            help me                     | LOST
            I’m stuck!                  | LOST
            I give up                   | GIVES_UP
            show me the answer          | GIVES_UP
            what is the answer?         | GIVES_UP
            what?                       | PUZZLED
            ???                         | PUZZLED
            What should I type          | PUZZLED
            i dont understand this      | PUZZLED
            no                          | PUZZLED
            whats a half step           | TALKS
            I play guitar in a band     | TALKS
            can you play it             | TALKS
            """)
    void areUnderstood(String line, Everyday meaning) {
        assertEquals(Optional.of(meaning), Everyday.in(line));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"F C G", "IV I V", "i iv V i", "do re mi", "chords", "Abmaj7", "cat", "kyes", "whole half", "is"})
    void otherLinesAreNone(String line) {
        assertEquals(Optional.empty(), Everyday.in(line));
    }

    /** Guard: that {@code LineReading.answer} asks the host only where the question cannot read a line. */
    @Test
    @DisplayName("no answer to a question is mistaken for one of them")
    void noAnswerIsMistaken() {
        Sitting sitting = new Sitting(Ear.silent(), () -> 7, home, new Course(home));
        sitting.startInteractive();
        LineReading reading = new LineReading(new Verbs(), sitting);
        long asked = 0;
        for (Skill skill : Skills.all()) {
            for (Key key : List.of(Key.parse("D"), Key.parse("Cb"), Key.parse("Eb minor"))) {
                for (String subject : skill.subjects(key)) {
                    Question question = skill.question(key, subject);
                    sitting.teaching().ask(skill, question);
                    reading.read(question.expected());
                    assertFalse(sitting.question().isOpen(), question::toString);
                    asked++;
                }
            }
        }
        assertTrue(asked > 500, "asked " + asked);
    }

    @Test
    @DisplayName("in the middle of the first questions")
    void atTheFirstQuestions() throws IOException {
        try (Typist typist = Typist.newcomer(80, 24, home)) {
            assertEquals(NAMES, typist.types("what?"));
            assertEquals(NAMES, typist.types("yes"));
            assertTrue(typist.types("I dont know").startsWith("Can you name a major scale?"));
            String again = "Spell D major, from D. Type what you think; Enter passes it.";
            assertEquals(again, typist.types("yes"));
            assertEquals(again, typist.types("what do you mean?"));
            assertTrue(typist.types("help me").startsWith("Then we begin at the beginning"));
        }
    }

    @Test
    @DisplayName("in a lesson, between questions and at one")
    void inALesson() throws IOException {
        try (Typist typist = Typist.newcomer(80, 24, home)) {
            typist.types("learn 1.1");
            assertEquals(LESSON, typist.types("huh?"));
            assertTrue(typist.types("whats a half step").startsWith("A half step leads to the very next key"));
            assertEquals("Questions in words are beyond me. " + LESSON, typist.types("whats the weather like"));
            assertTrue(typist.types("ok").startsWith("Walk up"));
            String question = typist.types("next");
            assertTrue(question.startsWith("Walk up one octave of C major."), question);
            String put = question.replace(" Question 1 of 9. Enter passes it.", "");
            assertEquals(put + WAYS, typist.types("what?"));
            assertEquals(put + WAYS, typist.types("ok"));
            String lost = typist.types("i dont know");
            assertTrue(lost.endsWith(" hint helps a step further, tell shows the answer, skip leaves it."), lost);
            assertTrue(typist.types("I give up").contains("whole"));
        }
    }

    @Test
    @DisplayName("before a room: next is Enter, and an answer is an answer")
    void inARoom() throws IOException {
        try (Typist typist = new Typist(80, 24, home)) {
            typist.types("present 1.2");
            Teaching room = typist.sitting().teaching();
            for (int steps = 0; room.roomQuestion().isEmpty() && steps < 30; steps++) {
                String said = typist.types("next");
                assertFalse(said.contains("Noted."), said);
            }
            String right = room.roomQuestion().orElseThrow().expected();
            assertEquals("Noted. Another answer, or Enter for the verdict.", typist.types(right));
            String told = typist.types("next please");
            assertTrue(told.startsWith(right + ": Yes"), told);
        }
    }

    @Test
    @DisplayName("with nothing open")
    void withNothingOpen() throws IOException {
        try (Typist typist = new Typist(80, 24, home)) {
            assertEquals(IDLE, typist.types("what can I do?"));
            assertEquals(IDLE, typist.types("thanks"));
            assertEquals(
                    "\"chords\" is neither music nor a word I know. Type music, such as F C G, IV I V, Abmaj7 or D"
                            + " major, or one of the words that help lists.",
                    typist.types("chords"));
            assertTrue(typist.types("yes").startsWith("1.1 Steps and half steps"));
        }
    }

    @Test
    @DisplayName("who is not sure of an answer or a chord puts a question mark behind it")
    void aQuestionMarkDoesNoHarm() throws IOException {
        try (Typist typist = new Typist(80, 24, home)) {
            assertTrue(typist.types("C major?").startsWith("C major C D E F G A B"));
            typist.types("ask borrowed-chord of bVI in D");
            assertTrue(typist.types("Bb?").startsWith("Yes: B♭, which is B♭ D F."));
        }
    }

    @Test
    @DisplayName("Enter leaves a question whatever was typed to it, and what helps is said")
    void whatEnterDoesIsSaid() throws IOException {
        try (Typist typist = new Typist(80, 24, home)) {
            assertTrue(typist.types("ask borrowed-chord of bVI in D").endsWith(" Enter leaves it."));
            String said = typist.types("qqq");
            assertTrue(said.endsWith(" Try again, or: hint, tell."), said);
            assertTrue(typist.types("B").endsWith(" Try again, or: hint, why, tell."));
            assertTrue(typist.types("").startsWith("We leave it."));
        }
    }

    @Test
    void exitLeaves() throws IOException {
        try (Typist typist = new Typist(80, 24, home)) {
            typist.types("ask borrowed-chord of bVI in D");
            assertEquals("Until next time.", typist.types("exit"));
        }
    }

    @Test
    @DisplayName("a pipe and a command line are answered as before")
    void scriptsAreNotTalkedTo() {
        assertTrue(new Run.Outside().atHome(home).run("yes").message(2).contains("neither music nor a word I know"));
    }
}
