package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.song.SongMetre;
import monochord.text.Phrase;

/**
 * Music to be engraved.
 *
 * @param title what it is, for whoever cannot see it
 * @param signature signs of the key, sharps positive, from −7 to 7
 * @param metre written behind the first clef, if it is known
 * @param clefs one, or two for two staves that are joined
 */
public record StaffMusic(
        Phrase title, int signature, Optional<SongMetre> metre, List<Clef> clefs, List<StaffBar> bars) {
    private static final int MIDDLE_C = 28;
    /** G3, which stands below two ledger lines. */
    private static final int LOWEST_ON_ONE_STAFF = 25;

    private static final List<Clef> HANDS = List.of(Clef.TREBLE, Clef.BASS);

    private static final int MOST_SIGNS = 7;

    /** @throws IllegalArgumentException if there are more than seven signs, no bar, or not one or two staves */
    public StaffMusic {
        bars = List.copyOf(bars);
        clefs = List.copyOf(clefs);
        if (Math.abs(signature) > MOST_SIGNS || bars.isEmpty() || clefs.isEmpty() || clefs.size() > 2) {
            throw new IllegalArgumentException(
                    signature + " signs, " + bars.size() + " bars, " + clefs.size() + " clefs");
        }
    }

    /** Without bar lines or metre, for two hands or one. */
    public static StaffMusic free(Phrase title, int signature, boolean grand, List<StaffColumn> columns) {
        List<StaffBar> bars = columns.stream()
                .map(column -> StaffBar.of(List.of(column), StaffBar.BarLine.NONE))
                .toList();
        return barred(title, signature, grand, bars);
    }

    /** Without a metre, for two hands or one. */
    public static StaffMusic barred(Phrase title, int signature, boolean grand, List<StaffBar> bars) {
        int signs = Math.abs(signature) > MOST_SIGNS ? 0 : signature;
        return new StaffMusic(title, signs, Optional.empty(), grand ? HANDS : List.of(Clef.TREBLE), bars);
    }

    /** On one staff in the treble clef, or where a note lies more than two ledger lines below it on a grand staff. */
    public static StaffMusic of(Phrase title, int signature, List<StaffBar> bars) {
        boolean low = bars.stream()
                .flatMap(bar -> bar.columns().stream())
                .flatMap(column -> column.pitches(0).stream())
                .anyMatch(pitch -> pitch.staffPosition() < LOWEST_ON_ONE_STAFF);
        return barred(
                title,
                signature,
                low,
                low ? bars.stream().map(StaffMusic::split).toList() : bars);
    }

    private static StaffBar split(StaffBar bar) {
        List<StaffColumn> hands =
                bar.columns().stream().map(column -> column.split(MIDDLE_C)).toList();
        return new StaffBar(hands, bar.before(), bar.end(), bar.over(), bar.ending(), bar.endsLine(), bar.number());
    }

    /** Staves to write on. */
    public static StaffMusic empty(boolean grand) {
        StaffColumn nothing = StaffColumn.of(List.of(), NoteValue.FREE);
        return free(Phrase.of("room to write"), 0, grand, List.of(nothing));
    }

    /** Whether two staves are joined. */
    public boolean isGrand() {
        return clefs.size() > 1;
    }

    boolean isBarred() {
        return bars.stream().anyMatch(bar -> bar.end() != StaffBar.BarLine.NONE);
    }

    /** All columns of all bars, in order. */
    public List<StaffColumn> columns() {
        return bars.stream().flatMap(bar -> bar.columns().stream()).toList();
    }

    /** What holds before its first bar. */
    State opening() {
        return new State(clefs, signature, metre.orElse(SongMetre.COMMON));
    }

    /** What is in force on the staves: the last of each that was written. */
    record State(List<Clef> clefs, int signature, SongMetre metre) {
        State after(StaffBar.Before changes) {
            if (changes == StaffBar.Before.NOTHING) {
                return this;
            }
            List<Clef> now = new ArrayList<>(clefs);
            changes.clef().ifPresent(clef -> now.set(0, clef));
            return new State(
                    now, changes.signature().orElse(signature), changes.metre().orElse(metre));
        }
    }
}
