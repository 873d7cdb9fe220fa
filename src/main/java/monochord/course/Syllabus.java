package monochord.course;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;

/**
 * Which book of the course brings in which skill. It says what can be asked by book, and what is new to a learner who has
 * come so far, without reading a lesson.
 */
public final class Syllabus {
    private static final List<List<String>> BOOKS = List.of(
            List.of("steps", "scale-spelling", "key-signature", "interval", "ear-interval"),
            List.of(
                    "triad-spelling",
                    "degree-quality",
                    "degree-chord",
                    "chord-degree",
                    "progression-in-key",
                    "progression-numbers",
                    "inversion",
                    "ear-quality",
                    "ear-progression"),
            List.of("common-tones", "motion", "voicing"),
            List.of("seventh-spelling", "suspension", "added-tone", "applied-dominant"),
            List.of("lowered-degree", "borrowed-chord", "borrowed-source", "next-chord"),
            List.of("transposition", "melody-fit"));

    private Syllabus() {}

    /** How many books bring in something to be asked; they are counted from 1. */
    public static int books() {
        return BOOKS.size();
    }

    /** What this book brings in, in the order in which it is learned. */
    public static List<Skill> of(int book) {
        return BOOKS.get(book - 1).stream()
                .map(id -> Skills.find(id).orElseThrow())
                .toList();
    }

    /** The book that brings it in. */
    public static int book(Skill skill) {
        return IntStream.rangeClosed(1, books())
                .filter(book -> BOOKS.get(book - 1).contains(skill.id()))
                .findFirst()
                .orElseThrow();
    }

    /** All skills in the order in which they are new to somebody who stands in this book: its own, the later, the earlier. */
    static List<Skill> from(int book) {
        List<Skill> order = new ArrayList<>();
        int first = Math.max(1, Math.min(book, books()));
        IntStream.range(0, books()).forEach(i -> order.addAll(of((first - 1 + i) % books() + 1)));
        return order;
    }
}
