package monochord.song;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Bar;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;

/**
 * A song as a document: its head, its sections in playing order, and what was changed in it.
 *
 * @param intro words between head and first section
 * @param faults what could not be read, and what of another format is not kept
 * @param remarks what else is to be known about how it was read
 */
public record Song(
        SongHead head,
        List<String> intro,
        List<Section> sections,
        List<SongChange> changes,
        List<SongFault> faults,
        List<Phrase> remarks) {
    /** The heading under which changes stand. */
    public static final String CHANGES = "Changes";

    public Song {
        intro = List.copyOf(intro);
        sections = List.copyOf(sections);
        changes = List.copyOf(changes);
        faults = List.copyOf(faults);
        remarks = List.copyOf(remarks);
    }

    /** The section that a section plays: itself, or the one of its name that is written out. */
    public Section written(Section section) {
        return section.isAgain() ? section(section.name()).orElse(section) : section;
    }

    /** The first section of that name that is written out, in whatever case. */
    public Optional<Section> section(String name) {
        return sections.stream()
                .filter(section -> section.name().equalsIgnoreCase(name) && !section.isAgain())
                .findFirst();
    }

    /** As it is played, one section after the other. */
    public SongMusic music() {
        return SongMusic.of(this);
    }

    /** With a section in place of one of the same name and line. */
    Song with(Section changed) {
        List<Section> all = new ArrayList<>(sections);
        all.replaceAll(section ->
                section.line() == changed.line() && section.name().equals(changed.name()) ? changed : section);
        return new Song(head, intro, all, changes, faults, remarks);
    }

    Song with(SongChange change) {
        List<SongChange> all = new ArrayList<>(changes);
        all.add(change);
        return new Song(head, intro, sections, all, faults, remarks);
    }

    /**
     * With other chords at a place, and a word on it among its changes.
     *
     * @param to as many bars as the place has
     * @param why a reason, or nothing
     * @throws IllegalArgumentException if it has another number of bars
     */
    public Song changed(SongPlace place, Progression to, String why) {
        return SongEdit.change(this, place, to, why);
    }

    /** With another head; numbers and numerals are read in its key, all else stays. */
    public Song with(SongHead other) {
        return new Song(other, intro, sections, changes, faults, remarks);
    }

    /**
     * The whole song in another key, and a word on it among its changes: its chords and its tune are moved, its numbers and
     * numerals stay.
     *
     * @param up from the old tonic to the new
     * @param why a reason, or nothing
     */
    public Song moved(Key to, Interval up, String why) {
        return SongTransposition.move(this, to, up, why);
    }

    /** The chords of all sections that are written out, one after the other. */
    public Optional<Progression> chords() {
        List<Bar> bars = sections.stream()
                .filter(section -> !section.isAgain())
                .map(SongPlace::whole)
                .flatMap(place -> place.progression(this).stream())
                .flatMap(progression -> progression.bars().stream())
                .toList();
        return bars.isEmpty() ? Optional.empty() : Optional.of(new Progression(head.key(), bars, true));
    }

    /** The tune of all sections that are written out, without its bars. */
    public Optional<Melody> tune() {
        SongMusic.Timeline written = music().written();
        List<Melody.MelodyNote> notes = written.notes().stream()
                .map(note -> new Melody.MelodyNote(note.pitch(), note.start(), note.beats()))
                .toList();
        return notes.isEmpty()
                ? Optional.empty()
                : Optional.of(new Melody(notes, written.beats(), Optional.empty(), Beats.ZERO));
    }

    /** With another remark on how it was read. */
    public Song remarked(Phrase remark) {
        List<Phrase> all = new ArrayList<>(remarks);
        all.add(remark);
        return new Song(head, intro, sections, changes, faults, all);
    }

    public Song withFaults(List<SongFault> found) {
        return new Song(head, intro, sections, changes, found, remarks);
    }

    /** The file: {@link SongReader} reads it back. */
    @Override
    public String toString() {
        return SongWriter.write(this);
    }
}
