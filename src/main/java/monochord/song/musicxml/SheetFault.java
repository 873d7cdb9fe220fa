package monochord.song.musicxml;

import java.io.IOException;

/** Why a file cannot be read as a lead sheet: {@code path: what is wrong}, one line. */
public final class SheetFault extends IOException {
    private static final long serialVersionUID = 1;

    SheetFault(String message) {
        super(message);
    }
}
