package monochord.view.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import monochord.harmony.melody.Fit;
import monochord.harmony.melody.FitNote;
import monochord.lesson.TuneExcerpt;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.Beats;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;

/** Some bars of a tune, a column a note: the chord where it begins, the note with its beats, its degree, the word. */
public record TuneAnswer(TuneExcerpt tune) implements Answer {
    private static final int INDENT = 2;
    /** Chord, note and degree. */
    private static final int WITHOUT_WORDS = 3;

    private static final Phrase BAR_LINE = Phrase.typed("|").styled(Style.QUIET);

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(Phrase.of("{0}: {1}, in {2}", Phrase.typed(tune.title()), tune.place(), tune.key()), Style.HEADING);
        Fit fit = Fit.of(tune.melody(), tune.chords());
        if (look.plain()) {
            fit.notes().forEach(note -> text.line(said(note, fit)));
            return text.build().wrapped(look.width());
        }
        return text.build().wrapped(look.width()).plus(bars(fit, look));
    }

    /** {@code bar 1.3: E5:2, degree 3, over C, "dear"}, as a screen reader says it. */
    private Phrase said(FitNote note, Fit fit) {
        Phrase over = note.chord()
                .map(chord ->
                        Phrase.of("{0}: {1}, degree {2}, over {3}", fit.place(note), pitch(note), degree(note), chord))
                .orElseGet(() -> Phrase.of("{0}: {1}, degree {2}", fit.place(note), pitch(note), degree(note)));
        Phrase word = word(note);
        return word.isEmpty() ? over : Phrase.of("{0}, \"{1}\"", over, word);
    }

    /** As many bars side by side as the width takes, the next ones below them. */
    private StyledText bars(Fit fit, Look look) {
        List<List<List<Phrase>>> ahead = columns(fit);
        StyledText text = StyledText.EMPTY;
        int from = 0;
        while (from < ahead.size()) {
            int to = from + 1;
            while (to < ahead.size()
                    && table(ahead.subList(from, to + 1))
                                    .inBlocks(look, 0)
                                    .lines()
                                    .size()
                            <= rows()) {
                to++;
            }
            StyledText.Builder block = StyledText.builder();
            (from == 0 ? block : block.gap())
                    .lines(table(ahead.subList(from, to)).inBlocks(look, 0));
            text = text.plus(block.build());
            from = to;
        }
        return text;
    }

    private int rows() {
        return tune.words().isEmpty() ? WITHOUT_WORDS : WITHOUT_WORDS + 1;
    }

    /** Bar by bar, a column for each note and for the bar line before it. */
    private List<List<List<Phrase>>> columns(Fit fit) {
        List<List<List<Phrase>>> bars = new ArrayList<>();
        long bar = -1;
        FitNote before = null;
        for (FitNote note : fit.notes()) {
            long here = bar(note, fit);
            if (here != bar) {
                bars.add(new ArrayList<>());
                if (before != null) {
                    bars.get(bars.size() - 1).add(List.of(Phrase.NOTHING, BAR_LINE, Phrase.NOTHING, Phrase.NOTHING));
                }
            }
            boolean begins = before == null || !Objects.equals(before.span(), note.span());
            bars.get(bars.size() - 1)
                    .add(List.of(begins ? chord(note) : Phrase.NOTHING, pitch(note), degree(note), word(note)));
            bar = here;
            before = note;
        }
        return bars;
    }

    private Table table(List<List<List<Phrase>>> bars) {
        List<List<Phrase>> columns = bars.stream().flatMap(List::stream).toList();
        Table table = Table.of(columns.size()).indentedBy(INDENT);
        for (int row = 0; row < rows(); row++) {
            int at = row;
            table.row(columns.stream().map(column -> column.get(at)).toList());
        }
        return table;
    }

    /** From 1; 0 in the pick-up. */
    private static long bar(FitNote note, Fit fit) {
        Beats pickup = fit.melody().pickup();
        if (note.start().compareTo(pickup) < 0) {
            return 0;
        }
        Beats bar = Fit.bar(fit.melody(), fit.progression());
        Beats start = note.start().minus(pickup);
        return 1 + start.numerator() * bar.denominator() / (start.denominator() * bar.numerator());
    }

    private static Phrase chord(FitNote note) {
        return note.chord()
                .map(chord -> Phrase.of("{0}", chord).styled(Style.STRONG))
                .orElse(Phrase.NOTHING);
    }

    /** {@code F5:3}; with a dot before it where the same note goes on over the next chord. */
    private static Phrase pitch(FitNote note) {
        Phrase written = note.beats().equals(Beats.ONE)
                ? Phrase.of("{0}", note.pitch())
                : Phrase.of("{0}:{1}", note.pitch(), Phrase.typed(note.beats().toString()));
        return note.held() ? Phrase.of(".{0}", written) : written;
    }

    private Phrase degree(FitNote note) {
        return Phrase.of("{0}", tune.key().degreeOf(note.pitch().name()));
    }

    private Phrase word(FitNote note) {
        return tune.words().isEmpty() || note.held()
                ? Phrase.NOTHING
                : Phrase.typed(tune.words().get(note.note()));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "tune")
                .put("title", tune.title())
                .put("key", tune.key().toString())
                .put("melody", tune.melody().toString())
                .put("chords", tune.chords().toString())
                .put("words", tune.words());
    }
}
