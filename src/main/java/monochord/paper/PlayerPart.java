package monochord.paper;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.harmony.Instrument;
import monochord.harmony.Progression;
import monochord.harmony.Transposition;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/**
 * What one player reads.
 *
 * @param name of the instrument, as it was typed
 * @param chart as it is written for it
 * @param up from what sounds to what is written
 */
public record PlayerPart(String name, Chart chart, Interval up) {
    /** Players who read the bass clef, beside those of a bass. */
    private static final Set<String> LOW = Set.of("trombone", "bassoon", "tuba", "contrabassoon");

    private static final String CONCERT = "concert";
    /** {@code guitar capo 3}. */
    private static final Pattern CAPO = Pattern.compile("(?i)guitar,?\\s+capo\\s+(\\d{1,2})");

    /** For whoever reads what sounds; a key with more than seven signs is written as the one that sounds alike. */
    public static PlayerPart concert(Progression progression) {
        return concert(Chart.of(progression));
    }

    /** The same for a chart. */
    public static PlayerPart concert(Chart concert) {
        return written(concert, CONCERT, Interval.UNISON, Transposition.inUse(concert.key()));
    }

    /** @throws Unreadable if the instrument is none of ours */
    public static PlayerPart of(Progression concert, String name) {
        return of(Chart.of(concert), name);
    }

    /**
     * The same for a chart. For a guitar with a capo it has the shapes that are played.
     *
     * @throws Unreadable if the instrument is none of ours, or no capo goes there
     */
    public static PlayerPart of(Chart concert, String name) {
        Matcher capo = CAPO.matcher(name.strip());
        if (capo.matches()) {
            return withCapo(concert, name, Integer.parseInt(capo.group(1)));
        }
        Instrument instrument = Instrument.parse(name);
        return instrument == Instrument.CONCERT
                ? new PlayerPart(name.strip(), concert(concert).chart, concert(concert).up)
                : written(
                        concert,
                        name.strip(),
                        instrument.writtenAbove(),
                        Transposition.part(concert.key(), instrument));
    }

    private static PlayerPart withCapo(Chart concert, String name, int fret) {
        if (fret < 1 || fret > Transposition.HIGHEST_FRET) {
            throw Unreadable.because(
                    name,
                    0,
                    "a guitar with a capo",
                    Clause.of("it goes on a fret from 1 to {0}", Transposition.HIGHEST_FRET),
                    "guitar capo 3");
        }
        Key shapes = Transposition.shapes(concert.key(), fret);
        Interval shapesToSound = shapes.tonic().to(concert.key().tonic());
        Interval up = Interval.OCTAVE.minus(shapesToSound);
        return new PlayerPart(name.strip(), concert.in(shapes), up);
    }

    private static PlayerPart written(Chart concert, String name, Interval above, Key key) {
        Interval near = concert.key().tonic().to(key.tonic());
        int octaves = Math.floorDiv(above.semitones() - near.semitones(), 12);
        return new PlayerPart(name, concert.in(key), near.plus(new Interval(0, octaves)));
    }

    public Key key() {
        return chart.key();
    }

    /** That of the song; of a progression, the key in which it is written. */
    public Phrase title() {
        return chart.title().isEmpty() ? Phrase.of("Chart in {0}", key()) : chart.title();
    }

    boolean isConcert() {
        return name.equalsIgnoreCase(CONCERT);
    }

    boolean isLow() {
        String lower = name.toLowerCase(Locale.ROOT);
        return LOW.contains(lower) || lower.endsWith("bass");
    }
}
