package monochord.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import monochord.harmony.Progression;
import monochord.harmony.voicing.Reach;
import monochord.harmony.voicing.VoicedProgression;
import monochord.harmony.voicing.VoicingSearch;
import monochord.harmony.voicing.VoicingStyle;
import monochord.harmony.voicing.VoicingTask;
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

/** How long it takes to find the three best voicings of so many bars of seventh chords, two a bar, on one thread. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class VoicingBenchmark {
    private static final int WAYS = 3;
    private static final List<String> SEVENTHS = List.of(
            "Imaj7", "vi7", "ii7", "V7", "iii7", "bVImaj7", "bVIImaj7", "iv7", "bIIImaj7", "viio7", "V7/ii", "IVmaj7");

    @Param({"8", "16", "32", "64", "128"})
    private int bars;

    @Param
    private VoicingStyle style;

    @Param({"8", "10"})
    private int reach;

    private VoicingTask task;

    @Setup
    public void write() {
        String text = IntStream.range(0, bars).mapToObj(this::bar).collect(Collectors.joining(" | "));
        task = VoicingTask.of(Progression.parse(text, Key.parse("C")), style).within(new Reach(reach));
    }

    /** Steps that never meet the same change at the same place again soon. */
    private String bar(int bar) {
        int size = SEVENTHS.size();
        return SEVENTHS.get((5 * bar + bar / 7) % size) + " " + SEVENTHS.get((7 * bar + 3 + bar / 5) % size);
    }

    @Benchmark
    public List<VoicedProgression> voice() {
        return VoicingSearch.best(task, WAYS);
    }
}
