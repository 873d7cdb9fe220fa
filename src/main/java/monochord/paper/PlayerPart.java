package monochord.paper;

import java.util.Locale;
import java.util.Set;
import monochord.harmony.Instrument;
import monochord.harmony.Progression;
import monochord.harmony.Transposition;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/**
 * What one player reads.
 *
 * @param name of the instrument, as it was typed
 * @param progression as it is written for it
 * @param up from what sounds to what is written
 */
public record PlayerPart(String name, Progression progression, Interval up) {
    /** Players who read the bass clef, beside those of a bass. */
    private static final Set<String> LOW = Set.of("trombone", "bassoon", "tuba", "contrabassoon");

    private static final String CONCERT = "concert";

    /** For whoever reads what sounds; a key with more than seven signs is written as the one that sounds alike. */
    public static PlayerPart concert(Progression progression) {
        return written(progression, CONCERT, Interval.UNISON, Transposition.inUse(progression.key()));
    }

    /** @throws Unreadable if the instrument is none of ours */
    public static PlayerPart of(Progression concert, String name) {
        Instrument instrument = Instrument.parse(name);
        return instrument == Instrument.CONCERT
                ? new PlayerPart(name.strip(), concert(concert).progression, concert(concert).up)
                : written(
                        concert,
                        name.strip(),
                        instrument.writtenAbove(),
                        Transposition.part(concert.key(), instrument));
    }

    private static PlayerPart written(Progression concert, String name, Interval above, Key key) {
        Interval near = concert.key().tonic().to(key.tonic());
        int octaves = Math.floorDiv(above.semitones() - near.semitones(), 12);
        return new PlayerPart(name, concert.in(key), near.plus(new Interval(0, octaves)));
    }

    public Key key() {
        return progression.key();
    }

    boolean isLow() {
        String lower = name.toLowerCase(Locale.ROOT);
        return LOW.contains(lower) || lower.endsWith("bass");
    }
}
