package monochord.lesson;

import java.util.Collection;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;

/**
 * Something wrong in a piece of text, before it is known where in a file the piece stands.
 *
 * @param place index of the first character that does not fit, from 0
 * @param what a clause that says what was found
 * @param instead a clause that says what to write
 */
public record Trouble(int place, Phrase what, Phrase instead) {
    public static Trouble of(Unreadable unreadable) {
        return new Trouble(
                unreadable.place(),
                Phrase.clause(unreadable.trouble()),
                Phrase.of("write for example {0}", Phrase.typed(unreadable.example())));
    }

    /**
     * A word that is not one of those that may stand there.
     *
     * @param kind what the words are: {@code skill}
     */
    public static Trouble unknown(int place, Phrase kind, String word, Collection<String> known) {
        Phrase instead = Nearest.to(word, known)
                .map(near -> Phrase.of("write {0}", Phrase.typed(near)))
                .orElseGet(() -> Phrase.of("write one of {0}", Phrase.typed(String.join(", ", known))));
        return new Trouble(place, Phrase.of("unknown {0} \"{1}\"", kind, Phrase.quoted(word)), instead);
    }
}
