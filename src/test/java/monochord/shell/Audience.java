package monochord.shell;

import java.util.ArrayList;
import java.util.List;
import monochord.shell.playback.Ear;
import monochord.sound.Performance;
import monochord.text.Phrase;

/** An ear that keeps what it is to play. */
final class Audience implements Ear {
    private final List<Performance> heard = new ArrayList<>();

    @Override
    public Phrase play(Performance performance) {
        heard.add(performance);
        return Phrase.NOTHING;
    }

    @Override
    public void stop() {
        // nothing sounds
    }

    @Override
    public void listenToTheEnd() {
        // nothing sounds
    }

    /** In order of time. */
    List<Performance> performances() {
        return heard;
    }

    Performance last() {
        return heard.get(heard.size() - 1);
    }
}
