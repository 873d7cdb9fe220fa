package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Help starts where a wrong answer stands: what of it is right, then the step that failed. Read one by one; common practice,
 * no source.
 */
class HelpFromAnswersTest {
    /** A stop or question mark in front of a letter, two blanks, no capital at the start, no stop at the end. */
    private static final Pattern BROKEN = Pattern.compile(
            "[a-z♭♯)][.?!][A-Za-z♭♯]|  |^(?![iv]+[°ø]?\\d* )[a-z]|[^.?!:]$|[.?!] (?![iv]+[°ø]?\\d* )[a-z]|null|\\{\\d|\\.\\.");

    private static Stream<Question> questions() {
        return Skills.all().stream()
                .flatMap(skill -> Thorough.spread(
                                Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                                        .toList(),
                                3,
                                Skills.all().indexOf(skill))
                        .stream()
                        .flatMap(key -> skill.subjects(key).stream().map(subject -> skill.question(key, subject))));
    }

    @ParameterizedTest(name = "{0} of {1} in C, to {2}: {3}")
    @CsvSource(delimiter = '~', textBlock = """
            interval        ~ C E              ~ m3                 ~ The number is right. Now count the half steps, the lower note as nought. ~ A minor third is narrower than that. ~ A minor third has three half steps; how many more or fewer are there here?
            interval        ~ C D#             ~ minor third        ~ The half steps are right. Now count the letters, both ends included. ~ A minor third would be three letters. ~ Letters C D, and three half steps: put a name to both.
            borrowed-source ~ bVI              ~ Eb major           ~ Its notes hold the chord, that is right. Now begin them on C. ~ From outside the key: ♭3 and ♭6. ~ On C you need a scale with ♭3 and ♭6 and as few other changes as can be.
            borrowed-source ~ bVI              ~ dorian             ~ The tonic is right, and C and E♭ are in C dorian. Look at the other notes of the chord. ~ From outside the key: ♭3 and ♭6. ~ On C you need a scale with ♭3 and ♭6 and as few other changes as can be.
            motion          ~ C3 G4 | D3 F4  ~ similar            ~ Both move, that is right. Now which way each goes. ~ The lowest goes up from C3 to D3. ~ The lowest goes up from C3 to D3, the highest goes down from G4 to F4.
            motion          ~ C3 E4 | C3 G4  ~ similar            ~ One of the two moves, that is right. Does the other? ~ The lowest stays on C3. ~ The lowest stays on C3, the highest goes up from E4 to G4.
            melody-fit      ~ 4 over I         ~ clash              ~ F is none of the tones of C, that is right. Now see where the tune goes from it. ~ It falls to E. Is that a tone of C? ~ C is C E G. A note that gives way to a tone of the chord is one thing; one that stays and rubs is another.
            melody-fit      ~ 2 over bVII      ~ colour             ~ Spell B♭ to its end, and look for D, accidental and all. ~ B♭ is B♭ D F. ~ B♭ is B♭ D F. Is D among them?
            melody-fit      ~ mend 6 over iv   ~ D                  ~ D is no tone of Fm. Spell the chord. ~ Fm is F A♭ C. ~ Which of them lies a half step or a whole step from A?
            next-chord      ~ V                ~ G                  ~ G can stay as it is, but then nothing moves: take another root. ~ G is G B D. Which of them wants to move by a half step? ~ Let the root fall: count a fifth down from G, and see what stands there in C major.
            voicing         ~ V7               ~ G2 B2 | D4 F4 B4 ~ Every note of G7 is there. More than one thing is off; begin with the first. ~ G2 and B2 are too close for so low a place and will sound muddy. Move them up, or apart. ~ An octave or a fifth sounds clear down there; put thirds above C3.
            degree-quality  ~ 7                ~ minor              ~ The third is right. Now the fifth. ~ The notes are B D F. ~ From B up to F: seven half steps, or fewer or more?
            ear-interval    ~ M3               ~ m3                 ~ The number is right. There are two of these, a half step apart. ~ Sing the one you named and then what sounds: does it give way up or down? ~ It is the wider one.
            ear-quality     ~ minor            ~ dim                ~ The third is right. Listen to the fifth. ~ Sing the root, then what lies above it, one note at a time. ~ A perfect fifth rests; does this one?
            ear-progression ~ I IV V I         ~ 1 2 5 1            ~ The first chord is right. Listen to the next. ~ Sing the tonic, C, then that bass note, and count up to it. ~ The bass is not D: does it lie higher or lower?
            """)
    void helpFromThere(String skill, String subject, String answer, String first, String second, String third) {
        Question question = Asked.question(skill, subject, "C");
        assertEquals(List.of(first, second, third), Asked.words(question.hintsFrom(answer)));
    }

    @Test
    @DisplayName("there are three steps of help from every wrong answer, and none says the whole right one")
    void threeStepsThatDoNotTell() {
        Map<String, String> first = new LinkedHashMap<>();
        List<Integer> steps = new ArrayList<>();
        questions()
                .forEach(question -> question.mistakes().forEach(mistake -> {
                    List<String> help = Asked.words(question.hintsFrom(mistake.answer()));
                    steps.add(help.size());
                    help.stream()
                            .filter(step -> !question.isByEar() && Giveaway.isIn(step, question))
                            .forEach(step -> first.putIfAbsent(
                                    question.skillId() + mistake.misconception(),
                                    question + " " + mistake + ": " + step));
                }));
        assertEquals(List.of(), List.copyOf(first.values()));
        assertTrue(steps.size() > 2000, "only " + steps.size());
        assertEquals(List.of(3), steps.stream().distinct().toList());
    }

    @Test
    @DisplayName("all that is said about a question is whole sentences")
    void wholeSentences() {
        Map<String, String> broken = new LinkedHashMap<>();
        questions().forEach(question -> {
            List<String> said = new ArrayList<>(
                    List.of(question.prompt().toString(), question.derivation().toString()));
            said.addAll(Asked.words(question.hints()));
            question.mistakes().forEach(mistake -> {
                said.add(question.judge(mistake.answer()).message().toString());
                said.addAll(Asked.words(question.hintsFrom(mistake.answer())));
            });
            said.add(question.judge(question.expected()).message().toString());
            said.stream()
                    .filter(text -> BROKEN.matcher(text).find())
                    .forEach(text -> broken.putIfAbsent(
                            question.skillId() + text.replaceAll("[^a-z ]|\\b[a-g]\\b", ""), question + ": " + text));
        });
        assertEquals(List.of(), List.copyOf(broken.values()));
    }
}
