package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.theory.note.Beats;

/**
 * Ideas for a progression, one change in each, the best first; and the best of all their combinations.
 *
 * <p>An idea is an {@link Idiom} at a place where it fits. It counts
 *
 * <pre>
 *   what the idiom is worth − the restraint it asks for − 4
 * + 2 where a voice can go by half steps through it
 * + 1 for each tone more that can be held from chord to chord, − 1 for each less, at most 2
 * + 1 where the bass goes by a half step and did not
 * + 2 in a repeat, − 4 where the same chords come again later, + 1 in the later half, − 6 on the first chord
 * − 2 where a chord lasts less than a beat
 * − the weight by which more of the tune clashes, and half of that by which more of it rubs in passing
 * </pre>
 *
 * and a combination the sum of its ideas, each less 5; less 6 again for one that follows another within three chords, and
 * less 3 for an idiom that comes twice running. What counts less than 3 is no lift, and is not proposed. Between two changes the chords they lean on stay. The weight of a clash is that
 * of {@link monochord.harmony.melody.Fit}. The weights stand in {@link RecolourWeights}, what an idiom is worth where it
 * is declared.
 *
 * <p>The last cadence is kept: a row that ends keeps its last chord, and the dominant before it. The first chord is in a
 * combination only where nothing else serves.
 *
 * <p>The idioms are from the books they name. What counts how much: common practice, no source; so it is advice for the
 * ear to decide, and to be agreed with the band.
 */
public final class Recolour {
    static final int BEATS_OF_A_BAR = 4;

    private final PlainRow row;
    private final Optional<Melody> melody;
    private final RecolourOptions manner;
    private final List<Idea> ideas;
    private final Combination combination;

    /**
     * How far to go.
     *
     * @param isBold whether the restraint that idioms ask for is left out, and changes may stand closer
     * @param isLoop whether the row leads back to its start even where it ends on the tonic
     * @param mayStayOpen whether the last cadence may go
     * @param threes the share of a bar that falls into three, such as all of it in 3/4 and half of it in 6/8, or nothing; if
     *     it is not said, the tune shows it
     */
    public record RecolourOptions(boolean isBold, boolean isLoop, boolean mayStayOpen, Optional<Beats> threes) {
        public static final RecolourOptions USUAL = new RecolourOptions(false, false, false);

        public RecolourOptions(boolean isBold, boolean isLoop, boolean mayStayOpen) {
            this(isBold, isLoop, mayStayOpen, Optional.empty());
        }

        Beats threes(Optional<Melody> melody) {
            return threes.or(() -> melody.map(Melody::threes)).orElse(Beats.ZERO);
        }
    }

    private Recolour(PlainRow row, Optional<Melody> melody, RecolourOptions manner) {
        this.row = row;
        this.melody = melody;
        this.manner = manner;
        this.ideas = ideas(row, new TuneFit(melody, row.progression), manner);
        this.combination = combination();
    }

    public static Recolour of(Progression progression, Optional<Melody> melody) {
        return of(progression, melody, RecolourOptions.USUAL);
    }

    public static Recolour of(Progression progression, Optional<Melody> melody, RecolourOptions manner) {
        return new Recolour(new PlainRow(progression, manner.isLoop(), manner.threes(melody)), melody, manner);
    }

    /** Where no combination counts more than the first idea alone, it is that. */
    private Combination combination() {
        boolean bold = manner.isBold();
        Combination best = Combination.best(combinable(ideas, bold), bold);
        return change().filter(idea -> Combination.alone(idea, bold) >= best.score())
                .map(idea -> new Combination(List.of(idea), Combination.alone(idea, bold)))
                .filter(alone -> alone.score() > 0)
                .orElse(best);
    }

    /** Of the forms of one idiom that begin at one place only the best. */
    private static List<Idea> ideas(PlainRow row, TuneFit overlay, RecolourOptions manner) {
        ChangeFinder finder = new ChangeFinder(row, manner.mayStayOpen(), true);
        Map<String, Idea> best = new LinkedHashMap<>();
        for (Idiom idiom : Idiom.all()) {
            for (Change change : finder.of(idiom)) {
                Idea idea = new Idea(change, ChangeScore.of(change, manner.isBold(), overlay.price(change)), overlay);
                best.merge(
                        idiom.name() + change.changedFrom(),
                        idea,
                        (one, other) -> other.worth() > one.worth() ? other : one);
            }
        }
        return Ranking.of(List.copyOf(best.values()));
    }

    /** The ideas that make it better, without the first chord unless nothing else serves. */
    static List<Idea> combinable(List<Idea> ideas, boolean bold) {
        List<Idea> good =
                ideas.stream().filter(idea -> Combination.alone(idea, bold) > 0).toList();
        List<Idea> later = good.stream().filter(idea -> idea.first() > 0).toList();
        return later.isEmpty() ? good.stream().limit(1).toList() : later;
    }

    public Progression progression() {
        return row.progression;
    }

    public Optional<Melody> melody() {
        return melody;
    }

    public RecolourOptions manner() {
        return manner;
    }

    /** Whether the row leads back to its start. */
    public boolean isLoop() {
        return row.isLoop;
    }

    /** The best first, in the order of {@link Ranking}. */
    public List<Idea> ideas() {
        return ideas;
    }

    /** The one change to begin with; none where nothing makes it better. */
    public Optional<Idea> change() {
        return ideas.stream()
                .filter(idea -> idea.score() >= RecolourWeights.LEAST)
                .findFirst();
    }

    /** The next best ideas that make it better, one for each other place. */
    public List<Idea> elsewhere(int most) {
        List<Idea> shown = new ArrayList<>(change().stream().toList());
        for (Idea idea : ideas) {
            boolean isOther = shown.stream().noneMatch(one -> overlap(one.change(), idea.change()));
            if (idea.score() >= RecolourWeights.LEAST && isOther && shown.size() <= most) {
                shown.add(idea);
            }
        }
        return List.copyOf(shown.subList(Math.min(1, shown.size()), shown.size()));
    }

    private static boolean overlap(Change one, Change other) {
        return one.changedFrom() <= other.changedTo() && other.changedFrom() <= one.changedTo();
    }

    /** The progression with the best combination; itself if nothing makes it better. */
    public Progression best() {
        return Rewriting.of(row, combination.ideas().stream().map(Idea::change).toList());
    }

    /** The ideas that are in the best combination, in order of place. */
    public List<Idea> combined() {
        return combination.ideas();
    }

    /** What the combination adds to the score. */
    public int gain() {
        return combination.score();
    }
}
