package monochord.record;

import java.io.IOException;
import java.nio.file.Path;
import monochord.practice.Grade;
import monochord.practice.mastery.Attempt;

/**
 * A program of its own that answers questions as fast as it can and prints the seed of each answer once it is kept, until
 * it is killed or has given as many as it was told to.
 */
final class Writer {
    private Writer() {}

    /** @param arguments the home, the first seed, how many answers */
    public static void main(String[] arguments) {
        long first = Long.parseLong(arguments[1]);
        long count = Long.parseLong(arguments[2]);
        try (Register register = new Register(Path.of(arguments[0]))) {
            for (long seed = first; seed < first + count; seed++) {
                register.keep(attempt(seed));
                register.notice().forEach(System.err::println);
                System.out.println(seed);
                System.out.flush();
            }
        }
    }

    static Attempt attempt(long seed) {
        return new Attempt(
                1_700_000_000_000L + seed,
                seed % 2 == 0 ? "the-lowered-seventh" : "",
                "borrowed-chord",
                "bVI",
                "D major",
                seed,
                "Bb D F",
                seed % 3 == 0 ? Grade.WRONG : Grade.RIGHT,
                seed % 3 == 0 ? "not-lowered" : "",
                4000,
                0,
                0);
    }

    static Process start(Path home, long first, long count) throws IOException {
        return new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        home.toString(),
                        Long.toString(first),
                        Long.toString(count))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
