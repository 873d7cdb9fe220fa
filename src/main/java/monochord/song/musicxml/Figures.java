package monochord.song.musicxml;

import java.math.BigDecimal;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;

/** The numbers of a file, which may be missing or absurd. */
final class Figures {
    private static final BigDecimal LARGEST = BigDecimal.valueOf(1_000_000);
    private static final String LETTERS = "ABCDEFG";
    private static final int LONGEST = 40;
    private static final int MOST_DIGITS = 6;
    private static final int SMALLEST_SHARED_PART = 10_000;

    private Figures() {}

    /** As beats, when {@code divisions} make one beat. */
    static Beats beats(String duration, String divisions) throws SheetFault {
        long parts = divisions == null ? thousandths("1") : thousandths(divisions);
        if (parts < 1) {
            throw new SheetFault(Phrase.of("its beats are divided into {0} parts", Phrase.quoted(divisions)));
        }
        long length = duration == null ? 0 : thousandths(duration);
        if (length < 0) {
            throw new SheetFault(Phrase.of("a length in it is below nothing"));
        }
        return counted(Beats.of(length, parts));
    }

    private static long thousandths(String text) throws SheetFault {
        BigDecimal number = number(text).orElse(LARGEST.add(BigDecimal.ONE));
        if (number.abs().compareTo(LARGEST) > 0 || number.scale() > MOST_DIGITS || number.scale() < -MOST_DIGITS) {
            throw new SheetFault(Phrase.of("a length in it cannot be counted"));
        }
        return number.movePointRight(MOST_DIGITS).longValue();
    }

    /** None if it is no number, or one that nobody would write. */
    private static Optional<BigDecimal> number(String text) {
        try {
            return text.length() > LONGEST ? Optional.empty() : Optional.of(new BigDecimal(text));
        } catch (NumberFormatException none) {
            return Optional.empty();
        }
    }

    static Beats counted(Beats beats) throws SheetFault {
        if (beats.denominator() > SMALLEST_SHARED_PART) {
            throw new SheetFault(Phrase.of("its lengths share no part of a beat that could be counted"));
        }
        return beats;
    }

    /** A whole number from {@code -most} to {@code most}; 0 where none is written. */
    static int whole(String text, int most, Phrase what) throws SheetFault {
        BigDecimal exact = number(text == null ? "0" : text)
                .orElseThrow(() -> new SheetFault(Phrase.of("{0} of {1} cannot be read", what, Phrase.quoted(text))));
        boolean small = exact.abs().compareTo(BigDecimal.valueOf(most)) <= 0;
        if (!small || exact.scale() > MOST_DIGITS || exact.stripTrailingZeros().scale() > 0) {
            throw new SheetFault(
                    small
                            ? Phrase.of("{0} of {1} cannot be read", what, Phrase.quoted(text))
                            : Phrase.of("{0} of more than {1} cannot be read", what, most));
        }
        return exact.intValueExact();
    }

    static NoteName note(String step, String alter) throws SheetFault {
        if (step == null || step.length() != 1 || LETTERS.indexOf(step) < 0) {
            throw new SheetFault(Phrase.of("a note in it has no letter"));
        }
        return NoteName.of(step.charAt(0), accidental(alter));
    }

    /** In half steps, 0 where none is written. */
    static int accidental(String alter) throws SheetFault {
        return whole(alter, 3, Phrase.of("an accidental"));
    }
}
