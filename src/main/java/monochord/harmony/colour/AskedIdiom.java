package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.Numeral;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * One idiom that somebody asks for by name, at the place that is named or at the best one.
 *
 * <p>Text form: the name of an idiom, such as {@code applied} or {@code line cliche}, or {@code borrowed} and any numeral.
 *
 * @param name of the idiom
 * @param numeral the chord to be borrowed, or null
 */
public record AskedIdiom(String name, Numeral numeral) {
    private static final String BORROWED = "borrowed ";
    private static final String EXAMPLE = "borrowed bVI";
    private static final int OTHERS = 3;

    /** The names that can be asked for, each once, in the order of their declaration. */
    public static List<String> names() {
        return Idiom.all().stream().map(Idiom::name).distinct().toList();
    }

    /** @throws Unreadable if no idiom is called so */
    public static AskedIdiom parse(String text) {
        String asked = plain(text);
        if (asked.startsWith(BORROWED)) {
            String rest = text.strip().substring(BORROWED.length()).strip();
            try {
                return new AskedIdiom(BORROWED.strip(), Numeral.parse(rest));
            } catch (Unreadable unreadable) {
                throw unreadable.within(text, text.indexOf(rest));
            }
        }
        return names().stream()
                .filter(name -> plain(name).equals(asked))
                .findFirst()
                .map(name -> new AskedIdiom(name, null))
                .orElseThrow(() -> Unreadable.because(
                        text,
                        0,
                        "an idiom",
                        Clause.of("expected borrowed and a numeral, or {0}", String.join(", ", others())),
                        EXAMPLE));
    }

    private static List<String> others() {
        return names().stream().filter(name -> !name.startsWith(BORROWED)).toList();
    }

    private static String plain(String text) {
        return text.strip()
                .toLowerCase(Locale.ROOT)
                .replace('é', 'e')
                .replace('-', ' ')
                .replaceAll("\\s+", " ");
    }

    /**
     * The progression with this idiom and nothing else; empty if it fits nowhere.
     *
     * @param at the chord that is changed, or before which chords are put, from 0
     */
    public Optional<Idea> in(Progression progression, Optional<Melody> melody, OptionalInt at) {
        return in(progression, melody, at, Recolour.RecolourOptions.USUAL);
    }

    /** The same in bars of three beats, if the options say so. */
    public Optional<Idea> in(
            Progression progression, Optional<Melody> melody, OptionalInt at, Recolour.RecolourOptions options) {
        PlainRow row = new PlainRow(progression, false, options.threes(melody));
        Optional<Change> found = numeral == null ? named(row, at) : borrowed(row, at);
        TuneFit overlay = new TuneFit(melody, progression);
        return found.map(change -> new Idea(change, ChangeScore.of(change, true, overlay.price(change)), overlay));
    }

    /** Why it does not fit, and what would, in sentences. */
    public Phrase refused(Progression progression, Optional<Melody> melody, OptionalInt at) {
        Phrase why = numeral == null ? IdiomNeeds.of(name) : IdiomNeeds.of(BORROWED);
        Phrase said = at.isPresent()
                ? Phrase.sentence("That does not fit at chord {0}.", at.getAsInt() + 1)
                        .then(why)
                : why.then(Phrase.sentence("There is no such place in these chords."));
        Optional<Idea> elsewhere = at.isPresent() ? in(progression, melody, OptionalInt.empty()) : Optional.empty();
        List<Idea> others = Recolour.of(progression, melody).ideas().stream()
                .filter(idea -> at.isEmpty() || touches(idea.change(), at.getAsInt()))
                .limit(OTHERS)
                .toList();
        Phrase there = elsewhere
                .map(idea -> Phrase.sentence("It would fit elsewhere: {0}.", idea.where()))
                .orElse(Phrase.NOTHING);
        Phrase instead = others.isEmpty()
                ? Phrase.NOTHING
                : Phrase.sentence(
                        "What would fit: {0}.",
                        Phrase.joined(
                                "; ", others.stream().map(AskedIdiom::offer).toList()));
        return said.then(there).then(instead);
    }

    private static Phrase offer(Idea idea) {
        return Phrase.of("{0}, {1}", idea.nameInWords(), idea.where());
    }

    private Optional<Change> named(PlainRow row, OptionalInt at) {
        UndeclaredChanges undeclared = new UndeclaredChanges(row);
        if (name.startsWith(UndeclaredChanges.PEDAL)) {
            return undeclared.pedal(name, at);
        }
        Comparator<Change> best = Comparator.comparingInt((Change change) -> atItsGoal(change, at))
                .thenComparingInt(change -> ChangeScore.of(change, true, 0));
        return declared(row).stream()
                .filter(change -> at.isEmpty() || touches(change, at.getAsInt()))
                .max(best)
                .or(() -> at.isPresent() ? undeclared.of(name, at.getAsInt()) : undeclared.anywhere(name));
    }

    private static int atItsGoal(Change change, OptionalInt at) {
        return at.isPresent() && change.first() == at.getAsInt() ? 1 : 0;
    }

    private List<Change> declared(PlainRow row) {
        ChangeFinder finder = new ChangeFinder(row, true, false);
        List<Change> found = new ArrayList<>();
        for (Idiom idiom : Idiom.all()) {
            if (idiom.name().equals(name)) {
                found.addAll(finder.of(idiom));
            }
        }
        return found;
    }

    /** Chords put in between count with the one behind them; at the end of a loop with the last. */
    private static boolean touches(Change change, int at) {
        boolean isRoundTheLoop =
                change.isInsertion() && change.first() == change.row().size();
        return change.isInsertion()
                ? change.first() == at || isRoundTheLoop && change.first() - 1 == at
                : change.first() <= at && at <= change.last();
    }

    private Optional<Change> borrowed(PlainRow row, OptionalInt at) {
        UndeclaredChanges undeclared = new UndeclaredChanges(row);
        Optional<Change> found = at.isPresent()
                ? undeclared.borrowed(numeral, at.getAsInt())
                : undeclared.bestPlace(numeral).flatMap(place -> undeclared.borrowed(numeral, place));
        return found.map(change -> declaredAs(change, row));
    }

    /** The same with the reason and the book of the idiom that puts that chord there, if there is one. */
    private static Change declaredAs(Change change, PlainRow row) {
        ChangeFinder finder = new ChangeFinder(row, true, false);
        return Idiom.all().stream()
                .filter(idiom -> idiom.name().startsWith(BORROWED))
                .flatMap(idiom -> finder.of(idiom).stream())
                .filter(other -> other.first() == change.first()
                        && other.last() == change.last()
                        && other.put().equals(change.put()))
                .findFirst()
                .orElse(change);
    }
}
