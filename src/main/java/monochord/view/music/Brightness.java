package monochord.view.music;

import monochord.harmony.Borrowing;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.view.Words;

/** How a parallel scale stands to the key, as a musician says it: so many degrees brighter or darker. */
final class Brightness {
    private Brightness() {}

    /** {@code three degrees darker}. */
    static String inWords(Scale scale, Key key) {
        int raised = Borrowing.brightness(scale, key);
        int degrees = Math.abs(raised);
        String way = raised > 0 ? " brighter" : " darker";
        return degrees == 0
                ? "as bright as the key"
                : Words.number(degrees) + (degrees == 1 ? " degree" : " degrees") + way;
    }
}
