package monochord.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * Fills in a lesson's text for a key: {@code ${degree b6}} becomes B♭ in D major, {@code ${F#}} is F♯ in every key; both by
 * the reader's own note names.
 *
 * <p>Only the words of the lesson format are looked up; a fill inside a fill, a default and an escape have no meaning. What
 * cannot be filled stays as it is written, and {@link #troubles} says why.
 */
public final class Filling {
    private static final String OPEN = "${";
    private static final char CLOSE = '}';
    private static final Key ANY_KEY = Key.major(NoteName.C);

    private final Key key;

    public Filling(Key key) {
        this.key = key;
    }

    /** The text as a learner in this key reads it. */
    public Phrase of(String text) {
        List<Phrase> parts = new ArrayList<>();
        int said = 0;
        int open = text.indexOf(OPEN);
        while (open >= 0) {
            int end = end(text, open);
            Optional<Phrase> filled = filled(text.substring(open, end));
            if (filled.isPresent()) {
                parts.add(Phrase.typed(text.substring(said, open)));
                parts.add(filled.get());
                said = end;
            }
            open = text.indexOf(OPEN, end);
        }
        parts.add(Phrase.typed(text.substring(said)));
        return Phrase.joined("", parts);
    }

    /** Behind the brace that closes the fill which opens here, with all fills in it; the end of the text if none does. */
    private static int end(String text, int open) {
        int depth = 0;
        for (int i = open; i < text.length(); i++) {
            if (text.startsWith(OPEN, i)) {
                depth++;
            } else if (text.charAt(i) == CLOSE && --depth == 0) {
                return i + 1;
            }
        }
        return text.length();
    }

    private Optional<Phrase> filled(String whole) {
        if (whole.charAt(whole.length() - 1) != CLOSE) {
            return Optional.empty();
        }
        String inside = whole.substring(OPEN.length(), whole.length() - 1);
        try {
            return MusicNames.begin(inside) ? Optional.of(MusicNames.of(inside)) : filledIn(inside);
        } catch (Unreadable unknownToTheEngine) {
            return Optional.empty();
        }
    }

    private Optional<Phrase> filledIn(String inside) {
        String word = word(inside);
        String argument = inside.substring(word.length()).strip();
        return Fill.named(word).filter(fill -> fill.takes(argument)).map(fill -> fill.in(key, argument));
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
        return MusicNames.begin(inside) ? nameTrouble(inside, place) : fillTrouble(inside, place);
    }

    private static Optional<Trouble> nameTrouble(String inside, int place) {
        try {
            MusicNames.of(inside);
            return Optional.empty();
        } catch (Unreadable unreadable) {
            Trouble found = Trouble.of(unreadable);
            return Optional.of(new Trouble(place, found.what(), found.instead()));
        }
    }

    private static Optional<Trouble> fillTrouble(String inside, int place) {
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
