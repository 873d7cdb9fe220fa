package monochord.song.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;

/** Gathers the tune: one voice, the top of notes struck together, ties joined. */
final class TuneReading {
    private static final String TIE_BEGINS = "start";
    private static final String TIE_ENDS = "stop";
    private static final int LARGEST_OCTAVE = 1_000_000;

    private final List<Melody.MelodyNote> notes = new ArrayList<>();
    private final Set<Phrase> remarks;
    private String voice;
    private boolean tied;

    TuneReading(Set<Phrase> remarks) {
        this.remarks = remarks;
    }

    void take(SheetElement note, Beats start, Beats beats) throws SheetFault {
        boolean slash = "slash".equals(note.text("notehead"));
        if (slash || !note.has("pitch") || beats.isZero() && !note.has("chord")) {
            tied &= !note.has("rest");
            return;
        }
        String its = note.has("voice") ? note.text("voice") : "1";
        voice = voice == null ? its : voice;
        if (!voice.equals(its)) {
            remarks.add(Phrase.sentence("Only the first voice is read."));
        } else if (note.has("chord")) {
            remarks.add(Phrase.sentence("Of notes struck together the top one is read."));
            raise(pitch(note), isTied(note, TIE_BEGINS));
        } else {
            add(note, start, beats);
        }
    }

    private void raise(Pitch pitch, boolean tiedOn) {
        int last = notes.size() - 1;
        if (last >= 0 && pitch.compareTo(notes.get(last).pitch()) > 0) {
            notes.set(
                    last,
                    new Melody.MelodyNote(
                            pitch, notes.get(last).start(), notes.get(last).beats()));
            tied = tiedOn;
        }
    }

    private void add(SheetElement note, Beats start, Beats beats) throws SheetFault {
        Pitch pitch = pitch(note);
        int last = notes.size() - 1;
        if (last >= 0 && start.compareTo(notes.get(last).end()) < 0) {
            throw new SheetFault(Phrase.of("two notes of one voice sound at once"));
        }
        boolean joins = tied
                && isTied(note, TIE_ENDS)
                && last >= 0
                && notes.get(last).pitch().equals(pitch);
        if (joins && notes.get(last).end().equals(start)) {
            Melody.MelodyNote before = notes.get(last);
            notes.set(
                    last,
                    new Melody.MelodyNote(pitch, before.start(), before.beats().plus(beats)));
        } else {
            notes.add(new Melody.MelodyNote(pitch, start, beats));
        }
        tied = isTied(note, TIE_BEGINS);
        if (notes.size() > Melody.MOST) {
            throw new SheetFault(Phrase.of("it has more than {0} notes", Melody.MOST));
        }
    }

    private static boolean isTied(SheetElement note, String way) {
        return note.parts("tie").stream().anyMatch(tie -> way.equals(tie.type()));
    }

    private static Pitch pitch(SheetElement note) throws SheetFault {
        SheetElement written = note.part("pitch").orElseThrow();
        int octave = Figures.whole(written.text("octave"), LARGEST_OCTAVE, Phrase.of("an octave"));
        if (octave < 0 || octave > 9) {
            throw new SheetFault(Phrase.of("a note in it has the octave {0}; 0 to 9 are in use", octave));
        }
        return new Pitch(Figures.note(written.text("step"), written.text("alter")), octave);
    }

    /** None where only rests, slashes and notes without a pitch stand under the chords, as in a chart. */
    Optional<Melody> melody(BarLengths lengths, Interval sounding) throws SheetFault {
        if (notes.isEmpty()) {
            return Optional.empty();
        }
        Beats end = lengths.pickup().plus(lengths.bar().times(lengths.count()));
        Melody written = new Melody(notes, end, Optional.of(lengths.bar()), lengths.pickup());
        try {
            return Optional.of(written.plus(sounding));
        } catch (IllegalArgumentException outOfReach) {
            throw new SheetFault(Phrase.of("its transposition leads past the highest or lowest octave"));
        }
    }
}
