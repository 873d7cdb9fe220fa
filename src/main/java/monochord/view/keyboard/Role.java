package monochord.view.keyboard;

import monochord.text.Style;
import monochord.theory.Signs;

/**
 * What a tone does in its chord or scale.
 *
 * @param label the shortest sign for it, with the signs of printed music: {@code R}, {@code 3}, {@code ♭9}
 * @param words the same in words: {@code root}, {@code lowered ninth}
 */
public record Role(String label, String words, Style style) {
    /** A tone of which nothing is said. */
    public static final Role NONE = new Role("", "", Style.STRONG);

    /** A key under a hand, where who plays matters more than what the tone does. */
    public static final Role LEFT_HAND = new Role("lh", "left hand", Style.ROOT);

    public static final Role RIGHT_HAND = new Role("rh", "right hand", Style.THIRD);

    public String label(Signs signs) {
        return signs.isAscii() ? Signs.toAscii(label) : label;
    }

    /** The same role in the lowest note of a chord whose bass is not its root. */
    Role inBass() {
        return equals(NONE)
                ? new Role("bass", "bass, not in the chord", Style.OTHER_TONE)
                : new Role("bass " + label, words + ", in the bass", style);
    }
}
