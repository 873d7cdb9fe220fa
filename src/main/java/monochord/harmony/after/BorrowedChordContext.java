package monochord.harmony.after;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.harmony.Borrowing.Borrowed;
import monochord.harmony.melody.Standing;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;

/**
 * A borrowed chord where it is used: how it is reached and left, and which notes of the tune it bears.
 *
 * @param approach the usual ways into it, the likeliest first
 * @param exit the usual ways on, the likeliest first
 * @param rests degrees of the key's scale that are its tones
 * @param colours degrees that colour it
 * @param fights degrees that clash with it on a strong beat
 */
public record BorrowedChordContext(
        List<Continuation> approach,
        List<Continuation> exit,
        List<Degree> rests,
        List<Degree> colours,
        List<Degree> fights) {
    private static final int MOST = 3;

    public static BorrowedChordContext of(Borrowed borrowed, Key key) {
        return new BorrowedChordContext(
                first(Continuations.approaches(borrowed.numeral(), key).stream()),
                first(Continuations.ways(borrowed.numeral(), key, SongCounts.NONE).stream()
                        .filter(way ->
                                way.numeral().target() == null && way.numeral().form() == Numeral.Form.DEGREE)),
                Standing.degrees(borrowed.chord(), key, Standing.CHORD_TONE),
                Standing.degrees(borrowed.chord(), key, Standing.COLOUR),
                Standing.degrees(borrowed.chord(), key, Standing.CLASH));
    }

    private static List<Continuation> first(Stream<Continuation> ways) {
        return ways.limit(MOST).toList();
    }

    /** The degrees a tune may rest on over the chord: its own tones first, then its colours. */
    public List<Degree> welcomes() {
        return Stream.concat(rests.stream(), colours.stream()).toList();
    }

    /** What the chord does to a tune over it: which degrees rest, which colour, which clash. */
    public Phrase tune(Key key) {
        List<Phrase> said = new ArrayList<>();
        if (!rests.isEmpty()) {
            said.add(Phrase.counted(rests.size(), "{0} rests", "{0} rest", degrees(rests, key)));
        }
        if (!colours.isEmpty()) {
            said.add(Phrase.counted(colours.size(), "{0} colours", "{0} colour", degrees(colours, key)));
        }
        if (!fights.isEmpty()) {
            said.add(Phrase.counted(
                    fights.size(), "{0} clashes on a strong beat", "{0} clash on a strong beat", degrees(fights, key)));
        }
        return Phrase.sentence("Under the tune: {0}.", Phrase.joined("; ", said));
    }

    private static Phrase degrees(List<Degree> degrees, Key key) {
        return Phrase.list(degrees.stream()
                .map(degree -> Phrase.of("{0} ({1})", degree, key.note(degree)))
                .toList());
    }
}
