package monochord.song;

import java.util.List;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.theory.note.Beats;

/** Finds what does not fit together in a song that was read. */
final class SongCheck {
    private final Song song;
    private final List<SongFault> faults;

    private SongCheck(Song song, List<SongFault> faults) {
        this.song = song;
        this.faults = faults;
    }

    static void of(Song song, List<SongFault> faults) {
        SongCheck check = new SongCheck(song, faults);
        song.sections().forEach(check::section);
    }

    private void section(Section section) {
        if (section.isAgain()) {
            again(section);
            return;
        }
        ChordBars.read(section.chords(), song.head().key(), faults);
        List<TuneBars.TuneBar> tune = TuneBars.read(section.tune(), faults);
        Beats full = song.head().metre().bar();
        for (int i = 0; i < tune.size() && !full.isZero(); i++) {
            length(section.tune(), i, tune.get(i).beats(), full);
        }
        int chords = section.chords().size();
        int bars = tune.size() - SectionMusic.pickupBars(section.chords(), tune, song.head());
        boolean open = Stream.concat(section.tune().stream(), section.chords().stream())
                .anyMatch(bar -> bar.text().contains("...") || bar.text().contains("…"));
        if (chords > 0 && bars > 0 && bars != chords && !open) {
            WrittenBar.Place place = section.tune().get(0).place();
            fault(
                    place.line(),
                    place.column(),
                    Phrase.of("the tune has {0} bars and the chords have {1}", bars, chords),
                    Phrase.of("write as many, or end the shorter with {0}", Phrase.typed("...")));
        }
    }

    private void again(Section section) {
        boolean before = song.sections().stream()
                .anyMatch(other -> other.line() < section.line()
                        && other.name().equalsIgnoreCase(section.name())
                        && !other.isAgain());
        if (!before) {
            fault(
                    section.line(),
                    1,
                    Phrase.of("nothing is written for \"{0}\"", Phrase.quoted(section.name())),
                    Phrase.of("write a block of chords below it, or above it the section that is played again"));
        }
    }

    /** A bar may be short at either end of its block and where it is split by a repeat. */
    private void length(List<WrittenBar> written, int index, Beats beats, Beats full) {
        boolean isSplit = split(written, index)
                || index > 0 && written.get(index - 1).times() > 0
                || index + 1 < written.size() && split(written, index + 1);
        boolean mayBeShort = index == 0 || index + 1 == written.size() || isSplit;
        boolean isOpen = written.get(index).text().contains("...")
                || written.get(index).text().contains("…");
        int difference = beats.compareTo(full);
        if (!isOpen && !beats.isZero() && (difference > 0 || difference < 0 && !mayBeShort)) {
            WrittenBar.Place place = written.get(index).place();
            fault(
                    place.line(),
                    place.column(),
                    Phrase.of(
                            "bar {0} has {1} quarters where {2} has {3}",
                            index + 1,
                            Phrase.quoted(beats.toString()),
                            Phrase.typed(song.head().metre().toString()),
                            Phrase.quoted(full.toString())),
                    Phrase.of("make the lengths of its notes come to {0}", Phrase.quoted(full.toString())));
        }
    }

    private static boolean split(List<WrittenBar> written, int index) {
        return SectionMusic.hasSign(written.get(index)) || written.get(index).endsPart();
    }

    private void fault(int line, int column, Phrase what, Phrase instead) {
        faults.add(new SongFault(line, column, what, instead));
    }
}
