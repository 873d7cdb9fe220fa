package monochord.practice.teaching;

import java.util.List;
import java.util.stream.IntStream;
import monochord.practice.answer.Say;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** The sentences of a derivation: how a teacher walks to a note and builds a chord on it, at the keyboard. */
public final class Walk {
    private static final List<String> ORDINALS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth");

    private Walk() {}

    public static String ordinal(int number) {
        return ORDINALS.get(number - 1);
    }

    /** Along the key's own scale to one of its degrees, and from there to the altered one if the degree is none of them. */
    public static String to(Degree degree, Key key) {
        int number = degree.number();
        int change = degree.alteration() - key.mode().degree(number).alteration();
        return change == 0 ? count(number, key) : count(number, key) + " " + altered(degree, key, change);
    }

    /** The same way, stopped before the last half step. */
    public static String toward(Degree degree, Key key) {
        int change = degree.alteration() - key.mode().degree(degree.number()).alteration();
        String last = change == 0
                ? ""
                : change < 0
                        ? " Lowered, it stands a half step down, on the same letter."
                        : " Raised, it stands a half step up, on the same letter.";
        return count(degree.number(), key) + last;
    }

    public static String count(int number, Key key) {
        NoteName there = key.note(number);
        return number == 1
                ? "The first degree is the tonic itself, " + Say.note(there) + "."
                : "Count up " + letters(number, key) + ": " + Say.note(there) + " is the " + ordinal(number) + ".";
    }

    private static String letters(int number, Key key) {
        return Say.row(IntStream.rangeClosed(1, number).mapToObj(key::note).toList());
    }

    private static String altered(Degree degree, Key key, int change) {
        String way = change < 0 ? " down" : " up";
        String size = Math.abs(change) == 1 ? "A half step" : "Two half steps";
        return size + way + ", same letter, is " + Say.note(key.note(degree)) + ".";
    }

    /** {@code From F, four half steps up is A and seven is C.} */
    public static String stack(Chord chord) {
        List<String> moves = chord.kind().intervals().stream()
                .skip(1)
                .map(interval -> move(chord, interval))
                .toList();
        return "From " + Say.note(chord.root()) + " up, " + Say.words(moves) + ".";
    }

    /** {@code From F up count four and seven half steps}: how the chord is measured, and no tone but its root. */
    public static String sizes(Chord chord) {
        List<String> sizes = chord.kind().intervals().stream()
                .skip(1)
                .map(interval -> Say.count(interval.semitones()))
                .toList();
        return "From " + Say.note(chord.root()) + " up count " + Say.words(sizes) + " half steps.";
    }

    /** A chord but for its last tone: {@code F and A, then leave out a letter and take the next.} */
    public static String allButLast(Chord chord) {
        return Say.list(chord.tones().subList(0, chord.tones().size() - 1))
                + ", then leave out a letter and take the next.";
    }

    private static String move(Chord chord, Interval interval) {
        return Say.halfSteps(interval.semitones()) + " give "
                + Say.note(chord.root().plus(interval));
    }

    /** {@code So the chord is F: F A C.} */
    public static String chord(Chord chord) {
        return "The chord is " + Say.chord(chord) + ": " + Say.row(chord.tones()) + ".";
    }

    /** {@code C to E is a major third, E to G a minor third}. */
    public static String thirds(Chord chord) {
        List<NoteName> tones = chord.tones();
        return Say.note(tones.get(0)) + " to " + Say.note(tones.get(1)) + " is " + third(tones, 0) + ", "
                + Say.note(tones.get(1)) + " to " + Say.note(tones.get(2)) + " " + third(tones, 1);
    }

    private static String third(List<NoteName> tones, int from) {
        return Say.interval(tones.get(from).to(tones.get(from + 1)));
    }
}
