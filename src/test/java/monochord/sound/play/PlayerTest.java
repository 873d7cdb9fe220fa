package monochord.sound.play;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.util.List;
import java.util.concurrent.RejectedExecutionException;
import javax.sound.midi.Sequence;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.Line;
import javax.sound.sampled.SourceDataLine;
import monochord.score.Score;
import monochord.sound.CaptureLine;
import monochord.sound.CaptureMixerProvider;
import monochord.sound.Patch;
import monochord.sound.Performance;
import monochord.sound.Spectrum;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Plays on a card that records. Frequencies: equal temperament from A4 = 440 Hz, ISO 16:1975. */
class PlayerTest {
    private static final double C4 = 261.626;
    private static final double A4 = 440.000;
    private static final int BYTES_PER_SECOND = 176_400;

    @BeforeEach
    void plugTheCardIn() {
        CaptureMixerProvider.plugIn("free");
        CaptureLine.forget();
    }

    @AfterEach
    void pullTheCardOut() {
        CaptureMixerProvider.pullOut();
    }

    private static Sequence organ(String pitch, int beats) {
        return Performance.of(Score.note(Pitch.parse(pitch), Beats.of(beats)))
                .at(60)
                .with(Patch.parse("drawbar organ"))
                .sequence();
    }

    private static Outcome started(Playing playing) throws Exception {
        return playing.started().get();
    }

    private static double seconds() {
        return (double) CaptureLine.heard().length / BYTES_PER_SECOND;
    }

    /** Waits until the card has taken so many seconds more. */
    private static void listen(double more) throws InterruptedException {
        double until = seconds() + more;
        while (seconds() < until) {
            Thread.sleep(5);
        }
    }

    private static double[] heard(double from, double to) {
        return Spectrum.mono(CaptureLine.heard(), from, to);
    }

    @Test
    void whatIsPlayedIsHeardInTune() throws Exception {
        try (Player player = new Player()) {
            Playing playing = player.play(organ("A4", 8));
            assertEquals(Outcome.SOUNDING, started(playing));
            listen(1.2);
            int cents = new Spectrum(heard(seconds() - 0.8, seconds())).centsOff(A4);
            assertTrue(Math.abs(cents) <= 5, () -> cents + " cents off");
            assertFalse(playing.ended().isDone());
        }
    }

    /** The card holds a tenth of a second that has not been heard. */
    @Test
    void whatHasBeenHeardRunsBehindWhatTheCardWasGiven() throws Exception {
        try (Player player = new Player()) {
            Playing playing = player.play(organ("A4", 8));
            assertEquals(0, playing.secondsHeard(), 0.1);
            started(playing);
            double heard = playing.secondsHeard();
            while (heard < 0.5 || heard >= seconds()) { // a player that came late has nothing in the card
                listen(0.1);
                heard = playing.secondsHeard();
            }
            player.stop();
            playing.ended().get();
        }
    }

    /** Times at 60 beats a minute, in seconds: 0, 3/2 and 7/3, within 15 ms as the card takes them. */
    @Test
    void notesBeginWhereTheScoreHasThem() throws Exception {
        Score rests = Score.note(Pitch.parse("C5"), Beats.of(1, 8))
                .then(Score.rest(Beats.of(11, 8)))
                .then(Score.note(Pitch.parse("E5"), Beats.of(1, 8)))
                .then(Score.rest(Beats.of(17, 24)))
                .then(Score.note(Pitch.parse("G5"), Beats.of(1, 8)));
        try (Player player = new Player()) {
            Playing playing = player.play(Performance.of(rests)
                    .at(60)
                    .with(Patch.parse("drawbar organ"))
                    .sequence());
            assertEquals(Outcome.SOUNDING, playing.ended().get());
        }
        for (double onset : new double[] {0, 1.5, 7 / 3.0}) {
            double before = onset == 0 ? 0 : Spectrum.loudest(heard(onset - 0.02, onset - 0.002));
            double after = Spectrum.loudest(heard(onset, onset + 0.015));
            assertTrue(after > 50 && after > 4 * before, () -> before + " before " + onset + " s, " + after + " after");
        }
    }

    @Test
    void stopIsSilentAtOnceAndLeavesNoNoteHanging() throws Exception {
        try (Player player = new Player()) {
            Playing playing = player.play(organ("A4", 8));
            started(playing);
            listen(0.5);
            assertTrue(Spectrum.loudest(heard(seconds() - 0.1, seconds())) > 500, "it sounded");
            player.stop();
            double at = seconds();
            playing.ended().get();
            Thread.sleep(300);
            double more = seconds() - at;
            assertTrue(more < 0.05, () -> "the card was given " + more + " s more");
            assertTrue(CaptureLine.wasFlushed(), "what the card held was dropped");
        }
    }

    @Test
    void theNextReplacesTheLast() throws Exception {
        try (Player player = new Player()) {
            Playing first = player.play(organ("A4", 8));
            started(first);
            listen(0.4);
            Playing second = player.play(organ("C4", 8));
            assertEquals(Outcome.SOUNDING, started(second));
            assertTrue(first.ended().isDone());
            listen(1.0);
            Spectrum spectrum = new Spectrum(heard(seconds() - 0.5, seconds()));
            assertTrue(spectrum.decibelsOver(C4, A4) > 40, () -> spectrum.decibelsOver(C4, A4) + " dB");
        }
    }

    @Test
    void itEndsByItself() throws Exception {
        try (Player player = new Player()) {
            Sequence short1 = Performance.of(Score.note(Pitch.parse("C4"), Beats.of(1, 4)))
                    .at(300)
                    .sequence();
            Playing playing = player.play(short1);
            playing.ended().get();
            assertEquals(Outcome.SOUNDING, started(playing));
        }
    }

    @Test
    void onlyTheLastOfManySounds() throws Exception {
        try (Player player = new Player()) {
            List<Playing> all =
                    List.of(player.play(organ("C4", 1)), player.play(organ("D4", 1)), player.play(organ("E4", 1)));
            assertEquals(Outcome.SOUNDING, started(all.get(2)));
            assertTrue(all.get(0).ended().isDone() && all.get(1).ended().isDone());
        }
    }

    @Test
    void theCallerDoesNotWaitForASlowCard() throws Exception {
        CaptureMixerProvider.plugIn("slow");
        try (Player player = new Player()) {
            Playing playing = player.play(organ("A4", 8));
            assertFalse(playing.started().isDone());
            assertEquals(Outcome.SOUNDING, started(playing));
        }
    }

    @Test
    void aBusyCardIsTold() throws Exception {
        CaptureMixerProvider.plugIn("busy");
        try (Player player = new Player()) {
            Playing playing = player.play(organ("A4", 1));
            assertEquals(Outcome.BUSY, started(playing));
            playing.ended().get();
            CaptureMixerProvider.plugIn("free");
            assertEquals(Outcome.SOUNDING, started(player.play(organ("A4", 1))), "it is tried again");
        }
    }

    @Test
    void aCardThatTakesNothingIsTold() throws Exception {
        CaptureMixerProvider.plugIn("broken");
        try (Player player = new Player()) {
            assertEquals(Outcome.BROKEN, started(player.play(organ("A4", 1))));
        }
    }

    @Test
    void aMachineWithoutACardIsTold() throws Exception {
        CaptureMixerProvider.pullOut();
        assumeFalse(
                AudioSystem.isLineSupported(new Line.Info(SourceDataLine.class)),
                "SKIPPED: this machine has a sound card");
        try (Player player = new Player()) {
            Playing playing = player.play(organ("A4", 1));
            boolean over = playing.started()
                    .thenApply(outcome -> playing.ended().isDone())
                    .get();
            assertEquals(Outcome.NO_CARD, started(playing));
            assertTrue(over, "what never began has ended by the time that is told");
        }
    }

    @Test
    void stoppingAndClosingASilentPlayerDoesNothing() {
        Player player = new Player();
        player.stop();
        player.close();
        player.close();
        assertThrows(RejectedExecutionException.class, () -> player.play(organ("A4", 1)));
    }

    @Test
    void everyReasonIsAClause() {
        for (Outcome outcome : Outcome.values()) {
            String reason = outcome.reason().toString();
            assertTrue(reason.matches("[a-z].*[a-z]"), reason);
        }
        assertFalse(Outcome.SOUNDING.isSilent());
        assertTrue(Outcome.NO_CARD.isSilent());
    }
}
