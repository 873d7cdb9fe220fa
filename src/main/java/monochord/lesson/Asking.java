package monochord.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import monochord.lesson.LessonPart.Ask;
import monochord.practice.Question;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/** Draws the questions of one block: the steps share the count, and no question comes twice in a row. */
final class Asking {
    /** How often another subject is drawn in a key before the next key is tried. */
    private static final int DRAWS = 4;

    /** More sharps or flats than these are nothing to begin with. */
    private static final int MOST_SIGNS_AT_FIRST = 4;

    private final Ask ask;
    private final Key lessonKey;
    private final Random random;
    private final List<List<Key>> steps;
    private final List<Question> drawn = new ArrayList<>();

    private Asking(Ask ask, Key lessonKey, Random random) {
        this.ask = ask;
        this.lessonKey = lessonKey;
        this.random = random;
        this.steps = ask.keys().in(lessonKey).stream().map(this::shuffled).toList();
    }

    static List<Question> questions(Ask ask, Key lessonKey, long seed) {
        return new Asking(ask, lessonKey, new Random(seed)).all();
    }

    private List<Key> shuffled(List<Key> keys) {
        List<Key> shuffled = new ArrayList<>(keys);
        Collections.shuffle(shuffled, random);
        return shuffled;
    }

    private List<Question> all() {
        for (int i = 0; i < ask.count(); i++) {
            draw(steps.get(i * steps.size() / ask.count())).ifPresent(drawn::add);
        }
        return List.copyOf(drawn);
    }

    /** Takes the keys asked in least so far first, and begins in none with many signs, where there are others. */
    private Optional<Question> draw(List<Key> step) {
        return step.stream()
                .sorted(Comparator.<Key>comparingInt(key -> drawn.isEmpty() && isHard(key) ? 1 : 0)
                        .thenComparingLong(this::asked))
                .map(this::draw)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static boolean isHard(Key key) {
        return Math.abs(key.signature()) > MOST_SIGNS_AT_FIRST;
    }

    /** The learner's own tonic counts as asked in once already, for the lesson has just worked its example on it. */
    private long asked(Key key) {
        long own = key.tonic().equals(lessonKey.tonic()) ? 1 : 0;
        return own
                + drawn.stream().filter(question -> question.key().equals(key)).count();
    }

    private Optional<Question> draw(Key key) {
        for (int i = 0; i < DRAWS; i++) {
            Question question = question(key);
            if (question != null && !isLast(question)) {
                return Optional.of(question);
            }
        }
        return Optional.empty();
    }

    /** Null if the skill has nothing to ask in that key. */
    private Question question(Key key) {
        try {
            List<String> subjects = ask.subjects();
            return subjects.isEmpty()
                    ? ask.skill().question(key, random.nextLong())
                    : ask.skill().question(key, subjects.get(drawn.size() % subjects.size()), random.nextLong());
        } catch (Unreadable nothingToAsk) {
            return null;
        }
    }

    private boolean isLast(Question question) {
        return !drawn.isEmpty() && drawn.get(drawn.size() - 1).toString().equals(question.toString());
    }
}
