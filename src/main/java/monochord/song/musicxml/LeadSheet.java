package monochord.song.musicxml;

import java.util.List;
import java.util.Optional;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.Key;

/**
 * A tune with its chords, or a chart of chords alone, as it sounds: the part of a transposing instrument is moved to concert pitch.
 *
 * @param title as the file says it, cleaned for a terminal, or nothing
 * @param remarks what of the file was left out or changed, in sentences
 */
public record LeadSheet(String title, Key key, Optional<Melody> tune, Progression progression, List<Phrase> remarks) {
    public LeadSheet {
        remarks = List.copyOf(remarks);
    }
}
