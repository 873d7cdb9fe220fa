package monochord.song.musicxml;

import java.math.BigDecimal;
import java.math.BigInteger;
import monochord.theory.Beats;
import monochord.theory.NoteName;
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
            throw new SheetFault("its beats are divided into " + divisions + " parts");
        }
        long length = duration == null ? 0 : thousandths(duration);
        if (length < 0) {
            throw new SheetFault("a length in it is below nothing");
        }
        return counted(Beats.of(length, parts));
    }

    private static long thousandths(BigDecimal number) throws SheetFault {
        if (number.abs().compareTo(LARGEST) > 0 || number.scale() > MOST_DIGITS || number.scale() < -MOST_DIGITS) {
            throw new SheetFault("a length in it cannot be counted");
        }
        return number.movePointRight(MOST_DIGITS).longValue();
    }

    static Beats counted(Beats beats) throws SheetFault {
        if (beats.denominator() > SMALLEST_SHARED_PART) {
            throw new SheetFault("its lengths share no part of a beat that could be counted");
        }
        return beats;
    }

    /** A whole number from {@code -most} to {@code most}; 0 where none is written. */
    static int whole(Number number, int most, String what) throws SheetFault {
        BigDecimal exact = number == null
                ? BigDecimal.ZERO
                : number instanceof BigInteger big ? new BigDecimal(big) : (BigDecimal) number;
        boolean small = exact.abs().compareTo(BigDecimal.valueOf(most)) <= 0;
        if (!small || exact.scale() > MOST_DIGITS || exact.stripTrailingZeros().scale() > 0) {
            throw new SheetFault(
                    what + " of " + (small ? exact.toPlainString() : "more than " + most) + " cannot be read");
        }
        return exact.intValueExact();
    }

    static NoteName note(Step step, BigDecimal alter) throws SheetFault {
        if (step == null) {
            throw new SheetFault("a note in it has no letter");
        }
        return NoteName.of(step.name().charAt(0), whole(alter, 3, "an accidental"));
    }

    static NoteName note(Step step, HarmonyAlter alter) throws SheetFault {
        return note(step, alter == null ? null : alter.getValue());
    }
}
