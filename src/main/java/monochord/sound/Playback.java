package monochord.sound;

import static monochord.sound.JavaSound.FRAME_BYTES;

import java.io.IOException;
import java.util.concurrent.CompletableFuture;
import javax.sound.midi.Sequence;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/**
 * One sequence being played on the player's thread, until its end or until it is stopped from another thread.
 *
 * <p>What the synthesizer renders goes to the card in small pieces. So every note falls where the score has it, and
 * stopping means to drop what the card still holds: there is no note that could be left hanging.
 */
final class Playback implements Runnable {
    /** Bytes handed over at a time, 23 ms: as long as it may take until a stop is seen. */
    private static final int PIECE_BYTES = 1024 * FRAME_BYTES;

    private final Sequence sequence;
    private final Playing playing;
    private volatile boolean stopped;
    private volatile long given;
    private volatile SourceDataLine open;

    Playback(Sequence sequence) {
        this.sequence = sequence;
        this.playing = new Playing(new CompletableFuture<>(), new CompletableFuture<>(), this::heard);
    }

    Playing playing() {
        return playing;
    }

    /** Frames the card has played; it may say more than it was given while it starves. */
    private long heard() {
        SourceDataLine card = open;
        return card == null ? given : Math.min(given, card.getLongFramePosition());
    }

    void stop() {
        stopped = true;
    }

    /** Plays. What goes wrong is told by the outcome, for there is nobody on this thread to tell it to. */
    @Override
    public void run() {
        try {
            if (!stopped) {
                perform();
            }
        } finally {
            playing.started().complete(Outcome.STOPPED);
            playing.ended().complete(null);
        }
    }

    private void perform() {
        try (SourceDataLine card = JavaSound.card()) {
            perform(card);
        } catch (LineUnavailableException taken) {
            playing.started().complete(Outcome.BUSY);
        } catch (IllegalArgumentException | SecurityException none) {
            playing.started().complete(Outcome.NO_CARD);
        } catch (LinkageError withoutSound) {
            playing.started().complete(Outcome.NO_SYNTHESIZER);
        }
    }

    private void perform(SourceDataLine card) {
        try (AudioInputStream sound = JavaSound.render(sequence)) {
            pour(sound, card);
        } catch (IOException none) {
            playing.started().complete(Outcome.NO_SYNTHESIZER);
        } catch (RuntimeException broken) {
            playing.started().complete(Outcome.BROKEN);
        }
    }

    private void pour(AudioInputStream sound, SourceDataLine card) throws IOException {
        long music = JavaSound.frames(sequence);
        card.start();
        open = card;
        byte[] piece = sound.readNBytes(PIECE_BYTES);
        for (long frames = 0; !stopped && !isOver(piece, frames > music); frames += piece.length / FRAME_BYTES) {
            if (card.write(piece, 0, piece.length) < piece.length) {
                playing.started().complete(Outcome.BROKEN);
                return;
            }
            given = frames + piece.length / FRAME_BYTES;
            playing.started().complete(Outcome.SOUNDING);
            piece = sound.readNBytes(PIECE_BYTES);
        }
        finish(card);
    }

    private static boolean isOver(byte[] piece, boolean afterTheMusic) {
        return piece.length == 0 || afterTheMusic && JavaSound.isSilent(piece);
    }

    private void finish(SourceDataLine card) {
        if (stopped) {
            card.stop();
            card.flush();
        } else {
            card.drain();
        }
        open = null;
    }
}
