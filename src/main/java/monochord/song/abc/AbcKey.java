package monochord.song.abc;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.note.NoteName;

/**
 * A key as {@code K:} says it: what it is called, and what a letter without an accidental is.
 *
 * <p>Source: the ABC standard 2.1, section 3.1.14.
 *
 * @param alterations of each letter, in half steps
 */
record AbcKey(Key key, Map<Character, Integer> alterations) {
    private static final Pattern TEXT = Pattern.compile("\\s*([A-G])([#b♯♭]?)\\s*([A-Za-z]*)(.*)");
    private static final Pattern CHANGED = Pattern.compile("(\\^\\^?|__?|=)([A-Ga-g])");
    private static final String LETTERS = "CDEFGAB";

    static AbcKey none() {
        return of(Key.major(NoteName.C));
    }

    static AbcKey of(Key key) {
        Map<Character, Integer> alterations = new HashMap<>();
        for (char letter : LETTERS.toCharArray()) {
            alterations.put(letter, 0);
        }
        key.signatureNotes()
                .forEach(note -> alterations.merge(note.letter(), Integer.signum(key.signature()), Integer::sum));
        return new AbcKey(key, alterations);
    }

    /** None where the text is none. */
    static Optional<AbcKey> parse(String text) {
        String said = text.strip();
        if (said.isEmpty() || said.toLowerCase(Locale.ROOT).startsWith("none")) {
            return Optional.of(none());
        }
        if (said.startsWith("HP") || said.startsWith("Hp")) {
            AbcKey pipes = of(Key.major(NoteName.parse("D")));
            return Optional.of(new AbcKey(new Key(NoteName.parse("A"), Mode.MIXOLYDIAN), pipes.alterations));
        }
        Matcher matcher = TEXT.matcher(said);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String sign = matcher.group(2).replace('♯', '#').replace('♭', 'b');
        NoteName tonic = NoteName.parse(matcher.group(1) + sign);
        Optional<Mode> mode = mode(matcher.group(3));
        boolean isExplicit = matcher.group(3).equalsIgnoreCase("exp");
        Key key = new Key(tonic, mode.orElse(Mode.IONIAN));
        AbcKey plain = isExplicit || !key.isInUse() ? new AbcKey(key, none().alterations) : of(key);
        return Optional.of(plain.changed(matcher.group(4)));
    }

    /** By its first three letters, in whatever case; words that are none belong to the clef. */
    private static Optional<Mode> mode(String word) {
        String first = word.toLowerCase(Locale.ROOT);
        first = first.length() > 3 ? first.substring(0, 3) : first;
        return switch (first) {
            case "", "maj", "ion" -> Optional.of(Mode.IONIAN);
            case "m" -> Optional.of(word.equals("M") ? Mode.IONIAN : Mode.AEOLIAN);
            case "min", "aeo" -> Optional.of(Mode.AEOLIAN);
            case "dor" -> Optional.of(Mode.DORIAN);
            case "phr" -> Optional.of(Mode.PHRYGIAN);
            case "lyd" -> Optional.of(Mode.LYDIAN);
            case "mix" -> Optional.of(Mode.MIXOLYDIAN);
            case "loc" -> Optional.of(Mode.LOCRIAN);
            default -> Optional.empty();
        };
    }

    private AbcKey changed(String text) {
        Map<Character, Integer> all = new HashMap<>(alterations);
        Matcher one = CHANGED.matcher(text);
        while (one.find()) {
            all.put(Character.toUpperCase(one.group(2).charAt(0)), alteration(one.group(1)));
        }
        return new AbcKey(key, all);
    }

    static int alteration(String sign) {
        return switch (sign) {
            case "^" -> 1;
            case "^^" -> 2;
            case "_" -> -1;
            case "__" -> -2;
            default -> 0;
        };
    }
}
