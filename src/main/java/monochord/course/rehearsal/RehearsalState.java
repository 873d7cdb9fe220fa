package monochord.course.rehearsal;

import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.Key;

/**
 * Where a rehearsal stands, and where a teacher would lead from there. It never changes; {@link #after} gives the next.
 *
 * <p>It begins slower than the goal. A clean round makes the next a little quicker, the more the steadier it was played. A
 * change that is late or wrong leaves the pace, and takes its bar and the one before alone and slower until they have stood
 * twice, and the whole comes again at a pace between the two; what does not stand after four tries waits for tomorrow. Where most goes astray it becomes clearly slower and as
 * short as two bars. What was clean twice at the goal stands, and the next key comes.
 *
 * <p>That the best players stop at an error, slow down and repeat until it holds: Duke, Simmons and Cash, Journal of Research
 * in Music Education 56 (2009), second-hand. All figures are common practice, no source.
 */
public final class RehearsalState {
    private static final double BEGIN = 0.7;
    private static final double BEGIN_IN_NEXT_KEY = 0.8;
    private static final double LEAST_GAIN = 0.03;
    private static final double MORE_GAIN = 0.06;
    private static final double ALONE = 0.85;
    private static final double STILL_SLOWER = 0.88;
    private static final double WILD = 0.72;
    private static final int TIMES_TO_STAND = 2;
    private static final int TRIES = 4;

    private final RehearsalGoal goal;
    private final int key;
    private final double pace;
    private final Spot spot;
    private final int stood;
    private final Spot putAside;
    private final boolean over;
    private final Phrase lead;

    /**
     * How far it has come.
     *
     * @param key at which place of the goal's keys
     * @param pace of the whole, beats a minute
     * @param spot what is taken alone, or null
     * @param stood how often running the whole was clean at the goal
     * @param putAside what waits for tomorrow, or null
     */
    private record ReachedPoint(int key, double pace, Spot spot, int stood, Spot putAside) {}

    /** Some bars that are taken alone. */
    private record Spot(int first, int last, double pace, int clean, int failed, boolean isWild) {
        Spot at(double newPace, int nowClean, int nowFailed) {
            return new Spot(first, last, newPace, nowClean, nowFailed, isWild);
        }

        boolean touches(Spot other) {
            return other != null && first <= other.last && other.first <= last;
        }

        Phrase inWords(int firstBar) {
            return Round.bars(first + firstBar, last + firstBar);
        }
    }

    private RehearsalState(RehearsalGoal goal, ReachedPoint reached, boolean over, Phrase lead) {
        this.goal = goal;
        this.key = reached.key;
        this.pace = reached.pace;
        this.spot = reached.spot;
        this.stood = reached.stood;
        this.putAside = reached.putAside;
        this.over = over;
        this.lead = lead;
    }

    public static RehearsalState begin(RehearsalGoal goal) {
        return new RehearsalState(
                goal, new ReachedPoint(0, goal.tempo() * BEGIN, null, 0, null), false, Phrase.NOTHING);
    }

    /** What is played next. */
    public Round round() {
        return spot == null
                ? new Round(0, goal.bars() - 1, tempo(pace), currentKey())
                : new Round(spot.first, spot.last, tempo(spot.pace), currentKey());
    }

    private int tempo(double exact) {
        return (int) Math.round(Math.max(goal.slowest(), Math.min(goal.tempo(), exact)));
    }

    private Key currentKey() {
        return goal.keys().get(key);
    }

    public RehearsalGoal goal() {
        return goal;
    }

    /** Why the next round is what it is, in a sentence or two; empty at the beginning. */
    public Phrase lead() {
        return lead;
    }

    public boolean isOver() {
        return over;
    }

    /** What comes after a round that went so; bars count from 0 in the round. */
    public RehearsalState after(RoundResult result) {
        if (spot == null) {
            return result.isClean() ? afterCleanWhole(result) : result.isWild() ? afterWild(result) : alone(result);
        }
        return result.isClean() ? afterCleanSpot(result) : stillWrong(result);
    }

    private RehearsalState afterCleanWhole(RoundResult result) {
        if (tempo(pace) < goal.tempo()) {
            double quicker = Math.max(tempo(pace) + 1.0, pace * (1 + LEAST_GAIN + MORE_GAIN * result.ease()));
            double next = Math.min(goal.tempo(), quicker);
            return with(next, null, 0, putAside, Phrase.sentence("Clean; on a little quicker, at {0}.", tempo(next)));
        }
        if (stood + 1 < TIMES_TO_STAND) {
            return with(
                    pace,
                    null,
                    stood + 1,
                    putAside,
                    Phrase.sentence("Clean at {0}; once more, and it stands.", tempo(pace)));
        }
        if (key + 1 < goal.keys().size()) {
            double next = goal.tempo() * BEGIN_IN_NEXT_KEY;
            Key other = goal.keys().get(key + 1);
            Phrase said = Phrase.sentence("It stands in {0}. Now in {1}, at {2}.", currentKey(), other, tempo(next));
            return new RehearsalState(goal, new ReachedPoint(key + 1, next, null, 0, null), false, said);
        }
        return end(TIMES_TO_STAND, putAside, Phrase.sentence("It stands in {0}.", currentKey()));
    }

    private RehearsalState afterWild(RoundResult result) {
        double slower = Math.max(goal.slowest(), pace * WILD);
        Spot begins = new Spot(0, Math.min(1, goal.bars() - 1), slower, 0, 0, true);
        Phrase said = result.said()
                .then(Phrase.sentence(
                        "Most of it went astray, so slower and shorter: {0}, at {1}.",
                        begins.inWords(goal.firstBar()), tempo(slower)));
        return with(slower, begins, 0, putAside, said);
    }

    private RehearsalState alone(RoundResult result) {
        int bar = result.faults().get(0);
        double slower = Math.max(goal.slowest(), pace * ALONE);
        Spot taken = new Spot(Math.max(0, bar - 1), bar, slower, 0, 0, false);
        if (taken.touches(putAside)) {
            Phrase enough = Phrase.sentence("That is enough of {0} for today.", putAside.inWords(goal.firstBar()));
            return end(0, putAside, result.said().then(enough));
        }
        Phrase said = result.said()
                .then(Phrase.sentence("Now {0} alone, slower, at {1}.", taken.inWords(goal.firstBar()), tempo(slower)));
        return with(pace, taken, 0, putAside, said);
    }

    private RehearsalState afterCleanSpot(RoundResult result) {
        if (spot.clean + 1 < TIMES_TO_STAND) {
            double quicker = Math.min(pace, spot.pace * (1 + LEAST_GAIN + MORE_GAIN * result.ease()));
            return with(
                    pace,
                    spot.at(quicker, spot.clean + 1, spot.failed),
                    0,
                    putAside,
                    Phrase.sentence("Clean; once more, at {0}.", tempo(quicker)));
        }
        double whole = (pace + spot.pace) / 2;
        return with(
                whole, null, 0, putAside, Phrase.sentence("That stands. Now the whole again, at {0}.", tempo(whole)));
    }

    private RehearsalState stillWrong(RoundResult result) {
        double slower = Math.max(goal.slowest(), spot.pace * STILL_SLOWER);
        Spot again = spot.at(slower, 0, spot.failed + 1);
        if (again.failed < TRIES) {
            Phrase said = tempo(slower) < tempo(spot.pace)
                    ? Phrase.sentence("Again, slower, at {0}.", tempo(slower))
                    : Phrase.sentence("Again, at {0}.", tempo(slower));
            return with(pace, again, 0, putAside, result.said().then(said));
        }
        if (spot.isWild) {
            return end(0, again, result.said().then(Phrase.sentence("That is enough for today.")));
        }
        double whole = Math.max(goal.slowest(), pace * ALONE);
        Phrase said = Phrase.sentence(
                "We leave {0} for now. The whole again, slower, at {1}.", spot.inWords(goal.firstBar()), tempo(whole));
        return with(whole, null, 0, again, result.said().then(said));
    }

    private RehearsalState with(double newPace, Spot newSpot, int nowStood, Spot aside, Phrase said) {
        return new RehearsalState(goal, new ReachedPoint(key, newPace, newSpot, nowStood, aside), false, said);
    }

    private RehearsalState end(int nowStood, Spot aside, Phrase said) {
        return new RehearsalState(goal, new ReachedPoint(key, pace, spot, nowStood, aside), true, said);
    }

    /** The minutes that were asked for are over, or the player has had enough. */
    public RehearsalState end(Phrase said) {
        return end(stood, putAside, said);
    }

    /** What to take up tomorrow, in one sentence. */
    public Phrase tomorrow() {
        Optional<Spot> open = Optional.ofNullable(spot).or(() -> Optional.ofNullable(putAside));
        if (open.isPresent()) {
            return tomorrow(open.get());
        }
        if (stood >= TIMES_TO_STAND) {
            return Phrase.sentence(
                    "Tomorrow: once through in {0} at {1}, to see whether it still stands, before anything new.",
                    goal.keys().get(0), goal.tempo());
        }
        Phrase next = Phrase.of("in {0} at {1}", currentKey(), tempo(pace));
        return key > 0
                ? Phrase.sentence(
                        "Tomorrow: first {0}, where it stands, then go on {1}.",
                        goal.keys().get(key - 1), next)
                : Phrase.sentence("Tomorrow: go on {0}.", next);
    }

    private Phrase tomorrow(Spot open) {
        Phrase bars = open.inWords(goal.firstBar());
        return open.isWild
                ? Phrase.sentence(
                        "Tomorrow: {0} chord by chord without any time, one hand and then both, before the count comes in.",
                        bars)
                : Phrase.sentence(
                        "Tomorrow: first {0} in {1}, each hand alone, then both at {2}.",
                        bars, currentKey(), tempo(open.pace));
    }
}
