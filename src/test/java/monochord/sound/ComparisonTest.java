package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import monochord.harmony.MusicText;
import monochord.score.Arrangement;
import monochord.score.Pattern;
import monochord.score.Piece;
import monochord.sound.level.LoudnessMeter;
import monochord.sound.play.Outcome;
import monochord.sound.play.Player;
import monochord.sound.play.Playing;
import monochord.theory.Key;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Both sides of a comparison as the card hears them. Loudness here: ITU-R BS.1770-4; equal within one LU. */
class ComparisonTest {
    private static final Key C = Key.parse("C");
    private static final Directions QUICK = Directions.USUAL.at(240);

    @BeforeEach
    void plugTheCardIn() {
        CaptureMixerProvider.plugIn("free");
        CaptureLine.forget();
    }

    @AfterEach
    void pullTheCardOut() {
        CaptureMixerProvider.pullOut();
    }

    private static Piece piece(String text) {
        return Arrangement.piece(MusicText.read(text, C));
    }

    private static double lufs(byte[] sound, double from, double to) {
        LoudnessMeter meter = new LoudnessMeter(44_100);
        for (double sample : Spectrum.mono(sound, from, to)) {
            meter.add((float) sample / 32_768, (float) sample / 32_768);
        }
        return meter.lufs();
    }

    private static byte[] heard(Performance performance) throws Exception {
        try (Player player = new Player()) {
            Playing playing = player.play(performance);
            assertEquals(Outcome.SOUNDING, playing.ended().get());
        }
        return CaptureLine.heard();
    }

    private static double difference(Directions directions, String plain, String full) throws Exception {
        Comparison comparison = Comparison.of(List.of(piece(plain), piece(full)), directions, C);
        byte[] sound = heard(comparison.inTurn());
        double first = comparison.sides().get(0).seconds();
        double second = first + 2 * 60.0 / directions.tempo();
        double end = second + comparison.sides().get(1).seconds();
        return lufs(sound, second, end) - lufs(sound, 0, first);
    }

    @Test
    void oneVoiceAndTenAreEquallyLoud() throws Exception {
        Directions organ = QUICK.with(Patch.parse("church organ"), Patch.parse("church organ"));
        double off = difference(organ, "C4 D4 E4 F4", "| C13 F13 G13 | C13 . G13 |");
        assertTrue(Math.abs(off) < 1, () -> off + " LU");
    }

    @Test
    void plainAndColouredAreEquallyLoud() throws Exception {
        double off = difference(QUICK.as(Pattern.BROKEN), "F C G Ab", "Fmaj9 C6/9 Gsus4 Abmaj9");
        assertTrue(Math.abs(off) < 1, () -> off + " LU");
    }

    @Test
    void onlyWhatIsLouderIsTurnedDown() {
        Comparison comparison = Comparison.of(List.of(piece("C4"), piece("C13 F13")), QUICK, C);
        assertEquals(0, comparison.sides().get(0).levels().get(0).decibels());
        double down = comparison.sides().get(1).levels().get(0).decibels();
        assertTrue(down < -3, () -> "the full chords are turned down by " + down);
    }

    /** The step between two neighbouring expression values stays under a third of a decibel down to -12. */
    @Test
    void levelsAreFineEnough() {
        assertEquals(127, new LevelChange(monochord.theory.note.Beats.ZERO, 0).expression());
        assertEquals(90, new LevelChange(monochord.theory.note.Beats.ZERO, -6).expression());
        assertEquals(64, new LevelChange(monochord.theory.note.Beats.ZERO, -12).expression());
    }
}
