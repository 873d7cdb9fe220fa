package monochord.sound.play;

import static monochord.sound.JavaSound.FRAME_BYTES;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.locks.LockSupport;
import javax.sound.midi.Sequence;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import monochord.sound.Bank;
import monochord.sound.JavaSound;
import monochord.sound.Levelled;
import monochord.sound.Rendering;

/**
 * One sequence being played on the player's thread, until its end or until it is stopped from another thread.
 *
 * <p>What the synthesizer renders goes to the card in small pieces. So every note falls where the score has it, and
 * stopping means to drop what the card still holds: there is no note that could be left hanging.
 */
final class Playback implements Runnable {
    /** Frames handed over at a time, 23 ms: as long as it may take until a stop is seen. */
    private static final int PIECE_FRAMES = 1024;

    private static final long GLANCE_NANOS = 5_000_000;
    /** How long a card may take for the last it holds, before it is taken for dead. */
    private static final long LAST_NANOS = 1_000_000_000;

    private final Sequence sequence;
    private final Sequence measured;
    private final Optional<Bank> bank;
    private final double countIn;
    private final Playing playing;
    private volatile boolean stopped;
    /** Written by the player's thread alone. */
    private volatile long given;

    private volatile SourceDataLine open;

    /** @param countIn seconds until the music begins */
    Playback(Sequence sequence, Optional<Bank> bank, double countIn) {
        this(sequence, sequence, bank, countIn);
    }

    /** @param measured what of it says how loud it is to be */
    Playback(Sequence sequence, Sequence measured, Optional<Bank> bank, double countIn) {
        this.sequence = sequence;
        this.measured = measured;
        this.bank = bank;
        this.countIn = countIn;
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
        Outcome outcome = Outcome.STOPPED;
        try {
            outcome = stopped ? Outcome.STOPPED : perform();
        } finally {
            open = null;
            playing.ended().complete(outcome); // first, so that whoever waits for the start knows of the end, too
            playing.started().complete(outcome);
        }
    }

    private Outcome perform() {
        try (LevelAhead ahead = LevelAhead.of(measured, bank, countIn);
                SourceDataLine card = JavaSound.card()) {
            return perform(ahead, card);
        } catch (LineUnavailableException taken) {
            return Outcome.BUSY;
        } catch (IllegalArgumentException | SecurityException none) {
            return Outcome.NO_CARD;
        } catch (LinkageError withoutSound) {
            return Outcome.NO_SYNTHESIZER;
        } catch (RuntimeException broken) {
            return Outcome.BROKEN;
        }
    }

    private Outcome perform(LevelAhead ahead, SourceDataLine card) {
        try (Rendering sound = Rendering.of(sequence, bank)) {
            return pour(sound, ahead, card);
        } catch (IOException failed) {
            return bank.isPresent() ? Outcome.BANK : Outcome.NO_SYNTHESIZER;
        } catch (RuntimeException broken) {
            return Outcome.BROKEN;
        }
    }

    private Outcome pour(Rendering sound, LevelAhead ahead, SourceDataLine card) throws IOException {
        long music = JavaSound.frames(sequence);
        card.start();
        open = card;
        float[] samples = new float[2 * PIECE_FRAMES];
        byte[] piece = new byte[PIECE_FRAMES * FRAME_BYTES];
        int read = sound.read(samples);
        Levelled levelled = new Levelled(ahead.first());
        int bytes = levelled.pass(samples, read, piece);
        while (!stopped && read > 0 && !(given > music && JavaSound.isSilent(piece, bytes))) {
            if (card.write(piece, 0, bytes) < bytes) {
                return stopped ? Outcome.STOPPED : Outcome.BROKEN;
            }
            given = given + bytes / FRAME_BYTES;
            playing.started().complete(Outcome.SOUNDING);
            read = sound.read(samples);
            levelled.turnTo(ahead.latest());
            bytes = levelled.pass(samples, read, piece);
        }
        return stopped ? drop(card) : awaitTheLast(card);
    }

    private static Outcome drop(SourceDataLine card) {
        card.stop();
        card.flush();
        return Outcome.STOPPED;
    }

    /** Not by the card's own waiting, which nothing could break off. */
    private Outcome awaitTheLast(SourceDataLine card) {
        long latest = System.nanoTime() + LAST_NANOS;
        while (card.getLongFramePosition() < given && System.nanoTime() < latest) {
            if (stopped) {
                return drop(card);
            }
            LockSupport.parkNanos(GLANCE_NANOS);
        }
        return Outcome.SOUNDING;
    }
}
