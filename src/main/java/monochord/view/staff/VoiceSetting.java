package monochord.view.staff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.song.SongMetre;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * The voices of a bar: which notes are joined by a beam, and which way stems go.
 *
 * <p>Common practice of engraving, no source: a beam joins what lies within one beat, in 6/8 and its kin three eighths; rests
 * end it. Of two voices on a staff the upper has its stems up and the lower down; else the note farthest from the middle line
 * decides, of all that a beam joins, and where two are equally far it goes down.
 */
final class VoiceSetting {
    private final StaffMusic.State state;
    private final Map<StaffEvent.Voice, List<Pitch>> tied;
    private int beams;

    /** @param tied what goes on from the bar before, by voice; kept up to date */
    VoiceSetting(StaffMusic.State state, Map<StaffEvent.Voice, List<Pitch>> tied) {
        this.state = state;
        this.tied = tied;
    }

    /** The events of each column. */
    List<List<SetEvent>> of(StaffBar bar) {
        List<List<SetEvent>> columns = new ArrayList<>();
        bar.columns().forEach(column -> columns.add(new ArrayList<>()));
        Map<StaffEvent.Voice, List<Placed>> voices = new HashMap<>();
        for (int i = 0; i < bar.columns().size(); i++) {
            StaffColumn column = bar.columns().get(i);
            for (StaffEvent event : column.events()) {
                voices.computeIfAbsent(event.voice(), voice -> new ArrayList<>())
                        .add(new Placed(event, column.at(), i));
            }
        }
        voices.keySet().stream()
                .sorted((one, other) -> one.staff() == other.staff()
                        ? Boolean.compare(one.second(), other.second())
                        : Integer.compare(one.staff(), other.staff()))
                .forEach(voice -> {
                    boolean shared = voices.containsKey(new StaffEvent.Voice(voice.staff(), !voice.second()));
                    set(voice, shared, voices.get(voice), columns);
                });
        return columns;
    }

    /** An event in its column. */
    private record Placed(StaffEvent event, Beats at, int column) {}

    private void set(StaffEvent.Voice voice, boolean shared, List<Placed> events, List<List<SetEvent>> columns) {
        Clef clef = state.clefs().get(voice.staff());
        for (List<Placed> joined : groups(events)) {
            Optional<Integer> beam = joined.size() > 1 ? Optional.of(beams++) : Optional.empty();
            int lean = joined.stream()
                    .mapToInt(one -> SetEvent.lean(one.event, clef))
                    .reduce((one, other) -> Math.abs(other) > Math.abs(one) ? other : one)
                    .orElse(0);
            for (Placed one : joined) {
                boolean up = shared ? !voice.second() : lean < 0;
                List<Pitch> held = tied.getOrDefault(voice, List.of());
                List<Pitch> into =
                        one.event.pitches().stream().filter(held::contains).toList();
                columns.get(one.column).add(new SetEvent(one.event, one.at, shared, up, beam, into));
                tied.put(voice, one.event.tied() ? one.event.pitches() : List.of());
            }
        }
    }

    /** Each event by itself, or those that a beam joins. */
    private List<List<Placed>> groups(List<Placed> events) {
        List<List<Placed>> groups = new ArrayList<>();
        for (Placed one : events) {
            List<Placed> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            if (!last.isEmpty() && isJoined(last.get(last.size() - 1), one)) {
                last.add(one);
            } else {
                groups.add(new ArrayList<>(List.of(one)));
            }
        }
        return groups;
    }

    private boolean isJoined(Placed one, Placed next) {
        return one.event.hasStem()
                && next.event.hasStem()
                && one.event.length().value().flags() > 0
                && next.event.length().value().flags() > 0
                && one.at.compareTo(next.at) < 0
                && beat(one.at) == beat(next.at);
    }

    private long beat(Beats at) {
        SongMetre metre = state.metre();
        boolean threes = metre.isCompound() || metre.value() == 8 && metre.beats() == 3;
        Beats beat = threes ? Beats.of(3, 2) : Beats.ONE;
        return at.numerator() * beat.denominator() / (at.denominator() * beat.numerator());
    }
}
