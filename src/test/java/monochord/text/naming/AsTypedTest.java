package monochord.text.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import monochord.course.JudgedAnswer;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AsTypedTest {
    private static final List<String> KINDS = List.of(
            "",
            "m",
            "dim",
            "aug",
            "sus4",
            "sus2",
            "5",
            "7",
            "m7",
            "maj7",
            "6",
            "m6",
            "m7b5",
            "dim7",
            "m(maj7)",
            "7sus4",
            "9",
            "maj9",
            "add9",
            "m(add9)",
            "6/9",
            "11",
            "13",
            "7b9",
            "7#9",
            "(b5)",
            "7b5",
            "7(b9,#11)",
            "add4",
            "add2");

    /** Source: for the names, see {@link NoteNaming}; the lines are ours. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            h d fis | B d F#
            B, es und as        | Bb, Eb und Ab
            H7/Fis - Em         | B7/F# - Em
            Asus4 Assus4 Esus4  | Asus4 Absus4 Esus4
            Es-Dur, h-moll      | Eb major, B minor
            b                   | Bb
            b6 bVI b7           | b6 bVI b7
            4 1 5 b6 in B       | 4 1 5 b6 in Bb
            Bb F# Eb            | Bb F# Eb
            Es4:2 H3 B2         | Eb4:2 B3 Bb2
            Heses fisis         | Bbb F##
            C7(b9,#11)/B        | C7(b9,#11)/Bb
            songs/B.mid as.wav  | songs/B.mid as.wav
            """)
    void readsGerman(String typed, String english) {
        assertEquals(english, AsTyped.of(typed, NoteNaming.GERMAN).english());
    }

    /** Source: for the names, see {@link NoteNaming}; the lines are ours. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            do mi sol                | C E G
            si♭ ré fa                | Bb D F
            si bémol, mi bemol       | Bb, Eb
            fa dièse, do doble sostenido | F#, C##
            Sib7 Lam7 Fa#m7b5 Do     | Bb7 Am7 F#m7b5 C
            la menor, Do mayor       | A minor, C major
            re mineur                | D minor
            4 1 5 b6 in la♭          | 4 1 5 b6 in Ab
            Eb G Bb                  | Eb G Bb
            Dosus4/Sol               | Csus4/G
            """)
    void readsLatin(String typed, String english) {
        assertEquals(english, AsTyped.of(typed, NoteNaming.LATIN).english());
    }

    @Test
    @DisplayName("every kind of chord on every root over every bass is read as it is written")
    void readsChordsAsTheyAreWritten() {
        int read = 0;
        for (Signs signs : Signs.values()) {
            for (int fifths : IntStream.rangeClosed(-15, 15).toArray()) {
                for (String kind : KINDS) {
                    Chord chord = Chord.parse(NoteName.at(fifths) + kind);
                    Chord slash = chord.over(NoteName.at(fifths / 2));
                    String both = chord.write(signs) + " " + slash.write(signs);
                    String english = AsTyped.of(both, signs.naming()).english();
                    String[] words = english.split(" ");
                    assertEquals(chord, Chord.parse(words[0]), both);
                    assertEquals(slash, Chord.parse(words[1]), both);
                    read++;
                }
            }
        }
        assertTrue(read > 5000, "only " + read);
    }

    @Test
    @DisplayName("the answer to every question in every key is right by any names")
    void judgesRightAnswersRight() {
        int asked = 0;
        for (NoteNaming naming : NoteNaming.values()) {
            for (Skill skill : Skills.all()) {
                for (Key key : skill.keys()) {
                    for (String subject : skill.subjects(key)) {
                        Question question = skill.question(key, subject);
                        String typed = InProse.of(question.expected(), Signs.MUSIC.with(naming));
                        Grade grade = JudgedAnswer.of(typed, question, naming)
                                .verdict()
                                .grade();
                        assertEquals(Grade.RIGHT, grade, () -> naming + ", " + question + ": " + typed);
                        asked++;
                    }
                }
            }
        }
        assertTrue(asked > 6000, "only " + asked);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Fis Q    | '"Fis Q" is not a row: expected a chord at character 5, found ''Q'''
            Q fis as | '"Q fis as" is not a row: expected a chord at character 1, found ''Q'''
            """)
    void quotesWhatWasTyped(String typed, String refusal) {
        AsTyped heard = AsTyped.of(typed, NoteNaming.GERMAN);
        int place = heard.english().indexOf('Q');
        Unreadable unreadable = Unreadable.at(heard.english(), place, "a row", "a chord", "F");
        assertEquals(refusal + ". Example: F", heard.restored(unreadable).getMessage());
        assertEquals(refusal + ". Example: F", heard.restored(unreadable).getMessage());
        assertEquals(typed.indexOf('Q'), heard.restored(unreadable).place());
        assertEquals(typed.indexOf('Q'), heard.typedPlace(place));
    }

    @Test
    void quotesAPart() {
        AsTyped heard = AsTyped.of("show Fis Esq", NoteNaming.GERMAN);
        assertEquals("show F# Esq", heard.english());
        Unreadable part = assertThrows(Unreadable.class, () -> Chord.parse("Esq"));
        assertTrue(heard.restored(part).getMessage().startsWith("\"Esq\" is not a chord: "), part.getMessage());
        String restored = heard.restored(part.within(heard.english(), 8)).getMessage();
        assertTrue(restored.startsWith("\"Esq\" is not a chord: "), restored);
    }
}
