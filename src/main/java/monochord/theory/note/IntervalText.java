package monochord.theory.note;

import java.util.Locale;

/** Reads intervals, as signs ({@code m3}) and as words ({@code minor third}). */
final class IntervalText {
    private static final String WHAT = "an interval";
    private static final String EXAMPLE = "m3";
    private static final int MOST_ALTERED = 9;

    private IntervalText() {}

    static Interval parse(String text) {
        return text.indexOf(' ') < 0 ? parseSigns(text) : parseWords(text);
    }

    private static Interval parseSigns(String text) {
        Cursor cursor = new Cursor(text, WHAT, EXAMPLE);
        boolean down = cursor.take('-') || cursor.take('−');
        String quality = cursor.takeWhile(c -> "dmPMAp".indexOf(c) >= 0);
        if (quality.isEmpty() || quality.length() > MOST_ALTERED) {
            throw cursor.unexpected("P, M, m, A or d");
        }
        int start = cursor.place();
        int number = cursor.number(2, "a number from 1");
        cursor.end();
        cursor.back(start);
        Interval up = interval(cursor, quality.equals("p") ? "P" : quality, number);
        return down ? up.reversed() : up;
    }

    private static Interval interval(Cursor cursor, String quality, int number) {
        if (number < 1 || number > Interval.largestNumber()) {
            throw cursor.because(Clause.of("the number must be from 1 to {0}", Interval.largestNumber()));
        }
        Interval natural = Interval.of(number, 0);
        Interval found = Interval.of(number, alteration(quality, natural.isPerfectKind()));
        if (!found.quality().equals(quality) || found.goesDown()) {
            throw cursor.because(explain(natural, number));
        }
        return found;
    }

    private static int alteration(String quality, boolean perfectKind) {
        int size = quality.length();
        return switch (quality.charAt(0)) {
            case 'A' -> size;
            case 'd' -> perfectKind ? -size : -size - 1;
            case 'm' -> -1;
            default -> 0;
        };
    }

    private static Clause explain(Interval natural, int number) {
        return Clause.of(
                natural.isPerfectKind()
                        ? "{0} is perfect, augmented or diminished"
                        : "{0} is major, minor, augmented or diminished",
                new IntervalNumber(number));
    }

    private static Interval parseWords(String text) {
        String[] words = text.strip().toLowerCase(Locale.ROOT).split(" +", -1);
        Cursor cursor = new Cursor(text, WHAT, "minor third");
        int last = words.length - 1;
        int number = Interval.numberFromWord(words[last]);
        boolean doubly = last == 2 && (words[0].equals("doubly") || words[0].equals("double"));
        String quality = last == 1 || doubly ? qualityFromWord(words[last - 1]) : "";
        if (number == 0 || quality.isEmpty() || doubly && !quality.matches("[Ad]")) {
            throw cursor.because("expected a quality and a number");
        }
        return interval(cursor, doubly ? quality + quality : quality, number);
    }

    private static String qualityFromWord(String word) {
        return switch (word) {
            case "perfect" -> "P";
            case "major" -> "M";
            case "minor" -> "m";
            case "augmented" -> "A";
            case "diminished" -> "d";
            default -> "";
        };
    }

    static String qualityInWords(String quality) {
        String word = switch (quality.charAt(0)) {
            case 'P' -> "perfect";
            case 'M' -> "major";
            case 'm' -> "minor";
            case 'A' -> "augmented";
            default -> "diminished";
        };
        return switch (quality.length()) {
            case 1 -> word;
            case 2 -> "doubly " + word;
            default -> quality.length() + " times " + word;
        };
    }
}
