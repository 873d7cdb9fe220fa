package monochord.paper;

import java.util.List;
import monochord.paper.page.Page;
import monochord.paper.page.PageFlow;
import monochord.paper.page.PageSize;
import monochord.paper.page.PageText;
import monochord.song.Song;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.drawn.Picture;
import monochord.view.staff.Engraving;
import monochord.view.staff.StaffMusic;

/** A song for one player on a staff, with tune, chord symbols and words, to print. */
public final class LeadSheetPages {
    /** How long a staff space is, in millimetres. */
    private static final double SPACE = 1.75;

    private static final double LINE_GAP = 4;

    private LeadSheetPages() {}

    /** All pages. */
    public static List<Page> of(Song song, PlayerPart part, PageSize size, Reader reader) {
        PageFlow flow = new PageFlow(size, reader);
        flow.keep(PageText.title(), part.title(), 0);
        if (!part.chart().by().isEmpty()) {
            flow.keep(PageText.body(), Phrase.typed(part.chart().by()), 0.5);
        }
        flow.keep(PageText.name(), ChartSheet.heading(part), 1.5);
        flow.keep(PageText.body(), ChartSheet.played(part.chart()), 0.5);
        int octaves = SongOnStaff.octaves(song, part);
        if (octaves != 0) {
            flow.keep(PageText.small(), moved(octaves), 0.5);
        }
        StaffMusic music = SongOnStaff.of(song, part);
        for (Picture line : Engraving.lines(music, size.across() / SPACE, reader)) {
            flow.add(line.scaled(SPACE), LINE_GAP);
        }
        return flow.pages(Phrase.of("{0}: {1}", part.title(), Phrase.typed(part.name())));
    }

    private static Phrase moved(int octaves) {
        return octaves > 0
                ? Phrase.counted(
                        octaves,
                        "The tune is written {0} octave higher than it sounds among the others.",
                        "The tune is written {0} octaves higher than it sounds among the others.",
                        octaves)
                : Phrase.counted(
                        -octaves,
                        "The tune is written {0} octave lower than it sounds among the others.",
                        "The tune is written {0} octaves lower than it sounds among the others.",
                        -octaves);
    }
}
