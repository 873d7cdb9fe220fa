package monochord.song.musicxml;

import java.io.IOException;
import monochord.text.Phrase;

/** Why a file cannot be read as a lead sheet: {@code path: what is wrong}, one line. */
public final class SheetFault extends IOException {
    private static final long serialVersionUID = 1;

    private final transient Phrase phrase;

    public SheetFault(Phrase phrase) {
        this.phrase = phrase;
    }

    public Phrase phrase() {
        return phrase;
    }

    @Override
    public String getMessage() {
        return phrase.toString();
    }
}
