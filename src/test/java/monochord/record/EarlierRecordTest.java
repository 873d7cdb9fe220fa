package monochord.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.SkillInKey;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record made by version 1 of the tables, which knew neither pupils nor assignments. */
class EarlierRecordTest {
    /** As version 1 made them, letter for letter; kept here because nothing makes them any more. */
    private static final List<String> VERSION_1 = List.of(
            "PRAGMA journal_mode = WAL",
            "CREATE TABLE word (id INTEGER PRIMARY KEY, text TEXT NOT NULL UNIQUE)",
            """
            CREATE TABLE attempt (
                id INTEGER PRIMARY KEY,
                time INTEGER NOT NULL, -- milliseconds since 1970 in UTC
                lesson INTEGER NOT NULL REFERENCES word,
                skill INTEGER NOT NULL REFERENCES word,
                subject TEXT NOT NULL,
                key INTEGER NOT NULL REFERENCES word,
                seed INTEGER NOT NULL,
                answer TEXT NOT NULL,
                grade INTEGER NOT NULL CHECK (grade BETWEEN 0 AND 3), -- right, remark, nearly, wrong
                misconception INTEGER NOT NULL REFERENCES word,
                millis INTEGER NOT NULL,
                hints INTEGER NOT NULL,
                tries INTEGER NOT NULL)
            """,
            """
            CREATE TRIGGER attempts_are_not_changed BEFORE UPDATE ON attempt
            BEGIN SELECT raise(ABORT, 'attempts are never rewritten'); END
            """,
            """
            CREATE TRIGGER attempts_are_not_removed BEFORE DELETE ON attempt
            BEGIN SELECT raise(ABORT, 'attempts are never removed'); END
            """,
            "PRAGMA application_id = 1299148399",
            "PRAGMA user_version = 1",
            "INSERT INTO word VALUES (1, ''), (2, 'the-lowered-seventh'), (3, 'borrowed-chord'), (4, 'D major'),"
                    + " (5, 'not-lowered')");

    private static final int OLD_ANSWERS = 60;

    @TempDir
    private Path home;

    private Path file;

    /** Version 1 keeps the answers 0 to 59, as {@link Writer} gives them. */
    @BeforeEach
    void makeIt() throws SQLException {
        file = home.resolve(Register.FILE);
        try (Connection connection = connection();
                Statement statement = connection.createStatement()) {
            for (String step : VERSION_1) {
                statement.execute(step);
            }
            for (int seed = 0; seed < OLD_ANSWERS; seed++) {
                statement.execute(insertOfVersion1(seed));
            }
        }
    }

    private Connection connection() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + file);
    }

    private static String insertOfVersion1(long seed) {
        return "INSERT INTO attempt"
                + " (time, lesson, skill, subject, key, seed, answer, grade, misconception, millis, hints, tries) VALUES ("
                + (1_700_000_000_000L + seed) + (seed % 2 == 0 ? ", 2" : ", 1") + ", 3, 'bVI', 4, " + seed
                + ", 'Bb D F', " + (seed % 3 == 0 ? "3, 5" : "0, 1") + ", 4000, 0, 0)";
    }

    private static List<Attempt> answers(LongStream seeds) {
        return seeds.mapToObj(Writer::attempt).toList();
    }

    private List<KeptAttempt> kept() {
        List<KeptAttempt> kept = new ArrayList<>();
        try (Register register = new Register(home)) {
            register.everyAttempt(kept::add);
            assertEquals(List.of(), register.notice());
        }
        return kept;
    }

    private int number(String query) throws SQLException {
        try (Connection connection = connection();
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            return row.getInt(1);
        }
    }

    @Test
    void allThatItHoldsIsTheLearnersOwn() throws SQLException {
        assertEquals(
                answers(LongStream.range(0, OLD_ANSWERS)).stream()
                        .map(KeptAttempt::own)
                        .toList(),
                kept());
        assertEquals(2, number("PRAGMA user_version"));
        assertEquals(OLD_ANSWERS, number("SELECT count(*) FROM attempt WHERE learner IS NULL AND assignment IS NULL"));
    }

    @Test
    void whatIsKnownIsAsItWas() {
        try (Register register = new Register(home)) {
            assertEquals(
                    OLD_ANSWERS,
                    register.knowledge()
                            .of(new SkillInKey("borrowed-chord", "D major"))
                            .orElseThrow()
                            .asked());
        }
    }

    @Test
    void answersOfPupilsStandBesideAndCountForNothingOfOnesOwn() {
        List<KeptAttempt> added = List.of(
                new KeptAttempt(Writer.attempt(100), "harbour-3", "borrowed-chords-1"),
                new KeptAttempt(Writer.attempt(101), "harbour-3", ""),
                new KeptAttempt(Writer.attempt(102), "", "borrowed-chords-1"));
        try (Register register = new Register(home)) {
            var before = register.knowledge();
            added.subList(0, 2).forEach(register::keep);
            assertEquals(before, register.knowledge());
            register.keep(added.get(2));
            assertEquals(
                    OLD_ANSWERS + 1,
                    register.knowledge()
                            .of(new SkillInKey("borrowed-chord", "D major"))
                            .orElseThrow()
                            .asked());
            List<Attempt> own = new ArrayList<>();
            register.attempts(own::add);
            assertEquals(answers(LongStream.concat(LongStream.range(0, OLD_ANSWERS), LongStream.of(102))), own);
        }
        assertEquals(added, kept().subList(OLD_ANSWERS, OLD_ANSWERS + 3));
    }

    /** A shell of version 1 that has the file open goes on writing to it. */
    @Test
    void aShellOfTheVersionBeforeThatIsStillOpenLosesNothing() throws SQLException {
        try (Connection old = connection();
                Statement statement = old.createStatement()) {
            statement.execute(insertOfVersion1(60));
            assertEquals(61, kept().size());
            statement.execute(insertOfVersion1(61));
        }
        assertEquals(KeptAttempt.own(Writer.attempt(61)), kept().get(61));
    }

    @Test
    void twoShellsThatBringItUpAtOnceLoseNothing() throws IOException, InterruptedException {
        Process one = Writer.start(home, 1000, 50);
        Process other = Writer.start(home, 2000, 50);
        assertEquals(50, one.inputReader().lines().count());
        assertEquals(50, other.inputReader().lines().count());
        assertEquals(0, one.waitFor());
        assertEquals(0, other.waitFor());
        assertEquals(
                answers(Stream.of(
                                LongStream.range(0, OLD_ANSWERS),
                                LongStream.range(1000, 1050),
                                LongStream.range(2000, 2050))
                        .flatMapToLong(seeds -> seeds)),
                kept().stream().map(KeptAttempt::attempt).toList());
    }

    /** A shell that ends, without a chance to tidy up, right after the step of that number. */
    static final class Killed {
        private Killed() {}

        /** @param arguments the file, how many steps it may take */
        public static void main(String[] arguments) throws SQLException {
            AtomicInteger left = new AtomicInteger(Integer.parseInt(arguments[1]));
            try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + arguments[0])) {
                Schema.settle(counted(Connection.class, connection, left));
            }
            System.exit(7); // it took fewer steps
        }

        private static <T> T counted(Class<T> type, T real, AtomicInteger left) {
            return type.cast(Proxy.newProxyInstance(
                    type.getClassLoader(), new Class<?>[] {type}, (proxy, method, with) -> {
                        Object result = call(method, real, with);
                        if (method.getName().equals("execute") && left.decrementAndGet() == 0) {
                            Runtime.getRuntime().halt(9);
                        }
                        return result instanceof Statement statement
                                ? counted(Statement.class, statement, left)
                                : result;
                    }));
        }

        private static Object call(Method method, Object real, Object[] with) throws Throwable {
            try {
                return method.invoke(real, with);
            } catch (InvocationTargetException thrown) {
                throw thrown.getCause();
            }
        }
    }

    /** Steps: begin, two columns, two marks, commit. Guard: {@code Schema.atOnce}. */
    @Test
    void whoeverIsKilledWhileBringingItUpLeavesItAsItWasOrAsItIsToBe() throws Exception {
        for (int steps = 1; steps <= 6; steps += Thorough.times(5, 1)) {
            assertEquals(9, killedAfter(steps), "killed after step " + steps);
            assertEquals(steps == 6 ? 2 : 1, number("PRAGMA user_version"), "version after step " + steps);
            assertEquals(OLD_ANSWERS, number("SELECT count(*) FROM attempt"));
        }
        assertEquals(7, killedAfter(1), "brought up once only");
        assertEquals(OLD_ANSWERS, kept().size());
    }

    private int killedAfter(int steps) throws IOException, InterruptedException {
        return new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Killed.class.getName(),
                        file.toString(),
                        Integer.toString(steps))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start()
                .waitFor();
    }

    /** Where the folder may not be written it stays as it is, and is read all the same. */
    @Test
    void whereItCannotBeWrittenItIsReadAsItIs() throws SQLException {
        try (Connection connection = connection();
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA journal_mode = DELETE"); // all of it in one file, as after a tidy end
        }
        List<KeptAttempt> read = new ArrayList<>();
        try (Logbook book = Logbook.openForReading(file)) {
            book.attempts(read::add);
            assertEquals(
                    OLD_ANSWERS,
                    book.knowledge()
                            .of(new SkillInKey("borrowed-chord", "D major"))
                            .orElseThrow()
                            .asked());
        }
        assertEquals(KeptAttempt.own(Writer.attempt(59)), read.get(59));
        assertEquals(1, number("PRAGMA user_version"));
    }
}
