package monochord.practice.answer;

import java.util.List;
import monochord.theory.Chord;
import monochord.theory.Interval;
import monochord.theory.NoteName;

/** Says what is off in the tones of a chord and how to find the right ones. */
final class ChordDifference {
    private static final List<String> PLACES = List.of(
            "root",
            "second",
            "third",
            "fourth",
            "fifth",
            "sixth",
            "seventh",
            "octave",
            "ninth",
            "tenth",
            "eleventh",
            "twelfth",
            "thirteenth");

    private ChordDifference() {}

    /** {@code third}: the place of one of the chord's own tones in its stack. */
    static String place(Chord chord, NoteName tone) {
        return PLACES.get(above(chord, tone).number() - 1);
    }

    private static Interval above(Chord chord, NoteName tone) {
        return chord.kind().intervals().stream()
                .filter(interval -> chord.root().plus(interval).equals(tone))
                .findFirst()
                .orElse(Interval.UNISON);
    }

    static String missing(Chord chord, List<NoteName> kept, List<NoteName> missing) {
        List<String> places =
                missing.stream().map(tone -> "the " + place(chord, tone)).toList();
        return Say.areRight(kept) + ". " + capital(Say.words(places)) + (missing.size() == 1 ? " is" : " are")
                + " missing: " + Say.list(missing) + ".";
    }

    static String extra(List<NoteName> wanted, List<NoteName> strange) {
        return Say.row(wanted) + " is all of it. " + Say.list(strange)
                + (strange.size() == 1 ? " is one note" : " are " + Say.count(strange.size()) + " notes")
                + " too many.";
    }

    static String replace(Chord chord, List<NoteName> kept, List<NoteName> strange, List<NoteName> missing) {
        NoteName tone = missing.get(0);
        String should = missing.size() == strange.size() && missing.size() == 1
                ? Say.note(strange.get(0)) + " should be " + Say.note(tone) + ": "
                : "The " + place(chord, tone) + " is " + Say.note(tone) + ": ";
        return Say.areRight(kept) + ". " + should + measure(chord, tone);
    }

    /** How a tone is reached from the root. */
    private static String measure(Chord chord, NoteName tone) {
        Interval above = above(chord, tone);
        String where = Say.inWords(chord) + " has its " + place(chord, tone);
        return above.semitones() == 0
                ? "that is the root."
                : where + " " + Say.halfSteps(above.semitones()) + " above " + Say.note(chord.root()) + ".";
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
