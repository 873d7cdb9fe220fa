package monochord.shell.sitting;

import java.util.OptionalLong;
import java.util.Random;
import java.util.function.LongSupplier;

/** Where chance comes from: seeds, one after the other. */
@FunctionalInterface
public interface SeedSource extends LongSupplier {
    /** The number from which all these seeds follow, if they follow from one. */
    default OptionalLong beginning() {
        return OptionalLong.empty();
    }

    /** Seeds that follow from a number, and come back whenever one begins with it again. */
    static SeedSource from(long beginning) {
        Random random = new Random(beginning);
        return new SeedSource() {
            @Override
            public long getAsLong() {
                return random.nextInt(Integer.MAX_VALUE);
            }

            @Override
            public OptionalLong beginning() {
                return OptionalLong.of(beginning);
            }
        };
    }

    /** No chance at all: one, two, three. */
    static SeedSource counting() {
        long[] last = {0};
        return () -> ++last[0];
    }
}
