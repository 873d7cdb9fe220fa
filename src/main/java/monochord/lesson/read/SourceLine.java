package monochord.lesson.read;

import monochord.lesson.PlacedText;

/**
 * One line of a file.
 *
 * @param number from 1
 */
public record SourceLine(int number, String text) {
    /** The column of a place in the line, from 1, a character outside the basic plane counted once. */
    public int column(int place) {
        return text.codePointCount(0, Math.max(0, Math.min(place, text.length()))) + 1;
    }

    public boolean isBlank() {
        return text.isBlank();
    }

    PlacedText whole() {
        return new PlacedText(text, 0).stripped();
    }
}
