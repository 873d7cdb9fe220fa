package monochord.shell.playback;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import monochord.harmony.MusicText;
import monochord.score.Arrangement;
import monochord.score.Piece;
import monochord.sound.Directions;
import monochord.sound.HearingCaution;
import monochord.sound.Performance;
import monochord.sound.play.Outcome;
import monochord.sound.play.Player;
import monochord.sound.play.Playing;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/** Plays through the sound card, and says once a sitting what there is to say about it. */
public final class LiveEar implements Ear {
    private static final Duration PATIENCE = Duration.ofMillis(1500);
    private static final long LONGEST_MINUTES = 121;
    /** How long the prompt is left alone before the synthesizer is warmed behind it. */
    private static final long HEAD_START_MILLIS = 300;

    private final Duration patience;
    private Player player;
    private volatile Begun begun;
    private volatile Consumer<Phrase> listener = line -> {};
    private boolean cautioned;
    private boolean silenceExplained;
    private Phrase silence;

    /** Waits a second and a half for a card that is slow to begin. */
    public LiveEar() {
        this(PATIENCE);
    }

    /** @param patience how long a card is waited for before it is believed to sound */
    public LiveEar(Duration patience) {
        this.patience = patience;
    }

    /** @param open whether others may know what it is */
    private record Begun(Performance performance, Playing playing, boolean open) {
        boolean isPlaying() {
            return !playing.ended().isDone();
        }

        PlayheadPosition heard() {
            return new PlayheadPosition(performance, performance.beatsAfter(playing.secondsHeard()));
        }
    }

    @Override
    public void warm() {
        Thread later = new Thread(this::warmLater, "warm");
        later.setDaemon(true);
        later.start();
    }

    private void warmLater() {
        try {
            Thread.sleep(HEAD_START_MILLIS);
            player().warm();
            tryOut();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Goes the way of every line that is played, up to the card, so that the first does not have to find it. */
    private static void tryOut() {
        Key key = Key.major(NoteName.C);
        Piece piece = Arrangement.piece(MusicText.read("IV I", key));
        Directions.USUAL.perform(piece, key).sequence();
    }

    private synchronized Player player() {
        if (player == null) {
            player = new Player();
        }
        return player;
    }

    @Override
    public Phrase play(Performance performance) {
        return begin(performance, true);
    }

    @Override
    public Phrase playUnseen(Performance performance) {
        return begin(performance, false);
    }

    private Phrase begin(Performance performance, boolean open) {
        Playing playing = player().play(performance);
        begun = new Begun(performance, playing, open);
        Outcome outcome = outcome(playing);
        silence = outcome.isSilent() ? outcome.reason() : null;
        if (outcome == Outcome.SOUNDING) {
            playing.ended().thenAccept(this::tell);
        }
        return say(outcome);
    }

    /** What came of it, or that it sounds if the card takes longer than one likes to wait for. */
    private Outcome outcome(Playing playing) {
        try {
            return playing.started().get(patience.toNanos(), TimeUnit.NANOSECONDS);
        } catch (TimeoutException slow) {
            return Outcome.SOUNDING;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return Outcome.STOPPED;
        } catch (ExecutionException never) {
            throw new IllegalStateException("a start never fails", never);
        }
    }

    /** What broke off in the middle is told when it happens. */
    private void tell(Outcome end) {
        if (end.isSilent()) {
            listener.accept(Phrase.sentence("The sound broke off: {0}. Go on; play tries it again.", end.reason()));
        }
    }

    private Phrase say(Outcome outcome) {
        if (outcome.isSilent()) {
            Phrase brief = Phrase.sentence("No sound: {0}.", outcome.reason());
            Phrase line = silenceExplained ? brief : brief.then(advice(outcome));
            silenceExplained = true;
            return line;
        }
        Phrase line = cautioned ? Phrase.NOTHING : HearingCaution.BRIEF;
        cautioned = true;
        return line;
    }

    private static Phrase advice(Outcome outcome) {
        return outcome == Outcome.BANK
                ? Phrase.sentence("{0} goes back to the sounds of Java.", Phrase.typed("bank own"))
                : Phrase.sentence("Add {0} to write a file.", Phrase.typed("--wav FILE"));
    }

    @Override
    public Optional<Phrase> silence() {
        return Optional.ofNullable(silence);
    }

    @Override
    public Optional<PlayheadPosition> heard() {
        return Optional.ofNullable(begun)
                .filter(last -> last.open && last.isPlaying())
                .map(Begun::heard);
    }

    @Override
    public Optional<PlayheadPosition> playing() {
        return Optional.ofNullable(begun).filter(Begun::isPlaying).map(Begun::heard);
    }

    @Override
    public void tells(Consumer<Phrase> newListener) {
        listener = newListener;
    }

    @Override
    public void stop() {
        if (begun != null) {
            player().stop();
        }
    }

    @Override
    public void listenToTheEnd() {
        if (begun == null) {
            return;
        }
        try {
            begun.playing.ended().get(LONGEST_MINUTES, TimeUnit.MINUTES);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException late) {
            stop();
        }
    }
}
