package monochord.practice.answer;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/** Puts music into a sentence, with the signs of printed music. */
public final class Say {
    private static final List<String> COUNTS = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private Say() {}

    public static String note(NoteName note) {
        return note.write(Signs.MUSIC);
    }

    /** In a row: {@code F A♭ C}. */
    public static String row(Collection<NoteName> notes) {
        return notes.stream().map(Say::note).collect(Collectors.joining(" "));
    }

    /** As a list: {@code F, A♭ and C}. */
    public static String list(Collection<NoteName> notes) {
        return words(notes.stream().map(Say::note).toList());
    }

    public static String words(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** {@code F and A are right}. */
    public static String areRight(Collection<NoteName> notes) {
        return list(notes) + (notes.size() == 1 ? " is right" : " are right");
    }

    public static String chord(Chord chord) {
        return chord.write(Signs.MUSIC);
    }

    /** {@code F major} for a plain triad, else the symbol. */
    public static String inWords(Chord chord) {
        boolean triad = chord.kind().equals(chord.kind().triad())
                && chord.kind().interval(3).isPresent()
                && chord.kind().intervals().size() == 3;
        return triad ? note(chord.root()) + " " + chord.kind().quality() : chord(chord);
    }

    public static String key(Key key) {
        return key.write(Signs.MUSIC);
    }

    public static String scale(Scale scale) {
        return scale.write(Signs.MUSIC);
    }

    /** {@code a whole step}, {@code a half step}, {@code three half steps}. */
    public static String step(int halfSteps) {
        return halfSteps == 2 ? "a whole step" : halfSteps(halfSteps);
    }

    /** {@code four} up to twelve, then the figure. */
    public static String count(int number) {
        return number >= 0 && number < COUNTS.size() ? COUNTS.get(number) : Integer.toString(number);
    }

    /** {@code a half step}, {@code four half steps}. */
    public static String halfSteps(int number) {
        return number == 1 ? "a half step" : count(number) + " half steps";
    }

    /** {@code a minor third}, {@code an augmented fourth}. */
    public static String interval(Interval interval) {
        String words = interval.inWords();
        return article(words) + words;
    }

    /** {@code a } or {@code an }. */
    public static String article(String words) {
        return "aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ";
    }
}
