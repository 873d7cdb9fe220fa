package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
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
import monochord.theory.note.Pitch;
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
                prompts.add(question.prompt().toString());
                String told = (question.prompt().toString()
                                + Asked.words(question.hints()).get(0))
                        .toLowerCase(Locale.ROOT);
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
