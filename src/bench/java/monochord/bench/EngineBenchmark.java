package monochord.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import monochord.harmony.Progression;
import monochord.harmony.key.KeyCounts;
import monochord.harmony.key.KeyFinding;
import monochord.theory.Chord;
import monochord.theory.ChordNames;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.NoteName;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How many musical texts the engine reads and answers in a second, text to text, on one thread. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class EngineBenchmark {
    private record InKey(String numeral, Key key) {
        static InKey of(String line) {
            String[] parts = line.split(" in ");
            return new InKey(parts[0], Key.parse(parts[1]));
        }
    }

    private final Turn<String> symbols = new Turn<>(Lists.lines("symbols"));
    private final Turn<List<String>> notes = new Turn<>(
            Lists.lines("notes").stream().map(line -> List.of(line.split(" "))).toList());
    private final Turn<InKey> numerals =
            new Turn<>(Lists.lines("numerals").stream().map(InKey::of).toList());
    private final Turn<String> progressions = new Turn<>(Lists.lines("progressions"));
    private final Turn<String> rows = new Turn<>(List.of(
            "Am F C G",
            "C F G C",
            "D G A7 D Bm Em A7 D",
            "C Am Dm G7 C D7 G Em Am D7 G",
            "Eb Cm Ab Bb | Eb . Bb7 . | Eb"));
    private final KeyCounts counts = Lists.keyCounts();
    private final Key key = Key.parse("D major");

    /** {@code Abmaj7/C} to the names of its tones. */
    @Benchmark
    public List<String> spell() {
        return written(Chord.parse(symbols.next()).tones());
    }

    /** {@code C Eb G Ab} to the symbols of all chords that it can be called. */
    @Benchmark
    public List<String> name() {
        List<NoteName> set = new ArrayList<>();
        for (String note : notes.next()) {
            set.add(NoteName.parse(note));
        }
        List<String> names = new ArrayList<>();
        for (ChordNames.Name name : ChordNames.of(set)) {
            names.add(name.chord().toString());
        }
        return names;
    }

    /** {@code V65/ii} in a key to the names of its tones. */
    @Benchmark
    public List<String> numeral() {
        InKey next = numerals.next();
        return written(Numeral.parse(next.numeral()).in(next.key()).tones());
    }

    /** {@code 4 1 5 b6 | 5 1} in a key to its chords. */
    @Benchmark
    public Progression progression() {
        return Progression.parse(progressions.next(), key);
    }

    /** {@code Am F C G} to its keys, spans and loop, with reasons. */
    @Benchmark
    public KeyFinding keyOf() {
        return KeyFinding.of(Progression.parse(rows.next(), Key.major(NoteName.C)), counts);
    }

    private static List<String> written(List<NoteName> names) {
        List<String> written = new ArrayList<>(names.size());
        for (NoteName name : names) {
            written.add(name.toString());
        }
        return written;
    }
}
