package monochord.shell;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;
import monochord.text.naming.AsTyped;
import monochord.text.naming.Change;
import monochord.theory.NoteNaming;
import monochord.theory.Signs;

/** Says so where what cannot be read are note names of another country than the learner's setting. */
final class OtherNames {
    private OtherNames() {}

    /** @param place of the trouble in the line, from 0 */
    static Optional<String> at(int place, String line, NoteNaming here) {
        return find(line, here, typed -> typed.changeAt(place).isPresent());
    }

    /** @param makesSense whether the line makes sense as it would be with those names */
    static Optional<String> in(String line, NoteNaming here, Predicate<String> makesSense) {
        return find(line, here, typed -> makesSense.test(typed.english()));
    }

    private static Optional<String> find(String line, NoteNaming here, Predicate<AsTyped> wanted) {
        return Arrays.stream(NoteNaming.values())
                .filter(naming -> naming != here && naming != NoteNaming.ENGLISH)
                .map(naming -> AsTyped.of(line, naming))
                .filter(typed -> !typed.changes().isEmpty() && wanted.test(typed))
                .findFirst()
                .map(OtherNames::say);
    }

    private static String say(AsTyped typed) {
        Change first = typed.changes().get(0);
        String name = typed.naming() == NoteNaming.GERMAN ? "German" : "Latin";
        return "\"" + typed.typed().substring(first.from(), first.to()) + "\" is " + name + " for "
                + Signs.toAscii(first.by()) + ". To go by such names: notes " + typed.naming();
    }
}
