package monochord.view.music;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import monochord.harmony.Progression;
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
final class TuneOverlay {
    private static final int CHORD = 10;

    private TuneOverlay() {}

    /** Nothing where there is no tune. */
    static StyledText text(Recolour recolour, Idea change, Look look) {
        return recolour.melody()
                .map(tune -> table(Fit.of(tune, change.progression())).text(look))
                .orElse(StyledText.EMPTY);
    }

    private static Table table(Fit fit) {
        Table table = Table.of(
                Column.left(fit.progression().barred() ? Phrase.of("bar") : Phrase.NOTHING),
                Column.left(Phrase.of("chord")).atLeast(CHORD),
                Column.left(Phrase.of("tune")));
        TreeMap<Integer, List<Phrase>> byChord = new TreeMap<>();
        List<FitNote> notes = fit.notes();
        int number = -1;
        Object last = null;
        List<FitNote> firsts = new ArrayList<>();
        for (FitNote note : notes) {
            if (!java.util.Objects.equals(note.span(), last) || number < 0) {
                number++;
                last = note.span();
                firsts.add(note);
            }
            byChord.computeIfAbsent(number, any -> new ArrayList<>()).add(pitch(note));
        }
        for (int i = 0; i < firsts.size(); i++) {
            FitNote first = firsts.get(i);
            table.row(
                    bar(first, fit),
                    first.chord()
                            .map(chord -> Phrase.of("{0}", chord).styled(Style.STRONG))
                            .orElse(Phrase.NOTHING),
                    Phrase.row(byChord.get(i)));
        }
        return table;
    }

    private static Phrase bar(FitNote note, Fit fit) {
        if (!fit.progression().barred() || note.span() == null) {
            return Phrase.NOTHING;
        }
        Progression chords = fit.progression();
        Beats bar = Fit.bar(fit.melody(), chords);
        Beats start = note.span().start();
        long number = 1 + start.numerator() * bar.denominator() / (start.denominator() * bar.numerator());
        return Phrase.of("{0}", (int) number);
    }

    private static Phrase pitch(FitNote note) {
        Phrase written = note.beats().equals(Beats.ONE)
                ? Phrase.of("{0}", note.pitch())
                : Phrase.of("{0}:{1}", note.pitch(), Phrase.typed(note.beats().toString()));
        Phrase tied = note.held() ? Phrase.of(".{0}", written) : written;
        return note.clashes() ? tied.styled(Style.WRONG) : tied;
    }
}
