package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.Line;
import javax.sound.sampled.SourceDataLine;
import monochord.score.Score;
import monochord.shell.playback.LiveEar;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a learner is told about the sound, on a card that records or fails. */
class LiveEarTest {
    private static final Performance TWO_SECONDS =
            Performance.of(Score.note(Pitch.parse("A4"), Beats.of(2))).at(60);

    private final LiveEar ear = new LiveEar(Duration.ofHours(1));
    private final List<String> told = new CopyOnWriteArrayList<>();

    LiveEarTest() {
        ear.tells(line -> told.add(line.toString()));
        CaptureLine.forget();
    }

    @AfterEach
    void pullTheCardOut() {
        ear.stop();
        CaptureMixerProvider.pullOut();
    }

    @Test
    void theCautionIsSaidOnce() {
        CaptureMixerProvider.plugIn("free");
        assertEquals(
                "Start with the volume low, most of all in headphones.",
                ear.play(TWO_SECONDS).toString());
        assertEquals("", ear.play(TWO_SECONDS).toString());
        assertTrue(ear.heard().isPresent());
        ear.stop();
    }

    @ParameterizedTest
    @ValueSource(strings = {"gone", "short"})
    void aCardThatGoesAwayInTheMiddleIsToldInOneLineAndTriedAgain(String state) throws Exception {
        CaptureMixerProvider.plugIn(state);
        ear.play(TWO_SECONDS);
        ear.listenToTheEnd();
        while (told.isEmpty()) {
            Thread.sleep(5);
        }
        assertEquals(List.of("The sound broke off: the sound output failed. Go on; play tries it again."), told);
        assertTrue(ear.heard().isEmpty());
        CaptureMixerProvider.plugIn("free");
        assertEquals("", ear.play(TWO_SECONDS).toString());
        ear.listenToTheEnd();
        assertEquals(1, told.size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"busy", "broken"})
    void aCardThatTakesNothingIsToldAndTheWayOutOnce(String state) {
        CaptureMixerProvider.plugIn(state);
        String why = state.equals("busy") ? "something else holds the sound output" : "the sound output failed";
        assertEquals(
                "No sound: " + why + ". Add --wav FILE to write a file.",
                ear.play(TWO_SECONDS).toString());
        assertEquals("No sound: " + why + ".", ear.play(TWO_SECONDS).toString());
        ear.listenToTheEnd();
        assertEquals(List.of(), told);
    }

    @Test
    void noCardIsToldInOneLine() {
        assumeFalse(
                AudioSystem.isLineSupported(new Line.Info(SourceDataLine.class)),
                "SKIPPED: this machine has a sound card");
        ear.warm();
        assertEquals(
                "No sound: this machine has no sound output. Add --wav FILE to write a file.",
                ear.play(TWO_SECONDS).toString());
        ear.listenToTheEnd();
    }

    /** The count-in comes before the score: while it clicks, the place in the score is below 0. */
    @Test
    void knowsHowFarTheEarHasCome() throws Exception {
        CaptureMixerProvider.plugIn("held");
        ear.play(Performance.of(Score.note(Pitch.parse("A4"), Beats.of(60)))
                .at(240)
                .countedIn(true));
        assertEquals(-4, ear.heard().orElseThrow().beats());
        CaptureLine.goOn();
        double last = -4;
        while (last < 1) {
            double now = ear.heard().orElseThrow().beats();
            assertTrue(now >= last);
            last = now;
            Thread.sleep(20);
        }
    }
}
