package monochord.harmony.key;

import java.util.List;
import monochord.text.Phrase;
import monochord.theory.Key;

/**
 * A key that music may stand in.
 *
 * @param share how likely it is beside the others, from 0 to 1
 * @param why what speaks for it, in sentences; each is true of the music
 */
public record LikelyKey(Key key, double share, List<Phrase> why) {
    public LikelyKey {
        why = List.copyOf(why);
    }
}
