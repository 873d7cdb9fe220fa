package monochord.harmony.voicing.cost;

import java.util.List;
import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * Which tones of a chord a style plays, and which of them may stay away.
 *
 * <p>An eleventh and a major third are never together: under a thirteenth the eleventh goes, else the third. Of an altered
 * dominant, which names both forms of its fifth or its ninth, the raised fifth is played and one of the ninths; in few voices
 * one of the three, in three voices none. Common practice, no source.
 *
 * @param voices in which the chord is to be played
 */
record ToneSelection(Chord chord, ToneChoice choice, int voices) {
    private static final int FEW = 3;

    /** The intervals above the root that are played, from the root up. */
    List<Interval> kept() {
        return kind().intervals().stream()
                .filter(interval -> isKept(interval) && !(voices <= FEW && isAltered(interval)))
                .toList();
    }

    private boolean isKept(Interval interval) {
        int number = interval.number();
        boolean thirteenth = has(13);
        boolean clash = kind().holds(Interval.MAJOR_THIRD) && kind().holds(Interval.PERFECT_FOURTH);
        boolean shell = choice == ToneChoice.SHELL;
        if (shell && (number >= 9 || number == 5 && has(7))) {
            return false;
        }
        if (isAltered() && interval.equals(Interval.DIMINISHED_FIFTH)) {
            return false;
        }
        return !clash || !(number == 11 && thirteenth || number == 3 && !thirteenth && !shell);
    }

    /** Whether the tone has to sound: neither a perfect fifth nor a plain ninth or eleventh under a higher tone. */
    boolean isNeeded(Interval interval) {
        boolean ninth = interval.number() == 9 && interval.fifths() == Interval.MAJOR_SECOND.fifths();
        boolean eleventh = interval.number() == 11 && interval.fifths() == Interval.PERFECT_FOURTH.fifths();
        boolean mayGo = ninth && (has(11) || has(13)) || eleventh && has(13);
        return !isPerfectFifth(interval) && !mayGo && !isAlternative(interval);
    }

    /** Whether the tone is one of several of which exactly one is played. */
    boolean isAlternative(Interval interval) {
        boolean ofNinths = interval.number() == 9 && count(9) > 1;
        return isAltered(interval) && (choice == ToneChoice.SPARE || ofNinths);
    }

    /** Whether the interval is one of those that an altered dominant names in two forms. */
    private boolean isAltered(Interval interval) {
        return isAltered() && (interval.number() == 9 || interval.number() == 5 && count(5) > 1);
    }

    private boolean isAltered() {
        return count(5) > 1 || count(9) > 1;
    }

    boolean isDominant() {
        return kind().holds(Interval.MAJOR_THIRD) && kind().holds(Interval.MINOR_SEVENTH);
    }

    /**
     * The ninth that may stand above a bass player in place of the root of a seventh chord, if the key gives one: the major,
     * else in a dominant the minor.
     */
    Optional<NoteName> addedNinth(Key key) {
        boolean plain = has(7) && !has(9) && !has(4) && kind().holds(Interval.PERFECT_FIFTH);
        if (choice != ToneChoice.ROOTLESS || !plain) {
            return Optional.empty();
        }
        NoteName major = chord.root().plus(Interval.MAJOR_SECOND);
        NoteName minor = chord.root().plus(Interval.MINOR_SECOND);
        return key.holds(major)
                ? Optional.of(major)
                : isDominant() && key.holds(minor) ? Optional.of(minor) : Optional.empty();
    }

    /** Whether the root may stay away, where so many tones need to sound. */
    boolean isRootFree(int needed) {
        boolean seventhOrSixth = has(7) || has(6) && kind().intervals().size() > 3;
        return choice == ToneChoice.ROOTLESS && seventhOrSixth || choice == ToneChoice.FOUR && needed > 4;
    }

    static boolean isPerfectFifth(Interval interval) {
        return interval.equals(Interval.PERFECT_FIFTH);
    }

    boolean has(int number) {
        return count(number) > 0;
    }

    private int count(int number) {
        return (int) kind().intervals().stream()
                .filter(interval -> interval.number() == number)
                .count();
    }

    private ChordKind kind() {
        return chord.kind();
    }
}
