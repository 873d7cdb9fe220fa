package monochord.practice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/**
 * Whether a sentence says the whole answer.
 *
 * <p>A row is said when every one of its parts is named, in whatever order. A single plain letter is no answer said: a
 * teacher may say the letter to look for. What the prompt itself says gives nothing away.
 */
public final class Giveaway {
    private static final Pattern NOTE =
            Pattern.compile("(?<![A-Za-z♭♯])[A-G](?:♭𝄫|♭♭|𝄫|♯𝄪|♭|♯|𝄪)*(?![A-Za-z0-9♭♯/°+ø]|𝄪|𝄫)");
    private static final Pattern ARTICLE = Pattern.compile("(^|[.?:] )A(?= [a-z-]+ (?!.*\\bis right))");
    private static final Pattern WALK = Pattern.compile("Count up [^:]*:|[Ll]etters [A-G ]*");
    private static final Pattern PARTED = Pattern.compile("[ ,;:.?|–]+");

    private Giveaway() {}

    public static boolean isIn(String sentence, Question question) {
        String expected = question.expected();
        return switch (question.form()) {
            case NOTES -> notes(sentence, question, List.of(expected.split(" ")));
            case CHORD -> chord(sentence, question, Chord.parse(expected));
            case SIGNATURE -> signature(sentence, question);
            case PROGRESSION, NUMBER -> row(sentence, question, expected);
            case INTERVAL -> interval(sentence, expected);
            case QUALITY -> sentence.matches(".*\\b(?:it|that|which) (?:is|makes it) " + expected + "\\b.*");
            case CHOICE -> choice(sentence, question, expected);
            case NUMERAL -> tokens(sentence).contains(Numeral.parse(expected).write(Signs.MUSIC));
            case VOICING -> sentence.contains(Writings.signs(expected));
        };
    }

    private static boolean notes(String sentence, Question question, List<String> notes) {
        boolean letter = notes.size() == 1 && notes.get(0).length() == 1;
        boolean found = notes.size() == 1 || question.skillId().equals("common-tones");
        return !letter
                && (found
                        ? stands(sentence, notes) && !stands(question.prompt().toString(), notes)
                        : names(sentence, notes));
    }

    /** Whether just these stand there, and not within a longer row of notes. */
    private static boolean stands(String sentence, List<String> notes) {
        String note = "[A-G][♭♯𝄫𝄪]*";
        String row = String.join(
                "(?: | and |, )", notes.stream().map(Writings::signs).toList());
        return Pattern.compile("(?<!" + note.replace("*", "{0,2}") + "[ ])(?<![A-Za-z])" + row
                        + "(?![♭♯𝄫𝄪\\w]| is | has | " + note + "(?![a-z]))")
                .matcher(sentence)
                .find();
    }

    private static boolean names(String sentence, List<String> notes) {
        return notesIn(WALK.matcher(sentence).replaceAll("")).containsAll(notes);
    }

    private static Set<String> notesIn(String sentence) {
        Set<String> notes = new HashSet<>();
        Matcher found = NOTE.matcher(ARTICLE.matcher(sentence).replaceAll("$1one"));
        while (found.find()) {
            notes.add(NoteName.parse(found.group()).toString());
        }
        return notes;
    }

    private static boolean chord(String sentence, Question question, Chord chord) {
        String symbol = chord.write(Signs.MUSIC);
        String words = chord.root().write(Signs.MUSIC) + " " + chord.kind().quality();
        boolean plain = symbol.length() == chord.root().write(Signs.MUSIC).length();
        boolean inWords = sentence.contains(words)
                && !question.prompt().toString().contains(words)
                && !chord.isInverted()
                && chord.kind().intervals().size() == 3;
        boolean spelled = !chord.isInverted() && names(sentence, asText(chord.tones()));
        return spelled || inWords || !plain && tokens(sentence).contains(symbol);
    }

    private static List<String> asText(List<NoteName> notes) {
        return notes.stream().map(NoteName::toString).toList();
    }

    private static boolean signature(String sentence, Question question) {
        List<String> signs = asText(question.key().signatureNotes());
        String count = question.expected().replaceAll("^none$", "no sharps and no flats");
        return signs.size() > 1 && names(sentence, signs) || sentence.contains(count);
    }

    private static boolean row(String sentence, Question question, String expected) {
        String row = Writings.signs(expected);
        return sentence.contains(row) && !question.prompt().toString().contains(row);
    }

    private static boolean interval(String sentence, String expected) {
        if (expected.contains(" ")) {
            String steps = expected.replace("W", "whole").replace("H", "half").replace("3", "three-half-steps");
            return sentence.contains(expected)
                    || sentence.replaceAll("[A-G][♭♯𝄫𝄪]* ", "").contains(steps);
        }
        String words = monochord.theory.note.Interval.parse(expected).inWords();
        return sentence.toLowerCase(Locale.ROOT).matches(".*\\b" + words + "\\b.*")
                || tokens(sentence).contains(expected);
    }

    private static boolean choice(String sentence, Question question, String expected) {
        String said = Writings.signs(expected);
        boolean option = question.prompt().toString().toLowerCase(Locale.ROOT).contains(expected);
        return sentence.contains(said)
                && (option || !question.prompt().toString().contains(said));
    }

    private static Set<String> tokens(String sentence) {
        return new HashSet<>(new ArrayList<>(List.of(PARTED.split(sentence))));
    }
}
