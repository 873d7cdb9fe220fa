package monochord.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import monochord.Thorough;
import monochord.practice.mastery.Attempt;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Other programs that keep answers in the same file, and are killed at it. */
@Tag("attack")
class SeveralShellsTest {
    private static final int KILLS = Thorough.times(2, 4);

    @TempDir
    private Path home;

    private static Set<Long> seeds(Path home) {
        List<Attempt> kept = new ArrayList<>();
        try (Register register = new Register(home)) {
            register.attempts(kept::add);
            assertEquals(List.of(), register.notice());
        }
        Set<Long> seeds = kept.stream().map(Attempt::seed).collect(Collectors.toSet());
        assertEquals(kept.size(), seeds.size(), "no answer is kept twice");
        return seeds;
    }

    private static List<Long> said(Process writer) throws IOException {
        try (BufferedReader lines = writer.inputReader()) {
            return lines.lines().map(Long::parseLong).toList();
        }
    }

    /** Both begin the file, too. */
    @Test
    void twoShellsKeepTheirAnswersAtOnce() throws IOException, InterruptedException {
        Process one = Writer.start(home, 0, 300);
        Process other = Writer.start(home, 1000, 300);
        assertEquals(300, said(one).size());
        assertEquals(300, said(other).size());
        assertEquals(0, one.waitFor());
        assertEquals(0, other.waitFor());
        Set<Long> all = LongStream.concat(LongStream.range(0, 300), LongStream.range(1000, 1300))
                .boxed()
                .collect(Collectors.toSet());
        assertEquals(all, seeds(home));
    }

    /** Each is killed, without a chance to tidy up, while it writes; two of them at a time write to one file. */
    @Test
    void whoeverIsKilledHasLostNothingThatWasAnswered() throws IOException, InterruptedException {
        Set<Long> answered = new HashSet<>();
        for (int i = 0; i < KILLS; i++) {
            Process one = Writer.start(home, 1_000_000L * i, 1_000_000);
            Process other = i % 2 == 0 ? one : Writer.start(home, 1_000_000L * i + 500_000, 500_000);
            BufferedReader lines = one.inputReader();
            for (int read = 0; read < 40 + 37 * i; read++) {
                answered.add(Long.parseLong(lines.readLine()));
            }
            one.destroyForcibly();
            other.destroyForcibly();
            one.waitFor();
            other.waitFor();
            Set<Long> kept = seeds(home);
            answered.removeAll(kept);
            assertEquals(Set.of(), answered, "answered and lost");
            answered.addAll(kept);
        }
        assertTrue(answered.size() >= 40 + 37 * (KILLS - 1));
    }
}
