package monochord.theory;

import java.util.List;
import java.util.Map;
import monochord.theory.Numeral.Form;
import monochord.theory.note.Clause;
import monochord.theory.note.Cursor;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.Signs;
import monochord.theory.note.ToneSet;
import monochord.theory.note.Unreadable;

/** Reads and writes numerals. */
final class NumeralText {
    private static final String WHAT = "a numeral";
    private static final String EXAMPLE = "bVImaj7";
    private static final int DEEPEST = 3;
    private static final int MOST_ALTERED = 2;
    private static final String[] CAPITALS = {"I", "II", "III", "IV", "V", "VI", "VII"};
    private static final String[] SMALL = {"i", "ii", "iii", "iv", "v", "vi", "vii"};
    /** So that none is read as a shorter one that it begins with. */
    private static final int[] LONGEST_FIRST = {7, 3, 6, 4, 2, 5, 1};

    private static final String BEGINS_A_NAME = "GFICN";
    private static final ChordKind ITALIAN = sixth("1 3 #6");
    private static final ChordKind FRENCH = sixth("1 3 #4 #6");
    private static final ChordKind GERMAN = sixth("1 3 5 #6");

    /** The number in the chord that each figure puts in the bass; the second figure of a pair is for a seventh chord. */
    private static final Map<String, Integer> TRIAD_FIGURES = Map.of("6", 3, "63", 3, "64", 5, "53", 1);

    private static final Map<String, Integer> SEVENTH_FIGURES =
            Map.of("65", 3, "653", 3, "43", 5, "643", 5, "42", 7, "642", 7, "2", 7);

    private static final List<String> FIGURES = List.of(
            "653", "643", "642", "6/5", "6/4", "6/3", "4/3", "4/2", "5/3", "65", "64", "63", "43", "42", "53", "7", "6",
            "2");

    /**
     * What each figure puts in the bass of an augmented sixth chord, seen from its lowered sixth. The figures count from the
     * raised fourth, and in the French one from the second.
     *
     * <p>Source: RomanText (Tymoczko, Gotham, Cuthbert, Ariza, ISMIR 2019), from memory.
     */
    private static final Map<Form, Map<String, String>> SIXTHS = Map.of(
            Form.GERMAN,
            Map.of("65", "P1", "6", "P1", "7", "A6", "43", "M3", "42", "P5", "2", "P5"),
            Form.FRENCH,
            Map.of("43", "P1", "6", "P1", "7", "A4", "65", "A6", "42", "M3", "2", "M3"),
            Form.ITALIAN,
            Map.of("6", "P1", "53", "A6", "64", "M3"));

    private final Cursor cursor;

    private NumeralText(String text) {
        cursor = new Cursor(text, WHAT, EXAMPLE);
    }

    private static ChordKind sixth(String degrees) {
        long tones = 0;
        for (String degree : degrees.split(" ")) {
            tones |= ToneSet.bit(Degree.parse(degree).fifths());
        }
        return ChordKind.ofTones(tones).orElseThrow();
    }

    static Numeral parse(String text) {
        NumeralText reader = new NumeralText(text);
        Numeral numeral = reader.numeral(0);
        reader.cursor.end("/");
        return numeral;
    }

    private Numeral numeral(int depth) {
        Numeral named = BEGINS_A_NAME.indexOf(cursor.peek()) < 0 ? null : named();
        Numeral head = named != null ? named : degree();
        if (!cursor.take('/')) {
            return head;
        }
        if (depth == DEEPEST) {
            throw cursor.because(Clause.of("at most {0} targets are read", DEEPEST));
        }
        return head.appliedTo(numeral(depth + 1));
    }

    private Numeral named() {
        if (cursor.take("Ger")) {
            return augmentedSixth(Form.GERMAN, GERMAN);
        } else if (cursor.take("Fr")) {
            return augmentedSixth(Form.FRENCH, FRENCH);
        } else if (cursor.take("It")) {
            return augmentedSixth(Form.ITALIAN, ITALIAN);
        } else if (cursor.takeAny("Cad64", "Cad6/4", "Cad")) {
            return new Numeral(Form.CADENTIAL, 1, 0, ChordKind.MAJOR, Interval.PERFECT_FIFTH, null, null);
        }
        return cursor.take('N') ? neapolitan() : null;
    }

    private Numeral augmentedSixth(Form form, ChordKind kind) {
        cursor.take('+');
        for (String figure : FIGURES) {
            String bass = SIXTHS.get(form).get(figure.replace("/", ""));
            if (bass != null && cursor.take(figure)) {
                return new Numeral(form, 6, -1, kind, Interval.parse(bass), null, null);
            }
        }
        return new Numeral(form, 6, -1, kind, Interval.UNISON, null, null);
    }

    private Numeral neapolitan() {
        Interval bass = cursor.takeAny("64", "6/4")
                ? Interval.PERFECT_FIFTH
                : cursor.take('6') ? Interval.MAJOR_THIRD : Interval.UNISON;
        return new Numeral(Form.NEAPOLITAN, 2, -1, ChordKind.MAJOR, bass, null, null);
    }

    private Numeral degree() {
        int start = cursor.place();
        int alteration = cursor.accidentals();
        if (Math.abs(alteration) > MOST_ALTERED) {
            cursor.back(start);
            throw cursor.because("at most two accidentals stand before a numeral");
        }
        boolean minor = cursor.peek() >= 'i';
        return quality(roman(minor ? SMALL : CAPITALS), alteration, minor);
    }

    private int roman(String[] letters) {
        for (int degree : LONGEST_FIRST) {
            if (cursor.take(letters[degree - 1])) {
                return degree;
            }
        }
        throw cursor.unexpected("I to VII or i to vii");
    }

    private Numeral quality(int degree, int alteration, boolean minor) {
        String prefix = minor ? "m" : "";
        int before = cursor.place();
        if (cursor.takeAny("ø", "Ø", "/o")) {
            prefix = "ø";
        } else if (cursor.takeAny("o", "°", "º")) {
            prefix = "dim";
        } else if (!minor && cursor.take('+')) {
            prefix = "aug";
        } else if (!minor && cursor.aheadThenDigit("d")) {
            cursor.take('d');
        }
        if (!minor && (prefix.equals("ø") || prefix.equals("dim"))) {
            cursor.back(before);
            throw cursor.because("a diminished chord is written in small letters");
        }
        return tail(Numeral.of(degree, alteration, ChordKind.MAJOR), prefix);
    }

    private Numeral tail(Numeral bare, String prefix) {
        boolean major = cursor.takeAnyBeforeFigure("maj", "Maj", "M");
        if (!major && cursor.takeAny("54", "5/4")) {
            return suffixed(bare, prefix + "sus4" + suffixText(), cursor.place());
        }
        for (String figure : cursor.aheadDigit() ? FIGURES : List.<String>of()) {
            if (isFigure(figure)) {
                cursor.take(figure);
                return figured(bare, prefix, figure.replace("/", ""), major);
            }
        }
        int start = cursor.place();
        return suffixed(bare, (prefix + (major ? "maj" : "")) + suffixText(), start);
    }

    /** A 6 that begins {@code 6/9}, a 2 or 6 that begins a longer number, and an added {@code 6sus4} are no figures. */
    private boolean isFigure(String figure) {
        return cursor.ahead(figure)
                && !figure.equals("7")
                && !cursor.ahead("6/9")
                && !cursor.ahead("69")
                && !(figure.equals("6") && cursor.ahead("6sus"));
    }

    private Numeral figured(Numeral bare, String prefix, String figure, boolean major) {
        Integer triadMember = TRIAD_FIGURES.get(figure);
        boolean seventh = triadMember == null || prefix.equals("ø");
        int member = triadMember == null ? SEVENTH_FIGURES.get(figure) : triadMember;
        int start = cursor.place();
        ChordKind kind = kind(prefix + (seventh ? (major ? "maj7" : "7") : "") + suffixText(), start);
        return new Numeral(bare.form(), bare.degree(), bare.alteration(), kind, bassOf(kind, member), null, null);
    }

    private Interval bassOf(ChordKind kind, int member) {
        return member == 1
                ? Interval.UNISON
                : kind.interval(member).orElseThrow(() -> cursor.because("the chord has no tone for that figure"));
    }

    private Numeral suffixed(Numeral bare, String suffix, int start) {
        ChordKind kind = kind(suffix, start);
        Numeral plain = Numeral.of(bare.degree(), bare.alteration(), kind);
        return cursor.aheadDegreeAfterSlash() ? overDegree(plain) : plain;
    }

    /** A tone of a chord that figures cannot turn is written as the degree it has where its root stands in major. */
    private Numeral overDegree(Numeral plain) {
        cursor.take('/');
        int alteration = cursor.accidentals();
        int number = cursor.number(1, "a degree from 1 to 7");
        if (number < 1 || number > 7) {
            throw cursor.because("the bass must be a degree from 1 to 7");
        }
        Degree degree = Degree.of(number, alteration);
        Interval aboveRoot =
                Interval.simple(degree.fifths() - plain.root(Mode.IONIAN).fifths());
        boolean own = plain.kind().holds(aboveRoot) && !NumeralTail.hasFigures(plain.kind());
        return own ? plain.over(aboveRoot) : plain.over(degree);
    }

    /** What stands before the slash of a target or of a bass degree. */
    private String suffixText() {
        int start = cursor.place();
        StringBuilder suffix = new StringBuilder();
        while (!cursor.atEnd() && !isTargetAhead()) {
            suffix.append(cursor.next());
        }
        if (suffix.length() > 24) {
            cursor.back(start);
            throw cursor.unexpected("a figure, a suffix, /");
        }
        return suffix.toString();
    }

    private boolean isTargetAhead() {
        return cursor.peek() == '/' && !cursor.ahead("/9") && !cursor.ahead("/maj");
    }

    /** @param start where the part of the suffix that was written begins */
    private ChordKind kind(String suffix, int start) {
        try {
            return ChordKind.parse(suffix);
        } catch (Unreadable unreadable) {
            cursor.back(start);
            throw cursor.unexpected("o, ø, +, a figure (6, 64, 7 …), a suffix (maj7, sus4 …), /");
        }
    }

    static String write(Numeral numeral, Signs signs) {
        String target = numeral.target() == null ? "" : "/" + write(numeral.target(), signs);
        return (numeral.form() == Form.DEGREE ? writeDegree(numeral, signs) : writeNamed(numeral)) + target;
    }

    private static String writeNamed(Numeral numeral) {
        int bass = numeral.bass().number();
        String figure = switch (numeral.form()) {
            case GERMAN -> bass == 3 ? "43" : bass == 5 ? "42" : bass == 6 ? "7" : "65";
            case FRENCH -> bass == 3 ? "42" : bass == 4 ? "7" : bass == 6 ? "65" : "43";
            case ITALIAN -> bass == 3 ? "64" : bass == 6 ? "53" : "6";
            case CADENTIAL -> "64";
            default -> bass == 3 ? "6" : bass == 5 ? "64" : "";
        };
        return numeral.form().written() + figure;
    }

    private static String writeDegree(Numeral numeral, Signs signs) {
        String[] letters = numeral.hasMinorThird() ? SMALL : CAPITALS;
        return signs.accidental(numeral.alteration())
                + letters[numeral.degree() - 1]
                + NumeralTail.write(numeral, signs);
    }
}
