package monochord.shell.verb.sounding;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.sitting.Stage;
import monochord.shell.sound.SoundAnswer;
import monochord.sound.Bank;
import monochord.sound.Directions;
import monochord.sound.OwnBank;
import monochord.sound.Patch;
import monochord.theory.Unreadable;
import monochord.view.Answer;
import monochord.view.Saying;

/** Says or settles what each hand sounds like. */
final class PatchVerb implements Verb {
    private static final String EXAMPLE = "patch acoustic bass left";
    private static final String LEFT = "left";
    private static final String RIGHT = "right";

    @Override
    public Usage usage() {
        return Usage.of(
                        "patch",
                        Usage.Topic.SOUND,
                        "patch [PATCH] [left or right] [--keep]",
                        "say or settle the sound, of one hand or of both, by its General MIDI name",
                        "patch electric piano 1",
                        EXAMPLE,
                        "patch left acoustic bass right vibraphone")
                .withSmallWords(LEFT, RIGHT)
                .withOptions(TempoVerb.KEEP);
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Directions now = sitting.stage().directions();
        Optional<Patch> both = said(sentence.body());
        Optional<Patch> left = hand(LEFT, sentence, both);
        Optional<Patch> right = hand(RIGHT, sentence, both);
        if (left.isEmpty() && right.isEmpty()) {
            return new SoundAnswer(now, inWords(now));
        }
        Directions settled = now.with(left.orElse(now.left()), right.orElse(now.right()));
        sitting.stage().settle(settled);
        Stream<Patch> chosen = Stream.of(left, right).flatMap(Optional::stream).distinct();
        String said = inWords(settled) + standIns(chosen, settled.bank());
        try {
            if (sentence.has(TempoVerb.KEEP)) {
                sitting.settings().put(Stage.LEFT, settled.left().toString());
                sitting.settings().put(Stage.RIGHT, settled.right().toString());
            }
        } catch (IOException unkept) {
            return Saying.failed(said + " It cannot be kept: " + unkept.getMessage());
        }
        return new SoundAnswer(settled, said);
    }

    /** Who plays in place of what the bank has not. */
    private static String standIns(Stream<Patch> chosen, Optional<Bank> bank) {
        return chosen.filter(patch -> !OwnBank.player(patch, bank).equals(patch))
                .map(patch -> " The bank has no " + patch + "; " + OwnBank.player(patch, bank) + " plays in its place.")
                .collect(Collectors.joining());
    }

    private static Optional<Patch> said(Sentence.Part part) {
        return part.isEmpty() ? Optional.empty() : Optional.of(part.read(Slips::patch));
    }

    /** What one hand is to play: named behind it or before it; before it only for one hand, or for both if none is named. */
    private static Optional<Patch> hand(String word, Sentence sentence, Optional<Patch> before) {
        boolean bare = sentence.clause(LEFT).isEmpty() && sentence.clause(RIGHT).isEmpty();
        if (bare) {
            return before;
        }
        Optional<Sentence.Part> clause = sentence.clause(word);
        Optional<Patch> behind = clause.flatMap(PatchVerb::said);
        if (clause.isPresent() && behind.isPresent() == before.isPresent()) {
            throw Unreadable.because(
                    sentence.whole(),
                    clause.get().place(),
                    "a patch for a hand",
                    "one sound is needed for it",
                    EXAMPLE);
        }
        return clause.isEmpty() ? Optional.empty() : behind.or(() -> before);
    }

    private static String inWords(Directions directions) {
        return directions.left().equals(directions.right())
                ? "Both hands play " + directions.right() + "."
                : "The left hand plays " + directions.left() + ", the right hand " + directions.right() + ".";
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return Patch.all().stream().map(Patch::toString).toList();
    }
}
