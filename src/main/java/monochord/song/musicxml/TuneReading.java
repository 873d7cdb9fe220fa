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
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.StartStop;

/** Gathers the tune: one voice, the top of notes struck together, ties joined. */
final class TuneReading {
    private final List<Melody.Note> notes = new ArrayList<>();
    private final Set<Phrase> remarks;
    private String voice;
    private boolean tied;

    TuneReading(Set<Phrase> remarks) {
        this.remarks = remarks;
    }

    void take(Note note, Beats start, Beats beats) throws SheetFault {
        if (note.getPitch() == null || beats.isZero() && note.getChord() == null) {
            tied &= note.getRest() == null;
            return;
        }
        String its = note.getVoice() == null ? "1" : note.getVoice();
        voice = voice == null ? its : voice;
        if (!voice.equals(its)) {
            remarks.add(Phrase.sentence("Only the first voice is read."));
        } else if (note.getChord() != null) {
            remarks.add(Phrase.sentence("Of notes struck together the top one is read."));
            raise(pitch(note), isTied(note, StartStop.START));
        } else {
            add(note, start, beats);
        }
    }

    private void raise(Pitch pitch, boolean tiedOn) {
        int last = notes.size() - 1;
        if (last >= 0 && pitch.compareTo(notes.get(last).pitch()) > 0) {
            notes.set(
                    last,
                    new Melody.Note(
                            pitch, notes.get(last).start(), notes.get(last).beats()));
            tied = tiedOn;
        }
    }

    private void add(Note note, Beats start, Beats beats) throws SheetFault {
        Pitch pitch = pitch(note);
        int last = notes.size() - 1;
        if (last >= 0 && start.compareTo(notes.get(last).end()) < 0) {
            throw new SheetFault(Phrase.of("two notes of one voice sound at once"));
        }
        boolean joins = tied
                && isTied(note, StartStop.STOP)
                && last >= 0
                && notes.get(last).pitch().equals(pitch);
        if (joins && notes.get(last).end().equals(start)) {
            Melody.Note before = notes.get(last);
            notes.set(
                    last, new Melody.Note(pitch, before.start(), before.beats().plus(beats)));
        } else {
            notes.add(new Melody.Note(pitch, start, beats));
        }
        tied = isTied(note, StartStop.START);
        if (notes.size() > Melody.MOST) {
            throw new SheetFault(Phrase.of("it has more than {0} notes", Melody.MOST));
        }
    }

    private static boolean isTied(Note note, StartStop way) {
        return note.getTie().stream().anyMatch(tie -> tie.getType() == way);
    }

    private static Pitch pitch(Note note) throws SheetFault {
        org.audiveris.proxymusic.Pitch written = note.getPitch();
        int octave = written.getOctave();
        if (octave < 0 || octave > 9) {
            throw new SheetFault(Phrase.of("a note in it has the octave {0}; 0 to 9 are in use", octave));
        }
        return new Pitch(Figures.note(written.getStep(), written.getAlter()), octave);
    }

    Melody melody(BarLengths lengths, Interval sounding) throws SheetFault {
        if (notes.isEmpty()) {
            throw new SheetFault(Phrase.of("no notes with a pitch stand in it"));
        }
        Beats end = lengths.pickup().plus(lengths.bar().times(lengths.count()));
        Melody written = new Melody(notes, end, Optional.of(lengths.bar()), lengths.pickup());
        try {
            return written.plus(sounding);
        } catch (IllegalArgumentException outOfReach) {
            throw new SheetFault(Phrase.of("its transposition leads past the highest or lowest octave"));
        }
    }
}
