package monochord.song;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;

/**
 * What a song sounds like: each section that is written out once, and all as it is played.
 *
 * @param written sections in the order of the file
 * @param played sections in playing order, repeats and endings played out, as far as 20,000 bars
 */
public record SongMusic(Timeline written, Timeline played) {
    /**
     * Notes and chords in time.
     *
     * @param pickup beats before the first full bar
     * @param sections where each begins
     */
    public record Timeline(
            List<SungNote> notes, List<ChordChange> chords, Beats pickup, Beats beats, List<SectionStart> sections) {
        public Timeline {
            sections = List.copyOf(sections);
            notes = List.copyOf(notes);
            chords = List.copyOf(chords);
        }

        /** All of it so much higher. */
        public Timeline plus(Interval up) {
            return new Timeline(
                    notes.stream()
                            .map(note -> new SungNote(note.pitch().plus(up), note.start(), note.beats()))
                            .toList(),
                    chords.stream()
                            .map(change -> new ChordChange(change.chord().plus(up), change.start()))
                            .toList(),
                    pickup,
                    beats,
                    sections);
        }
    }

    /** @param start beats from the start, the pick-up included */
    public record SectionStart(String name, Beats start) {}

    /** @param start beats from the start, the pick-up included */
    public record SungNote(Pitch pitch, Beats start, Beats beats) {}

    /** @param start beats from the start, the pick-up included */
    public record ChordChange(Chord chord, Beats start) {}

    static SongMusic of(Song song) {
        Writing written = new Writing(song);
        Writing played = new Writing(song);
        Map<Section, SectionMusic> known = new IdentityHashMap<>();
        int bars = 0;
        for (Section section : song.sections()) {
            SectionMusic music = known.computeIfAbsent(song.written(section), its -> SectionMusic.of(its, song.head()));
            if (!section.isAgain()) {
                written.begin(section);
                music.bars().forEach(written::add);
            }
            bars += music.order().size();
            if (bars <= PlayingOrder.MOST) {
                played.begin(section);
                music.order().forEach(index -> played.add(music.bars().get(index)));
            }
        }
        return new SongMusic(written.timeline(), played.timeline());
    }

    /** A place as it is played: a whole section with its repeats, else the bars as they stand. */
    static Timeline of(SongPlace place, Song song) {
        Writing played = new Writing(song);
        played.begin(place.section());
        SectionMusic music = place.music(song);
        music.order(place).forEach(index -> played.add(music.bars().get(index)));
        return played.timeline();
    }

    /** Puts one bar behind the other. */
    private static final class Writing {
        private final Beats full;
        private final List<SungNote> notes = new ArrayList<>();
        private final List<ChordChange> chords = new ArrayList<>();
        private final List<SectionStart> sections = new ArrayList<>();
        private Beats now = Beats.ZERO;
        private Beats pickup = Beats.ZERO;
        private Chord sounding;

        Writing(Song song) {
            full = song.head().metre().bar();
        }

        void begin(Section section) {
            sections.add(new SectionStart(section.name(), now));
        }

        void add(SectionMusic.SongBar bar) {
            if (now.isZero() && bar.beats().compareTo(full) < 0) {
                pickup = bar.beats();
            }
            for (TuneBars.NotePart piece : bar.tune()) {
                note(piece);
            }
            for (SectionMusic.Struck struck : bar.chords()) {
                if (!struck.held() || !struck.chord().equals(sounding)) {
                    chords.add(new ChordChange(struck.chord(), now.plus(struck.start())));
                    sounding = struck.chord();
                }
            }
            now = now.plus(bar.beats());
        }

        private void note(TuneBars.NotePart piece) {
            int last = notes.size() - 1;
            Beats start = now.plus(piece.start());
            boolean goesOn = piece.held()
                    && last >= 0
                    && notes.get(last).pitch().equals(piece.pitch())
                    && notes.get(last).start().plus(notes.get(last).beats()).equals(start);
            if (goesOn) {
                SungNote before = notes.get(last);
                notes.set(
                        last,
                        new SungNote(
                                before.pitch(), before.start(), before.beats().plus(piece.beats())));
            } else {
                notes.add(new SungNote(piece.pitch(), start, piece.beats()));
            }
        }

        Timeline timeline() {
            return new Timeline(notes, chords, pickup, now, sections);
        }
    }
}
