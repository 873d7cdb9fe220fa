package monochord.theory;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** What the tests of this package share: lists as words, and the domains that are small enough to walk whole. */
public final class Written {
    private Written() {}

    /** The text forms with a space between them. */
    public static String words(Collection<?> values) {
        return values.stream().map(Object::toString).collect(Collectors.joining(" "));
    }

    public static List<NoteName> names(String words) {
        return Stream.of(words.split(" ")).map(NoteName::parse).toList();
    }

    /** Each letter with every accidental from {@code most} flats to {@code most} sharps: 35 names for double ones. */
    public static List<NoteName> names(int most) {
        return "CDEFGAB"
                .chars()
                .boxed()
                .flatMap(letter ->
                        IntStream.rangeClosed(-most, most).mapToObj(each -> NoteName.of((char) (int) letter, each)))
                .toList();
    }

    /** Every interval up from a unison to two octaves, from doubly diminished to doubly augmented: 81 of them. */
    public static List<Interval> intervals() {
        return IntStream.rangeClosed(1, 15)
                .boxed()
                .flatMap(number -> IntStream.rangeClosed(-3, 2).mapToObj(each -> Interval.of(number, each)))
                .filter(each -> !each.goesDown() && each.quality().length() <= 2)
                .toList();
    }
}
