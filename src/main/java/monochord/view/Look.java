package monochord.view;

import monochord.text.Language;
import monochord.text.Reader;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;

/**
 * How answers are to look on this terminal.
 *
 * @param width columns a line may have, from 20 to 200
 * @param signs how accidentals are written, and by what names notes go
 * @param plain one fact a line and no drawing, for screen readers and whoever wants it
 * @param colour whether styles may be shown
 * @param language what language sentences are in
 * @param apart whether pictures are shown apart from the text, see {@link Answer#drawings}
 */
public record Look(int width, Signs signs, Language language, boolean plain, boolean colour, boolean apart) {
    private static final int NARROWEST = 20;
    private static final int WIDEST = 200;
    private static final int PICTURE = 80;

    public Look {
        width = Math.max(NARROWEST, Math.min(WIDEST, width));
    }

    public Look(int width, Signs signs, boolean plain, boolean colour) {
        this(width, signs, Language.ENGLISH, plain, colour, false);
    }

    /** For pipes and scripts: 80 columns, music signs, no colour. */
    public static Look ofPipe() {
        return new Look(PICTURE, Signs.MUSIC, false, false);
    }

    public Look inWidth(int columns) {
        return new Look(columns, signs, language, plain, colour, apart);
    }

    public Look inAscii() {
        return new Look(width, signs.inAscii(), language, plain, colour, apart);
    }

    /** With these note names. */
    public Look naming(NoteNaming naming) {
        return signs.naming() == naming ? this : new Look(width, signs.with(naming), language, plain, colour, apart);
    }

    public Look asPlain() {
        return new Look(width, signs, language, true, colour, apart);
    }

    public Look withoutColour() {
        return new Look(width, signs, language, plain, false, apart);
    }

    /** With sentences in this language. */
    public Look speaking(Language other) {
        return new Look(width, signs, other, plain, colour, apart);
    }

    /** Who phrases are put into words for. */
    public Reader reader() {
        return new Reader(signs, language);
    }

    /** With the pictures left out of the text, for whoever draws them in another way. */
    public Look withPicturesApart() {
        return new Look(width, signs, language, plain, colour, true);
    }

    /** Columns a picture may have: pictures stay within 80 however wide the terminal is. */
    public int pictureWidth() {
        return Math.min(width, PICTURE);
    }
}
