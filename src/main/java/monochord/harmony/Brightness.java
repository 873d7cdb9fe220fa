package monochord.harmony;

import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.Scale;

/** How a parallel scale stands to the key, as a musician says it: so many degrees brighter or darker. */
public final class Brightness {
    private Brightness() {}

    /** {@code three degrees darker}. */
    public static Phrase inWords(Scale scale, Key key) {
        int raised = Borrowing.brightness(scale, key);
        int degrees = Math.abs(raised);
        Phrase count = Phrase.number(degrees);
        if (degrees == 0) {
            return Phrase.of("as bright as the key");
        }
        return raised > 0
                ? Phrase.counted(degrees, "{0} degree brighter", "{0} degrees brighter", count)
                : Phrase.counted(degrees, "{0} degree darker", "{0} degrees darker", count);
    }
}
