package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * What begins at one moment.
 *
 * @param at quarters from the start of its bar
 * @param chord what its symbol stands for, if it has one
 * @param above what stands over it, a chord symbol; perhaps nothing
 * @param below what stands under it, a numeral; perhaps nothing
 */
public record StaffColumn(Beats at, List<StaffEvent> events, Optional<Chord> chord, Phrase above, Phrase below) {
    public StaffColumn {
        events = List.copyOf(events);
    }

    public static StaffColumn of(Beats at, List<StaffEvent> events) {
        return new StaffColumn(at, events, Optional.empty(), Phrase.NOTHING, Phrase.NOTHING);
    }

    /** Notes of one voice on one staff, or none. */
    public static StaffColumn of(List<Pitch> pitches, NoteValue value) {
        return hands(pitches, List.of(), NoteLength.of(value));
    }

    /** What two hands hold, each on its staff; a hand may hold nothing. */
    public static StaffColumn hands(List<Pitch> upper, List<Pitch> lower, NoteLength length) {
        List<StaffEvent> events = new ArrayList<>();
        if (!upper.isEmpty()) {
            events.add(StaffEvent.notes(StaffEvent.Voice.ONLY, upper, length));
        }
        if (!lower.isEmpty()) {
            events.add(StaffEvent.notes(new StaffEvent.Voice(1, false), lower, length));
        }
        return of(Beats.ZERO, events);
    }

    /** Named over and under. */
    public StaffColumn named(Phrase over, Phrase under) {
        return new StaffColumn(at, events, chord, over, under);
    }

    /** Under the symbol of a chord. */
    public StaffColumn under(Chord symbol) {
        return new StaffColumn(at, events, Optional.of(symbol), Phrase.of("{0}", symbol), below);
    }

    public StaffColumn at(Beats moment) {
        return new StaffColumn(moment, events, chord, above, below);
    }

    /** All notes of one staff. */
    public List<Pitch> pitches(int staff) {
        return events.stream()
                .filter(event -> event.isOn(staff))
                .flatMap(event -> event.pitches().stream())
                .toList();
    }

    /** Each note of one voice on the staff on which it stands nearer: from the height on on the upper one. */
    StaffColumn split(int middle) {
        List<Pitch> all = pitches(0);
        if (all.isEmpty()) {
            return this;
        }
        StaffColumn hands = hands(
                all.stream().filter(pitch -> pitch.staffPosition() >= middle).toList(),
                all.stream().filter(pitch -> pitch.staffPosition() < middle).toList(),
                events.get(0).length());
        return new StaffColumn(at, hands.events, chord, above, below);
    }
}
