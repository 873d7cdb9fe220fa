package monochord.shell.livekeyboard;

import java.util.Optional;
import java.util.function.Consumer;
import monochord.score.Score;
import monochord.shell.line.LineState;
import monochord.shell.playback.Ear;
import monochord.shell.playback.LiveStrip;
import monochord.shell.playback.PlayheadPosition;

/** While music sounds, shows on the board which keys are down, and takes the picture away when it is over. */
public final class KeyboardFollower implements Consumer<LineState> {
    private static final long BETWEEN_LOOKS_MILLIS = 80;

    private final Ear ear;
    private final LiveStrip board;
    private boolean following;
    private Score score;
    private ScoreView view;
    private ScoreView.VisibleMoment shown;

    public KeyboardFollower(Ear ear, LiveStrip board) {
        this.ear = ear;
        this.board = board;
    }

    /** Begins to follow if something sounds. */
    @Override
    public synchronized void accept(LineState scene) {
        if (!following && ear.heard().isPresent()) {
            following = true;
            Thread thread = new Thread(this::follow, "follower");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private void follow() {
        try {
            while (goesOn()) {
                Thread.sleep(BETWEEN_LOOKS_MILLIS);
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } finally {
            stopFollowing();
        }
    }

    /** Looks once. */
    private synchronized boolean goesOn() {
        Optional<PlayheadPosition> heard = ear.heard();
        heard.ifPresent(this::show);
        following = heard.isPresent();
        return following;
    }

    private void show(PlayheadPosition heard) {
        Score played = heard.performance().score();
        if (played != score) {
            score = played;
            view = new ScoreView(played);
            shown = null;
        }
        ScoreView.VisibleMoment now = view.at(heard.beats());
        if (!now.equals(shown)) {
            shown = now;
            ScoreView seen = view;
            board.show(look -> seen.picture(now, look));
        }
    }

    private synchronized void stopFollowing() {
        following = false;
        score = null;
        shown = null;
        board.clear();
    }
}
