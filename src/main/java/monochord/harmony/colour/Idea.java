package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.melody.FitNote;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Numeral;

/** One change and all other chords left as they are. */
public final class Idea {
    private static final String BORROWED = "borrowed ";

    private final Change change;
    private final int worth;
    private final int score;
    private final Overlay overlay;

    Idea(Change change, int worth, Overlay overlay) {
        this(change, worth, worth, overlay);
    }

    private Idea(Change change, int worth, int score, Overlay overlay) {
        this.change = change;
        this.worth = worth;
        this.score = score;
        this.overlay = overlay;
    }

    /** The same, behind better ones that leave it less to add. */
    Idea scored(int newScore) {
        return new Idea(change, worth, newScore, overlay);
    }

    /** What the change counts by itself. */
    int worth() {
        return worth;
    }

    Change change() {
        return change;
    }

    /** The name of the idiom, as it is typed behind {@code with}. */
    public String name() {
        return change.idiom().name();
    }

    /** The same to be read: {@code borrowed ♭VI}. */
    public Phrase nameInWords() {
        return name().startsWith(BORROWED)
                ? Phrase.of("borrowed {0}", Numeral.parse(name().substring(BORROWED.length())))
                : IdiomNames.inWords(change.idiom());
    }

    public Colour colour() {
        return change.idiom().colour();
    }

    /** The first chord that is replaced, from 0; where chords are put in between, the one behind them. */
    public int first() {
        return change.first();
    }

    /** The last chord that is replaced; below {@link #first()} where chords are put in between. */
    public int last() {
        return change.last();
    }

    public boolean isInsertion() {
        return change.isInsertion();
    }

    /** What was there; nothing where chords are put in between. */
    public List<ChordEvent> from() {
        return IntStream.rangeClosed(change.first(), change.last())
                .mapToObj(change.row()::event)
                .toList();
    }

    /** What comes. */
    public List<ChordEvent> to() {
        return change.chords();
    }

    /** The chord before, round a loop; null where there is none. */
    public Chord before() {
        return change.before();
    }

    /** The chord behind, round a loop; null where there is none. */
    public Chord after() {
        return change.after();
    }

    /** What the change counts among the ideas before it, see {@link Recolour}. */
    public int score() {
        return score;
    }

    /** The number by which the place is asked for, from 1: the chord that is changed, or before which chords are put. */
    public int place() {
        return Math.min(change.first() + 1, change.row().size());
    }

    /** The chords that sound now in the time of one that is changed, itself among them if it only makes room. */
    public List<ChordEvent> inTimeOf(int at) {
        return change.places().get(at - change.changedFrom());
    }

    /** The row without it. */
    public Progression plain() {
        return change.row().progression;
    }

    /** The whole row with this one change. */
    public Progression progression() {
        return Rewriting.of(change.row(), List.of(change));
    }

    /** Why, in one to three sentences. */
    public List<Phrase> reasons() {
        List<Phrase> reasons = new ArrayList<>(List.of(change.sentence()));
        reasons.addAll(LeadingReasons.of(change));
        overlay.sentence(change).ifPresent(reasons::add);
        return reasons;
    }

    /** The notes of the tune that would clash over what comes, each with the nearest that would fit. */
    public List<FitNote> clashes() {
        return overlay.clashes(change);
    }
}
