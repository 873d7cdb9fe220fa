package monochord.practice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import monochord.harmony.Progression;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.Signs;

/** The same answer in the writings that people use for it. */
final class Writings {
    private static final Map<String, List<String>> QUALITIES = Map.of(
            "major", List.of("Major", "maj", "M", "a major chord", "MAJOR"),
            "minor", List.of("Minor", "min", "m", "-", "minor triad"),
            "diminished", List.of("dim", "°", "o", "diminished chord", "Diminished"),
            "augmented", List.of("aug", "+", "Augmented"));

    private static final Map<String, List<String>> BY_EAR = Map.of(
            "sus4", List.of("sus", "Sus4", "suspended fourth", "a sus4 chord", "Csus4", "suspended"),
            "sus2", List.of("suspended second", "Csus2", "a sus2"),
            "dominant seventh", List.of("7", "dominant", "dom7", "a dominant 7", "seventh chord", "G7", "Dominant 7"),
            "major seventh", List.of("maj7", "M7", "major 7", "a major seventh chord", "Cmaj7", "Δ7"),
            "minor seventh", List.of("m7", "min7", "-7", "minor 7", "Cm7"),
            "half-diminished seventh", List.of("m7b5", "ø", "ø7", "half diminished", "half-diminished", "Cm7b5"),
            "diminished seventh", List.of("dim7", "°7", "o7", "diminished 7", "Cdim7"));

    private Writings() {}

    static Set<String> of(Question question) {
        String expected = question.expected();
        Set<String> writings = new LinkedHashSet<>(List.of(expected, " " + expected + " ", signs(expected)));
        switch (question.form()) {
            case NOTES -> notes(writings, expected);
            case CHORD -> chordOrSlashChord(writings, Chord.parse(expected));
            case QUALITY ->
                writings.addAll(QUALITIES.containsKey(expected) ? QUALITIES.get(expected) : BY_EAR.get(expected));
            case SIGNATURE -> signature(writings, question, expected);
            case CHOICE -> choice(writings, question, expected);
            case PROGRESSION, NUMBER -> rows(writings, question, expected);
            case INTERVAL -> stepsOrInterval(writings, question, expected);
            default -> {}
        }
        return writings;
    }

    static String signs(String ascii) {
        return ascii.replaceAll("(?<=[A-G1-7 ]|^)bb(?![a-z])", "𝄫")
                .replace("##", "𝄪")
                .replaceAll("(?<=[A-G ♭𝄫]|^)b", "♭")
                .replace('#', '♯');
    }

    private static String words(String note) {
        String accidental = note.substring(1);
        String word = switch (accidental) {
            case "b" -> " flat";
            case "#" -> " sharp";
            case "bb" -> " double flat";
            case "##" -> " double sharp";
            default -> "";
        };
        return accidental.isEmpty() || !word.isEmpty() ? note.charAt(0) + word : note;
    }

    private static void notes(Set<String> writings, String expected) {
        List<String> notes = List.of(expected.split(" "));
        writings.add(expected.toLowerCase());
        writings.add(String.join(", ", notes));
        writings.add(String.join("-", notes).toLowerCase());
        writings.add(String.join("/", notes.stream().map(Writings::signs).toList()));
        writings.add(String.join(" ", notes.stream().map(Writings::words).toList()));
        writings.add(String.join(" - ", notes));
        writings.add(expected.replace("##", "x"));
        if (notes.size() > 1) {
            int last = notes.size() - 1;
            writings.add(String.join(", ", notes.subList(0, last)) + " and " + notes.get(last));
            writings.add(String.join("", notes));
            List<String> downwards = new ArrayList<>(notes);
            Collections.reverse(downwards);
            writings.add(String.join(" ", downwards));
        }
    }

    private static void chordOrSlashChord(Set<String> writings, Chord chord) {
        if (chord.isInverted()) {
            slashChord(writings, chord);
        } else if (chord.kind().toString().matches("|m|dim|aug")) {
            chord(writings, chord);
        } else {
            notes(
                    writings,
                    String.join(
                            " ", chord.tones().stream().map(Object::toString).toList()));
        }
    }

    private static void slashChord(Set<String> writings, Chord chord) {
        String over = chord.bass().toString();
        String plain = chord.over(chord.root()).toString();
        String place = List.of("root position", "first inversion", "second inversion", "third inversion")
                .get(chord.tones().indexOf(chord.bass()));
        writings.addAll(List.of(
                plain + " / " + over, plain + " over " + over, plain + "/" + words(over), plain + ", " + place));
    }

    private static void chord(Set<String> writings, Chord chord) {
        String root = chord.root().toString();
        String quality = chord.kind().quality().toString();
        writings.add(chord.toString().substring(0, 1).toLowerCase()
                + chord.toString().substring(1));
        writings.add(words(root) + " " + quality);
        writings.add(signs(root) + " " + quality + " chord");
        writings.add(root + quality.substring(0, 3));
        writings.add(chord + " chord");
        if (quality.equals("minor")) {
            writings.addAll(List.of(root + "-", root + "min", root + "mi"));
        } else if (quality.equals("diminished")) {
            writings.addAll(List.of(root + "°", root + "o"));
        } else if (quality.equals("major")) {
            writings.addAll(List.of(root + "maj", root + "M", words(root)));
        }
        notes(
                writings,
                String.join(" ", chord.tones().stream().map(Object::toString).toList()));
    }

    private static void signature(Set<String> writings, Question question, String expected) {
        var signs = question.key().signatureNotes();
        if (signs.isEmpty()) {
            writings.addAll(List.of("None", "no sharps or flats", "0", "nothing", "no accidentals", "no sharps"));
            return;
        }
        String sign = expected.contains("flat") ? "b" : "#";
        writings.add(signs.size() + sign);
        writings.add(signs.size() + " " + signs(" " + sign).strip());
        writings.add(
                List.of("one", "two", "three", "four", "five", "six", "seven").get(signs.size() - 1)
                        + expected.substring(1));
        String row = String.join(" ", signs.stream().map(Object::toString).toList());
        notes(writings, row);
        writings.add(expected + ": " + row);
    }

    private static void choice(Set<String> writings, Question question, String expected) {
        if (question.skillId().equals("motion")) {
            writings.addAll(List.of(
                    expected.toUpperCase(), expected + " motion", "in " + expected + " motion", "It is " + expected));
        } else if (question.skillId().equals("melody-fit")) {
            writings.addAll(List.of(expected.toUpperCase(), "a " + expected, "It is a " + expected + "."));
        } else {
            scale(writings, expected);
        }
    }

    private static void scale(Set<String> writings, String expected) {
        String kind = expected.substring(expected.indexOf(' ') + 1);
        writings.addAll(List.of(
                kind, "the " + kind + " scale", "parallel " + kind, expected + " scale", expected.toLowerCase()));
        if (kind.equals("minor")) {
            writings.addAll(List.of("the parallel minor", "natural minor", "aeolian", expected.replace(" minor", "m")));
        }
    }

    private static void rows(Set<String> writings, Question question, String expected) {
        row(writings, expected);
        if (question.skillId().equals("ear-progression")) {
            Progression heard = Progression.parse(expected, question.key());
            row(writings, heard.symbols(Signs.ASCII));
            row(writings, heard.numbers(Signs.ASCII));
            writings.add(heard.symbols(Signs.MUSIC));
            writings.add(heard.numerals(Signs.MUSIC));
            writings.add(heard.numbers(Signs.MUSIC));
            writings.add((question.key().isMinor() ? "i " : "I ") + expected);
        }
    }

    private static void stepsOrInterval(Set<String> writings, Question question, String expected) {
        if (question.skillId().equals("ear-interval")) {
            interval(writings, expected);
        } else {
            steps(writings, expected);
        }
    }

    /** As people say it: in signs, in words, with a figure. */
    private static void interval(Set<String> writings, String expected) {
        if (expected.equals("tritone")) {
            writings.addAll(List.of("A4", "d5", "Tritone", "a tritone", "diminished fifth", "augmented 4th"));
            return;
        }
        String words = Interval.parse(expected).inWords();
        String figure = expected.substring(1);
        String quality = words.substring(0, words.indexOf(' '));
        String ending = figure.equals("2") ? "nd" : figure.equals("3") ? "rd" : "th";
        writings.addAll(List.of(
                words, "a " + words, "It is a " + words, quality + " " + figure, quality + " " + figure + ending));
        writings.add(quality.substring(0, 3) + " " + figure + ending);
        if (quality.equals("perfect")) {
            writings.add(words.substring(words.indexOf(' ') + 1));
        }
    }

    private static void row(Set<String> writings, String expected) {
        writings.add(expected.replace(" ", ", "));
        writings.add("| " + expected.replace(" ", " | ") + " |");
        writings.add(expected.replace(" ", " - "));
        writings.add(expected.replace(" ", "-"));
        writings.add(expected.replace(" ", "  "));
    }

    private static void steps(Set<String> writings, String expected) {
        String whole = expected.replace("3", "x");
        writings.add(whole.replace("W", "whole").replace("H", "half").replace("x", "3"));
        writings.add(whole.replace("W", "tone").replace("H", "semitone").replace("x", "3"));
        writings.add(whole.replace("W", "2").replace("H", "1").replace("x", "3"));
        writings.add(expected.replace(" ", ""));
        writings.add(whole.replace("W", "1").replace("H", "½").replace("x", "1½"));
        writings.add(expected.replace(" ", "-").toLowerCase());
        writings.add(
                whole.replace("W", "whole step,").replace("H", "half step,").replace("x", "three half steps,"));
    }
}
