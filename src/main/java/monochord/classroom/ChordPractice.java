package monochord.classroom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.practice.Question;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * What there is to ask about the chords of a song: each chord by its place in the key, spelled, and laid out for two hands;
 * the whole row as numbers and in another key. What a skill cannot take is not asked.
 */
public final class ChordPractice {
    /** A row of more chords is too long for one question. */
    private static final int LONGEST_ROW = 8;

    private final Progression progression;
    private final Random chance;
    private final Map<String, Question> questions = new LinkedHashMap<>();

    private ChordPractice(Progression progression, Random chance) {
        this.progression = progression;
        this.chance = chance;
    }

    /**
     * So many questions at most, as different as can be, in the order of the chords.
     *
     * @param seed the same seed picks the same ones
     */
    public static List<Question> questions(Progression progression, int count, long seed) {
        ChordPractice practice = new ChordPractice(progression, new Random(seed));
        practice.gather();
        List<Question> all = new ArrayList<>(practice.questions.values());
        List<Question> chosen = new ArrayList<>(all);
        Collections.shuffle(chosen, practice.chance);
        List<Question> some = chosen.subList(0, Math.min(count, chosen.size()));
        return all.stream().filter(some::contains).toList();
    }

    private void gather() {
        List<String> numerals = Stream.of(progression.numerals(Signs.ASCII).split("[\\s|]+"))
                .distinct()
                .filter(one -> !one.isBlank())
                .toList();
        List<String> symbols = Stream.of(progression.symbols(Signs.ASCII).split("[\\s|]+"))
                .distinct()
                .filter(one -> !one.isBlank())
                .toList();
        numerals.forEach(numeral -> first(numeral, "borrowed-chord", "applied-dominant", "degree-chord"));
        symbols.forEach(symbol -> first(symbol, "triad-spelling", "seventh-spelling", "added-tone", "suspension"));
        numerals.forEach(numeral -> first(numeral, "voicing"));
        row(progression.symbols(Signs.ASCII).replaceAll("[\\s|]+", " ").strip());
    }

    private void row(String symbols) {
        if (symbols.split(" ").length > LONGEST_ROW) {
            return;
        }
        first(symbols, "progression-numbers");
        List<Key> others = Key.majorKeys().stream()
                .filter(key -> Math.abs(key.signature()) <= 4 && !key.equals(progression.key()))
                .toList();
        first(symbols + " to " + others.get(chance.nextInt(others.size())), "transposition");
    }

    /** Puts the question of the first skill that takes the subject. */
    private void first(String subject, String... skills) {
        Stream.of(skills)
                .map(skill -> asked(skill, subject))
                .flatMap(Optional::stream)
                .findFirst()
                .ifPresent(question -> questions.putIfAbsent(question.toString(), question));
    }

    private Optional<Question> asked(String skill, String subject) {
        return Skills.find(skill)
                .flatMap(known -> tried(key -> known.question(key, subject, chance.nextInt(1_000_000))));
    }

    private Optional<Question> tried(Function<Key, Question> asking) {
        try {
            return Optional.of(asking.apply(progression.key()));
        } catch (Unreadable notTaken) {
            return Optional.empty();
        }
    }
}
