package monochord.practice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import monochord.theory.note.Unreadable;

/**
 * Reads steps as half steps: {@code W W H}, {@code whole whole half}, {@code tone tone semitone}, {@code 2 2 1}, {@code
 * 1 1 ½}; three half steps as {@code 3}, {@code WH} or {@code 1½}.
 */
public final class StepReading {
    private static final Map<String, Integer> NAMES = Map.ofEntries(
            Map.entry("w", 2),
            Map.entry("t", 2),
            Map.entry("whole", 2),
            Map.entry("tone", 2),
            Map.entry("full", 2),
            Map.entry("h", 1),
            Map.entry("s", 1),
            Map.entry("half", 1),
            Map.entry("semitone", 1),
            Map.entry("wh", 3),
            Map.entry("w+h", 3),
            Map.entry("ts", 3),
            Map.entry("t+s", 3),
            Map.entry("wholes", 2),
            Map.entry("halves", 1),
            Map.entry("tono", 2),
            Map.entry("semiton", 1),
            Map.entry("semitones", 1),
            Map.entry("tones", 2));

    private static final Pattern THREE = Pattern.compile(
            "augmented second|(?<![a-z])(?:a )?(?:whole|tone)(?: step| tone)?[ -]and[ -]a[ -]half(?: steps?)?|minor third|three half steps?");
    /** What the figures count, said once behind them. */
    private static final Pattern UNIT = Pattern.compile("^([1-3][1-3\\s,-]+)(?:in )?(?:half[ -]?steps|semitones)$");

    private static final Pattern MANY = Pattern.compile("\\b(two|three) (?:wholes?|w)(?: steps?| tones?)?\\b");
    private static final Pattern BETWEEN =
            Pattern.compile("(?:[\\s,;|–—>→-]|\\b(?:steps?|and|an?|key|then|it|again|another)\\b)+");

    private StepReading() {}

    /** @throws Unreadable if something in it is not a step */
    public static List<Integer> read(String plain, String example) {
        String text = UNIT.matcher(plain.toLowerCase(Locale.ROOT)).replaceFirst("$1");
        text = THREE.matcher(text).replaceAll("3");
        text = MANY.matcher(text).replaceAll(found -> found.group(1).equals("two") ? "w w" : "w w w");
        boolean inTones = text.contains("½") || text.contains(".5") || text.contains("1/2");
        List<Integer> steps = new ArrayList<>();
        for (String token : BETWEEN.split(text)) {
            if (!token.isEmpty()) {
                addAll(steps, token, inTones, example);
            }
        }
        if (steps.isEmpty()) {
            throw unreadable(plain.strip(), example);
        }
        return steps;
    }

    private static void addAll(List<Integer> steps, String token, boolean inTones, String example) {
        Integer named = NAMES.get(token);
        if (named != null) {
            steps.add(named);
        } else if (inTones) {
            steps.add(tones(token, example));
        } else if (token.matches("[wht1-4s]+")) {
            token.codePoints().forEach(c -> steps.add(c <= '9' ? c - '0' : NAMES.get(Character.toString(c))));
        } else {
            throw unreadable(token, example);
        }
    }

    private static int tones(String token, String example) {
        return switch (token) {
            case "1", "1.0" -> 2;
            case "½", "1/2", "0.5", ".5" -> 1;
            case "1½", "1.5" -> 3;
            default -> throw unreadable(token, example);
        };
    }

    private static Unreadable unreadable(String token, String example) {
        return Unreadable.because(token, 0, "a step", "W is a whole step, H a half step, 3 three half steps", example);
    }
}
