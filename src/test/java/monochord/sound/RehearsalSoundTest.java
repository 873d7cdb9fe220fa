package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;
import monochord.course.rehearsal.DueChange;
import monochord.course.rehearsal.HeardRound;
import monochord.course.rehearsal.KeyPress;
import monochord.course.rehearsal.RehearsalGoal;
import monochord.course.rehearsal.RehearsalState;
import monochord.course.rehearsal.Round;
import monochord.course.rehearsal.RoundResult;
import monochord.harmony.Progression;
import monochord.score.BarGrid;
import monochord.score.Hand;
import monochord.score.Score;
import monochord.shell.playback.LiveEar;
import monochord.shell.rehearsal.KeyFeed;
import monochord.shell.rehearsal.RehearsalMusic;
import monochord.shell.rehearsal.RoundPlayer;
import monochord.sound.keyboard.KeyEvent;
import monochord.sound.level.LoudnessTarget;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What sounds in a rehearsal, to the sample; and how late a chord is that somebody plays to it. */
class RehearsalSoundTest {
    private static final Key C = Key.parse("C");
    /** A tenth of full scale: -20 dBFS. */
    private static final double SOFT_PEAK = 0.1;

    @AfterEach
    void pullTheCardOut() {
        CaptureMixerProvider.pullOut();
    }

    private static RehearsalMusic music(String chords, String metre, int tempo, Set<Hand> played) {
        return new RehearsalMusic(
                Phrase.NOTHING,
                Progression.parse(chords, C),
                (first, last) -> Optional.empty(),
                BarGrid.parse(metre),
                played,
                Directions.USUAL.at(tempo));
    }

    /** The left channel of a performance, as loud as the synthesizer makes it. */
    private static float[] rendered(Performance performance) throws IOException {
        List<Float> samples = new ArrayList<>();
        float[] piece = new float[8192];
        try (Rendering rendering = Rendering.of(performance.sequence(), Optional.empty())) {
            for (int read = rendering.read(piece); read > 0; read = rendering.read(piece)) {
                for (int i = 0; i < read; i += 2) {
                    samples.add(piece[i]);
                }
            }
        }
        float[] left = new float[samples.size()];
        for (int i = 0; i < left.length; i++) {
            left[i] = samples.get(i);
        }
        return left;
    }

    /** The first sample near a place that rises to a tenth of what is highest there. */
    private static int onset(float[] sound, int place) {
        float peak = 0;
        for (int i = Math.max(0, place - 400); i < place + 4000; i++) {
            peak = Math.max(peak, Math.abs(sound[i]));
        }
        int at = Math.max(0, place - 400);
        while (Math.abs(sound[at]) < peak / 10) {
            at++;
        }
        return at;
    }

    /**
     * An evening with a stumble: the whole, two bars alone and slower, twice, and the whole again. In each round the clicks of
     * the count-in and of the bars stand a beat apart, within two samples; nothing but clicks sounds here.
     */
    @Test
    void countInReturnsAndChangesOfPaceAreExact() throws IOException {
        RehearsalMusic music = music("| C | Am | F |", "4/4", 130, EnumSet.noneOf(Hand.class));
        RehearsalState state = RehearsalState.begin(new RehearsalGoal(3, 1, 130, List.of(C)));
        List<Integer> paces = new ArrayList<>();
        List<RoundResult> results = List.of(
                RoundResult.clean(),
                RoundResult.stumbled(2),
                RoundResult.clean(),
                RoundResult.clean(),
                RoundResult.clean());
        for (RoundResult result : results) {
            Round round = state.round();
            paces.add(round.tempo());
            float[] sound = rendered(music.performance(round));
            double beat = 60.0 / round.tempo() * JavaSound.RATE;
            int first = onset(sound, 0);
            for (int click = 0; click < 4 * (1 + round.bars()); click++) {
                int place = (int) Math.round(click * beat);
                assertEquals(place + first, onset(sound, place + first), 2, "click " + click + " of " + round);
            }
            state = state.after(result);
        }
        assertEquals(List.of(91, 96, 82, 87, 92), paces);
    }

    /** In 6/8 dotted quarters are counted, two in a bar. */
    @Test
    void inSixEightTwoAreCounted() throws IOException {
        RehearsalMusic music = music("| C |", "6/8", 60, EnumSet.noneOf(Hand.class));
        Performance performance = music.performance(new Round(0, 0, 60, C));
        assertEquals(90, performance.tempo());
        assertEquals(4.0, performance.seconds(), 1e-9);
        float[] sound = rendered(performance);
        int first = onset(sound, 0);
        for (int click = 0; click < 4; click++) {
            assertEquals(click * JavaSound.RATE + first, onset(sound, click * JavaSound.RATE + first), 2);
        }
    }

    /** The bass alone is the softest music there is; even so each click, made as loud as all is, stays below -20 dBFS. */
    @ParameterizedTest
    @CsvSource({"LEFT, 4/4", "RIGHT, 4/4", "LEFT, 3/4"})
    void theClickStaysBelowTheMusic(Hand hand, String metre) throws IOException {
        Performance all =
                music("| C | Am | F | G |", metre, 90, EnumSet.of(hand)).performance(new Round(0, 3, 90, C));
        Performance music = all.clicked(false).countedIn(false);
        Performance clicks = all.of(Score.rest(all.score().beats()), List.of());
        double loudness = Loudness.of(music);
        try (Loudness click = new Loudness(clicks.sequence(), Optional.empty())) {
            assertTrue(click.through(30) < loudness - 6, "clicks at " + click.through(30) + ", music at " + loudness);
        }
        double gain = LoudnessTarget.gain(loudness);
        double peak = 0;
        for (float sample : rendered(clicks)) {
            peak = Math.max(peak, Math.abs(sample * gain));
        }
        assertTrue(peak < SOFT_PEAK, "a click at " + peak);
        assertTrue(peak > SOFT_PEAK / 20, "a click that nobody hears, at " + peak);
    }

    /** A round that is listened to through the recording card. */
    private static final class PlayedRound implements RoundPlayer.Listener {
        private final BlockingQueue<List<KeyPress>> over = new LinkedBlockingQueue<>();
        private final AtomicBoolean silent = new AtomicBoolean();

        @Override
        public void isSilent() {
            silent.set(true);
        }

        @Override
        public void comesTo(double beats) {
            // nobody looks
        }

        @Override
        public void isOver(List<KeyPress> presses) {
            over.add(presses);
        }
    }

    /** Moments at which a key went down by the machine's clock, before and after the call. */
    private record Pressed(long before, long after) {
        static Pressed press(KeyFeed keys, int key, long at) {
            while (System.nanoTime() < at) {
                LockSupport.parkNanos(Math.min(1_000_000, Math.max(1, at - System.nanoTime())));
            }
            long before = System.nanoTime();
            keys.hears(new KeyEvent.Down(key), System.nanoTime());
            return new Pressed(before, System.nanoTime());
        }
    }

    /**
     * The card takes a tenth of a second in advance; that is known and taken off. What is said of a chord lies within 5 ms of
     * when it was played, by the card's own count of what was heard.
     */
    @ParameterizedTest
    @ValueSource(ints = {-120, 0, 45, 250})
    void theLatenessOfAChordIsTrue(int late) throws Exception {
        CaptureMixerProvider.plugIn("free");
        CaptureLine.forget();
        KeyFeed keys = new KeyFeed();
        RoundPlayer player = new RoundPlayer(new LiveEar(), keys);
        RehearsalMusic music = music("| C |", "4/4", 150, EnumSet.of(Hand.LEFT));
        Round round = new Round(0, 0, 150, C);
        PlayedRound listener = new PlayedRound();
        player.play(music.performance(round), listener);
        while (CaptureLine.begunAt() == 0) {
            Thread.sleep(1);
        }
        long due = CaptureLine.begunAt() + 1_600_000_000L;
        Pressed pressed = null;
        for (int key : new int[] {60, 64, 67}) {
            pressed = key == 64
                    ? Pressed.press(keys, key, due + late * 1_000_000L)
                    : keyBeside(keys, key, due + late * 1_000_000L, pressed);
        }
        List<KeyPress> presses = listener.over.take();
        assertTrue(!listener.silent.get());
        double quarter = 400;
        HeardRound heard = HeardRound.of(music.due(round), presses, quarter, C);
        assertEquals(1, heard.changes().size());
        double least = (pressed.before() - due) / 1e6 - 5;
        double most = (pressed.after() - due) / 1e6 + 5;
        double told = heard.changes().get(0).late();
        assertTrue(told >= least && told <= most, told + " ms, not from " + least + " to " + most);
    }

    /** Another key of the chord; the middle one is what counts. */
    private static Pressed keyBeside(KeyFeed keys, int key, long at, Pressed middle) {
        Pressed.press(keys, key, at);
        return middle;
    }

    /** Where nothing sounds, the count goes by the machine's clock, and keys are heard all the same. */
    @Test
    void aSilentMachineCounts() throws Exception {
        KeyFeed keys = new KeyFeed();
        RoundPlayer player = new RoundPlayer(monochord.shell.playback.Ear.silent(), keys);
        RehearsalMusic music = music("| C |", "4/4", 300, EnumSet.of(Hand.LEFT));
        PlayedRound listener = new PlayedRound();
        player.play(music.performance(new Round(0, 0, 300, C)), listener);
        keys.hears(new KeyEvent.Down(60), System.nanoTime());
        List<KeyPress> presses = listener.over.take();
        assertTrue(listener.silent.get());
        assertEquals(1, presses.size());
        assertTrue(presses.get(0).down() < 0, "it was played in the count-in");
        assertTrue(!player.isRunning());
    }

    @Test
    void aRoundThatIsStoppedTellsNothingMore() throws Exception {
        KeyFeed keys = new KeyFeed();
        RoundPlayer player = new RoundPlayer(monochord.shell.playback.Ear.silent(), keys);
        RehearsalMusic music = music("| C |", "4/4", 300, EnumSet.of(Hand.LEFT));
        PlayedRound stopped = new PlayedRound();
        player.play(music.performance(new Round(0, 0, 300, C)), stopped);
        player.stop();
        assertTrue(!player.isRunning() && !keys.isListenedTo());
        PlayedRound next = new PlayedRound();
        player.play(music.performance(new Round(0, 0, 300, C)), next);
        next.over.take();
        assertTrue(stopped.over.isEmpty());
    }

    @Test
    void whatIsLeftForThePlayerIsDue() {
        assertEquals(
                DueChange.PlayersPart.CHORDS,
                music("| C |", "4/4", 90, EnumSet.of(Hand.LEFT)).yours());
        assertEquals(
                DueChange.PlayersPart.BASS,
                music("| C |", "4/4", 90, EnumSet.of(Hand.RIGHT)).yours());
        assertEquals(
                DueChange.PlayersPart.HANDS,
                music("| C |", "4/4", 90, EnumSet.of(Hand.TUNE)).yours());
        assertEquals(
                DueChange.PlayersPart.TUNE,
                music("| C |", "4/4", 90, EnumSet.of(Hand.LEFT, Hand.RIGHT)).yours());
        RehearsalMusic held = music("| C | . . G . |", "4/4", 90, EnumSet.of(Hand.LEFT));
        List<DueChange> due = held.due(new Round(1, 1, 90, Key.parse("Eb")));
        assertEquals(
                List.of("E♭", "B♭"),
                due.stream().map(one -> one.name().toString()).toList());
        assertEquals(Beats.of(2), due.get(1).at());
    }
}
