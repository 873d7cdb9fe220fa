package monochord.theory;

import java.util.Map;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.Signs;

/** Writes what stands behind the letters of a numeral: the quality sign, then a figure or a suffix. */
final class NumeralTail {
    private static final Map<Integer, String> TRIAD = Map.of(1, "", 3, "6", 5, "64");
    private static final Map<Integer, String> SEVENTH = Map.of(1, "7", 3, "65", 5, "43", 7, "42");

    private NumeralTail() {}

    /** Whether its inversions are written with figures. */
    static boolean hasFigures(ChordKind kind) {
        return switch (kind.toString()) {
            case "", "m", "dim", "aug", "7", "m7", "maj7", "m(maj7)", "dim7", "m7b5" -> true;
            default -> false;
        };
    }

    static String write(Numeral numeral, Signs signs) {
        String suffix = numeral.kind().toString();
        return switch (suffix) {
            case "", "m" -> figured("", TRIAD, numeral, signs);
            case "dim" -> figured(signs.isAscii() ? "o" : "°", TRIAD, numeral, signs);
            case "aug" -> figured("+", TRIAD, numeral, signs);
            case "7", "m7" -> figured("", SEVENTH, numeral, signs);
            case "maj7", "m(maj7)" -> figured("maj", SEVENTH, numeral, signs);
            case "dim7" -> figured(signs.isAscii() ? "o" : "°", SEVENTH, numeral, signs);
            case "m7b5" -> figured("ø", SEVENTH, numeral, signs);
            default -> signs.dress(plainSuffix(numeral)) + bassDegree(numeral, signs);
        };
    }

    private static String figured(String sign, Map<Integer, String> figures, Numeral numeral, Signs signs) {
        String figure = figures.get(numeral.bass().number());
        boolean told = numeral.bassDegree() == null && figure != null;
        return sign + (told ? figure : figures.get(1) + bassDegree(numeral, signs));
    }

    /** The degree in the bass behind a slash, a tone of the chord counted from where its root stands in major. */
    private static String bassDegree(Numeral numeral, Signs signs) {
        if (numeral.bassDegree() != null) {
            return "/" + numeral.bassDegree().write(signs);
        }
        int fifths = numeral.root(Mode.IONIAN).fifths() + numeral.bass().fifths();
        return numeral.bass().equals(Interval.UNISON)
                ? ""
                : "/" + Degree.ofFifths(fifths).write(signs);
    }

    /** The chord symbol's suffix without the m that the small letters already say, with 6 and 5/3 told from figures. */
    private static String plainSuffix(Numeral numeral) {
        String suffix = numeral.kind().toString();
        boolean saidBySmallLetters = numeral.hasMinorThird() && suffix.startsWith("m") && !suffix.startsWith("maj");
        String rest = saidBySmallLetters
                ? suffix.substring(1)
                : suffix.startsWith("dim") ? "o" + suffix.substring(3) : suffix;
        if (rest.equals("5") && (numeral.bassDegree() != null || !numeral.bass().equals(Interval.UNISON))) {
            return "no3";
        }
        boolean sixth = rest.startsWith("6") && !rest.startsWith("6/9") && !rest.startsWith("6sus");
        return sixth ? "add" + rest : rest;
    }
}
