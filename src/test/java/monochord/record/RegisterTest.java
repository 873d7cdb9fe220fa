package monochord.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.Evidence;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import monochord.text.Phrase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RegisterTest {
    private static final SkillInKey BORROWED_IN_D = new SkillInKey("borrowed-chord", "D major");

    @TempDir
    private Path home;

    private static List<Attempt> kept(Path home) {
        List<Attempt> kept = new ArrayList<>();
        try (Register register = new Register(home)) {
            register.attempts(kept::add);
            assertEquals(List.of(), register.notice());
        }
        return kept;
    }

    private void keep(long... seeds) {
        try (Register register = new Register(home)) {
            LongStream.of(seeds).forEach(seed -> register.keep(Writer.attempt(seed)));
            assertEquals(List.of(), register.notice());
        }
    }

    private List<String> namesOfFiles() throws IOException {
        try (Stream<Path> files = Files.list(home)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static void run(Path file, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    @Test
    void whatIsKeptComesBackAsItWas() {
        keep(1, 2, 3);
        assertEquals(List.of(Writer.attempt(1), Writer.attempt(2), Writer.attempt(3)), kept(home));
    }

    @Test
    void nothingIsMadeBeforeTheFirstAnswer() throws IOException {
        try (Register register = new Register(home)) {
            assertTrue(register.isEmpty());
            assertEquals(Knowledge.none(), register.knowledge());
            register.attempts(attempt -> assertEquals(null, attempt));
        }
        assertEquals(List.of(), namesOfFiles());
    }

    @Test
    void aHomeWithQuestionMarksAndSpacesInItsNameIsAsGoodAsAny() {
        home = home.resolve("what? 100% #1/my notes");
        keep(5);
        assertEquals(List.of(Writer.attempt(5)), kept(home));
    }

    /** The five kinds of evidence come out of the file as they come out of the attempts themselves. */
    @Test
    void knowledgeIsReadAsItWouldBeGathered() {
        keep(LongStream.range(0, 40).toArray());
        List<Evidence> evidence = LongStream.range(0, 40)
                .mapToObj(seed -> Writer.attempt(seed).evidence().orElseThrow())
                .toList();
        try (Register register = new Register(home)) {
            assertEquals(Knowledge.of(evidence), register.knowledge());
            assertEquals(
                    40, register.knowledge().of(BORROWED_IN_D).orElseThrow().asked());
        }
    }

    @Test
    void aClockThatWasSetBackDoesNotMatter() {
        keep(30, 10, 20);
        List<Evidence> evidence = LongStream.of(10, 20, 30)
                .mapToObj(seed -> Writer.attempt(seed).evidence().orElseThrow())
                .toList();
        try (Register register = new Register(home)) {
            assertEquals(Knowledge.of(evidence), register.knowledge());
        }
        assertEquals(
                List.of(10L, 20L, 30L), kept(home).stream().map(Attempt::seed).toList());
    }

    @Test
    void noRowIsEverRewritten() throws SQLException {
        keep(1);
        Path file = home.resolve(Register.FILE);
        String grade = assertThrows(SQLException.class, () -> run(file, "UPDATE attempt SET grade = 0"))
                .getMessage();
        String all = assertThrows(SQLException.class, () -> run(file, "DELETE FROM attempt"))
                .getMessage();
        assertTrue(grade.contains("attempts are never rewritten"), grade);
        assertTrue(all.contains("attempts are never removed"), all);
        assertEquals(List.of(Writer.attempt(1)), kept(home));
    }

    @Test
    void aDamagedFileIsSetAsideAndANewOneBegun() throws IOException {
        Path file = home.resolve(Register.FILE);
        byte[] damage = "coffee was spilled over this file ".repeat(50).getBytes(StandardCharsets.UTF_8);
        Files.write(file, damage);
        try (Register register = new Register(home)) {
            register.keep(Writer.attempt(1));
            String aside = namesOfFiles().stream()
                    .filter(name -> name.matches("record\\.db\\.damaged-\\d{8}-\\d{6}"))
                    .findFirst()
                    .orElseThrow();
            assertEquals(
                    List.of("The record in " + file + " is damaged. It has been set aside as " + aside
                            + ", and a new one begun; nothing was deleted."),
                    register.notice().stream().map(Phrase::toString).toList());
            assertEquals(List.of(), register.notice());
            assertEquals(damage.length, Files.size(home.resolve(aside)));
        }
        assertEquals(List.of(Writer.attempt(1)), kept(home));
    }

    @Test
    void damageInTheMiddleOfAFileIsFoundWhenItIsRead() throws IOException {
        keep(LongStream.range(0, 200).toArray());
        Path file = home.resolve(Register.FILE);
        byte[] bytes = Files.readAllBytes(file);
        for (int i = 4096; i < bytes.length; i++) {
            bytes[i] = (byte) 0xA5;
        }
        Files.write(file, bytes);
        try (Register register = new Register(home)) {
            assertEquals(Knowledge.none(), register.knowledge());
            String said = Phrase.row(register.notice()).toString();
            assertTrue(said.startsWith("The record in " + file + " is damaged."), said);
            register.keep(Writer.attempt(1));
            assertEquals(List.of(), register.notice());
        }
        assertEquals(List.of(Writer.attempt(1)), kept(home));
        assertEquals(
                2,
                namesOfFiles().stream().filter(name -> !name.endsWith("-wal")).count());
    }

    @Test
    void aDatabaseOfAnotherProgramIsSetAsideToo() throws SQLException, IOException {
        run(home.resolve(Register.FILE), "CREATE TABLE recipe (name TEXT)");
        try (Register register = new Register(home)) {
            register.keep(Writer.attempt(1));
            assertTrue(register.notice().get(0).toString().contains("set aside"));
        }
        assertEquals(List.of(Writer.attempt(1)), kept(home));
        assertEquals(2, namesOfFiles().size());
    }

    @Test
    void aRecordOfALaterVersionIsLeftAlone() throws SQLException, IOException {
        keep(1);
        Path file = home.resolve(Register.FILE);
        run(file, "PRAGMA user_version = 3");
        try (Register register = new Register(home)) {
            register.keep(Writer.attempt(2));
            assertEquals(
                    List.of("Answers are not being kept: " + file + " was made by a later version of Monochord."
                            + " The sitting goes on; what it holds is kept as soon as that is put right."),
                    register.notice().stream().map(Phrase::toString).toList());
        }
        assertEquals(List.of(Register.FILE), namesOfFiles());
    }

    @Test
    void whereNoFolderCanBeMadeTheSittingGoesOnAndSaysSoOnce() throws IOException {
        Path inTheWay = Files.writeString(home.resolve("shelf"), "a file, no folder");
        try (Register register = new Register(inTheWay)) {
            register.keep(Writer.attempt(1));
            assertEquals(
                    List.of("Answers are not being kept: " + inTheWay + " cannot be written."
                            + " The sitting goes on; what it holds is kept as soon as that is put right."),
                    register.notice().stream().map(Phrase::toString).toList());
            register.keep(Writer.attempt(2));
            assertEquals(List.of(), register.notice());
            assertEquals(2, register.knowledge().of(BORROWED_IN_D).orElseThrow().asked());
            Files.delete(inTheWay);
            register.keep(Writer.attempt(3));
            assertEquals(
                    List.of("Answers are being kept again, and so are those from before."),
                    register.notice().stream().map(Phrase::toString).toList());
        }
        assertEquals(3, kept(inTheWay).size());
    }

    @Test
    void aRecordThatMayOnlyBeReadIsReadAndNotWritten() throws IOException {
        assumeFalse("root".equals(System.getProperty("user.name")), "skipped: to root no folder is read-only");
        keep(1);
        assertTrue(home.toFile().setWritable(false));
        try (Register register = new Register(home)) {
            assertEquals(1, register.knowledge().of(BORROWED_IN_D).orElseThrow().asked());
            register.keep(Writer.attempt(2));
            assertEquals(1, register.notice().size());
            assertEquals(2, register.knowledge().of(BORROWED_IN_D).orElseThrow().asked());
        } finally {
            assertTrue(home.toFile().setWritable(true));
        }
        assertEquals(1, kept(home).size());
    }

    @Test
    void whereARowIsRefusedTheSittingGoesOn() throws SQLException {
        keep(1);
        Path file = home.resolve(Register.FILE);
        run(
                file,
                "CREATE TRIGGER no_room BEFORE INSERT ON attempt WHEN NEW.seed < 10"
                        + " BEGIN SELECT raise(ABORT, 'no room for these'); END");
        try (Register register = new Register(home)) {
            register.keep(Writer.attempt(2));
            register.keep(Writer.attempt(3));
            assertEquals(1, register.notice().size());
            assertEquals(3, register.knowledge().of(BORROWED_IN_D).orElseThrow().asked());
            assertEquals(1, kept(home).size());
        }
    }

    @Test
    void theFirstAnswerNeedNotWaitForTheFile() {
        try (Register register = new Register(home)) {
            register.openBehind();
            register.keep(Writer.attempt(1));
            assertFalse(register.isEmpty());
        }
        assertEquals(1, kept(home).size());
    }
}
