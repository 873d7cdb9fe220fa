package monochord.shell.verb.sounding;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.sitting.Stage;
import monochord.shell.sound.SoundAnswer;
import monochord.sound.Bank;
import monochord.text.SafeText;
import monochord.view.Answer;
import monochord.view.Saying;

/** Says or settles where sounds are taken from. */
final class BankVerb implements Verb {
    private static final String OWN = "own";

    @Override
    public Usage usage() {
        return Usage.of(
                        "bank",
                        Usage.Topic.SOUND,
                        "bank [FILE or own]",
                        "take the sounds from a SoundFont or DLS file, from now on, or from our own bank again",
                        "bank",
                        "bank own")
                .withSmallWords();
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Stage stage = sitting.stage();
        Sentence.Part wish = sentence.body();
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
            return Saying.failed(SafeText.oneLine(sitting.outside().named(refused.getMessage())) + ". Sounds come from "
                    + name(stage.directions().bank()) + " as before.");
        }
    }

    private static Answer settle(Optional<Bank> bank, Sitting sitting) {
        Stage stage = sitting.stage();
        stage.settle(stage.directions().from(bank));
        String said = "Sounds come from " + name(bank) + ".";
        try {
            Optional<String> path =
                    bank.map(chosen -> chosen.file().toAbsolutePath().toString());
            sitting.settings().put(Stage.BANK, path.orElse(""));
            return new SoundAnswer(stage.directions(), said);
        } catch (IOException unkept) {
            return Saying.failed(said + " It cannot be kept: " + unkept.getMessage());
        }
    }

    /** Where sounds come from, and why not from where they did, if that is gone. */
    private static String inWords(Stage stage) {
        Optional<Bank> bank = stage.directions().bank();
        Optional<String> gone = stage.keptBank()
                .filter(kept -> bank.isEmpty())
                .map(kept -> " " + SafeText.oneLine(kept.toString()) + " cannot be read any more.");
        return "Sounds come from " + name(bank) + "." + gone.orElse("");
    }

    private static String name(Optional<Bank> bank) {
        return bank.map(Bank::name).map(SafeText::oneLine).orElse("our own bank");
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return List.of(OWN);
    }
}
