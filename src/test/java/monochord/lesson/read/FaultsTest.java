package monochord.lesson.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import monochord.lesson.Reading;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every fault a lesson can have, with its whole message. The rules are those of the format's own guide. */
class FaultsTest {
    private static final Path FILE = Path.of("2-my-lesson.md");
    private static final int ROWS = 76;
    private static final Set<String> SLUGS = Set.of("seven-letters", "stacking-thirds");
    private static final String HEAD = "---\ntitle: A test\ngrade: 2\nneeds: []\nskills: [%s]\n---\n";

    private static int rows;

    /** A row that begins with # would vanish unseen. */
    @AfterAll
    static void noRowWasLost() {
        assertEquals(ROWS, rows);
    }

    private static String faults(String text) {
        rows++;
        Reading reading = LessonReader.read(FILE, text, SLUGS);
        return reading.faults().stream()
                .map(Object::toString)
                .peek(fault -> assertTrue(fault.startsWith("2-my-lesson.md:"), fault))
                .map(fault -> fault.substring("2-my-lesson.md:".length()))
                .collect(Collectors.joining(" ¶ "));
    }

    /** Lines are parted by ¶, in the text and between faults. */
    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ---¶title: T¶grade: 1¶needs: []¶skills: []¶---          | ``
            ---¶title: "T: U"¶grade: 1¶needs: [seven-letters]¶skills: []¶--- | ``
            ---¶# a note¶title: T¶¶grade: 1¶needs: []¶skills: []¶---  | ``
            Once upon a time                                        | 1:1: the head is missing; write --- on the first line, below it title, grade, needs and skills, then ---
            ``                                                      | 1:1: the head is missing; write --- on the first line, below it title, grade, needs and skills, then ---
            ---¶title: T¶grade: 1¶needs: []¶skills: []              | 1:1: the head is not closed; write --- on a line of its own below the last field
            ---¶title: T¶grade: 1¶needs: []¶---                     | 1:1: the head has no skills; write skills: [first-skill, second-skill]
            ---¶---                                                 | 1:1: the head has no title; write title: and the name of the lesson ¶ 1:1: the head has no grade; write grade: and a number from 1 to 8 ¶ 1:1: the head has no needs; write needs: [] or needs: [slug-of-a-lesson, slug-of-another] ¶ 1:1: the head has no skills; write skills: [first-skill, second-skill]
            ---¶title: T¶grade: 1¶need: []¶needs: []¶skills: []¶--- | 4:1: unknown field "need"; write needs
            ---¶title: T¶author: O¶grade: 1¶needs: []¶skills: []¶--- | 3:1: unknown field "author"; write one of title, grade, needs, skills
            ---¶title: T¶title: U¶grade: 1¶needs: []¶skills: []¶--- | 3:1: title is said twice; leave one out
            ---¶title: T¶grade: 1¶needs: []¶skills: []¶- steps¶---  | 6:1: this line is no field; write a name, a colon and a value
            ---¶title:¶grade: 1¶needs: []¶skills: []¶---            | 2:7: the title is empty; write title: and the name of the lesson
            ---¶title: In ${key}¶grade: 1¶needs: []¶skills: []¶---  | 2:8: a title is not filled in; write it without ${…}
            ---¶title: T¶grade: 9¶needs: []¶skills: []¶---          | 3:8: the grade "9" is no number from 1 to 8; write for example grade: 3
            ---¶title: T¶grade: easy¶needs: []¶skills: []¶---       | 3:8: the grade "easy" is no number from 1 to 8; write for example grade: 3
            ---¶title: T¶grade: 1¶needs: seven-letters¶skills: []¶--- | 4:8: needs is no list in square brackets; write needs: [] or needs: [slug-of-a-lesson, slug-of-another]
            ---¶title: T¶grade: 1¶needs: [seven-leters]¶skills: []¶--- | 4:9: no lesson is called "seven-leters"; write seven-letters
            ---¶title: T¶grade: 1¶needs: [seven-letters, nowhere]¶skills: []¶--- | 4:24: no lesson is called "nowhere"; write the slug of a lesson in the library, or leave it out
            ---¶title: T¶grade: 1¶needs: [../../etc/passwd]¶skills: []¶--- | 4:9: "../../etc/passwd" is no slug; write the file name without its number and .md
            ---¶title: T¶grade: 1¶needs: [my-lesson]¶skills: []¶---  | 4:9: the lesson needs itself; leave it out
            ---¶title: T¶grade: 1¶needs: []¶skills: [borowed-chord]¶--- | 5:10: unknown skill "borowed-chord"; write borrowed-chord
            ---¶title: T¶grade: 1¶needs: []¶skills: [juggling]¶---  | 5:10: unknown skill "juggling"; write one of {skills}
            ---¶title: T¶grade: 1¶needs: []¶skills: [steps]¶---     | 5:10: steps is listed but never asked; write an ask block, or leave it out
            """)
    void saysWhatIsWrongInTheHead(String text, String expected) {
        assertEquals(withSkills(expected), faults(text.replace('¶', '\n')));
    }

    /** The skills grow in number; that all are named is what counts. */
    private static String withSkills(String expected) {
        return expected.replace(
                "{skills}",
                String.join(", ", Skills.all().stream().map(Skill::id).toList()));
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            `## A heading¶¶Words, *soft* and **loud** and ~code~.¶¶- one¶- two¶  - three¶¶3. four` | ``
            `# Loud`                        | 7:1: a heading with 1 #; write ## for a heading, ### for one below it
            `#### Quiet`                    | 7:1: a heading with 4 #; write ## for a heading, ### for one below it
            Some <b>bold</b> words          | 7:6: HTML is not read; write it in Markdown, or a space after <
            <script>alert(1)</script>       | 7:1: HTML is not read; write it in Markdown, or a space after <
            See [this](http://x.y) page     | 7:5: a link is not followed; write it in words
            And ![this](a.png)              | 7:5: an image is not shown; write it in words
            > He said                       | 7:1: a quotation is not set off; write a paragraph
            One¶¶***¶¶Two                   | 9:1: a rule is not drawn; write a heading, or leave it out
            One¶¶    Two                    | 9:5: an indented block is not read; begin the line at its edge, or write a fence with a word
            - one¶¶  two                    | 9:3: a second paragraph in a list item; write it as an item of its own or below the list
            - 1¶  - 2¶    - 3¶      - 4     | 10:7: a list in a list in a list in a list; write at most three, one in the other
            - one¶  ~~~show¶  V¶  ~~~       | 8:3: a block in a list or a quotation is not read; write the fence at the edge, below the list
            Play ${tonik} now               | 7:6: unknown fill "tonik"; write tonic
            Play **on ${degree b9}**        | 7:11: "b9" is not a degree: expected a number from 1 to 7 at character 2, found '9'; write for example ${degree b6}
            One¶two ${key three             | 8:5: ${ is not closed; write } behind the fill, without another in it
            - from 𝄫 to ${chord}            | 7:13: the fill chord needs to know which; write for example ${chord bVI}
            Hidden &#27;[31m red            | 7:8: the control character U+001B; leave it out
            ~~~python¶x¶~~~                 | 7:4: unknown block "python"; write one of show, listen, compare, tune, ask, code
            ~~~lisen¶I¶~~~                  | 7:4: unknown block "lisen"; write listen
            ~~~¶I¶~~~                       | 7:1: a block without a word; write show, listen, compare, tune, ask or code behind the fence
            ~~~show now¶I¶~~~               | 7:9: more than one word behind the fence; write show alone
            ~~~show¶~~~                     | 7:1: the show block is empty; write a chord, a scale or numerals in it
            ~~~listen¶ ¶~~~                 | 7:1: the listen block is empty; write numerals or a scale in it
            ~~~show¶I                       | 7:1: the block is not closed; write ~~~ on a line below it
            ~~~show¶I¶V¶~~~                 | 9:1: line 2 in a show block; write it in a block of its own
            ~~~compare¶I V¶~~~              | 7:1: a compare block with one line; write a second line to compare it with
            ~~~compare¶1¶2¶3¶4¶5¶6¶7¶1¶2¶~~~ | 16:1: line 9 in a compare block; write it in a block of its own
            ~~~show¶I bVX¶~~~               | 8:5: "bVX" is not a numeral: expected o, ø, +, a figure (6, 64, 7 …), a suffix (maj7, sus4 …), / at character 3, found 'X'; write for example bVImaj7
            ~~~listen¶harmonic minr¶~~~     | 8:1: no scale has this name; write harmonic minor
            ~~~compare¶I¶I H¶~~~            | 9:3: "H" is not a chord: expected a letter from A to G at character 1, found 'H'; write for example Abmaj7
            ~~~code¶int x = 1 < 2;¶~~~      | ``
            """)
    void saysWhatIsWrongInTheText(String text, String expected) {
        assertEquals(expected, faults(HEAD.formatted("") + text.replace('¶', '\n')));
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            skill: steps¶subject: major¶keys: same, then D¶count: 2 | ``
            skill: steps                       | ``
            skill: steps¶subject: major¶answer: w w h w w w h | ``
            skill: stepps                      | 5:10: steps is listed but never asked; write an ask block, or leave it out ¶ 8:8: unknown skill "stepps"; write steps
            subject: major                     | 5:10: steps is listed but never asked; write an ask block, or leave it out ¶ 7:1: the question names no skill; write skill: and one of {skills}
            skill: steps¶key: D                | 9:1: unknown line of a question "key"; write keys
            skill: steps¶skill: steps          | 9:1: skill is said twice; leave one out
            skill: steps¶in D                  | 9:1: this line is no line of a question; write a name, a colon and a value
            skill: steps¶keys:                 | 9:6: keys is empty; write something behind the colon, or leave the line out
            skill: steps¶keys: D, then H       | 9:15: "H" is not a key: expected a key, or same, easy, sharps, flats or all; write for example easy, then E, A, then flats
            skill: steps¶keys: two of mine     | 9:7: "two of mine" is not a key: expected a key, or same, easy, sharps, flats or all; write for example easy, then E, A, then flats
            skill: steps¶count: 40             | 9:8: the count "40" is no number from 1 to 20; write for example count: 4
            skill: steps¶a¶a¶a¶a¶a¶a¶a¶a¶a¶a¶a¶a | 9:1: this line is no line of a question; write a name, a colon and a value ¶ 10:1: this line is no line of a question; write a name, a colon and a value ¶ 11:1: this line is no line of a question; write a name, a colon and a value ¶ 12:1: this line is no line of a question; write a name, a colon and a value ¶ 13:1: this line is no line of a question; write a name, a colon and a value ¶ 14:1: this line is no line of a question; write a name, a colon and a value ¶ 15:1: this line is no line of a question; write a name, a colon and a value ¶ 16:1: this line is no line of a question; write a name, a colon and a value ¶ 17:1: this line is no line of a question; write a name, a colon and a value ¶ 18:1: this line is no line of a question; write a name, a colon and a value ¶ 19:1: this line is no line of a question; write a name, a colon and a value ¶ 20:1: a question of too many lines; write each line once
            skill: steps¶count: 0              | 9:8: the count "0" is no number from 1 to 20; write for example count: 4
            """)
    void saysWhatIsWrongInAQuestion(String lines, String expected) {
        String text = HEAD.formatted("steps") + "```ask\n" + lines.replace('¶', '\n') + "\n```\n";
        assertEquals(withSkills(expected), faults(text));
    }

    /** The degree quality is the one answer an author could write for all keys: the sixth of major is minor. */
    @ParameterizedTest(name = "{0} of {1}, {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            degree-quality | 6      | minor | ``
            degree-quality | 6      | major | 11:9: in D major "major" is not right; write minor, or leave the line out
            degree-quality | 9      | minor | 9:10: "9" is not a degree of the key: expected a number from 1 to 7; write for example 6
            lowered-degree | b6     | Bb    | 11:9: in E major "Bb" is not right; write C, or leave the line out
            """)
    void provesTheAuthorsAnswer(String skill, String subject, String answer, String expected) {
        String ask = "skill: %s\nsubject: %s\nkeys: D, E\nanswer: %s".formatted(skill, subject, answer);
        assertEquals(expected, faults(HEAD.formatted(skill) + "```ask\n" + ask + "\n```\n"));
    }

    @Test
    void findsAllFaultsAtOnce() {
        String text = "---\ntitle: T\ngrade: 0\nneeds: []\nskills: [step]\n---\n# One\n\n${x}\n\n```show\nH\n```\n";
        List<Integer> lines = LessonReader.read(FILE, text, SLUGS).faults().stream()
                .map(fault -> fault.line())
                .toList();
        assertEquals(List.of(3, 5, 7, 9, 12), lines);
    }

    @Test
    void asksForASkillThatTheHeadDoesNotList() {
        String text = HEAD.formatted("") + "```ask\nskill: steps\n```\n```ask\nskill: steps\n```\n";
        assertEquals("7:1: steps is asked but not listed; write steps behind skills: in the head", faults(text));
    }

    @Test
    void stopsCountingAtAHundred() {
        String[] faults = faults(HEAD.formatted("") + "# Loud\n".repeat(300)).split(" ¶ ");
        assertEquals(101, faults.length);
        assertEquals("106:1: there are more faults; put these right and check again", faults[100]);
    }

    @Test
    void refusesBytesThatAreNotUtf8(@TempDir Path folder) throws Exception {
        Path file = Files.write(
                folder.resolve("latin.md"),
                (HEAD.formatted("") + "é\ncaf\u00e9").getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(
                List.of(file + ":7:1: from here on the file is not in UTF-8; save it in the encoding UTF-8"),
                LessonReader.read(file, SLUGS).faults().stream()
                        .map(Object::toString)
                        .toList());
    }

    @Test
    void refusesWhatIsNoFile(@TempDir Path folder) {
        assertEquals(
                folder + ":1:1: this is not a file; name a Markdown file",
                Library.check(folder).faults().get(0).toString());
        Path nowhere = folder.resolve("nowhere.md");
        assertEquals(
                nowhere + ":1:1: there is no such file; name a Markdown file",
                Library.check(nowhere).faults().get(0).toString());
    }

    @Test
    void leavesOutAFaultyBlockAndTeachesTheRest() {
        Reading reading = LessonReader.read(FILE, HEAD.formatted("") + "One\n\n```show\nH\n```\n\nTwo", SLUGS);
        assertEquals(2, reading.lesson().orElseThrow().parts().size());
        assertEquals(1, reading.faults().size());
    }
}
