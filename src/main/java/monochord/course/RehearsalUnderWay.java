package monochord.course;

import monochord.course.rehearsal.RehearsalState;

/** A rehearsal at the line: where it stands, and whether the player is asked how the last round went. Thread-safe. */
public final class RehearsalUnderWay implements Activity {
    private final long until;
    private RehearsalState state;
    private boolean asks;

    /** @param until when the minutes that were asked for are over, in milliseconds since 1970 in UTC */
    public RehearsalUnderWay(RehearsalState state, long until) {
        this.state = state;
        this.until = until;
    }

    @Override
    public int nearness() {
        return 2;
    }

    public synchronized RehearsalState state() {
        return state;
    }

    /** Stands there from now on; nothing is asked. */
    public synchronized void comesTo(RehearsalState next) {
        state = next;
        asks = false;
    }

    /** Whether the player is asked how the last round went. */
    public synchronized boolean asks() {
        return asks;
    }

    public synchronized void asks(boolean nowAsks) {
        asks = nowAsks;
    }

    public boolean isTimeUp(long now) {
        return now >= until;
    }
}
