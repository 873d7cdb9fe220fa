package monochord.shell;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;
import monochord.text.Phrase;
import monochord.text.naming.AsTyped;
import monochord.text.naming.Renaming;
import monochord.theory.note.NoteNaming;

/** Says so where what cannot be read are note names of another country than the learner's setting. */
final class ForeignNoteNames {
    private ForeignNoteNames() {}

    /** @param place of the trouble in the line, from 0 */
    static Optional<Phrase> at(int place, String line, NoteNaming here) {
        return find(line, here, typed -> typed.changeAt(place).isPresent());
    }

    /** @param makesSense whether the line makes sense as it would be with those names */
    static Optional<Phrase> in(String line, NoteNaming here, Predicate<String> makesSense) {
        return find(line, here, typed -> makesSense.test(typed.english()));
    }

    private static Optional<Phrase> find(String line, NoteNaming here, Predicate<AsTyped> wanted) {
        return Arrays.stream(NoteNaming.values())
                .filter(naming -> naming != here && naming != NoteNaming.ENGLISH)
                .map(naming -> AsTyped.of(line, naming))
                .filter(typed -> !typed.changes().isEmpty() && wanted.test(typed))
                .findFirst()
                .map(ForeignNoteNames::say);
    }

    private static Phrase say(AsTyped typed) {
        Renaming first = typed.changes().get(0);
        return Phrase.of(
                typed.naming() == NoteNaming.GERMAN
                        ? "\"{0}\" is German for {1}. To go by such names: notes german"
                        : "\"{0}\" is Latin for {1}. To go by such names: notes latin",
                Phrase.typed(typed.typed().substring(first.from(), first.to())),
                Phrase.toType(first.by()));
    }
}
