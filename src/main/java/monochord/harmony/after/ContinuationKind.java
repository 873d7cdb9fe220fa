package monochord.harmony.after;

import java.util.Locale;
import monochord.harmony.Borrowing;
import monochord.harmony.ChordFunction;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;

/** Which way a chord goes on: what a player decides first. */
public enum ContinuationKind {
    BORROWED(Phrase.of("To a borrowed chord"), Phrase.of("Stays borrowed")),
    TO_THE_FIVE(Phrase.of("Falls to the five"), Phrase.of("Falls to the five")),
    HOME(Phrase.of("Goes home"), Phrase.of("Goes home")),
    /** To another of the key's own chords, or to a dominant of one. */
    ROUND(Phrase.of("Goes round"), Phrase.of("Goes round"));

    private final Phrase heading;
    private final Phrase fromBorrowed;

    ContinuationKind(Phrase heading, Phrase fromBorrowed) {
        this.heading = heading;
        this.fromBorrowed = fromBorrowed;
    }

    static ContinuationKind to(Chord chord, Key key) {
        ChordFunction function = ChordFunction.of(chord, key);
        if (function.goal() != null) {
            return ROUND;
        } else if (function.isDominantOfKey()
                || chord.root().equals(key.tonic()) && chord.bass().equals(key.note(5))) {
            return TO_THE_FIVE;
        } else if (!key.isOwn(chord)) {
            return BORROWED;
        }
        return chord.root().equals(key.tonic()) ? HOME : ROUND;
    }

    /** @param from the chord that goes on */
    public Phrase heading(Chord from, Key key) {
        return Borrowing.borrowedFrom(from, key).isEmpty() ? heading : fromBorrowed;
    }

    /** As JSON has it: {@code home}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
