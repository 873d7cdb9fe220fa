package monochord.song.abc;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.song.SongMetre;
import monochord.theory.note.Beats;

/** What {@code Q:} says. Source: the ABC standard 2.1, sections 3.1.8 and 10.1. */
final class AbcTempo {
    private static final Pattern LENGTHS = Pattern.compile("((?:\\d{1,2}/\\d{1,3}\\s*){1,4})=\\s*(\\d{1,4})");
    private static final Pattern OLD = Pattern.compile("^\\s*(?:C\\d*\\s*=)?\\s*(\\d{1,4})\\s*$");
    private static final Pattern ONE = Pattern.compile("(\\d{1,2})/(\\d{1,3})");
    private static final int FASTEST = 400;

    private AbcTempo() {}

    /** Beats in a minute, dotted quarters in 6/8 and its kin, else quarters; 0 where it says none. */
    static int of(String text, Beats unit, SongMetre metre) {
        Matcher lengths = LENGTHS.matcher(text);
        Matcher old = OLD.matcher(text);
        double quarters;
        if (lengths.find()) {
            double whole = 0;
            for (Matcher one = ONE.matcher(lengths.group(1)); one.find(); ) {
                whole += Double.parseDouble(one.group(1)) / Math.max(1, Integer.parseInt(one.group(2)));
            }
            quarters = 4 * whole * Integer.parseInt(lengths.group(2));
        } else if (old.find()) {
            quarters = (double) unit.numerator() / unit.denominator() * Integer.parseInt(old.group(1));
        } else {
            return 0;
        }
        long beats = Math.round(metre.isCompound() ? quarters / 1.5 : quarters);
        return beats >= 1 && beats <= FASTEST ? (int) beats : 0;
    }
}
