package monochord.song.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;

/** Gathers the chord symbols, and puts them into bars that they divide. */
final class ChordsReading {
    private static final int MOST = 2000;
    private static final int MOST_SHARES = 64;

    private final List<StruckChord> struck = new ArrayList<>();
    private final Set<Phrase> remarks;

    private record StruckChord(Chord chord, Beats time) {}

    /** What all bars have in common. */
    private record BarAndKey(Beats bar, Key key, Interval sounding) {}

    ChordsReading(Set<Phrase> remarks) {
        this.remarks = remarks;
    }

    void take(Optional<Chord> chord, Beats time) throws SheetFault {
        if (chord.isEmpty()) {
            remarks.add(Phrase.sentence("A harmony without a chord symbol is left out; the chord before it goes on."));
            return;
        }
        int last = struck.size() - 1;
        if (last >= 0 && struck.get(last).time().compareTo(time) > 0) {
            throw new SheetFault(Phrase.of("its chord symbols are not in order of time"));
        }
        if (last >= 0 && struck.get(last).time().equals(time)) {
            struck.remove(last);
        }
        struck.add(new StruckChord(chord.get(), time));
        if (struck.size() > MOST) {
            throw new SheetFault(Phrase.of("it has more than {0} chord symbols", MOST));
        }
    }

    Progression progression(BarLengths lengths, Key key, Interval sounding) throws SheetFault {
        Chord sounds = first(lengths).plus(sounding);
        BarAndKey frame = new BarAndKey(lengths.bar(), key, sounding);
        List<Bar> bars = new ArrayList<>();
        for (int i = 0; i < lengths.count(); i++) {
            List<StruckChord> here = within(lengths.pickup().plus(lengths.bar().times(i)), lengths.bar());
            Bar bar = bar(here, frame, sounds, bars.isEmpty());
            sounds = bar.slots().get(bar.slots().size() - 1).chord();
            bars.add(bar);
        }
        return new Progression(key, bars, true);
    }

    private Chord first(BarLengths lengths) throws SheetFault {
        if (struck.isEmpty()) {
            throw new SheetFault(Phrase.of("no chord symbols that could be read stand over its notes"));
        }
        if (struck.get(0).time().compareTo(lengths.pickup()) > 0) {
            remarks.add(Phrase.sentence("The first chord is taken from the first full bar on."));
        } else if (struck.get(0).time().compareTo(lengths.pickup()) < 0) {
            remarks.add(Phrase.sentence("The chord over the pick-up is left out."));
        }
        return struck.stream()
                .filter(one -> one.time().compareTo(lengths.pickup()) <= 0)
                .reduce((one, next) -> next)
                .orElse(struck.get(0))
                .chord();
    }

    /** Those struck in one bar, their times counted from its start. */
    private List<StruckChord> within(Beats start, Beats bar) {
        Beats end = start.plus(bar);
        return struck.stream()
                .filter(one -> one.time().compareTo(start) >= 0 && one.time().compareTo(end) < 0)
                .map(one -> new StruckChord(one.chord(), one.time().minus(start)))
                .toList();
    }

    private static Bar bar(List<StruckChord> here, BarAndKey frame, Chord before, boolean opens) throws SheetFault {
        Beats bar = frame.bar();
        List<ChordEvent> slots = new ArrayList<>();
        int shares = shares(here, bar);
        int at = here.isEmpty() ? shares : place(here.get(0), bar, shares);
        if (at > 0) {
            slots.add(new ChordEvent(before, Numeral.of(before, frame.key()), at, !opens));
        }
        for (int i = 0; i < here.size(); i++) {
            Chord chord = here.get(i).chord().plus(frame.sounding());
            int end = i + 1 < here.size() ? place(here.get(i + 1), bar, shares) : shares;
            slots.add(new ChordEvent(
                    chord, Numeral.of(chord, frame.key()), end - place(here.get(i), bar, shares), false));
        }
        return new Bar(slots, false);
    }

    private static int place(StruckChord one, Beats bar, int shares) {
        Beats time = one.time();
        return (int) (time.numerator() * bar.denominator() * shares / (time.denominator() * bar.numerator()));
    }

    /** The fewest equal shares of a bar at whose edges all its chords begin. */
    private static int shares(List<StruckChord> here, Beats bar) throws SheetFault {
        for (int shares = 1; shares <= MOST_SHARES; shares++) {
            int tried = shares;
            boolean fits = here.stream()
                    .map(one -> one.time().times(bar.denominator()).times(tried).dividedInto(bar.numerator()))
                    .allMatch(place -> place.denominator() == 1);
            if (fits) {
                return shares;
            }
        }
        throw new SheetFault(Phrase.of("its chords divide a bar into more than {0} shares", MOST_SHARES));
    }
}
