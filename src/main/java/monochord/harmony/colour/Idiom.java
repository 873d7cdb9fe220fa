package monochord.harmony.colour;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import monochord.text.Phrase;

/**
 * A move of one to four chords that players know: what it replaces or goes between, what it puts there, and why.
 *
 * <p>Several idioms may have one name: the same chords in another place, for another reason.
 *
 * @param name as it is typed and as JSON has it
 * @param lift what it is worth by itself, from 1 to 10
 * @param restraint what it costs a careful player, from 0 to 6
 * @param conditions what it asks of its place
 * @param reason a sentence that holds wherever one of the patterns does
 */
record Idiom(
        String name,
        Colour colour,
        int lift,
        int restraint,
        Set<IdiomCondition> conditions,
        Function<Change, Phrase> reason,
        TextbookPage source,
        List<MovePattern> inMajor,
        List<MovePattern> inMinor) {
    static Idiom named(String name, Colour colour, TextbookPage source) {
        return new Idiom(name, colour, 0, 0, Set.of(), change -> Phrase.NOTHING, source, List.of(), List.of());
    }

    Idiom worth(int newLift, int newRestraint) {
        return new Idiom(name, colour, newLift, newRestraint, conditions, reason, source, inMajor, inMinor);
    }

    Idiom where(IdiomCondition first, IdiomCondition... rest) {
        return new Idiom(name, colour, lift, restraint, EnumSet.of(first, rest), reason, source, inMajor, inMinor);
    }

    Idiom because(Function<Change, Phrase> newReason) {
        return new Idiom(name, colour, lift, restraint, conditions, newReason, source, inMajor, inMinor);
    }

    Idiom inMajor(String... patterns) {
        List<MovePattern> parsed = MovePattern.parse(List.of(patterns), false);
        return new Idiom(name, colour, lift, restraint, conditions, reason, source, parsed, inMinor);
    }

    Idiom inMinor(String... patterns) {
        List<MovePattern> parsed = MovePattern.parse(List.of(patterns), true);
        return new Idiom(name, colour, lift, restraint, conditions, reason, source, inMajor, parsed);
    }

    List<MovePattern> patterns(boolean minor) {
        return minor ? inMinor : inMajor;
    }

    /** Every idiom. */
    static List<Idiom> all() {
        return All.LIST;
    }

    /** Read when they are first asked for. */
    private static final class All {
        private static final List<Idiom> LIST = Stream.of(
                        BorrowedIdioms.all(), DominantIdioms.all(), LineIdioms.all(), AddedToneIdioms.all())
                .flatMap(List::stream)
                .toList();
    }
}
