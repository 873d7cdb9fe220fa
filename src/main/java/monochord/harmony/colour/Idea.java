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
import monochord.theory.note.Beats;

/** One change and all other chords left as they are. */
public final class Idea {
    private static final String BORROWED = "borrowed ";

    private final Change change;
    private final int worth;
    private final int score;
    private final TuneFit overlay;

    Idea(Change change, int worth, TuneFit overlay) {
        this(change, worth, worth, overlay);
    }

    private Idea(Change change, int worth, int score, TuneFit overlay) {
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

    /** {@code bar 3}, and without bars {@code chord 5}, or {@code after chord 5} where chords are put in between. */
    public Phrase where() {
        Beats start = change.row().span(change.changedFrom()).start();
        if (change.row().progression.barred()) {
            return Phrase.of("bar {0}", 1 + (int) (start.numerator() / start.denominator()));
        }
        return isInsertion()
                ? Phrase.of("after chord {0}", change.changedFrom() + 1)
                : Phrase.of("chord {0}", change.first() + 1);
    }

    /** The book that teaches it, a whole sentence. */
    public Phrase source() {
        return change.idiom().source().sentence();
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
