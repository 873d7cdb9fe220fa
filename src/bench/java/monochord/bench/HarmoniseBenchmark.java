package monochord.bench;

import java.util.concurrent.TimeUnit;
import monochord.harmony.key.ChordTable;
import monochord.harmony.melody.Melody;
import monochord.harmony.tune.HarmonicMetre;
import monochord.harmony.tune.Harmonisation;
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

/** How long chords under a tune take, two slots and some eight notes a bar: 32 bars within 50 ms, linear in length. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class HarmoniseBenchmark {
    private static final String FOUR_BARS =
            "G4:1/2 E F G A G E C | A4:1/2 G F E D E F D | E4:1/2 F G A B A G E | F4:1/2 A D5 C B4 A G B | ";

    @Param({"8", "32", "128"})
    private int bars;

    private final ChordTable table = Lists.keyCounts().chords();
    private final Key key = Key.parse("C");
    private Melody melody;

    @Setup
    public void write() {
        melody = Melody.parse("| " + FOUR_BARS.repeat(bars / 4));
    }

    @Benchmark
    public Harmonisation harmonise() {
        return Harmonisation.of(melody, key, HarmonicMetre.of(melody), table);
    }
}
