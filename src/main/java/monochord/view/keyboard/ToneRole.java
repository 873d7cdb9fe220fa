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
public record ToneRole(Phrase label, Phrase words, Style style) {
    /** A tone of which nothing is said. */
    public static final ToneRole NONE = new ToneRole(Phrase.NOTHING, Phrase.NOTHING, Style.STRONG);

    /** A key under a hand, where who plays matters more than what the tone does. */
    public static final ToneRole LEFT_HAND = new ToneRole(Phrase.of("lh"), Phrase.of("left hand"), Style.ROOT);

    public static final ToneRole RIGHT_HAND = new ToneRole(Phrase.of("rh"), Phrase.of("right hand"), Style.THIRD);

    String label(Reader reader) {
        return label.in(reader).plain();
    }

    /** The same role in the lowest note of a chord whose bass is not its root. */
    ToneRole inBass() {
        return equals(NONE)
                ? new ToneRole(Phrase.of("bass"), Phrase.of("bass, not in the chord"), Style.OTHER_TONE)
                : new ToneRole(Phrase.of("bass {0}", label), Phrase.of("{0}, in the bass", words), style);
    }
}
