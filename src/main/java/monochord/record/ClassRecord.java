package monochord.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import monochord.file.OwnerOnly;
import monochord.file.WholeFile;
import monochord.practice.mastery.Evidence;
import monochord.practice.mastery.Knowledge;
import monochord.text.Failure;
import monochord.text.Phrase;

/**
 * What pupils gave, in the teacher's own record. Each answer counts once, however often its file is marked and by whichever
 * teacher: two are the same when pupil, assignment, question and try are.
 *
 * <p>It opens the file for each task and closes it behind it. All that fails is an {@link IOException} with a message for the
 * teacher.
 */
public final class ClassRecord {
    private final Path file;

    /** By what an answer is known to be there already; the time of day is not part of it. */
    private record SameAnswer(
            String pupil, String assignment, String skill, String subject, String key, long seed, int tries) {
        static SameAnswer of(KeptAttempt kept) {
            var attempt = kept.attempt();
            return new SameAnswer(
                    kept.learner(),
                    kept.assignment(),
                    attempt.skill(),
                    attempt.subject(),
                    attempt.key(),
                    attempt.seed(),
                    attempt.tries());
        }
    }

    /** @param home the folder of the record */
    public ClassRecord(Path home) {
        file = home.resolve(Register.FILE);
    }

    /** Something to do with the open file. */
    private interface RecordTask<T> {
        T run(Logbook book) throws SQLException, IOException;
    }

    private <T> T writing(RecordTask<T> task) throws IOException {
        try {
            OwnerOnly.folder(file.getParent());
            OwnerOnly.file(file);
            try (Logbook book = Logbook.open(file)) {
                return task.run(book);
            }
        } catch (SQLException failed) {
            throw new Failure(FileTrouble.reason(failed, file), failed);
        }
    }

    /** @param otherwise where there is no file yet */
    private <T> T reading(T otherwise, RecordTask<T> task) throws IOException {
        if (!Files.exists(file)) {
            return otherwise;
        }
        try (Logbook book = Files.isWritable(file) ? Logbook.open(file) : Logbook.openForReading(file)) {
            return task.run(book);
        } catch (SQLException failed) {
            throw new Failure(FileTrouble.reason(failed, file), failed);
        }
    }

    /**
     * Keeps of these what is not there yet, all or nothing. Where the same question stands twice in an assignment, both
     * answers are kept.
     *
     * @param handedIn whole files, each pupil's answers together
     * @return how many were new
     */
    public int keep(List<KeptAttempt> handedIn) throws IOException {
        return writing(book -> keep(book, handedIn));
    }

    static int keep(Logbook book, List<KeptAttempt> handedIn) throws SQLException {
        if (handedIn.isEmpty()) {
            return 0;
        }
        Set<String> pupils = handedIn.stream().map(KeptAttempt::learner).collect(Collectors.toSet());
        Map<SameAnswer, Integer> there = new HashMap<>();
        book.attempts(pupils, kept -> there.merge(SameAnswer.of(kept), 1, Integer::sum));
        List<KeptAttempt> missing = handedIn.stream()
                .filter(kept -> there.merge(SameAnswer.of(kept), -1, Integer::sum) < 0)
                .toList();
        book.append(missing);
        return missing.size();
    }

    /** What pupils answered first, as {@link PupilAnswer} says; mostly in the order of time. */
    public void answers(long since, String assignment, Consumer<PupilAnswer> each) throws IOException {
        reading(null, book -> {
            book.pupils().answers(since, assignment, each);
            return null;
        });
    }

    /** What all answers of this pupil say. */
    public Knowledge knowledge(String pupil) throws IOException {
        return reading(Knowledge.none(), book -> {
            List<Evidence> evidence = new ArrayList<>();
            book.attempts(Set.of(pupil), kept -> kept.attempt().evidence().ifPresent(evidence::add));
            return Knowledge.of(evidence);
        });
    }

    /**
     * Removes all that this pupil gave.
     *
     * @return how many answers
     */
    public int forget(String pupil) throws IOException {
        return Files.exists(file) ? writing(book -> book.pupils().forget(pupil)) : 0;
    }

    /**
     * Copies what pupils gave, and nothing of the teacher's own, into another file, whole or not at all.
     *
     * @return how many answers
     */
    public int copy(Path into) throws IOException {
        if (!Files.exists(file)) {
            throw new Failure(Phrase.of("nothing is on record yet"));
        }
        int[] count = {0};
        WholeFile.writePrivately(
                into,
                part -> count[0] = reading(0, book -> {
                    book.copy(part);
                    return pupilsOnly(part);
                }));
        return count[0];
    }

    private static int pupilsOnly(Path copy) throws SQLException {
        int[] count = {0};
        try (Logbook book = Logbook.openAlone(copy)) {
            book.pupils().forgetOwn();
            book.attempts(kept -> count[0]++);
        }
        return count[0];
    }

    /**
     * Takes in what pupils gave to another teacher, out of a copy; what is here stays.
     *
     * @param wanted which pupils, by their codes
     * @return how many answers were new
     */
    public int join(Path copy, Predicate<String> wanted) throws IOException {
        if (!Files.isRegularFile(copy)) {
            throw new Failure(copy.toString(), Phrase.of("there is no such file"));
        }
        List<KeptAttempt> others = new ArrayList<>();
        try (Logbook book = Logbook.openForReading(copy)) {
            book.attempts(kept -> {
                if (!kept.isOwn() && wanted.test(kept.learner())) {
                    others.add(kept);
                }
            });
        } catch (SQLException failed) {
            throw new Failure(FileTrouble.reason(failed, copy), failed);
        }
        return keep(others);
    }
}
