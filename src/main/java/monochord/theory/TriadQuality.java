package monochord.theory;

import monochord.theory.note.ToneSet;

/** What the third and the fifth of a chord make of it. */
public enum TriadQuality {
    MAJOR("major"),
    MINOR("minor"),
    DIMINISHED("diminished"),
    AUGMENTED("augmented"),
    /** A fourth or a second stands in for the third. */
    SUSPENDED("suspended"),
    /** No third and nothing in its place. */
    OPEN("open");

    private final String word;

    TriadQuality(String word) {
        this.word = word;
    }

    static TriadQuality of(long tones) {
        if (has(tones, 3, 0)) {
            return has(tones, 5, 1) && !has(tones, 5, 0) ? AUGMENTED : MAJOR;
        }
        if (has(tones, 3, -1)) {
            return has(tones, 5, -1) && !has(tones, 5, 0) ? DIMINISHED : MINOR;
        }
        return has(tones, 4, 0) || has(tones, 2, 0) ? SUSPENDED : OPEN;
    }

    private static boolean has(long tones, int number, int alteration) {
        return (tones & ToneSet.tone(number, alteration)) != 0;
    }

    @Override
    public String toString() {
        return word;
    }
}
