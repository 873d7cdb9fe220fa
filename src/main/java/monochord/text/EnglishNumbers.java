package monochord.text;

import java.util.List;

/** Whole numbers in English words. */
final class EnglishNumbers {
    private static final List<String> WORDS = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private EnglishNumbers() {}

    /** {@code no}, {@code one} … {@code twelve}, then figures; below zero, figures. */
    static String of(int number) {
        return number >= 0 && number < WORDS.size() ? WORDS.get(number) : Integer.toString(number);
    }
}
