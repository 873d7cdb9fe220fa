package monochord.shell.keyboard;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import monochord.practice.AnswerForm;
import monochord.practice.Question;
import monochord.text.Phrase;

/** Says once for each kind of question how it is answered with the fingers. */
final class PlayedAnswerHint {
    private final Set<AnswerForm> said = EnumSet.noneOf(AnswerForm.class);

    Optional<Phrase> to(Question question) {
        return said.add(question.form()) ? words(question.form()) : Optional.empty();
    }

    private static Optional<Phrase> words(AnswerForm form) {
        return switch (form) {
            case NOTES ->
                Optional.of(
                        Phrase.of(
                                "You can play it, in any octave: together and let go, or one after another and a pause at the end."));
            case CHORD -> Optional.of(Phrase.of("You can play it, in any octave: it counts when you let go."));
            case VOICING ->
                Optional.of(
                        Phrase.of("You can play it with both hands, where you want it: it counts when you let go."));
            case PROGRESSION ->
                Optional.of(Phrase.of("You can play it chord after chord; a single key takes the last one back."));
            default -> Optional.empty();
        };
    }
}
