package monochord.paper;

import java.util.List;
import monochord.harmony.Progression;
import monochord.song.SongMetre;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Interval;

/**
 * What a band reads: the bars of a song, section by section, with what was changed in them.
 *
 * @param title that of the song; of a progression nothing
 * @param tempo beats in a minute; 0 where none is said
 * @param style how it is played, or nothing
 */
public record Chart(
        Phrase title,
        String by,
        Key key,
        SongMetre metre,
        int tempo,
        String style,
        List<ChartSection> sections,
        List<ChartChange> changes) {
    /**
     * A section.
     *
     * @param name perhaps nothing
     * @param again whether it is played as it was written out before, and has no bars here
     */
    public record ChartSection(String name, boolean again, List<ChartBar> bars) {
        public ChartSection {
            bars = List.copyOf(bars);
        }
    }

    /**
     * A change, as it is told at the foot.
     *
     * @param number with which its bars are marked
     * @param from the chords that were there
     * @param degrees of the chords that are there now
     * @param agreed whether the band has agreed to it
     */
    public record ChartChange(int number, Phrase from, Phrase degrees, String why, boolean agreed) {}

    public Chart {
        sections = List.copyOf(sections);
        changes = List.copyOf(changes);
    }

    /** A progression by itself, in common time. */
    public static Chart of(Progression progression) {
        ChartSection all = new ChartSection("", false, ChartBar.of(progression));
        return new Chart(Phrase.NOTHING, "", progression.key(), SongMetre.COMMON, 0, "", List.of(all), List.of());
    }

    /** In another key of the same mode: every chord is moved as its tonic is, so that it is spelled in that key. */
    Chart in(Key other) {
        Interval interval = key.tonic().to(other.tonic());
        List<ChartSection> moved = sections.stream()
                .map(section -> new ChartSection(
                        section.name,
                        section.again,
                        section.bars.stream().map(bar -> bar.plus(interval)).toList()))
                .toList();
        List<ChartChange> told = changes.stream()
                .map(change -> new ChartChange(
                        change.number,
                        ChartSong.moved(change.from, interval),
                        change.degrees,
                        change.why,
                        change.agreed))
                .toList();
        return new Chart(title, by, other, metre, tempo, style, moved, told);
    }

    /** All bars that are written out, in order. */
    public List<ChartBar> bars() {
        return sections.stream().flatMap(section -> section.bars().stream()).toList();
    }
}
