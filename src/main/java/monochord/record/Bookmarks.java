package monochord.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import monochord.file.OwnerOnly;
import monochord.file.WholeFile;

/**
 * Which lessons a learner has finished, and where each lesson stands that was left in the middle.
 *
 * <p>Text form: a head line, then {@code done SLUG} for each finished lesson and {@code at SLUG SECTION BLOCK QUESTION ASKED
 * RIGHT KEY} for each that was left. {@link #read} reads all that {@link #write} writes.
 *
 * @param done slugs of lessons
 * @param left by the slug of the lesson
 */
public record Bookmarks(Set<String> done, Map<String, LessonPlace> left) {
    public static final Bookmarks NONE = new Bookmarks(Set.of(), Map.of());

    private static final String FILE = "bookmarks";
    private static final String HEAD = "bookmarks 1";
    private static final String DONE = "done";
    private static final String AT = "at";
    private static final int WORDS = 8;

    /**
     * A place in a lesson, which does not depend on the window.
     *
     * @param section from 0: the prose under one heading, or a block
     * @param block of its prose, from 0
     * @param question how many questions of the page there are answered or passed
     * @param asked how many questions of the lesson were answered
     * @param right how many of them at the first try without help
     * @param key in which the lesson is taken, as {@code monochord.theory.Key} reads it
     */
    public record LessonPlace(int section, int block, int question, int asked, int right, String key) {}

    public Bookmarks {
        done = Set.copyOf(done);
        left = Map.copyOf(left);
    }

    public Optional<LessonPlace> at(String slug) {
        return Optional.ofNullable(left.get(slug));
    }

    public boolean isDone(String slug) {
        return done.contains(slug);
    }

    /** With a lesson left there. */
    public Bookmarks leftAt(String slug, LessonPlace mark) {
        Map<String, LessonPlace> with = new HashMap<>(left);
        with.put(slug, mark);
        return new Bookmarks(done, with);
    }

    /** With a lesson finished; who takes it again begins anew. */
    public Bookmarks finished(String slug) {
        Set<String> with = new HashSet<>(done);
        with.add(slug);
        Map<String, LessonPlace> without = new HashMap<>(left);
        without.remove(slug);
        return new Bookmarks(with, without);
    }

    /** What stands in this folder; nothing where nothing does or it cannot be read. */
    public static Bookmarks read(Path home) {
        Path file = home.resolve(FILE);
        try {
            return Files.exists(file) ? parse(Files.readAllLines(file)) : NONE;
        } catch (IOException | RuntimeException unreadable) {
            return NONE;
        }
    }

    private static Bookmarks parse(List<String> lines) {
        Set<String> done = new HashSet<>();
        Map<String, LessonPlace> left = new HashMap<>();
        for (String line : lines.isEmpty() || !lines.get(0).equals(HEAD) ? List.<String>of() : lines) {
            String[] words = line.split(" ", WORDS);
            if (words[0].equals(DONE)) {
                done.add(words[1]);
            } else if (words[0].equals(AT)) {
                left.put(
                        words[1],
                        new LessonPlace(
                                number(words[2]),
                                number(words[3]),
                                number(words[4]),
                                number(words[5]),
                                number(words[6]),
                                words[7]));
            }
        }
        return new Bookmarks(done, left);
    }

    private static int number(String word) {
        return Math.max(0, Integer.parseInt(word));
    }

    /** Puts it in place whole or not at all; where it cannot be written, a lesson begins anew another day. */
    public void write(Path home) {
        try {
            OwnerOnly.folder(home);
            WholeFile.writePrivately(home.resolve(FILE), part -> Files.write(part, lines()));
        } catch (IOException unwritable) {
            // a place in a lesson is all that is lost
        }
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>(List.of(HEAD));
        done.stream().sorted().forEach(slug -> lines.add(DONE + " " + slug));
        left.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(entry -> {
            LessonPlace mark = entry.getValue();
            lines.add(String.join(
                    " ",
                    AT,
                    entry.getKey(),
                    mark.section + " " + mark.block + " " + mark.question + " " + mark.asked + " " + mark.right,
                    mark.key));
        });
        return lines;
    }
}
