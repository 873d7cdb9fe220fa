package monochord.view.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import monochord.harmony.colour.Idea;
import monochord.harmony.colour.Recolour;
import monochord.harmony.melody.Fit;
import monochord.harmony.melody.FitNote;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.Beats;
import monochord.view.Look;
import monochord.view.Table;
import monochord.view.Table.Column;

/** The tune under the chords, chord by chord, so that a bar that has slipped is seen. */
public final class TuneOverlay {
    private static final int CHORD = 10;

    private TuneOverlay() {}

    /** Nothing where there is no tune. */
    static StyledText text(Recolour recolour, Idea change, Look look) {
        return recolour.melody()
                .map(tune -> StyledText.builder()
                        .gap()
                        .lines(table(Fit.of(tune, change.progression())).text(look))
                        .build())
                .orElse(StyledText.EMPTY);
    }

    private static Table table(Fit fit) {
        Table table = Table.of(
                Column.left(fit.progression().barred() ? Phrase.of("bar") : Phrase.NOTHING),
                Column.left(Phrase.of("chord")).atLeast(CHORD),
                Column.left(Phrase.of("tune")));
        long bar = 0;
        for (List<FitNote> over : byChord(fit.notes())) {
            FitNote first = over.get(0);
            long here = bar(first, fit);
            table.row(
                    here == bar ? Phrase.NOTHING : Phrase.of("{0}", (int) here),
                    first.chord()
                            .map(chord -> Phrase.of("{0}", chord).styled(Style.STRONG))
                            .orElse(Phrase.NOTHING),
                    Phrase.row(over.stream().map(TuneOverlay::pitch).toList()));
            bar = here;
        }
        return table;
    }

    /** The notes over each chord together; those of the pick-up first. */
    private static List<List<FitNote>> byChord(List<FitNote> notes) {
        List<List<FitNote>> groups = new ArrayList<>();
        for (FitNote note : notes) {
            List<FitNote> last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
            if (last != null && Objects.equals(last.get(0).span(), note.span())) {
                last.add(note);
            } else {
                groups.add(new ArrayList<>(List.of(note)));
            }
        }
        return groups;
    }

    /** The number of the bar in which the chord begins, from 1; 0 without bars and before the first chord. */
    private static long bar(FitNote note, Fit fit) {
        if (!fit.progression().barred() || note.span() == null) {
            return 0;
        }
        Beats bar = Fit.bar(fit.melody(), fit.progression());
        Beats start = note.span().start();
        return 1 + start.numerator() * bar.denominator() / (start.denominator() * bar.numerator());
    }

    private static Phrase pitch(FitNote note) {
        Phrase written = note.beats().equals(Beats.ONE)
                ? Phrase.of("{0}", note.pitch())
                : Phrase.of("{0}:{1}", note.pitch(), Phrase.typed(note.beats().toString()));
        Phrase tied = note.held() ? Phrase.of(".{0}", written) : written;
        return note.clashes() ? tied.styled(Style.WRONG) : tied;
    }
}
