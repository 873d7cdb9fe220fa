package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import monochord.Thorough;
import monochord.course.Course;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Saying;
import monochord.view.StrictJson;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is typed, an answer comes back that can be shown in every look. */
@Tag("attack")
class HostileLinesTest {
    private static final Verbs VERBS = new Verbs();
    /** Ten million with {@code mvn -Pattack verify}. */
    private static final int HOW_MANY = Integer.getInteger("attack.lines", Thorough.times(5_000, 200_000));

    private static final ThreadMXBean PROCESSOR = ManagementFactory.getThreadMXBean();
    private static final long LONG_NANOS = 1_000_000_000L;
    private static final long MOST_HELD = 64 << 20;

    private static final List<String> SIGNS = List.of(
            "A", "b", "C", "G", "I", "V", "i", "v", "m", "M", "o", "s", "d", "j", "n", "x", "0", "1", "4", "6", "7",
            "9", "#", "|", ".", "%", "/", "(", ")", "-", ":", ";", "\"", ",", " ", "♭", "°", "\0", "\33", "\uD834",
            "\uDD2A");
    private static final List<String> LINES = List.of(
            "show Abmaj7",
            "show IV I V bVI V I in D",
            "show E harmonic minor",
            "name C E G A",
            "numeral viio7/V in Eb",
            "borrow phrygian in A",
            "transpose F C G from C to Eb",
            "transpose Bb F for alto sax",
            "transpose C capo 3",
            "key F# minor",
            "play | IV . | I % | in D at 84 with organ",
            "play",
            "stop",
            "ask interval of M6 in C --seed 4",
            "ask borrowed-chord of bVI in D --answer Bb D F",
            "ask triad-spelling",
            "hint",
            "tell",
            "why",
            "skip",
            "help show",
            "C4 E4 G4",
            "C, E, G",
            "4 1 5 b6 6-",
            "E7#9 C6/9 G7sus4",
            "",
            "4 2M 5sus",
            "show D blues --plain",
            "harmonise | E4 D4 C4 D4 | E4 E4 E4:2 | in C metre 4/4",
            "recolour C G Am F in C under C4 E4 G4 E4",
            "key of Am F C G",
            "fit E4 D4 C4:2 over F G C in C",
            "motion C3 G3 E4 | A2 A3 E4 chorale",
            "voice IV bVII I in C as spread with bass",
            "bass C G/B Am F walking in C metre 3/4",
            "transpose C4 E4 to sing A3 to D5",
            "compare F C vs Fm C in C",
            "after bVI in D",
            "rehearse C F G in C at 70",
            "ask voicing of Vsus4 in C",
            "settings tempo 90");

    /** No lesson, so that each line costs as little as it can. */
    @TempDir
    static Path noLessons;

    private Sitting sitting = sitting();

    private static Sitting sitting() {
        return new Sitting(Ear.silent(), new Random(5)::nextLong, noLessons, new Course(noLessons));
    }

    /** @param skill open before each line, or nothing */
    private Answer read(String line, String skill) {
        if (sitting.hasEnded()) {
            sitting = sitting();
        }
        LineReading reading = new LineReading(VERBS, sitting);
        if (skill.isEmpty()) {
            sitting.question().clear();
        } else if (!sitting.question().isOpen()
                || !sitting.question().question().skillId().equals(skill)) {
            reading.read("ask " + skill);
        }
        Answer answer = reading.read(line);
        assertNotNull(answer, line);
        assertFalse(isFault(answer), () -> shown(line) + " in " + sitting.key() + ": " + answer);
        return answer;
    }

    private static boolean isFault(Answer answer) {
        return answer instanceof Saying saying && saying.status() == Answer.FAILED;
    }

    private static String shown(String line) {
        StringBuilder shown = new StringBuilder();
        line.chars().forEach(c -> shown.append(c < 0x20 || c > 0x7E ? "\\u%04x".formatted(c) : (char) c));
        return "<" + shown + ">";
    }

    private static void show(String line, Answer answer) {
        try {
            EveryKeyTest.Looks.check(shown(line), answer, EveryKeyTest.Looks.ALL);
            Json json = new Json();
            answer.json(json);
            StrictJson.object(json.toString());
        } catch (RuntimeException broken) {
            throw new AssertionError(shown(line) + " cannot be shown", broken);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "interval", "progression-in-key"})
    void everyLineOfUpToThreeSignsIsAnswered(String skill) {
        List<String> lines = new ArrayList<>(List.of(""));
        for (int i = 0; i < lines.size() && lines.size() < 1 + 41 + 41 * 41 + 41 * 41 * 41; i++) {
            for (String sign : SIGNS) {
                lines.add(lines.get(i) + sign);
            }
        }
        assertEquals(1 + 41 + 41 * 41 + 41 * 41 * 41, lines.size());
        List<String> tried = Thorough.spread(lines, 1_500, skill.length());
        for (int i = 0; i < tried.size(); i++) {
            Answer answer = read(tried.get(i), skill);
            if (i % 150 == skill.length()) {
                show(tried.get(i), answer);
            }
        }
    }

    @Test
    void longerLinesAreAnswered() {
        Random chance = new Random(20261124);
        String[] skills = {"", "", "chord-degree", "borrowed-source", "key-signature", "steps"};
        List<String> slow = new ArrayList<>();
        long held = 0;
        for (int i = 0; i < HOW_MANY; i++) {
            String line = i % 2 == 0 ? inARow(chance) : damaged(chance);
            long before = PROCESSOR.getCurrentThreadCpuTime();
            Answer answer = read(line, skills[i / 1000 % skills.length]);
            if (i % 100 == 0) {
                show(line, answer);
            }
            if (PROCESSOR.getCurrentThreadCpuTime() - before > LONG_NANOS) {
                slow.add(shown(line));
            }
            if (i % 100_000 == 20_000) {
                long now = held();
                assertTrue(
                        held == 0 || now < held + MOST_HELD,
                        "after " + i + " lines " + (now - held) + " bytes more are held");
                held = held == 0 ? now : held;
            }
        }
        assertEquals(List.of(), slow, "took more than a second of the processor");
    }

    /** What is held on to once all that may go has gone. */
    private static long held() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static String inARow(Random chance) {
        StringBuilder line = new StringBuilder();
        for (int length = 4 + chance.nextInt(20); length > 0; length--) {
            line.append(pick(SIGNS, chance));
        }
        return line.toString();
    }

    private static String damaged(Random chance) {
        StringBuilder line = new StringBuilder(pick(LINES, chance));
        for (int times = 1 + chance.nextInt(4); times > 0; times--) {
            int place = chance.nextInt(line.length() + 1);
            switch (chance.nextInt(4)) {
                case 0 -> line.insert(place, pick(SIGNS, chance));
                case 1 -> line.delete(place, Math.min(place + 1, line.length()));
                case 2 -> line.insert(place, line.substring(place));
                default -> line.insert(place, (char) chance.nextInt(0x10000));
            }
        }
        return line.toString();
    }

    private static String pick(List<String> from, Random chance) {
        return from.get(chance.nextInt(from.size()));
    }
}
