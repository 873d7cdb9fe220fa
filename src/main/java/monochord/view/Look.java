package monochord.view;

import monochord.theory.NoteNaming;
import monochord.theory.Signs;

/**
 * How answers are to look on this terminal.
 *
 * @param width columns a line may have, from 20 to 200
 * @param signs how accidentals are written, and by what names notes go
 * @param plain one fact a line and no drawing, for screen readers and whoever wants it
 * @param colour whether styles may be shown
 * @param apart whether pictures are shown apart from the text, see {@link Answer#drawings}
 */
public record Look(int width, Signs signs, boolean plain, boolean colour, boolean apart) {
    private static final int NARROWEST = 20;
    private static final int WIDEST = 200;
    private static final int PICTURE = 80;

    public Look {
        width = Math.max(NARROWEST, Math.min(WIDEST, width));
    }

    public Look(int width, Signs signs, boolean plain, boolean colour) {
        this(width, signs, plain, colour, false);
    }

    /** For pipes and scripts: 80 columns, music signs, no colour. */
    public static Look ofPipe() {
        return new Look(PICTURE, Signs.MUSIC, false, false);
    }

    public Look inWidth(int columns) {
        return new Look(columns, signs, plain, colour, apart);
    }

    public Look inAscii() {
        return new Look(width, signs.inAscii(), plain, colour, apart);
    }

    /** With these note names. */
    public Look naming(NoteNaming naming) {
        return signs.naming() == naming ? this : new Look(width, signs.with(naming), plain, colour, apart);
    }

    public Look asPlain() {
        return new Look(width, signs, true, colour, apart);
    }

    public Look withoutColour() {
        return new Look(width, signs, plain, false, apart);
    }

    /** With the pictures left out of the text, for whoever draws them in another way. */
    public Look withPicturesApart() {
        return new Look(width, signs, plain, colour, true);
    }

    /** Columns a picture may have: pictures stay within 80 however wide the terminal is. */
    public int pictureWidth() {
        return Math.min(width, PICTURE);
    }
}
