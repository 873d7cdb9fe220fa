package monochord.song.musicxml;

import java.math.BigDecimal;
import java.math.BigInteger;
import monochord.text.Phrase;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;
import org.audiveris.proxymusic.HarmonyAlter;
import org.audiveris.proxymusic.Step;

/** The numbers of a file, which may be missing or absurd. */
final class Figures {
    private static final BigDecimal LARGEST = BigDecimal.valueOf(1_000_000);
    private static final int MOST_DIGITS = 6;
    private static final int SMALLEST_SHARED_PART = 10_000;

    private Figures() {}

    /** As beats, when {@code divisions} make one beat. */
    static Beats beats(BigDecimal duration, BigDecimal divisions) throws SheetFault {
        long parts = thousandths(divisions == null ? BigDecimal.ONE : divisions);
        if (parts < 1) {
            throw new SheetFault(Phrase.of("its beats are divided into {0} parts", Phrase.typed(divisions.toString())));
        }
        long length = duration == null ? 0 : thousandths(duration);
        if (length < 0) {
            throw new SheetFault(Phrase.of("a length in it is below nothing"));
        }
        return counted(Beats.of(length, parts));
    }

    private static long thousandths(BigDecimal number) throws SheetFault {
        if (number.abs().compareTo(LARGEST) > 0 || number.scale() > MOST_DIGITS || number.scale() < -MOST_DIGITS) {
            throw new SheetFault(Phrase.of("a length in it cannot be counted"));
        }
        return number.movePointRight(MOST_DIGITS).longValue();
    }

    static Beats counted(Beats beats) throws SheetFault {
        if (beats.denominator() > SMALLEST_SHARED_PART) {
            throw new SheetFault(Phrase.of("its lengths share no part of a beat that could be counted"));
        }
        return beats;
    }

    /** A whole number from {@code -most} to {@code most}; 0 where none is written. */
    static int whole(Number number, int most, Phrase what) throws SheetFault {
        BigDecimal exact = number == null
                ? BigDecimal.ZERO
                : number instanceof BigInteger big ? new BigDecimal(big) : (BigDecimal) number;
        boolean small = exact.abs().compareTo(BigDecimal.valueOf(most)) <= 0;
        if (!small || exact.scale() > MOST_DIGITS || exact.stripTrailingZeros().scale() > 0) {
            throw new SheetFault(
                    small
                            ? Phrase.of("{0} of {1} cannot be read", what, Phrase.typed(exact.toPlainString()))
                            : Phrase.of("{0} of more than {1} cannot be read", what, most));
        }
        return exact.intValueExact();
    }

    static NoteName note(Step step, BigDecimal alter) throws SheetFault {
        if (step == null) {
            throw new SheetFault(Phrase.of("a note in it has no letter"));
        }
        return NoteName.of(step.name().charAt(0), whole(alter, 3, Phrase.of("an accidental")));
    }

    static NoteName note(Step step, HarmonyAlter alter) throws SheetFault {
        return note(step, alter == null ? null : alter.getValue());
    }
}
