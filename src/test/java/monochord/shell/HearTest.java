package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import monochord.course.Course;
import monochord.score.Sounding;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.sound.Performance;
import monochord.text.Phrase;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Look;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Questions for the ear at the line: what is played, what may be looked at, and what is said where nothing sounds. */
class HearTest {
    @TempDir
    private Path folder;

    /** Remembers what it was given to play. */
    private static final class Listener implements Ear {
        private final List<Performance> open = new ArrayList<>();
        private final List<Performance> unseen = new ArrayList<>();
        private Phrase silence;

        @Override
        public Phrase play(Performance performance) {
            open.add(performance);
            return Phrase.NOTHING;
        }

        @Override
        public Phrase playUnseen(Performance performance) {
            unseen.add(performance);
            return Phrase.NOTHING;
        }

        @Override
        public Optional<Phrase> silence() {
            return Optional.ofNullable(silence);
        }

        @Override
        public void stop() {
            // nothing sounds
        }

        @Override
        public void listenToTheEnd() {
            // there is nothing to wait for
        }
    }

    private final Listener ear = new Listener();
    private final Sitting sitting = sitting();
    private final LineReading reading = new LineReading(new Verbs(), sitting);

    private Sitting sitting() {
        long[] seed = {0};
        return new Sitting(ear, () -> ++seed[0], Path.of("target"), new Course(Run.OUR_LESSONS));
    }

    private Answer answer(String line) {
        return reading.read(line);
    }

    private String says(String line) {
        return answer(line)
                .text(new Look(500, Signs.MUSIC, false, false))
                .plain()
                .strip();
    }

    private String right() {
        return sitting.question().question().expected();
    }

    private List<Sounding> last() {
        return ear.unseen.get(ear.unseen.size() - 1).score().soundings();
    }

    @Test
    void aQuestionSoundsWhenItIsPutAndAgainAtHearAndPlay() {
        assertEquals("Two notes, one after the other. Which interval is it?", says("ask ear-interval of m6 in D"));
        assertEquals(1, ear.unseen.size());
        List<Sounding> first = last();
        assertEquals(2, first.size());
        for (String again : List.of("hear", "play")) {
            assertEquals("Two notes, one after the other. Which interval is it?", says(again));
            assertEquals(first, last());
        }
        assertEquals(3, ear.unseen.size());
        assertTrue(ear.open.isEmpty(), "nothing of it may be looked at");
    }

    @Test
    void nothingThatIsPlayedIsNamed() {
        says("ask ear-progression of I bVI bVII I in D");
        Performance performance = ear.unseen.get(0);
        assertTrue(performance.score().captions().isEmpty());
        assertTrue(performance.key().isEmpty());
    }

    @Test
    void aWrongAnswerSoundsFirstAndThenTheRightOne() {
        says("ask ear-quality of minor in D");
        int notes = last().size();
        String first = says("major");
        assertEquals(
                "Nearly. Counted from the bottom, its note 2 lies lower than yours. Listen again.\nTry again, or: hint, why, tell.",
                first);
        assertEquals(notes, last().size());
        String verdict = says("major");
        assertTrue(verdict.contains("Listen: first yours, then what it was. hear plays the latter again.\n"), verdict);
        assertEquals(2 * notes, last().size());
        says("hear");
        assertEquals(notes, last().size());
        assertTrue(verdict.endsWith("Enter asks another."), verdict);
        assertEquals(4, ear.unseen.size());
    }

    @Test
    void hearAsksWhatIsNamedOrWhatIsNext() {
        assertTrue(says("hear quality").startsWith("One chord."));
        assertEquals("ear-quality", sitting.question().question().skillId());
        says(right());
        says("");
        assertEquals("ear-quality", sitting.question().question().skillId(), "Enter asks another of the same");
        says(right());
        says("hear");
        assertEquals("ear-interval", sitting.question().question().skillId(), "the first that is not known yet");
        assertTrue(says("hear progression in Bb").startsWith("First the tonic chord of B♭ major, then four chords."));
        assertTrue(says("hear dictation in Bb").startsWith("First the tonic chord of B♭ major, then eight chords."));
        assertEquals(
                "\"quantity\" is not something to be asked by ear: did you mean quality. Example: hear progression in D",
                says("hear quantity").lines().findFirst().orElseThrow());
    }

    @Test
    void beginnersAreAskedTheEasyOnesInManyKeys() {
        List<String> subjects = new ArrayList<>();
        List<String> keys = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            says("hear interval");
            subjects.add(sitting.question().question().subject());
            keys.add(sitting.question().question().key().toString());
        }
        assertTrue(subjects.stream().noneMatch(subject -> subject.contains("down") || subject.contains("together")));
        assertEquals(Set.of("C major", "G major", "F major", "D major", "Bb major"), Set.copyOf(keys), "the easy keys");
    }

    @Test
    void hearSetsAnotherQuestionAside() {
        says("learn 1.1");
        while (!sitting.question().isOpen()) {
            says("");
        }
        String asked = sitting.question().question().prompt().toString();
        says("hear interval");
        assertNotEquals(asked, sitting.question().question().prompt().toString());
        assertTrue(says(right()).endsWith(asked), "the lesson's question is put again");
        assertEquals(asked, sitting.question().question().prompt().toString());
        assertTrue(sitting.teaching().isInLesson());
    }

    @Test
    void whereNothingSoundsOneLineOffersTheFile() {
        ear.silence = Phrase.of("this machine has no sound output");
        String said = says("hear quality in D");
        assertEquals(
                "One chord. Which quality has it?\nNo sound: this machine has no sound output. hear --wav FILE writes a "
                        + "file.",
                said);
        assertEquals(1, said.split("No sound", -1).length - 1);
        String wrong = says("13#11");
        assertTrue(wrong.endsWith("\nTry again, or: hint, why, tell.") && !wrong.contains("Listen again"), wrong);
        assertTrue(says("skip").startsWith("We leave it."), "skip leaves a question");
    }

    @Test
    void theOpenQuestionIsWrittenToFilesThatTellNothing() throws IOException {
        says("hear progression in D");
        Path wav = folder.resolve("listen.wav");
        Path midi = folder.resolve("listen.mid");
        assertEquals("Written: " + wav + ", " + midi, says("hear --wav " + wav + " --midi " + midi));
        assertTrue(Files.size(wav) > 100_000);
        byte[] bytes = Files.readAllBytes(midi);
        for (int i = 0; i + 1 < bytes.length; i++) {
            boolean meta = bytes[i] == (byte) 0xFF;
            assertFalse(meta && (bytes[i + 1] == 0x01 || bytes[i + 1] == 0x59), "a text or a key signature at " + i);
        }
        assertEquals(1, ear.unseen.size());
    }

    @Test
    void scriptsReadNothingThatGivesTheAnswerAway() throws IOException {
        Path wav = folder.resolve("asked.wav");
        String asked = Run.of("ask ear-quality in D --seed 5 --json", "--wav", wav.toString())
                .result(0);
        assertTrue(asked.contains("\"subject\":null"), asked);
        assertTrue(asked.contains("\"form\":\"quality\""), asked);
        assertTrue(Files.size(wav) > 100_000);
        String told =
                Run.of("ask ear-quality in D --seed 5 --json --answer 13#11").out();
        assertFalse(told.contains("\"subject\":null"), told);
        String named = Run.of("ask ear-interval of m6 in D --seed 5 --json").result(0);
        assertTrue(named.contains("\"subject\":\"m6\""), named);
        assertTrue(Run.of("ask interval of m3 in D --wav", wav.toString())
                .message(2)
                .replaceAll("\\s+", " ")
                .contains("that question has no sound"));
    }

    @Test
    void theSameSeedSoundsTheSame() throws IOException {
        List<byte[]> files = new ArrayList<>();
        for (String name : List.of("a.mid", "b.mid")) {
            Path midi = folder.resolve(name);
            Run.of("ask ear-progression in D --seed 11 --midi", midi.toString());
            files.add(Files.readAllBytes(midi));
        }
        assertArrayEquals(files.get(0), files.get(1));
    }

    @Test
    void aRoomHearsItToo() {
        says("present 1.11");
        for (int i = 0; i < 40 && ear.unseen.isEmpty(); i++) {
            says("");
        }
        assertEquals(1, ear.unseen.size());
        says("hear");
        assertEquals(2, ear.unseen.size());
    }
}
