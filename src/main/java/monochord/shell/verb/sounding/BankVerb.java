package monochord.shell.verb.sounding;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.PlaybackState;
import monochord.shell.sitting.Sitting;
import monochord.shell.sound.SoundAnswer;
import monochord.sound.Bank;
import monochord.text.Failure;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Statement;

/** Says or settles where sounds are taken from. */
final class BankVerb implements Verb {
    private static final String OWN = "own";

    @Override
    public String word() {
        return "bank";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.SOUND,
                        Phrase.of(
                                "take the sounds from a SoundFont or DLS file, from now on, or from our own bank again"))
                .form(may(takes(List.of(Value.FILE), OWN)))
                .examples("bank", "bank own");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        PlaybackState stage = sitting.stage();
        Sentence.SentencePart wish = sentence.body();
        if (wish.isEmpty()) {
            return new SoundAnswer(stage.directions(), inWords(stage));
        }
        if (wish.text().equalsIgnoreCase(OWN)) {
            return settle(Optional.empty(), sitting);
        }
        Path file = Recording.file(wish, sitting);
        try {
            return settle(Optional.of(Bank.read(file)), sitting);
        } catch (IOException refused) {
            return Statement.failed(Phrase.of(
                    "{0}. Sounds come from {1} as before.",
                    sitting.outside().told(refused), name(stage.directions().bank())));
        }
    }

    private static Answer settle(Optional<Bank> bank, Sitting sitting) {
        PlaybackState stage = sitting.stage();
        stage.settle(stage.directions().from(bank));
        Phrase said = Phrase.sentence("Sounds come from {0}.", name(bank));
        try {
            Optional<String> path =
                    bank.map(chosen -> chosen.file().toAbsolutePath().toString());
            sitting.settings().put(PlaybackState.BANK, path.orElse(""));
            return new SoundAnswer(stage.directions(), said);
        } catch (IOException unkept) {
            return Statement.failed(said.then(Phrase.of("It cannot be kept: {0}", Failure.told(unkept))));
        }
    }

    /** Where sounds come from, and why not from where they did, if that is gone. */
    private static Phrase inWords(PlaybackState stage) {
        Optional<Bank> bank = stage.directions().bank();
        Phrase gone = stage.keptBank()
                .filter(kept -> bank.isEmpty())
                .map(kept -> Phrase.sentence("{0} cannot be read any more.", Phrase.typed(kept.toString())))
                .orElse(Phrase.NOTHING);
        return Phrase.sentence("Sounds come from {0}.", name(bank)).then(gone);
    }

    private static Phrase name(Optional<Bank> bank) {
        return bank.map(Bank::name).map(Phrase::typed).orElseGet(() -> Phrase.of("our own bank"));
    }
}
