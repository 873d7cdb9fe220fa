package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.song.ChordBars;
import monochord.song.Section;
import monochord.song.SectionMusic;
import monochord.song.Song;
import monochord.song.SongChange;
import monochord.song.SongPlace;
import monochord.song.WrittenBar;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/** A song as a chart: its sections in playing order, those that come again by name alone; its own lines and signs. */
public final class ChartSong {
    private static final Pattern CUE = Pattern.compile("\"([^\"]*)\"");
    /** A reason that begins so says that the band has agreed. */
    private final Song song;

    private final List<Chart.ChartChange> changes = new ArrayList<>();

    private ChartSong(Song song) {
        this.song = song;
    }

    public static Chart of(Song song) {
        return new ChartSong(song).chart();
    }

    private Chart chart() {
        List<Chart.ChartSection> sections = new ArrayList<>();
        for (Section section : song.sections()) {
            if (section.isAgain()) {
                if (song.section(section.name()).isPresent()) {
                    sections.add(new Chart.ChartSection(section.name(), true, List.of()));
                }
            } else if (!section.chords().isEmpty()) {
                sections.add(new Chart.ChartSection(section.name(), false, bars(section)));
            }
        }
        return new Chart(
                Phrase.typed(song.head().title()),
                song.head().by(),
                song.head().key(),
                song.head().metre(),
                song.head().tempo(),
                song.head().swing(),
                sections,
                changes);
    }

    private List<ChartBar> bars(Section section) {
        List<WrittenBar> written = section.chords();
        List<SectionMusic.SongBar> music = SectionMusic.of(section, song.head()).bars();
        boolean pickup = music.size() > written.size() && music.get(0).slots().isEmpty();
        int skipped = pickup ? 1 : 0;
        List<ChartBar> bars = new ArrayList<>();
        for (int i = 0; i < written.size(); i++) {
            List<ChordBars.Slot> slots =
                    i + skipped < music.size() ? music.get(i + skipped).slots() : List.of();
            bars.add(bar(written.get(i), slots));
        }
        for (SongChange change : song.changes()) {
            mark(change, section, bars);
        }
        return bars;
    }

    private ChartBar bar(WrittenBar bar, List<ChordBars.Slot> slots) {
        Matcher cue = CUE.matcher(bar.text());
        ChartBar.BarSigns signs = new ChartBar.BarSigns(
                bar.text().strip().equals("%"), bar.opens(), bar.times(), bar.ending(), bar.endsPart(), bar.endsLine());
        List<ChartBar.ChartChord> chords = slots.stream()
                .map(slot -> new ChartBar.ChartChord(
                        slot.chord().map(event -> event.chord()),
                        slot.chord().map(event -> event.numeral()),
                        slot.shares(),
                        slot.held(),
                        slot.hit()))
                .toList();
        return new ChartBar(chords, signs, cue.find() ? cue.group(1) : "", 0);
    }

    /** Marks the bars of a change if it was made in this section. */
    private void mark(SongChange change, Section section, List<ChartBar> bars) {
        Optional<SongPlace> place = place(change.place());
        if (place.isEmpty() || place.get().section().line() != section.line()) {
            return;
        }
        int number = changes.size() + 1;
        List<Chord> now = new ArrayList<>();
        int before = Math.max(0, bars.size() - place.get().music(song).count());
        for (int i = place.get().first() + before; i <= Math.min(place.get().last() + before, bars.size() - 1); i++) {
            ChartBar bar = bars.get(i);
            bars.set(i, new ChartBar(bar.chords(), bar.signs(), bar.cue(), number));
            bar.chords().forEach(chord -> chord.chord().ifPresent(now::add));
        }
        List<Phrase> degrees = now.stream()
                .distinct()
                .map(chord ->
                        Phrase.of("{0}", Numeral.onDegree(chord, song.head().key())))
                .toList();
        changes.add(new Chart.ChartChange(
                number,
                moved(Phrase.typed(change.from()), Interval.UNISON),
                Phrase.row(degrees),
                change.reason(),
                change.isAgreed()));
    }

    private Optional<SongPlace> place(String text) {
        try {
            return SongPlace.find(text, song).map(SongPlace.Found::place);
        } catch (Unreadable noSuchBar) {
            return Optional.empty();
        }
    }

    /** Chords of a text, moved; what is no chord stays as it was typed. */
    static Phrase moved(Phrase text, Interval interval) {
        List<Phrase> words = new ArrayList<>();
        for (String word : text.toString().split(" ")) {
            words.add(moved(word, interval));
        }
        return Phrase.row(words);
    }

    private static Phrase moved(String word, Interval interval) {
        try {
            return Phrase.of("{0}", Chord.parse(word).plus(interval));
        } catch (Unreadable noChord) {
            return Phrase.typed(word);
        }
    }
}
