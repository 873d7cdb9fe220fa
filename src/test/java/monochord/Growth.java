package monochord;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.function.Consumer;
import java.util.function.IntFunction;

/**
 * Tells work that grows with the length of a text from work that grows with its square. What is measured is the time of
 * the processor that this thread was given, so that it does not matter how fast the machine is and what else it does.
 */
public final class Growth {
    private static final int TIMES = 8;
    /** Twice what is due is no square yet, which takes eight times as much. */
    private static final int UNEVEN = 3;
    /** Nanoseconds that nobody minds, however they come about; the square of what the tests try takes far more. */
    private static final long UNNOTICED = 300_000_000L;

    private Growth() {}

    /**
     * Does the work with a text of this length, and finds that it took no more than is due after one an eighth as long.
     *
     * @param text makes a text of about so many characters
     * @param work is done on this thread
     */
    public static void assertLinear(String what, int length, IntFunction<String> text, Consumer<String> work) {
        long little = nanos(text.apply(length / TIMES), work);
        long all = nanos(text.apply(length), work);
        assertTrue(
                all <= UNNOTICED + TIMES * UNEVEN * little,
                () -> "%s: %d characters took %,d ns, %d times as many %,d ns"
                        .formatted(what, length / TIMES, little, TIMES, all));
    }

    private static long nanos(String text, Consumer<String> work) {
        long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        work.accept(text);
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begun;
    }
}
