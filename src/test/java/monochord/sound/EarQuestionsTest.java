package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import monochord.Thorough;
import monochord.course.Course;
import monochord.practice.Excerpt;
import monochord.practice.Excerpt.Moment;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.shell.playback.Hearing;
import monochord.shell.playback.LiveEar;
import monochord.shell.sitting.Sitting;
import monochord.sound.file.WavFile;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is heard at a question for the ear is what was asked: its notes, and no others, read back from the sound itself.
 *
 * <p>A bank of one sine plays them, so that no partial hides a note.
 * Source: equal temperament from A4 = 440 Hz, ISO 16:1975; five cents as the least difference that matters, common
 * practice, no source.
 */
class EarQuestionsTest {
    private static final int HEADER = 44;
    private static final int LOWEST = 36;
    private static final int HIGHEST = 96;
    /** Decibels below the loudest: a note that was struck is above, what is no note of it below. */
    private static final double STRUCK = -8;

    private static final double ABSENT = -25;
    private static final double SECONDS_PER_BEAT = 60.0 / Performance.USUAL_TEMPO;

    @TempDir
    Path folder;

    @AfterEach
    void pullOut() {
        CaptureMixerProvider.pullOut();
    }

    @ParameterizedTest(name = "up to {1} questions of {0}")
    @CsvSource({"ear-interval, 36", "ear-quality, 36", "ear-progression, 24"})
    void theNotesAskedAreTheNotesHeard(String id, int count) throws IOException {
        Skill skill = Skills.find(id).orElseThrow();
        List<Key> keys = Key.majorKeys();
        Set<String> asked = new TreeSet<>();
        for (int seed = 0; seed < Thorough.times(count / 4, count); seed++) {
            Question question = skill.question(keys.get(seed % keys.size()), seed);
            asked.add(question.subject());
            heard(question, question.heard().orElseThrow());
        }
        assertTrue(asked.size() >= 5, asked::toString);
    }

    @Thorough.FirstOf(3)
    @ParameterizedTest(name = "{0} of {1}, answered {2}: both are heard")
    @CsvSource({
        "ear-interval, m6, M6",
        "ear-interval, P5 down, P4",
        "ear-interval, tritone together, P5",
        "ear-quality, minor, major",
        "ear-quality, 7 spread, maj7",
        "ear-progression, I bVI bVII I, I vi bVII I",
        "ear-progression, I IV iv I, 1 4 4 1"
    })
    void aWrongAnswerIsHeardBesideTheRightOne(String id, String subject, String answer) throws IOException {
        Question question = Skills.find(id).orElseThrow().question(Key.parse("D"), subject, 5);
        Excerpt both = question.heardBeside(answer).orElseThrow();
        assertEquals(
                2 * question.heard().orElseThrow().body().size() + 1,
                both.body().size());
        heard(question, both);
    }

    /** As a learner hears it: asked at the line, through the card. */
    @Test
    void whatTheCardGetsIsWhatWasAsked() throws IOException {
        CaptureMixerProvider.plugIn("free");
        CaptureLine.forget();
        LiveEar ear = new LiveEar();
        Sitting sitting = new Sitting(ear, () -> 3, folder, new Course(folder));
        Skill skill = Skills.find("ear-quality").orElseThrow();
        Question question = skill.question(Key.parse("Eb"), "minor", 3);
        sitting.teaching().ask(skill, question);
        sitting.teaching().asked();
        assertTrue(ear.heard().isEmpty(), "what sounds must not be looked at");
        ear.listenToTheEnd();
        Moment chord = question.heard().orElseThrow().body().get(0);
        Spectrum spectrum = new Spectrum(Spectrum.mono(CaptureLine.heard(), 0.25, seconds(chord)));
        double quietest = chord.pitches().stream()
                .mapToDouble(pitch -> spectrum.at(pitch.hertz()))
                .min()
                .orElseThrow();
        for (int i = chord.pitches().get(0).midiNumber(); i <= top(chord); i++) {
            int key = i;
            boolean asked = chord.pitches().stream().anyMatch(isKey(key));
            assertTrue(asked || spectrum.at(hertz(key)) < quietest / 10, "key " + key + " sounds in " + chord);
        }
    }

    private static int top(Moment chord) {
        return chord.pitches().get(chord.pitches().size() - 1).midiNumber();
    }

    private static Predicate<Pitch> isKey(int key) {
        return pitch -> pitch.midiNumber() == key;
    }

    private void heard(Question question, Excerpt excerpt) throws IOException {
        Path file = folder.resolve("heard.wav");
        WavFile.write(Hearing.of(excerpt).from(Optional.of(sines())), file);
        byte[] wav = Files.readAllBytes(file);
        byte[] pcm = Arrays.copyOfRange(wav, HEADER, wav.length);
        double from = 0;
        for (Moment moment : excerpt.moments()) {
            double to = from + seconds(moment);
            if (!moment.pitches().isEmpty()) {
                assertSounds(question.toString(), moment, new Spectrum(Spectrum.mono(pcm, from + 0.25, to - 0.02)));
            }
            from = to;
        }
    }

    private Bank sines() throws IOException {
        return Bank.read(Files.write(folder.resolve("sine.sf2"), TinyBank.file()));
    }

    private static double seconds(Moment moment) {
        Beats beats = moment.beats();
        return SECONDS_PER_BEAT * beats.numerator() / beats.denominator();
    }

    private static void assertSounds(String what, Moment moment, Spectrum spectrum) {
        double[] strength = IntStream.rangeClosed(LOWEST, HIGHEST)
                .mapToDouble(key -> spectrum.at(hertz(key)))
                .toArray();
        double loudest = Arrays.stream(strength).max().orElseThrow();
        Set<Integer> struck = keys(strength, amplitude -> 20 * Math.log10(amplitude / loudest) - STRUCK);
        Set<Integer> sounding = keys(strength, amplitude -> 20 * Math.log10(amplitude / loudest) - ABSENT);
        Set<Integer> asked =
                moment.pitches().stream().map(Pitch::midiNumber).collect(Collectors.toCollection(TreeSet::new));
        String said = what + ": " + moment.pitches() + Arrays.toString(strength);
        assertEquals(asked, struck, said);
        assertTrue(asked.containsAll(sounding), () -> said + " and softly " + sounding);
        asked.forEach(key -> assertTrue(Math.abs(spectrum.centsOff(hertz(key))) <= 5, () -> what + ", key " + key));
    }

    private static Set<Integer> keys(double[] strength, ToDoubleFunction<Double> above) {
        return IntStream.rangeClosed(LOWEST, HIGHEST)
                .filter(key -> above.applyAsDouble(strength[key - LOWEST]) > 0)
                .boxed()
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static double hertz(int key) {
        return 440 * Math.pow(2, (key - 69) / 12.0);
    }
}
