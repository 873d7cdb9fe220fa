package monochord.view.keyboard;

import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;

/**
 * What a tone does in its chord or scale.
 *
 * @param label the shortest sign for it: {@code R}, {@code 3}, {@code ♭9}
 * @param words the same in words: {@code root}, {@code lowered ninth}
 */
public record Role(Phrase label, Phrase words, Style style) {
    /** A tone of which nothing is said. */
    public static final Role NONE = new Role(Phrase.NOTHING, Phrase.NOTHING, Style.STRONG);

    /** A key under a hand, where who plays matters more than what the tone does. */
    public static final Role LEFT_HAND = new Role(Phrase.of("lh"), Phrase.of("left hand"), Style.ROOT);

    public static final Role RIGHT_HAND = new Role(Phrase.of("rh"), Phrase.of("right hand"), Style.THIRD);

    String label(Reader reader) {
        return label.in(reader).plain();
    }

    /** The same role in the lowest note of a chord whose bass is not its root. */
    Role inBass() {
        return equals(NONE)
                ? new Role(Phrase.of("bass"), Phrase.of("bass, not in the chord"), Style.OTHER_TONE)
                : new Role(Phrase.of("bass {0}", label), Phrase.of("{0}, in the bass", words), style);
    }
}
