package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import monochord.harmony.Borrowing;
import monochord.harmony.ChordEvent;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.TriadQuality;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** Idioms at places they are not declared for, where somebody asks for them all the same. */
final class UndeclaredChanges {
    static final String PEDAL = "pedal on ";

    private static final ChordKind HALF_DIMINISHED = ChordKind.HALF_DIMINISHED;
    private static final ChordKind SUSPENDED = ChordKind.parse("sus4");
    private static final ChordKind SEVENTH_SUSPENDED = ChordKind.parse("7sus4");
    private static final List<ChordKind> FALLING_FROM_MINOR =
            List.of(ChordKind.parse("m(maj7)"), ChordKind.MINOR_SEVENTH, ChordKind.parse("m6"));
    private static final List<ChordKind> FALLING_FROM_MAJOR =
            List.of(ChordKind.MAJOR_SEVENTH, ChordKind.DOMINANT_SEVENTH, ChordKind.parse("6"));

    /** Fifths from a root up to the note an augmented second above it. */
    private static final int RAISED_SECOND = 9;

    private final PlainRow row;

    UndeclaredChanges(PlainRow row) {
        this.row = row;
    }

    /** At the first place where it can stand. */
    Optional<Change> anywhere(String name) {
        return IntStream.range(0, row.size())
                .mapToObj(at -> of(name, at))
                .flatMap(Optional::stream)
                .findFirst();
    }

    Optional<Change> of(String name, int at) {
        return switch (name) {
            case "applied" -> before(name, at, List.of(dominantOf(at)));
            case "two-five" -> before(name, at, List.of(twoOf(at), dominantOf(at)));
            case "tritone" -> tritone(at);
            case "backdoor" -> replaced(name, at, List.of(row.event(Numeral.parse("bVII7"))));
            case "neapolitan" -> replaced(name, at, List.of(row.event(Numeral.parse("N6"))));
            case "suspended" -> suspended(at);
            case LineIdioms.LINE_CLICHE -> lineCliche(at);
            case "common-tone diminished" -> commonTone(at);
            default -> Optional.empty();
        };
    }

    private ChordEvent event(Chord chord) {
        return new ChordEvent(chord, Numeral.of(chord, row.key), 1, false);
    }

    private boolean isTriad(int at, ChordKind kind) {
        return row.chord(at).kind().triad().equals(kind);
    }

    private ChordEvent dominantOf(int at) {
        return event(new Chord(row.chord(at).root().plus(Interval.PERFECT_FIFTH), ChordKind.DOMINANT_SEVENTH));
    }

    private ChordEvent twoOf(int at) {
        NoteName root = row.chord(at).root().plus(Interval.MAJOR_SECOND);
        return event(new Chord(root, isTriad(at, ChordKind.MINOR) ? HALF_DIMINISHED : ChordKind.MINOR_SEVENTH));
    }

    /** Before a major or minor chord that is not the first. */
    private Optional<Change> before(String name, int at, List<ChordEvent> put) {
        boolean isGoal = isTriad(at, ChordKind.MAJOR) || isTriad(at, ChordKind.MINOR);
        boolean isThere = at > 0
                && row.chord(at - 1)
                        .root()
                        .equals(put.get(put.size() - 1).chord().root());
        return !isGoal || at == 0 || isThere
                ? Optional.empty()
                : Optional.of(change(name, at, at - 1, List.of(put), this::leads));
    }

    private Phrase leads(Change change) {
        return Phrase.sentence(
                "{0} leads to {1} as its dominant.", change.now(change.chords().size() - 1), change.after());
    }

    private Optional<Change> replaced(String name, int at, List<ChordEvent> put) {
        boolean isThere = put.size() == 1 && put.get(0).chord().equals(row.chord(at));
        return isThere ? Optional.empty() : Optional.of(change(name, at, at, List.of(put), this::insteadOf));
    }

    private Phrase insteadOf(Change change) {
        return Phrase.sentence("{0} takes the place of {1}.", change.now(0), change.old(0));
    }

    /** A dominant seventh a half step above the chord behind, if that lies a fifth below the one that was there. */
    private Optional<Change> tritone(int at) {
        Chord next = row.around(at + 1);
        boolean falls = next != null
                && isTriad(at, ChordKind.MAJOR)
                && row.chord(at).root().fifths() - next.root().fifths() == 1;
        if (!falls) {
            return Optional.empty();
        }
        ChordEvent put = event(new Chord(next.root().plus(Interval.MINOR_SECOND), ChordKind.DOMINANT_SEVENTH));
        return Optional.of(change("tritone", at, at, List.of(List.of(put)), this::sinks));
    }

    private Phrase sinks(Change change) {
        return Phrase.sentence(
                "{0} stands a tritone from {1}, and the bass sinks a half step to {2}.",
                change.now(0), change.old(0), change.after());
    }

    private Optional<Change> suspended(int at) {
        Chord chord = row.chord(at);
        boolean seventh = chord.kind().holds(Interval.MINOR_SEVENTH);
        Chord held = new Chord(chord.root(), seventh ? SEVENTH_SUSPENDED : SUSPENDED);
        boolean hasThird =
                chord.kind().quality() == TriadQuality.MAJOR || chord.kind().quality() == TriadQuality.MINOR;
        return hasThird
                ? Optional.of(change("suspended", at, at, List.of(List.of(event(held), row.event(at))), this::settles))
                : Optional.empty();
    }

    private Phrase settles(Change change) {
        return Phrase.sentence(
                "The fourth of {0}, {1}, falls to the third of {2}, {3}.",
                change.now(0),
                change.now(0).root().plus(Interval.PERFECT_FOURTH),
                change.now(1),
                change.now(1).tones().get(1));
    }

    private Optional<Change> lineCliche(int at) {
        boolean minor = isTriad(at, ChordKind.MINOR);
        if (!minor && !isTriad(at, ChordKind.MAJOR)) {
            return Optional.empty();
        }
        NoteName root = row.chord(at).root();
        List<ChordEvent> put = new ArrayList<>(List.of(row.event(at)));
        (minor ? FALLING_FROM_MINOR : FALLING_FROM_MAJOR).forEach(kind -> put.add(event(new Chord(root, kind))));
        return Optional.of(change(LineIdioms.LINE_CLICHE, at, at, List.of(put), LineIdioms::falling));
    }

    private Optional<Change> commonTone(int at) {
        if (!isTriad(at, ChordKind.MAJOR)) {
            return Optional.empty();
        }
        Chord chord = row.chord(at);
        NoteName raisedSecond = NoteName.at(chord.root().fifths() + RAISED_SECOND);
        Chord diminished = new Chord(raisedSecond, ChordKind.DIMINISHED_SEVENTH, chord.root());
        List<ChordEvent> put = List.of(row.event(at), event(diminished), row.event(at));
        return Optional.of(change(
                "common-tone diminished", at, at, List.of(put), change -> LineIdioms.leaning(diminished, chord)));
    }

    /** All chords over one note, or one of them. */
    Optional<Change> pedal(String name, OptionalInt at) {
        NoteName bass = row.key.note(Integer.parseInt(name.substring(PEDAL.length())));
        int first = at.orElse(0);
        int last = at.orElse(row.size() - 1);
        List<List<ChordEvent>> put = new ArrayList<>();
        for (int i = first; i <= last; i++) {
            ChordEvent here = row.event(i);
            Chord over = here.chord().over(bass);
            put.add(List.of(new ChordEvent(over, Numeral.onDegree(over, row.key), 1, false)));
        }
        return Optional.of(change(name, first, last, put, LineIdioms::pedal));
    }

    Optional<Change> borrowed(Numeral numeral, int at) {
        ChordEvent put = row.event(numeral);
        return put.chord().equals(row.chord(at))
                ? Optional.empty()
                : Optional.of(change("borrowed " + numeral, at, at, List.of(List.of(put)), this::origin));
    }

    private Phrase origin(Change change) {
        List<Scale> sources = Borrowing.borrowedFrom(change.now(0), row.key);
        return sources.isEmpty()
                ? insteadOf(change)
                : Phrase.sentence(
                        "{0}, borrowed from {1}, takes the place of {2}.",
                        change.now(0), sources.get(0), change.old(0));
    }

    /** Where an idiom would put a chord on its root, else the last chord on its degree, else the last but one. */
    Optional<Integer> bestPlace(Numeral numeral) {
        Chord wanted = row.event(numeral).chord();
        ChangeFinder finder = new ChangeFinder(row, false, false);
        Change best = null;
        for (Idiom idiom : Idiom.all()) {
            for (Change change : finder.of(idiom)) {
                boolean better = placeOf(change, wanted) >= 0 && (best == null || score(change) > score(best));
                best = better ? change : best;
            }
        }
        return best != null ? Optional.of(placeOf(best, wanted)) : onDegree(numeral);
    }

    private static int score(Change change) {
        return ChangeScore.of(change, true, 0);
    }

    /** The replaced chord in whose time it comes; -1 if it does not. */
    private static int placeOf(Change change, Chord wanted) {
        for (int i = 0; i < change.put().size() && !change.isInsertion(); i++) {
            Chord here = change.put().get(i).get(0).chord();
            if (here.root().equals(wanted.root())
                    && here.kind().triad().equals(wanted.kind().triad())) {
                return change.first() + i;
            }
        }
        return -1;
    }

    private Optional<Integer> onDegree(Numeral numeral) {
        Key key = row.key;
        int degree = key.degreeOf(row.event(numeral).chord().root()).number();
        for (int at = row.size() - 1; at >= 0; at--) {
            if (key.degreeOf(row.chord(at).root()).number() == degree) {
                return Optional.of(at);
            }
        }
        return row.size() < 2 ? Optional.empty() : Optional.of(row.size() - 2);
    }

    private Change change(
            String name, int first, int last, List<List<ChordEvent>> put, Function<Change, Phrase> because) {
        Colour colour = Idiom.all().stream()
                .filter(idiom -> idiom.name().equals(name))
                .map(Idiom::colour)
                .findFirst()
                .orElse(Colour.BORROWED);
        return new Change(
                Idiom.named(name, colour, TextbookPage.COMMON_PRACTICE).because(because), row, first, last, put);
    }
}
