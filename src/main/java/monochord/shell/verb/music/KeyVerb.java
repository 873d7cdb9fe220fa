package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.music.KeyAnswer;

/** Shows a key and makes it the key of the sitting. */
final class KeyVerb implements Verb {
    @Override
    public String word() {
        return "key";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.Topic.EXPLORING,
                        Phrase.of("show a key and stay in it; without one, say where we are"))
                .form(may(takes(Value.KEY)))
                .examples("key D", "key F# minor");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Sentence.Part named = sentence.body();
        if (!named.isEmpty()) {
            sitting.settle(named.read(Key::parse));
        }
        return new KeyAnswer(sitting.key());
    }
}
