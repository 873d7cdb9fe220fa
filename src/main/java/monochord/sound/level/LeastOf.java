package monochord.sound.level;

/** The least of the last so many values: those that a later and smaller one has overtaken are dropped. */
final class LeastOf {
    private final double[] values;
    private final long[] times;
    private int first;
    private int count;
    private long now;

    LeastOf(int window) {
        values = new double[window];
        times = new long[window];
    }

    double next(double value) {
        while (count > 0 && values[place(count - 1)] >= value) {
            count--;
        }
        if (count > 0 && times[first] <= now - values.length) {
            first = place(1);
            count--;
        }
        values[place(count)] = value;
        times[place(count)] = now++;
        count++;
        return values[first];
    }

    private int place(int after) {
        int place = first + after;
        return place >= values.length ? place - values.length : place;
    }
}
