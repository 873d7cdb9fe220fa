package monochord.shell.keyboard;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import monochord.practice.Form;
import monochord.practice.Question;

/** Says once for each kind of question how it is answered with the fingers. */
final class Invitation {
    private final Set<Form> said = EnumSet.noneOf(Form.class);

    Optional<String> to(Question question) {
        return said.add(question.form()) ? Optional.ofNullable(words(question.form())) : Optional.empty();
    }

    private static String words(Form form) {
        return switch (form) {
            case NOTES ->
                "You can play it, in any octave: together and let go, or one after another and a pause at the end.";
            case CHORD -> "You can play it, in any octave: it counts when you let go.";
            case VOICING -> "You can play it with both hands, where you want it: it counts when you let go.";
            case PROGRESSION -> "You can play it chord after chord; a single key takes the last one back.";
            default -> null;
        };
    }
}
