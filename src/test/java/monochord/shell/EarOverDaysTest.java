package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import monochord.shell.playback.Ear;
import monochord.sound.Performance;
import monochord.text.Phrase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Questions for the ear wherever questions are asked: in a lesson, in a run of practice, in a review days later. */
class EarOverDaysTest {
    private static final long NOON = 1_800_000_000_000L;
    private static final long DAY = 24 * 60 * 60 * 1000;
    private static final String LISTEN = "Listen: first yours, then what it was. hear plays the latter again.";
    private static final String PROMPT = "Two notes, one after the other. Which interval is it?";

    @TempDir
    private Path home;

    /** Counts the notes of each thing it is to play unseen. */
    private static final class Listener implements Ear {
        private final List<Integer> notes = new ArrayList<>();

        @Override
        public Phrase play(Performance performance) {
            return Phrase.NOTHING;
        }

        @Override
        public Phrase playUnseen(Performance performance) {
            notes.add(performance.score().soundings().size());
            return Phrase.NOTHING;
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

    private List<String> sitting(int days, String... lines) {
        long[] time = {NOON + days * DAY};
        return new Run.Outside()
                .atHome(home)
                .hearing(ear)
                .at(() -> time[0] += 1000)
                .typing(String.join("\n", lines) + "\nquit\n")
                .run()
                .lines();
    }

    @Test
    void practiceSoundsAndPlaysBothAfterAWrongAnswer() {
        List<String> said = sitting(0, "practise ear-interval in D --seed 1", "m9", "m9", "skip");
        assertTrue(said.contains(PROMPT), said.toString());
        assertTrue(said.contains("It is narrower than that. Listen again."), said.toString());
        assertTrue(said.contains(LISTEN), said.toString());
        assertEquals(List.of(2, 2, 4), ear.notes);
    }

    @Test
    void whatWasMisheardIsDueTheNextDayAndSounds() {
        sitting(0, "ask ear-interval of P5 in D", "P4", "P5");
        assertEquals(List.of(2, 2), ear.notes);
        ear.notes.clear();
        List<String> said = sitting(1, "review", "P4", "P4", "");
        assertEquals("One thing to bring back, weakest first. skip ends it.", said.get(0));
        assertTrue(said.contains(PROMPT), said.toString());
        assertTrue(said.contains(LISTEN), said.toString());
        assertEquals(List.of(2, 2, 4), ear.notes.subList(0, 3));
    }

    @Test
    void aLessonsQuestionSoundsAndWaitsWhileAnotherIsHeard() {
        String[] lines = new String[16];
        Arrays.fill(lines, "");
        lines[0] = "learn 1.11";
        lines[6] = "m9";
        lines[7] = "m9";
        lines[8] = "";
        lines[9] = "hear quality";
        lines[10] = "skip";
        List<String> said = sitting(0, lines);
        assertTrue(said.contains(LISTEN), said.toString());
        assertTrue(ear.notes.contains(2) && ear.notes.contains(4), ear.notes.toString());
        int aside = said.lastIndexOf("One chord. Which quality has it?");
        assertTrue(aside > 0 && said.subList(aside, said.size()).contains(PROMPT), said.toString());
    }

    private List<String> silentSitting(int days, Path folder, String... lines) {
        long[] time = {NOON + days * DAY};
        return new Run.Outside()
                .atHome(home)
                .inFolder(folder)
                .hearing(new NoCard())
                .at(() -> time[0] += 1000)
                .typing(String.join("\n", lines) + "\nquit\n")
                .run()
                .lines();
    }

    @Test
    void whereNothingSoundsOneQuestionDecidesAndTheEarIsLeftOut(@TempDir Path folder) {
        List<String> said = silentSitting(0, folder, "practise ear-interval in C", "", "learn 1.11");
        assertTrue(said.contains("No sound: no sound card was found."), said.toString());
        assertTrue(
                String.join(" ", said)
                        .contains("Shall what is for the ear be left out, or put into sound files?"
                                + " Type leave or files; Enter leaves it out."),
                said.toString());
        assertTrue(
                said.contains("Left out in this sitting, and not counted; hear asks by ear all the same."),
                said.toString());
        assertTrue(said.contains("Nothing answered this time."), said.toString());
        assertTrue(said.stream().noneMatch(PROMPT::equals), said.toString());
    }

    @Test
    void aLessonThatEndsWhileTheEarIsLeftOutIsDone(@TempDir Path folder) {
        List<String> said = silentSitting(0, folder, "learn 3.10", "", "", "", "lessons");
        assertTrue(said.contains("End of Follow the bass."), said.toString());
        assertTrue(said.contains("  3.10  Follow the bass  done"), said.toString());
    }

    @Test
    void whatIsForTheEarCanBePutIntoFiles(@TempDir Path folder) {
        List<String> said = silentSitting(0, folder, "practise ear-interval in C", "files", "m9", "m9", "");
        assertTrue(said.contains("Listen to ear-1.wav."), said.toString());
        assertTrue(Files.exists(folder.resolve("ear-1.wav")));
        assertTrue(Files.exists(folder.resolve("ear-3.wav")), "the second hearing, and both side by side");
    }

    @Test
    void whatCannotBeHeardIsNeverCountedAsWrong(@TempDir Path folder) {
        silentSitting(0, folder, "ask ear-interval of P5 in D", "m9", "m9");
        assertTrue(silentSitting(3, folder, "review").get(0).startsWith("Nothing is due."));
    }
}
