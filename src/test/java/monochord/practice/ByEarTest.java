package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.practice.Excerpt.Moment;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import monochord.theory.Pitch;
import monochord.theory.Unreadable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Questions for the ear: what sounds, what is right, and what is said.
 *
 * <p>Sources: half steps of intervals and chords, Open Music Theory (2014), pages "intervals", "triads" and
 * "seventhChords"; bass first, then the quality, the same book on dictation; what an interval or a chord feels like,
 * common practice, no source.
 */
class ByEarTest {
    private static final List<String> SKILLS = List.of("ear-interval", "ear-quality", "ear-progression");

    private static Question asked(String skill, String subject, String key, long seed) {
        return Skills.find(skill).orElseThrow().question(Key.parse(key), subject, seed);
    }

    private static List<Moment> heard(Question question) {
        return question.heard().orElseThrow().body();
    }

    private static List<Integer> keys(Moment moment) {
        return moment.pitches().stream().map(Pitch::midiNumber).toList();
    }

    @ParameterizedTest(name = "{0} sounds {1} half steps apart, {2}")
    @CsvSource({
        "m2, 1, up",
        "M2, 2, up",
        "m3, 3, up",
        "M3, 4, up",
        "P4, 5, up",
        "tritone, 6, up",
        "P5, 7, up",
        "m6, 8, up",
        "M6, 9, up",
        "m7, 10, up",
        "M7, 11, up",
        "P8, 12, up",
        "M10, 16, up",
        "m6 down, 8, down",
        "-P4, 5, down",
        "minor third together, 3, together",
        "tritone together, 6, together",
        "d5 down, 6, down"
    })
    void intervalsSoundAsFarApartAsTheyAre(String subject, int halfSteps, String manner) {
        for (Key key : Key.majorKeys()) {
            for (long seed = 0; seed < 20; seed++) {
                List<Moment> heard =
                        heard(Skills.find("ear-interval").orElseThrow().question(key, subject, seed));
                List<Integer> all =
                        heard.stream().flatMap(moment -> keys(moment).stream()).toList();
                assertEquals(2, all.size());
                assertEquals(manner.equals("together") ? 1 : 2, heard.size());
                assertEquals(manner.equals("down") ? -halfSteps : halfSteps, all.get(1) - all.get(0));
                assertTrue(all.stream().allMatch(note -> note >= 50 && note <= 84), all::toString);
            }
        }
    }

    @ParameterizedTest(name = "{0}: {1} half steps above the lowest note")
    @CsvSource({
        "major, 0 4 7",
        "minor, 0 3 7",
        "diminished, 0 3 6",
        "augmented, 0 4 8",
        "sus4, 0 5 7",
        "sus2, 0 2 7",
        "7, 0 4 7 10",
        "maj7, 0 4 7 11",
        "m7, 0 3 7 10",
        "half-diminished seventh, 0 3 6 10",
        "diminished seventh, 0 3 6 9",
        "major first inversion, 0 3 8",
        "minor first inversion, 0 4 9",
        "major second inversion, 0 5 9",
        "minor second inversion, 0 5 8",
        "dominant seventh third inversion, 0 2 6 9",
        "major spread, 0 7 16",
        "minor spread, 0 7 15",
        "maj7 spread, 0 7 11 16"
    })
    void chordsSoundTheirKind(String subject, String halfSteps) {
        for (Key key : Key.majorKeys()) {
            for (long seed = 0; seed < 20; seed++) {
                List<Integer> keys =
                        keys(heard(Skills.find("ear-quality").orElseThrow().question(key, subject, seed))
                                .get(0));
                assertEquals(
                        halfSteps,
                        keys.stream().map(note -> "" + (note - keys.get(0))).collect(Collectors.joining(" ")));
                assertTrue(keys.get(0) >= 48 && keys.get(keys.size() - 1) <= 88, keys::toString);
            }
        }
    }

    /** Source: the spellings are those of the worked examples of this project, D major. */
    @Test
    @DisplayName("a row sounds the tonic chord first, then its chords, each over its root")
    void rowsSoundTheirChords() {
        Map<Integer, Set<Integer>> due =
                Map.of(0, Set.of(2, 6, 9), 1, Set.of(10, 2, 5), 2, Set.of(0, 4, 7), 3, Set.of(2, 6, 9));
        for (long seed = 0; seed < 30; seed++) {
            Excerpt excerpt =
                    asked("ear-progression", "I bVI bVII I", "D", seed).heard().orElseThrow();
            assertEquals(Set.of(2, 6, 9), classes(excerpt.lead().get(0)));
            for (int i = 0; i < 4; i++) {
                Moment chord = excerpt.body().get(i);
                assertEquals(due.get(i), classes(chord));
                assertEquals(List.of(2, 10, 0, 2).get(i), keys(chord).get(0) % 12);
            }
            assertEquals(6, excerpt.moments().size());
        }
    }

    @Test
    @DisplayName("no chord of a row leaves out a tone, so that its quality can be heard")
    void rowsSoundWhole() {
        for (String name : List.of("C", "Gb", "F minor")) {
            Key key = Key.parse(name);
            Skill skill = Skills.find("ear-progression").orElseThrow();
            for (String subject : skill.subjects(key)) {
                for (long seed = 0; seed < 2; seed++) {
                    for (Moment chord : heard(skill.question(key, subject, seed))) {
                        assertEquals(3, classes(chord).size(), () -> subject + " in " + name + ": " + chord);
                    }
                }
            }
        }
    }

    private static Set<Integer> classes(Moment moment) {
        return keys(moment).stream().map(note -> note % 12).collect(Collectors.toSet());
    }

    @Test
    @DisplayName("the same seed sounds the same, other seeds lie elsewhere or are laid out otherwise")
    void seedsDecideTheSound() {
        for (String skill : SKILLS) {
            String subject =
                    Skills.find(skill).orElseThrow().subjects(Key.parse("D")).get(1);
            Set<List<Moment>> sounds = new HashSet<>();
            for (long seed = 0; seed < 30; seed++) {
                List<Moment> first =
                        asked(skill, subject, "D", seed).heard().orElseThrow().moments();
                assertEquals(
                        first,
                        asked(skill, subject, "D", seed).heard().orElseThrow().moments());
                sounds.add(first);
            }
            assertTrue(sounds.size() >= 4, () -> skill + " sounds in " + sounds.size() + " ways");
        }
    }

    @Test
    @DisplayName("neither prompt nor first hint tells the answer, and all prompts of a kind are alike")
    void promptsTellNothing() {
        for (String id : SKILLS) {
            Skill skill = Skills.find(id).orElseThrow();
            Key key = Key.parse("Eb");
            List<String> prompts = new ArrayList<>();
            for (String subject : skill.subjects(key)) {
                Question question = skill.question(key, subject);
                assertTrue(question.isByEar());
                prompts.add(question.prompt());
                String told = (question.prompt() + question.hints().get(0)).toLowerCase(Locale.ROOT);
                assertFalse(told.contains(question.expected().toLowerCase(Locale.ROOT)), told);
            }
            assertTrue(prompts.stream().distinct().count() <= 2, prompts::toString);
        }
    }

    @Test
    @DisplayName("whatever can be read as an answer can be heard beside the right one")
    void answersAreHeardInTheSamePlace() {
        Question minor = asked("ear-quality", "minor", "D", 4);
        List<Moment> both = minor.heardBeside("major").orElseThrow().body();
        assertEquals(3, both.size());
        assertEquals(keys(both.get(2)).get(0), keys(both.get(0)).get(0));
        assertEquals(keys(both.get(2)).get(1) + 1, keys(both.get(0)).get(1));
        assertTrue(both.get(1).pitches().isEmpty());
        assertTrue(minor.heardBeside("sad").isEmpty());

        Question down = asked("ear-interval", "m6 down", "D", 4);
        List<Moment> sung = down.heardBeside("M6").orElseThrow().body();
        assertEquals(keys(sung.get(0)), keys(sung.get(3)), "both begin on the note that was sung from");
        assertEquals(keys(sung.get(1)).get(0) + 1, keys(sung.get(4)).get(0));
        assertTrue(down.heardBeside("M98").isEmpty());
        assertTrue(Asked.question("interval", "m3", "C").heardBeside("Eb").isEmpty());
        assertFalse(Asked.question("interval", "m3", "C").isByEar());
    }

    @ParameterizedTest(name = "{0} of {1} in {2}: {3} comes from {4}")
    @CsvSource(delimiter = '|', textBlock = """
            ear-interval    | P5             | D | P4              | turned-over
            ear-interval    | m6             | D | M3              | turned-over
            ear-interval    | m6             | D | M6              | size-misheard
            ear-interval    | P4             | D | tritone         | size-misheard
            ear-interval    | tritone        | D | P5              | size-misheard
            ear-interval    | M3             | D | M10             | octave-off
            ear-interval    | P8             | D | unison          | octave-off
            ear-interval    | m7             | D | M6              | steps-miscounted
            ear-quality     | major          | D | minor           | third-misheard
            ear-quality     | major          | D | aug             | fifth-misheard
            ear-quality     | diminished     | D | minor           | fifth-misheard
            ear-quality     | 7              | D | maj7            | wrong-seventh
            ear-quality     | 7              | D | major           | missing-note
            ear-quality     | minor          | D | m7              | extra-note
            ear-quality     | sus4           | D | major           | third-kept
            ear-quality     | major first inversion  | D | minor   | bass-for-root
            ear-quality     | 7 first inversion      | D | dim     | bass-for-root
            ear-progression | I bVI bVII I   | D | I vi bVII I     | neighbour-for-borrowed
            ear-progression | I IV iv I      | D | I IV IV I       | neighbour-for-borrowed
            ear-progression | I bVII IV I    | D | I V IV I        | neighbour-for-borrowed
            ear-progression | I bVII IV I    | D | D C#dim G D     | neighbour-for-borrowed
            ear-progression | I V vi IV      | D | 1 5 1 4         | tones-shared
            ear-progression | I ii V I       | D | 1 4 5 1         | tones-shared
            ear-progression | I IV V I       | D | 1 4 3- 1        | tones-shared
            ear-progression | I IV V I       | D | I iv V I        | bass-without-quality
            ear-progression | I IV V I       | D | I IV V7 I       | bass-without-quality
            ear-progression | I IV V I       | D | I V V I         | quality-without-bass
            ear-progression | I V vi IV      | D | III VII i VI    | wrong-key
            ear-progression | I V vi IV      | D | bIII bVII i bVI | wrong-key
            """)
    void slipsOfTheEar(String skill, String subject, String key, String answer, String misconception) {
        Verdict verdict = Asked.verdict(skill, subject, key, answer);
        assertFalse(verdict.grade().isRight(), verdict::message);
        assertEquals(misconception, verdict.misconception(), verdict::message);
        assertTrue(Misconception.find(misconception).isPresent());
    }

    @ParameterizedTest(name = "{0} of {1}: {2} is right, with a word to it")
    @CsvSource(delimiter = '|', textBlock = """
            ear-interval    | m3           | A2          | Yes: an augmented second sounds the same. It was B up to D, and that is written as a minor third.
            ear-quality     | minor        | Am          | Yes, minor. Here it stood on B: B D F♯.
            ear-quality     | m7           | 6           | Yes: those are the same keys, named from another of them. Named from B it is a minor seventh: B D F♯ A.
            ear-progression | I bVI bVII I | D A# C D    | Yes, those are the chords. In D major they are spelled D B♭ C D: I ♭VI ♭VII I.
            """)
    void otherNames(String skill, String subject, String answer, String message) {
        Verdict verdict = Asked.verdict(skill, subject, "D", answer);
        assertEquals(message, verdict.message());
        assertEquals(Grade.REMARK, verdict.grade());
    }

    @ParameterizedTest(name = "{0} of {1}, answered {2}")
    @CsvSource(delimiter = '|', textBlock = """
            ear-interval    | m6            | M6          | Nearly. You heard a major sixth; it was a minor sixth, C♯ up to A. Yours is wider by a half step. A minor sixth leans on the fifth a half step below its top; a major sixth stands open, a whole step above the fifth.
            ear-interval    | P5 together   | P4          | You heard a perfect fourth; it was a perfect fifth, B with F♯ above it. Turned over, the same two notes make yours, narrower by two half steps. A perfect fifth is bare and rests on its lower note; a perfect fourth is bare and leans on its upper note.
            ear-interval    | P8 down       | unison      | Nearly. You heard a perfect unison; it was a perfect octave, E down to E. The same two letters, but yours lie an octave closer.
            ear-interval    | m6            | m6          | Yes, a minor sixth: C♯ up to A, eight half steps.
            ear-quality     | minor         | major       | Nearly. You heard major; it was minor: B D F♯. Yours has D♯ for D, a half step higher. Minor is dark and at rest. Major is bright and at rest.
            ear-quality     | 7             | major       | Nearly. You heard major; it was a dominant seventh: A C♯ E G. Yours lacks G. A dominant seventh is bright with an edge, and wants to move on. Major is bright and at rest.
            ear-quality     | minor         | augmented   | You heard augmented; it was minor: B D F♯. Yours has D♯ and F𝄪 for D and F♯. Minor is dark and at rest. Augmented is bright and stretched, with no home.
            ear-quality     | minor         | minor       | Yes, minor: B D F♯.
            ear-progression | I bVI bVII I  | 1 6 b7 1    | Nearly. Chord 2: it was ♭VI, B♭; you heard vi, Bm. The bass goes to B♭, a half step lower than B. The chord is major, yours is minor. D is in both. B♭ and F come from outside D major. All of it: I ♭VI ♭VII I.
            ear-progression | I IV iv I     | I IV IV I   | Nearly. Chord 3: it was iv, Gm; you heard IV, G. The bass is G in both. Yours has B for B♭, a half step higher. B♭ comes from outside D major. All of it: I IV iv I.
            ear-progression | I V vi IV     | 3- 7 1- 6   | Four differ. Chord 1: it was I, D; you heard iii, F♯m. The bass goes to D, four half steps lower than F♯. The chord is major, yours is minor. F♯ and A are in both, so from above they are alike. All of it: I V vi IV.
            ear-progression | I bVI bVII I  | 1 1 b6 b7 1 | Yes: I ♭VI ♭VII I, that is D B♭ C D.
            ear-progression | I bVI bVII I  | 1 b6 b7     | "1 b6 b7" is not a row of chords: four sounded behind the tonic, and here are three. Example: vi IV I V.
            ear-interval    | m6            | 4           | You heard a perfect fourth; it was a minor sixth, C♯ up to A. Yours is narrower by three half steps. A minor sixth leans on the fifth a half step below its top; a perfect fourth is bare and leans on its upper note.
            ear-interval    | M2            | whole step  | Yes, a major second: A up to B, two half steps.
            ear-interval    | M2            | semitone    | Nearly. You heard a minor second; it was a major second, A up to B. Yours is narrower by a half step. A major second is a plain step; a minor second rubs.
            ear-interval    | m6            | a sixth     | "sixth" is not one interval: say which sixth: major, minor, augmented or diminished. Example: minor third.
            ear-interval    | m6            | 6           | "6" is not one interval: say which sixth: major, minor, augmented or diminished. Example: minor third.
            ear-quality     | minor         | sad         | "sad" is not a quality: a word or a sign for it is enough. Example: sus4.
            """)
    void saysWhatWasHeardWhatItWasAndWhatTheDifferenceIs(String skill, String subject, String answer, String message) {
        assertEquals(message, Asked.verdict(skill, subject, "D", answer).message());
    }

    @Test
    @DisplayName("hints go from listening to singing to all but the last step")
    void hints() {
        assertEquals(
                List.of(
                        "Hear it again, and follow the bass alone: does it step, leap, or come home?",
                        "Sing the tonic, D, then each bass note, and count from the tonic up. The first goes to D.",
                        "All but the last: I ♭VI ♭VII."),
                Asked.question("ear-progression", "I bVI bVII I", "D").hints());
        assertEquals(
                "The bass goes D B♭ C D, and over it stand D, B♭, C and D: I ♭VI ♭VII I. Borrowed: B♭ and C.",
                Asked.question("ear-progression", "I bVI bVII I", "D")
                        .derivation()
                        .replace(". Over", ", and over"));
    }

    @ParameterizedTest(name = "{0} in {2} is read as {1}")
    @CsvSource(delimiter = '|', textBlock = """
            ear-interval    | minor sixth          | C | m6
            ear-interval    | -m6                  | C | m6 down
            ear-interval    | d5 together          | C | tritone together
            ear-quality     | 7                    | C | dominant seventh
            ear-quality     | m first inversion    | C | minor first inversion
            ear-quality     | minor root position  | C | minor
            ear-progression | 1 b6 b7 1            | C | I bVI bVII I
            ear-progression | D Bb C D             | D | I bVI bVII I
            ear-progression | D/F# G               | D | I IV
            """)
    void subjects(String skill, String subject, String key, String canonical) {
        assertEquals(canonical, Asked.question(skill, subject, key).subject());
    }

    @ParameterizedTest(name = "{0} cannot be asked of {1}")
    @CsvSource(delimiter = '|', textBlock = """
            ear-interval    | P1         | "P1" is not an interval to hear: those of a scale are heard, from a second to a tenth. Example: m6 down
            ear-interval    | A2         | "A2" is not an interval to hear: those of a scale are heard, from a second to a tenth. Example: m6 down
            ear-quality     | major third inversion | "major third inversion" is not a chord to hear: it has no third inversion. Example: minor first inversion
            ear-progression | I          | "I" is not a row of chords to hear: from two to 16 are played. Example: I bVI bVII I
            ear-progression | I V13      | "I V13" is not a row of chords to hear: triads and sevenths are heard. Example: I bVI bVII I
            """)
    void refuses(String skill, String subject, String message) {
        assertEquals(
                message,
                assertThrows(Unreadable.class, () -> Asked.question(skill, subject, "C"))
                        .getMessage());
    }

    @Test
    @DisplayName("questions go through many keys, and a minor key has rows of its own")
    void keysAreMixed() {
        assertEquals(
                15,
                Stream.of(SKILLS)
                        .flatMap(List::stream)
                        .map(id -> Skills.find(id).orElseThrow())
                        .findFirst()
                        .orElseThrow()
                        .keys()
                        .size());
        assertNotEquals(
                Skills.find("ear-progression").orElseThrow().subjects(Key.parse("D")),
                Skills.find("ear-progression").orElseThrow().subjects(Key.parse("D minor")));
    }
}
