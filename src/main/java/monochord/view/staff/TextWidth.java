package monochord.view.staff;

import monochord.text.Phrase;

/**
 * How wide words are at most, in staff spaces: whatever sans-serif face a reader has, so that words run into nothing. The
 * shares are those of wide faces, from memory.
 */
final class TextWidth {
    private static final String NARROW = "il.,|'! ()/°";
    private static final String WIDE = "mMwW𝄫Δ";

    private TextWidth() {}

    static double of(Phrase phrase) {
        double widths =
                phrase.toString().codePoints().mapToDouble(TextWidth::of).sum();
        return widths * Drawn.Words.SIZE;
    }

    private static double of(int sign) {
        return NARROW.indexOf(sign) >= 0 ? 0.42 : WIDE.indexOf(sign) >= 0 ? 1 : 0.7;
    }
}
