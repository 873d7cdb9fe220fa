package monochord.course.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * A chord or a note that is to be played at its time.
 *
 * @param bar from 0, of the bars of the round
 * @param beat quarters from the beginning of its bar
 * @param at quarters from the first full bar of the round
 * @param name as it is called
 * @param needed what must be heard for it to be that chord
 * @param allowed what belongs to it
 */
public record DueChange(int bar, Beats beat, Beats at, Phrase name, List<NoteName> needed, List<NoteName> allowed) {

    /** What somebody plays in a round. */
    public enum PlayersPart {
        /** Chord and bass. */
        HANDS,
        /** The chord, above a bass that somebody else has. */
        CHORDS,
        BASS,
        TUNE
    }

    /** The chords of a progression, or their basses, one for each that is struck. */
    public static List<DueChange> chords(Progression progression, Beats barLength, PlayersPart part) {
        List<DueChange> due = new ArrayList<>();
        for (int bar = 0; bar < progression.bars().size(); bar++) {
            Bar written = progression.bars().get(bar);
            Beats share = barLength.dividedInto(written.shares());
            Beats beat = Beats.ZERO;
            for (ChordEvent slot : written.slots()) {
                if (!slot.held()) {
                    due.add(chord(slot.chord(), bar, beat, barLength.times(bar).plus(beat), part));
                }
                beat = beat.plus(share.times(slot.shares()));
            }
        }
        return due;
    }

    private static DueChange chord(Chord chord, int bar, Beats beat, Beats at, PlayersPart part) {
        List<NoteName> bass = List.of(chord.bass());
        if (part == PlayersPart.BASS) {
            return new DueChange(bar, beat, at, Phrase.of("{0}", chord.bass()), bass, bass);
        }
        boolean withBass = part == PlayersPart.HANDS;
        List<NoteName> all =
                Stream.concat(chord.tones().stream(), bass.stream()).distinct().toList();
        return new DueChange(bar, beat, at, Phrase.of("{0}", chord), needed(chord, withBass), all);
    }

    /**
     * What makes the chord: third or suspended tone, seventh or sixth, a fifth that is not perfect, and with the bass root and
     * bass. Common practice, no source.
     */
    private static List<NoteName> needed(Chord chord, boolean withBass) {
        ChordKind kind = chord.kind();
        List<NoteName> needed = new ArrayList<>();
        if (withBass) {
            needed.add(chord.root());
            needed.add(chord.bass());
        }
        Optional<Interval> third = kind.interval(3).or(() -> kind.interval(4)).or(() -> kind.interval(2));
        third.or(() -> kind.interval(5))
                .ifPresent(interval -> needed.add(chord.root().plus(interval)));
        kind.interval(7)
                .or(() -> kind.interval(6))
                .ifPresent(interval -> needed.add(chord.root().plus(interval)));
        kind.interval(5)
                .filter(fifth -> !fifth.equals(Interval.PERFECT_FIFTH))
                .ifPresent(fifth -> needed.add(chord.root().plus(fifth)));
        return needed.stream().distinct().toList();
    }

    /** The notes of a tune; what comes before the first full bar is not asked for. */
    public static List<DueChange> tune(Melody melody, Beats barLength) {
        List<DueChange> due = new ArrayList<>();
        for (Melody.MelodyNote note : melody.notes()) {
            if (note.start().compareTo(melody.pickup()) >= 0) {
                Beats at = note.start().minus(melody.pickup());
                long bar = at.numerator() * barLength.denominator() / (at.denominator() * barLength.numerator());
                List<NoteName> name = List.of(note.pitch().name());
                Beats beat = at.minus(barLength.times(bar));
                due.add(new DueChange(
                        (int) bar, beat, at, Phrase.of("{0}", note.pitch().name()), name, name));
            }
        }
        return due;
    }
}
