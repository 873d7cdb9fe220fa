package monochord.shell.verb.sounding;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.oneOf;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.PlaybackState;
import monochord.shell.sitting.Sitting;
import monochord.shell.sound.SoundAnswer;
import monochord.sound.Bank;
import monochord.sound.Directions;
import monochord.sound.OwnBank;
import monochord.sound.Patch;
import monochord.text.Failure;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Statement;

/** Says or settles what each hand sounds like. */
final class PatchVerb implements Verb {
    private static final String EXAMPLE = "patch acoustic bass left";
    private static final String LEFT = "left";
    private static final String RIGHT = "right";

    @Override
    public String word() {
        return "patch";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.SOUND,
                        Phrase.of("say or settle the sound, of one hand or of both, by its General MIDI name"))
                .form(may(takes(Value.PATCH)), may(oneOf(Value.PATCH, LEFT, RIGHT)), may(option(TempoVerb.KEEP)))
                .examples("patch electric piano 1", EXAMPLE, "patch left acoustic bass right vibraphone");
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
        Phrase said = inWords(settled).then(standIns(chosen, settled.bank()));
        try {
            if (sentence.has(TempoVerb.KEEP)) {
                sitting.settings().put(PlaybackState.LEFT, settled.left().toString());
                sitting.settings().put(PlaybackState.RIGHT, settled.right().toString());
            }
        } catch (IOException unkept) {
            return Statement.failed(said.then(Phrase.of("It cannot be kept: {0}", Failure.told(unkept))));
        }
        return new SoundAnswer(settled, said);
    }

    /** Who plays in place of what the bank has not. */
    private static Phrase standIns(Stream<Patch> chosen, Optional<Bank> bank) {
        return chosen.filter(patch -> !OwnBank.player(patch, bank).equals(patch))
                .map(patch -> Phrase.sentence(
                        "The bank has no {0}; {1} plays in its place.", name(patch), name(OwnBank.player(patch, bank))))
                .reduce(Phrase.NOTHING, Phrase::then);
    }

    private static Phrase name(Patch patch) {
        return Phrase.typed(patch.toString());
    }

    private static Optional<Patch> said(Sentence.SentencePart part) {
        return part.isEmpty() ? Optional.empty() : Optional.of(part.read(SoundNames::patch));
    }

    /** What one hand is to play: named behind it or before it; before it only for one hand, or for both if none is named. */
    private static Optional<Patch> hand(String word, Sentence sentence, Optional<Patch> before) {
        boolean bare = sentence.clause(LEFT).isEmpty() && sentence.clause(RIGHT).isEmpty();
        if (bare) {
            return before;
        }
        Optional<Sentence.SentencePart> clause = sentence.clause(word);
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

    private static Phrase inWords(Directions directions) {
        Phrase right = Phrase.typed(directions.right().toString());
        return directions.left().equals(directions.right())
                ? Phrase.sentence("Both hands play {0}.", right)
                : Phrase.sentence(
                        "The left hand plays {0}, the right hand {1}.",
                        Phrase.typed(directions.left().toString()), right);
    }
}
