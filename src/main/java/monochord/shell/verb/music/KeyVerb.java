package monochord.shell.verb.music;

import java.util.List;
import monochord.shell.sentence.Keys;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.music.KeyAnswer;

/** Shows a key and makes it the key of the sitting. */
final class KeyVerb implements Verb {
    @Override
    public Usage usage() {
        return Usage.of(
                        "key",
                        Usage.Topic.EXPLORING,
                        "key [KEY]",
                        "show a key and stay in it; without one, say where we are",
                        "key D",
                        "key F# minor")
                .withSmallWords();
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Sentence.Part named = sentence.body();
        if (!named.isEmpty()) {
            sitting.settle(named.read(Key::parse));
        }
        return new KeyAnswer(sitting.key());
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return Keys.names();
    }
}
