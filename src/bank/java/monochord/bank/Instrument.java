package monochord.bank;

/**
 * What is cut for one instrument of ours, and how.
 *
 * @param name as the bank shows it, at most twenty letters
 * @param program of ours, from 0
 * @param source the program it is cut from
 * @param lowest the lowest key that is played
 * @param highest the highest
 * @param stretch half steps a recording is stretched at most between them
 * @param seconds kept of the lowest note, loop included
 * @param highSeconds kept of the highest
 * @param rate samples a second at most
 * @param loop seconds that go round at least, and at most twice as many; 0 keeps the loops of the source
 * @param dies whether it dies away while the key is held
 * @param decibels louder or softer, so that the instruments are in balance
 * @param release seconds from letting go until it is 100 decibels softer
 */
record Instrument(
        String name,
        int program,
        int source,
        int lowest,
        int highest,
        int stretch,
        double seconds,
        double highSeconds,
        int rate,
        double loop,
        boolean dies,
        double decibels,
        double release) {}
