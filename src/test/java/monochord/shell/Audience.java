package monochord.shell;

import java.util.ArrayList;
import java.util.List;
import monochord.shell.ear.Ear;
import monochord.sound.Performance;

/** An ear that keeps what it is to play. */
final class Audience implements Ear {
    private final List<Performance> heard = new ArrayList<>();

    @Override
    public String play(Performance performance) {
        heard.add(performance);
        return "";
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
