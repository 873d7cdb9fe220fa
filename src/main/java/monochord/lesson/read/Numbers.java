package monochord.lesson.read;

import java.util.OptionalInt;

/** Reads the small numbers of the format. */
final class Numbers {
    private Numbers() {}

    /** A number from 1 to {@code most}, which has at most two digits; nothing if the text is none. */
    static OptionalInt upTo(int most, String text) {
        if (!text.matches("[0-9]{1,2}")) {
            return OptionalInt.empty();
        }
        int number = Integer.parseInt(text);
        return number >= 1 && number <= most ? OptionalInt.of(number) : OptionalInt.empty();
    }
}
