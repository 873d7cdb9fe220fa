package monochord.sound.play;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import javax.sound.midi.Sequence;
import javax.sound.sampled.LineUnavailableException;
import monochord.score.Score;
import monochord.sound.JavaSound;
import monochord.sound.Levelled;
import monochord.sound.Performance;
import monochord.sound.Rendering;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/** A chord that nobody hears, for the synthesizer to be ready; where there is no card nothing is made ready. */
final class WarmUp implements Runnable {
    static final Score CHORD =
            Score.together(List.of(Pitch.parse("C3"), Pitch.parse("E4"), Pitch.parse("G4")), Beats.ONE);
    private static final int SECONDS = 2;

    @Override
    public void run() {
        try {
            JavaSound.card().close();
            render(CHORD);
        } catch (IOException | LineUnavailableException | RuntimeException | LinkageError without) {
            Thread.yield(); // whoever plays will be told
        }
    }

    private static void render(Score chord) throws IOException {
        Sequence sequence = Performance.of(chord).sequence();
        double gain;
        float[] piece = new float[2 * SECONDS * JavaSound.RATE];
        try (LevelAhead ahead = LevelAhead.of(sequence, Optional.empty(), 0);
                Rendering sound = Rendering.of(sequence, Optional.empty())) {
            sound.read(piece);
            gain = ahead.first();
        }
        new Levelled(gain).pass(piece, piece.length, new byte[2 * piece.length]);
    }
}
