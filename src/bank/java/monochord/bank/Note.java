package monochord.bank;

/**
 * A note ready for the bank.
 *
 * @param name of the recording
 * @param root the key it is for
 * @param cents it is above that key
 * @param falls decibels a second by which it goes on to die away in its loop; 0 for never
 */
record Note(String name, int root, Sound sound, double cents, double falls) {
    Note with(Sound other) {
        return new Note(name, root, other, cents, falls);
    }

    Note falling(double decibelsASecond) {
        return new Note(name, root, sound, cents, decibelsASecond);
    }

    /** Played from these keys, held down in its loop. */
    BankWriter.Zone zone(int from, int to, double release) {
        return new BankWriter.Zone(this, from, to, release);
    }

    /** Played from its own key alone, to its end, whatever the key does. */
    BankWriter.Zone once() {
        return new BankWriter.Zone(this, root, root, 0);
    }
}
