package monochord.shell.sitting;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import monochord.sound.Care;
import monochord.sound.Outcome;
import monochord.sound.Performance;
import monochord.sound.Player;
import monochord.sound.Playing;

/** Plays through the sound card, and says once a sitting what there is to say about it. */
public final class LiveEar implements Ear {
    private static final long PATIENCE_MILLIS = 1500;
    private static final long LONGEST_MINUTES = 60;

    private Player player;
    private volatile Begun begun;
    private boolean cautioned;
    private boolean silenceExplained;

    private record Begun(Performance performance, Playing playing) {
        Heard heard() {
            return new Heard(performance, performance.beatsAfter(playing.secondsHeard()));
        }
    }

    @Override
    public String play(Performance performance) {
        if (player == null) {
            player = new Player();
        }
        begun = new Begun(performance, player.play(performance));
        return say(outcome());
    }

    /** What came of it, or that it sounds if the card takes longer than one likes to wait for. */
    private Outcome outcome() {
        try {
            return begun.playing.started().get(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException slow) {
            return Outcome.SOUNDING;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return Outcome.STOPPED;
        } catch (ExecutionException never) {
            throw new IllegalStateException("a start never fails", never);
        }
    }

    private String say(Outcome outcome) {
        if (outcome.isSilent()) {
            String brief = "No sound: " + outcome.reason() + ".";
            String line = silenceExplained
                    ? brief
                    : brief + " Add --wav FILE to a play line and listen to the file elsewhere.";
            silenceExplained = true;
            return line;
        }
        String line = cautioned ? "" : Care.BRIEF;
        cautioned = true;
        return line;
    }

    @Override
    public Optional<Heard> heard() {
        return Optional.ofNullable(begun)
                .filter(last -> !last.playing.ended().isDone())
                .map(Begun::heard);
    }

    @Override
    public void stop() {
        if (player != null) {
            player.stop();
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
