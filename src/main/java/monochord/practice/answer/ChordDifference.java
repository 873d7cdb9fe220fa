package monochord.practice.answer;

import java.util.List;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** Says what is off in the tones of a chord and how to find the right ones. */
final class ChordDifference {
    private static final int OCTAVE = 12;

    private ChordDifference() {}

    /** {@code third}: the place of one of the chord's own tones in its stack. */
    static String place(Chord chord, NoteName tone) {
        Interval above = above(chord, tone);
        return above.number() == 1 ? "root" : above.numberInWords();
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
                + " missing.";
    }

    static String extra(List<NoteName> strange) {
        return "The whole chord is there. " + Say.list(strange)
                + (strange.size() == 1 ? " is one note" : " are " + Say.count(strange.size()) + " notes")
                + " too many.";
    }

    static String replace(Chord chord, List<NoteName> kept, List<NoteName> strange, List<NoteName> missing) {
        NoteName tone = missing.get(0);
        if (above(chord, tone).semitones() == 0) {
            return Say.areRight(kept) + ". The root is not among them.";
        }
        boolean one = missing.size() == 1 && strange.size() == 1;
        String off = one ? Say.note(strange.get(0)) + " is not: t" : "T";
        return Say.areRight(kept) + ". " + off + "he " + place(chord, tone) + measure(above(chord, tone));
    }

    /** How a tone is reached from the root. */
    private static String measure(Interval above) {
        int beyond = above.semitones() - OCTAVE;
        return " lies " + Say.step(beyond > 0 ? beyond : above.semitones()) + " above "
                + (beyond > 0 ? "the octave of the root." : "the root.");
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
