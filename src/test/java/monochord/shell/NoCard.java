package monochord.shell;

import java.util.Optional;
import monochord.shell.playback.Ear;
import monochord.sound.Performance;
import monochord.text.Phrase;

/** An ear on a machine without a sound card. */
final class NoCard implements Ear {
    @Override
    public Phrase play(Performance performance) {
        return Phrase.NOTHING;
    }

    @Override
    public Optional<Phrase> silence() {
        return Optional.of(Phrase.of("no sound card was found"));
    }

    @Override
    public void stop() {
        // nothing sounds
    }

    @Override
    public void listenToTheEnd() {
        // there is nothing to wait for
    }
}
