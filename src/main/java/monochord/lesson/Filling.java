package monochord.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.NoteName;
import monochord.theory.Unreadable;
import org.apache.commons.text.StringSubstitutor;
import org.apache.commons.text.lookup.StringLookup;
import org.apache.commons.text.matcher.StringMatcherFactory;

/**
 * Fills in a lesson's text for a key: {@code ${degree b6}} becomes B♭ in D major.
 *
 * <p>Only the words of the lesson format are looked up. Files, properties, the environment and scripts are out of reach;
 * a fill inside a fill, a default and an escape have no meaning. What cannot be filled stays as it is written, and {@link
 * #troubles} says why.
 */
public final class Filling {
    private static final String OPEN = "${";
    private static final Key ANY_KEY = Key.major(NoteName.C);

    private final StringSubstitutor substitutor;

    public Filling(Key key) {
        StringLookup ours = inside -> filled(inside, key).orElse(null);
        substitutor = new StringSubstitutor(ours)
                .setValueDelimiterMatcher(StringMatcherFactory.INSTANCE.noneMatcher())
                .setEscapeChar('\0')
                .setEnableSubstitutionInVariables(false)
                .setDisableSubstitutionInValues(true);
    }

    /** The text as a learner in this key reads it. */
    public String of(String text) {
        return substitutor.replace(text);
    }

    private static Optional<String> filled(String inside, Key key) {
        String word = word(inside);
        String argument = inside.substring(word.length()).strip();
        try {
            return Fill.named(word).filter(fill -> fill.takes(argument)).map(fill -> fill.in(key, argument));
        } catch (Unreadable unknownToTheEngine) {
            return Optional.empty();
        }
    }

    private static String word(String inside) {
        int space = inside.indexOf(' ');
        return space < 0 ? inside : inside.substring(0, space);
    }

    /** Everything in the text that cannot be filled in. */
    public static List<Trouble> troubles(String text) {
        List<Trouble> troubles = new ArrayList<>();
        int place = text.indexOf(OPEN);
        while (place >= 0) {
            int next = text.indexOf(OPEN, place + OPEN.length());
            int close = text.indexOf('}', place);
            if (close < 0 || next >= 0 && next < close) {
                troubles.add(new Trouble(
                        place,
                        Phrase.of("{0} is not closed", Phrase.typed(OPEN)),
                        Phrase.of("write } behind the fill, without another in it")));
            } else {
                trouble(text.substring(place + OPEN.length(), close), place).ifPresent(troubles::add);
            }
            place = next;
        }
        return troubles;
    }

    private static Optional<Trouble> trouble(String inside, int place) {
        String word = word(inside);
        String argument = inside.substring(word.length()).strip();
        Optional<Fill> fill = Fill.named(word);
        return fill.isEmpty()
                ? Optional.of(Trouble.unknown(place, Phrase.of("fill"), word, Fill.words()))
                : trouble(fill.get(), argument, place);
    }

    private static Optional<Trouble> trouble(Fill fill, String argument, int place) {
        Phrase instead = Phrase.of(
                fill.example().contains(" ") ? "write for example {0}" : "write {0}", Phrase.typed(fill.example()));
        if (!fill.takes(argument)) {
            Phrase what = Phrase.of(
                    argument.isEmpty() ? "the fill {0} needs to know which" : "the fill {0} takes nothing behind it",
                    Phrase.typed(fill.word()));
            return Optional.of(new Trouble(place, what, instead));
        }
        try {
            fill.in(ANY_KEY, argument);
            return Optional.empty();
        } catch (Unreadable unreadable) {
            return Optional.of(new Trouble(place, Phrase.clause(unreadable.trouble()), instead));
        }
    }
}
