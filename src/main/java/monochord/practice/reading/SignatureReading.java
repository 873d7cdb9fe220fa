package monochord.practice.reading;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Reads a signature: {@code 2 sharps}, {@code two sharps}, {@code 3b}, {@code F# C#}, {@code none}. */
public final class SignatureReading {
    private static final List<String> COUNTS = List.of("no", "one", "two", "three", "four", "five", "six", "seven");
    private static final Pattern NOTHING = Pattern.compile(
            "(?i)(?:none|nothing|0|no|zero|natural|empty|no accidentals|no signs?|no (?:sharps?|flats?)(?: (?:and|or|,) ?(?:no )?(?:sharps?|flats?))?|neither sharps? (?:n?or|and) flats?|none)\\s*");
    private static final Pattern COUNT = Pattern.compile(
            "(?i)(?<![a-z0-9])([0-9]|no|one|two|three|four|five|six|seven) ?(sharps?|flats?|#|♯|b|♭|(?<=(?:[0-9]|one|two|three|four|five|six|seven) )Bb)(?![a-z])[:,. ]*");

    private static final Pattern LETTERS = Pattern.compile("(?i)(sharps?|flats?)[: ]+([A-G].*)");
    private static final Pattern NUMBER_ALONE =
            Pattern.compile("(?i)\\s*(?:[1-9]|one|two|three|four|five|six|seven)\\s*");

    /** {@code bbb}: so many flats; two letters b are B flat. */
    private static final Pattern SIGNS_ALONE = Pattern.compile("b{3,7}|♭{2,7}|[#♯]{2,7}");

    private SignatureReading() {}

    /** @throws Unreadable if it is neither a count of signs nor a row of them */
    public static Signature read(String plain, String example) {
        if (NOTHING.matcher(plain).matches()) {
            return Signature.of(0);
        }
        if (NUMBER_ALONE.matcher(plain).matches()) {
            throw Unreadable.because(plain, 0, "a key signature", "say sharps or flats with the number", example);
        }
        if (SIGNS_ALONE.matcher(plain).matches()) {
            boolean flats = plain.charAt(0) == 'b' || plain.charAt(0) == '♭';
            return Signature.of(flats ? -plain.length() : plain.length());
        }
        Matcher letters = LETTERS.matcher(plain);
        if (letters.matches()) {
            return Signature.of(altered(letters.group(2), letters.group(1).charAt(0), example));
        }
        Matcher counted = COUNT.matcher(plain);
        String rest = counted.replaceAll(" ").strip();
        counted.reset();
        if (!rest.isEmpty()) {
            boolean bare = counted.find() && !rest.matches(".*[b#♭♯].*");
            return Signature.of(bare ? altered(rest, counted.group(2).charAt(0), example) : signs(rest, example));
        }
        return counted.find() ? counted(counted, plain, example) : Signature.of(0);
    }

    /** {@code sharps: F and C}: letters that all take the sign before them. */
    private static List<NoteName> altered(String letters, char sign, String example) {
        int alteration = "fFbB♭".indexOf(sign) >= 0 ? -1 : 1;
        return NoteReading.read(letters, example).stream()
                .map(note -> note.alteration() == 0 ? NoteName.of(note.letter(), alteration) : note)
                .toList();
    }

    private static Signature counted(Matcher counted, String plain, String example) {
        String number = counted.group(1).toLowerCase(Locale.ROOT);
        int size = Character.isDigit(number.charAt(0)) ? number.charAt(0) - '0' : COUNTS.indexOf(number);
        if (size >= COUNTS.size()) {
            throw Unreadable.because(plain, 0, "a key signature", "no more than seven signs are printed", example);
        }
        char sign = Character.toLowerCase(counted.group(2).charAt(0));
        return Signature.of(sign == 'f' || sign == 'b' || counted.group(2).equals("Bb") || sign == '♭' ? -size : size);
    }

    private static List<NoteName> signs(String rest, String example) {
        List<NoteName> notes =
                NoteReading.read(rest, example).stream().distinct().toList();
        if (notes.stream().anyMatch(note -> note.alteration() == 0)) {
            throw Unreadable.because(rest, 0, "a key signature", "each note in it takes a sharp or a flat", example);
        }
        return notes;
    }
}
