package monochord.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Verdict;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How many answers of mixed skills are judged in a second, on one thread: right ones, and each typical mistake. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 8, time = 1)
@Measurement(iterations = 5, time = 1)
public class JudgingBenchmark {
    private static final int QUESTIONS_PER_KEY = 4;

    private record Answer(Question question, String text) {}

    private final Turn<Answer> answers = new Turn<>(all());

    private static List<Answer> all() {
        List<Answer> all = new ArrayList<>();
        for (Skill skill : Skills.all()) {
            for (Key key : skill.keys()) {
                for (long seed = 0; seed < QUESTIONS_PER_KEY; seed++) {
                    Question question = skill.question(key, seed);
                    all.add(new Answer(question, question.expected()));
                    question.mistakes().forEach(mistake -> all.add(new Answer(question, mistake.answer())));
                }
            }
        }
        Collections.shuffle(all, new Random(1));
        return all;
    }

    @Benchmark
    public Verdict judge() {
        Answer next = answers.next();
        return next.question().judge(next.text());
    }
}
