package monochord.shell.answer.music;

import monochord.harmony.Borrowing;
import monochord.shell.answer.Words;
import monochord.theory.Key;
import monochord.theory.Scale;

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
