package monochord.text;

import monochord.theory.note.Signs;

/**
 * For whom sentences are written.
 *
 * @param signs how accidentals are written, and by what names notes go
 * @param language what language sentences are in
 */
public record Reader(Signs signs, Language language) {
    /** English with the signs of print: what tests and JSON have. */
    public static final Reader ENGLISH = new Reader(Signs.MUSIC, Language.ENGLISH);

    /** In English, with these signs. */
    public static Reader of(Signs signs) {
        return new Reader(signs, Language.ENGLISH);
    }
}
