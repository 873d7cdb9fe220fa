package monochord.song;

import java.util.ArrayList;
import java.util.List;

/**
 * In what order written bars are played: repeats played out, each ending in its turn.
 *
 * <p>A repeat that was never opened goes back to the start, to the last double bar or to behind the last repeat. Source:
 * the ABC standard 2.1, sections 4.8 and 4.9, as in print.
 */
final class PlayingOrder {
    /** More bars than this are no song. */
    static final int MOST = 20_000;

    private final List<WrittenBar> bars;
    private final List<Integer> order = new ArrayList<>();
    private int from;
    private int pass = 1;

    private PlayingOrder(List<WrittenBar> bars) {
        this.bars = bars;
    }

    /** Indices of bars, at most {@value #MOST}. */
    static List<Integer> of(List<WrittenBar> bars) {
        return new PlayingOrder(bars).order();
    }

    private List<Integer> order() {
        int next = 0;
        while (next < bars.size() && order.size() < MOST) {
            WrittenBar bar = bars.get(next);
            if (bar.opens() && next != from) {
                from = next;
                pass = 1;
            }
            next = bar.isPlayedIn(pass) ? behind(next) : behindEnding(next);
        }
        return order;
    }

    /** Plays a bar; the index of the one that is played next. */
    private int behind(int index) {
        order.add(index);
        WrittenBar bar = bars.get(index);
        if (bar.times() > 1 && goesBack(index)) {
            pass++;
            return from;
        }
        boolean endingFollows =
                index + 1 < bars.size() && !bars.get(index + 1).ending().isEmpty();
        if ((bar.times() > 1 || bar.endsPart()) && !endingFollows) {
            from = index + 1;
            pass = 1;
        }
        return index + 1;
    }

    /** As often as the sign says, or as there are endings. */
    private boolean goesBack(int index) {
        int ending = endingOf(index);
        if (ending < 0) {
            return pass < bars.get(index).times();
        }
        if (bars.get(ending).isPlayedIn(pass + 1)) {
            return true;
        }
        for (int i = from; i < bars.size() && (i == from || !bars.get(i).opens()); i++) {
            if (!bars.get(i).ending().isEmpty() && bars.get(i).isPlayedIn(pass + 1)) {
                return true;
            }
        }
        return false;
    }

    /** The first bar of the ending in which a bar stands, or −1. */
    private int endingOf(int index) {
        for (int i = index; i >= from; i--) {
            if (!bars.get(i).ending().isEmpty()) {
                return i;
            }
            if (i > 0 && (bars.get(i - 1).times() > 0 || bars.get(i - 1).endsPart())) {
                return -1;
            }
        }
        return -1;
    }

    private int behindEnding(int index) {
        int next = index;
        do {
            next++;
        } while (next < bars.size()
                && bars.get(next).ending().isEmpty()
                && !bars.get(next).opens()
                && bars.get(next - 1).times() == 0
                && !bars.get(next - 1).endsPart());
        return next;
    }
}
