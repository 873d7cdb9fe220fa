package monochord.shell;

import java.util.Optional;
import monochord.shell.playback.Ear;
import monochord.shell.playback.PlayheadPosition;
import monochord.sound.Performance;
import monochord.text.Phrase;

/** An ear without a card: what is played sounds until it is stopped, as far along as the test says. */
final class SoundingEar implements Ear {
    private volatile Performance sounding;
    private volatile double beats;
    private volatile int stops;

    @Override
    public Phrase play(Performance performance) {
        beats = 0;
        sounding = performance;
        return Phrase.NOTHING;
    }

    @Override
    public Optional<PlayheadPosition> heard() {
        Performance now = sounding;
        return now == null ? Optional.empty() : Optional.of(new PlayheadPosition(now, beats));
    }

    void hears(double newBeats) {
        beats = newBeats;
    }

    void endsByItself() {
        sounding = null;
    }

    int stops() {
        return stops;
    }

    @Override
    public void stop() {
        sounding = null;
        stops++;
    }

    @Override
    public void listenToTheEnd() {
        // the test says when it ends
    }
}
