package monochord.bank;

/** The straight line with the least squares of distances from some values at 0, 1, 2 and so on, or at places given. */
record Line(double start, double slope) {
    static Line through(double[] values) {
        double[] places = new double[values.length];
        for (int i = 0; i < places.length; i++) {
            places[i] = i;
        }
        return through(places, values);
    }

    static Line through(double[] places, double[] values) {
        double x = 0;
        double y = 0;
        for (int i = 0; i < values.length; i++) {
            x += places[i] / values.length;
            y += values[i] / values.length;
        }
        double both = 0;
        double square = 1e-12;
        for (int i = 0; i < values.length; i++) {
            both += (places[i] - x) * (values[i] - y);
            square += (places[i] - x) * (places[i] - x);
        }
        return new Line(y - both / square * x, both / square);
    }

    double at(double place) {
        return start + slope * place;
    }
}
