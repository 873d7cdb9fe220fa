package monochord.harmony.after;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.ChordFunction;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.TriadQuality;

/**
 * Where a chord goes next in a key.
 *
 * <p>Looked at are the key's own chords, the common borrowed ones, the dominants of its chords, the suspended dominant, and
 * whatever follows in enough songs. A way on is kept if a {@link Reason} leads there.
 */
public final class Continuations {
    private static final List<Numeral> IN_MAJOR =
            numerals("I", "ii", "iii", "IV", "V", "vi", "bVI", "bVII", "iv", "bIII", "iio", "bII", "i", "v");
    private static final List<Numeral> IN_MINOR =
            numerals("i", "iv", "V", "VI", "VII", "III", "iio", "v", "IV", "bII", "viio");
    private static final List<Numeral> IN_BOTH = numerals("V7sus4", "V7/V", "Cad64");
    private static final List<Numeral> DOMINANTS_IN_MAJOR = numerals("V7/vi", "V7/ii", "V7/IV");
    private static final List<Numeral> DOMINANTS_IN_MINOR = numerals("V7/iv", "V7/VI", "V7/III");

    private Continuations() {}

    private static List<Numeral> numerals(String... names) {
        return Stream.of(names).map(Numeral::parse).toList();
    }

    /** Every way on from the chord that has a reason, the likeliest first; without counts, the one with the best reason. */
    public static List<Continuation> ways(Numeral from, Key key, SongCounts corpus) {
        return candidates(from, key, corpus).stream()
                .map(to -> way(from, to, key, corpus))
                .flatMap(Optional::stream)
                .sorted((corpus.rows().isEmpty()
                                ? Comparator.comparingInt(Continuation::score)
                                : Comparator.comparingInt(Continuation::likelihood)
                                        .thenComparingInt(Continuation::score))
                        .reversed())
                .toList();
    }

    /** The ways into a chord, from the key's own chords first, then from borrowed ones, the likeliest first. */
    public static List<Continuation> approaches(Numeral to, Key key) {
        return usual(key).stream()
                .filter(from -> from.in(key).kind().quality() != TriadQuality.SUSPENDED)
                .filter(from -> from.form() == Numeral.Form.DEGREE && from.target() == null)
                .filter(from -> !isSameTriad(from.in(key), to.in(key)))
                .map(from -> way(from, to, key, SongCounts.NONE))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing(
                                (Continuation way) -> !key.isOwn(way.move().from()))
                        .thenComparing(
                                Comparator.comparingInt(Continuation::score).reversed()))
                .toList();
    }

    /** The way from one chord to another in a key, if there is a reason to go it. */
    public static Optional<Continuation> way(Numeral from, Numeral to, Key key, SongCounts corpus) {
        Chord first = from.in(key);
        Chord second = to.in(key);
        ChordMove move = new ChordMove(first, second);
        Optional<SongCounts.Backing> backing = corpus.backing(from, to, key);
        return Reason.of(from, to, key)
                .or(() -> backing.map(Reason::ofSongs))
                .map(reason -> new Continuation(
                        from,
                        to,
                        second,
                        move,
                        reason.said(),
                        reason.weight(),
                        ChordFunction.of(first, key).main(),
                        ChordFunction.of(second, key).main(),
                        ContinuationKind.to(second, key),
                        backing.orElse(null)));
    }

    /** What a tendency asks for first, then the usual chords; a chord that has to resolve goes to no other on its root. */
    private static List<Numeral> candidates(Numeral from, Key key, SongCounts corpus) {
        Map<Chord, Numeral> found = new LinkedHashMap<>();
        Chord here = from.in(key);
        List<Numeral> resolutions = Reason.resolutions(from, key);
        resolutions.forEach(numeral -> found.put(numeral.in(key), numeral));
        Stream.of(usual(key).stream(), corpus.followers(from, key).stream().map(numeral -> inKey(numeral, key)))
                .flatMap(numerals -> numerals)
                .filter(numeral -> !isSameTriad(numeral.in(key), here))
                .filter(numeral ->
                        resolutions.isEmpty() || !numeral.in(key).root().equals(here.root()))
                .forEach(numeral -> found.putIfAbsent(numeral.in(key), numeral));
        return List.copyOf(found.values());
    }

    private static List<Numeral> usual(Key key) {
        List<Numeral> names = new ArrayList<>(key.isMinor() ? IN_MINOR : IN_MAJOR);
        names.addAll(IN_BOTH);
        names.addAll(key.isMinor() ? DOMINANTS_IN_MINOR : DOMINANTS_IN_MAJOR);
        return names;
    }

    /** A numeral of the counts, which is read in major, as the key names it. */
    private static Numeral inKey(Numeral counted, Key key) {
        return counted.target() == null ? Numeral.onDegree(counted.in(Key.major(key.tonic())), key) : counted;
    }

    private static boolean isSameTriad(Chord one, Chord other) {
        return one.root().equals(other.root())
                && one.kind().triad().equals(other.kind().triad());
    }
}
