package monochord.bench;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import monochord.harmony.Progression;
import monochord.harmony.colour.Recolour;
import monochord.harmony.melody.Fit;
import monochord.harmony.melody.Melody;
import monochord.theory.Key;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long ideas for a progression under its tune take, two chords and eight notes a bar: 16 bars within 30 ms. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class RecolourBenchmark {
    private static final String FOUR_BARS = "I vi | IV V | iii vi | ii V |";
    private static final String FOUR_BARS_OF_TUNE =
            "G4:1/2 E F G A G E C | A4:1/2 G F E D E F D | " + "E4:1/2 F G A B A G E | F4:1/2 A D5 C B4 A G B |";

    @Param({"4", "16", "64"})
    private int bars;

    private Progression progression;
    private Melody melody;

    @Setup
    public void write() {
        progression = Progression.parse(FOUR_BARS.repeat(bars / 4), Key.parse("Eb"));
        melody = Melody.parse("| " + FOUR_BARS_OF_TUNE.repeat(bars / 4));
    }

    @Benchmark
    public Recolour recolour() {
        return Recolour.of(progression, Optional.of(melody));
    }

    @Benchmark
    public Fit fit() {
        return Fit.of(melody, progression);
    }
}
