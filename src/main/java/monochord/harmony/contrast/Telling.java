package monochord.harmony.contrast;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.NoteName;
import monochord.theory.Pitch;
import monochord.theory.Signs;

/** Puts a {@link Contrast} into a few sentences, with the signs of printed music. */
public final class Telling {
    private static final int MOST_TOLD = 6;

    private final Contrast contrast;

    public Telling(Contrast contrast) {
        this.contrast = contrast;
    }

    /** How one side moves: {@code 9 half steps moved, 6 notes held, nothing in parallel}; nothing without two chords. */
    public static String numbers(ComparedVersion side) {
        if (side.steps().isEmpty()) {
            return "";
        }
        int parallels = side.parallels();
        return counted(side.moved(), "half step") + " moved, " + counted(side.held(), "note") + " held, "
                + (parallels == 0
                        ? "nothing in parallel"
                        : parallels == 1 ? "1 parallel fifth or octave" : parallels + " parallel fifths or octaves");
    }

    /** What differs, a sentence each; at least one. */
    public List<String> differences() {
        List<String> said = new ArrayList<>();
        chords(said);
        list(contrast.isChordByChord() ? "In the tune: " : "Changed: ", contrast.notes(), Telling::sign, "note", said);
        if (said.isEmpty() && !contrast.isChordByChord()) {
            tones(said);
        }
        top(said);
        return said.isEmpty() ? List.of(underneath()) : List.copyOf(said);
    }

    /** Where neither chords nor tune nor top tell them apart: the first chord that is held otherwise, or the times. */
    private String underneath() {
        List<Contrast.Changed<List<Pitch>>> keys = contrast.keys();
        if (!keys.isEmpty()) {
            Contrast.Changed<List<Pitch>> one = keys.get(0);
            String more = keys.size() == 1 ? "." : "; others too.";
            return "Other keys for chord " + (one.at() + 1) + ": " + row(one.from()) + ", then " + row(one.to()) + more;
        }
        return contrast.first().lengths().equals(contrast.second().lengths())
                ? "Both are the same, key for key."
                : "The same keys, held for other lengths.";
    }

    private void chords(List<String> said) {
        if (contrast.isChordByChord()) {
            list("Changed: ", contrast.chords(), chord -> chord.write(Signs.MUSIC), "chord", said);
        } else if (!contrast.first().chords().isEmpty()
                && !contrast.second().chords().isEmpty()) {
            list("Only in the first: ", contrast.leftOut(), said);
            list("Only in the second: ", contrast.added(), said);
        }
    }

    private static <T> void list(
            String what, List<Contrast.Changed<T>> changes, Function<T, String> sign, String one, List<String> said) {
        if (!changes.isEmpty()) {
            String told = changes.stream()
                    .limit(MOST_TOLD)
                    .map(change -> one + " " + (change.at() + 1) + ", " + sign.apply(change.to()) + " for "
                            + sign.apply(change.from()))
                    .collect(Collectors.joining("; "));
            int more = changes.size() - MOST_TOLD;
            said.add(what + told + (more > 0 ? "; and " + more + " more." : "."));
        }
    }

    private static void list(String what, List<Chord> chords, List<String> said) {
        if (!chords.isEmpty()) {
            said.add(what
                    + chords.stream()
                            .limit(MOST_TOLD)
                            .map(chord -> chord.write(Signs.MUSIC))
                            .collect(Collectors.joining(", "))
                    + (chords.size() > MOST_TOLD ? ", and more." : "."));
        }
    }

    /** For scales and rows of notes: which tones only one side has. */
    private void tones(List<String> said) {
        names("Only in the first: ", tones(contrast.first()), tones(contrast.second()), said);
        names("Only in the second: ", tones(contrast.second()), tones(contrast.first()), said);
    }

    private static List<NoteName> tones(ComparedVersion side) {
        return Stream.concat(side.voicings().stream().flatMap(List::stream), side.line().stream())
                .map(Pitch::name)
                .distinct()
                .toList();
    }

    private static void names(String what, List<NoteName> own, List<NoteName> others, List<String> said) {
        List<String> left = own.stream()
                .filter(name -> !others.contains(name))
                .map(name -> name.write(Signs.MUSIC))
                .toList();
        if (!left.isEmpty()) {
            said.add(what + String.join(" ", left) + ".");
        }
    }

    private void top(List<String> said) {
        List<Pitch> first = contrast.first().top();
        List<Pitch> second = contrast.second().top();
        if (first.size() > 1 && second.size() > 1 && !first.equals(second)) {
            said.add("On top " + row(first) + ", then " + row(second) + ".");
        }
    }

    private static String row(List<Pitch> line) {
        String told = line.stream().limit(2 * MOST_TOLD).map(Telling::sign).collect(Collectors.joining(" "));
        return line.size() > 2 * MOST_TOLD ? told + " …" : told;
    }

    private static String counted(int count, String one) {
        return (count == 0 ? "no" : Integer.toString(count)) + " " + (count == 1 ? one : one + "s");
    }

    private static String sign(Pitch pitch) {
        return pitch.write(Signs.MUSIC);
    }
}
