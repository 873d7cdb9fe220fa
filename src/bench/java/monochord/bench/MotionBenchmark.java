package monochord.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import monochord.harmony.motion.Finding;
import monochord.harmony.motion.MotionStep;
import monochord.harmony.motion.Passage;
import monochord.harmony.motion.Strictness;
import monochord.harmony.motion.VoiceLeading;
import monochord.theory.Chord;
import monochord.theory.note.Pitch;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How many changes of four-voice chords are looked at in a second, on one thread; the aim is a million. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class MotionBenchmark {
    private static final int CHANGES = 12;

    private final Passage passage = Passage.parse("C4 E4 C5 G5 | B3 D4 D5 G5 | A3 F4 C5 F5 | G3 F4 B4 G5 | C4 E4 C5 G5"
            + " | A3 C4 A4 E5 | D3 D4 A4 F#5 | G2 D4 B4 G5 | Ab2 C4 Ab4 Eb5 | Ab3 C4 F4 C5 | B2 Ab3 F4 D5"
            + " | F2 Db4 F4 Ab4 | G2 B3 F4 G4");
    private final Turn<List<Pitch>> from = new Turn<>(passage.chords().subList(0, CHANGES));
    private final Turn<List<Pitch>> to = new Turn<>(passage.chords().subList(1, CHANGES + 1));
    private final Turn<Chord> chords = new Turn<>(List.of(
            Chord.parse("C"), Chord.parse("Abmaj7"), Chord.parse("Gsus4"), Chord.parse("Fm"), Chord.parse("Dm7")));
    private final Chord tonic = Chord.parse("C");

    /** One change: every voice, every pair. */
    @Benchmark
    public MotionStep change() {
        return MotionStep.between(from.next(), to.next());
    }

    /** Every change of a passage, and what the chorale rules say of it. */
    @Benchmark
    @OperationsPerInvocation(CHANGES)
    public List<Finding> chorale() {
        return Strictness.CHORALE.judge(passage);
    }

    /** The same by band practice. */
    @Benchmark
    @OperationsPerInvocation(CHANGES)
    public List<Finding> band() {
        return Strictness.BAND.judge(passage);
    }

    /** How far a chord lies from another in closest position. */
    @Benchmark
    public int least() {
        return VoiceLeading.halfSteps(tonic, chords.next());
    }
}
