package monochord.theory.note;

/** The tones of a chord while its symbol is being read: it begins as a major triad. */
public final class ToneDraft {
    private long tones = ToneSet.ROOT | ToneSet.tone(3, 0) | ToneSet.tone(5, 0);

    public long tones() {
        return tones;
    }

    public boolean has(int number, int alteration) {
        return (tones & ToneSet.tone(number, alteration)) != 0;
    }

    public void add(int number, int alteration) {
        tones |= ToneSet.tone(number, alteration);
    }

    public void remove(int number, int alteration) {
        tones &= ~ToneSet.tone(number, alteration);
    }

    public void replace(int number, int from, int to) {
        remove(number, from);
        add(number, to);
    }

    /** The tone of that number goes, lowered, plain or raised. */
    public void leaveOut(int number) {
        for (int alteration = -1; alteration <= 1; alteration++) {
            remove(number, alteration);
        }
    }

    /** A fourth or a second in place of the third. */
    public void suspend(int number) {
        remove(3, 0);
        remove(3, -1);
        add(number, 0);
    }

    /** The seventh, and the thirds above it up to {@code top}. */
    public void stack(int seventh, int top) {
        add(7, seventh);
        for (int number = 9; number <= top; number += 2) {
            add(number, 0);
        }
    }

    /** Lowered and raised fifth and ninth in a seventh chord. */
    public void alter() {
        add(7, -1);
        remove(5, 0);
        for (int alteration = -1; alteration <= 1; alteration += 2) {
            add(5, alteration);
            add(9, alteration);
        }
    }
}
