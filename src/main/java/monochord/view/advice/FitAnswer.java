package monochord.view.advice;

import java.util.List;
import monochord.harmony.melody.Fit;
import monochord.harmony.melody.FitExplanation;
import monochord.harmony.melody.FitNote;
import monochord.harmony.melody.NoteChange;
import monochord.harmony.melody.NoteRole;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;
import monochord.view.Table.Column;

/**
 * A tune over chords, note by note, with a word on each that needs one.
 *
 * @param remarks what is to be known about how the tune was read
 */
public record FitAnswer(Fit fit, List<Phrase> remarks) implements Answer {
    private static final int INDENT = 2;
    private static final int PLACE = 8;
    private static final int NOTE = 10;
    private static final int CHORD = 12;
    private static final int ROLE = 14;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        remarks.forEach(remark -> text.line(remark, Style.QUIET));
        if (look.plain()) {
            fit.notes()
                    .forEach(note -> text.line(Phrase.of("{0}: {1}", fit.place(note), FitExplanation.say(note, fit))));
        } else {
            text.lines(table().text(look));
            FitExplanation.remarks(fit).forEach(text::line);
        }
        text.line(FitExplanation.summary(fit));
        if (fit.goesRound()) {
            text.line(Phrase.sentence("The tune is longer than the chords, so they go round again."));
        }
        text.line(FitExplanation.ADVICE, Style.QUIET);
        return text.build().wrapped(look.width());
    }

    private Table table() {
        Table table = Table.of(
                        Column.left(fit.progression().barred() ? Phrase.of("bar") : Phrase.of("beat"))
                                .atLeast(PLACE),
                        Column.left(Phrase.of("note")).atLeast(NOTE),
                        Column.left(Phrase.of("chord")).atLeast(CHORD),
                        Column.left(Phrase.of("role")).atLeast(ROLE),
                        Column.left())
                .indentedBy(INDENT);
        fit.notes().forEach(note -> table.row(row(note)));
        return table;
    }

    private List<Phrase> row(FitNote note) {
        return List.of(
                fit.place(note),
                pitch(note),
                note.chord().map(chord -> Phrase.of("{0}", chord)).orElse(Phrase.NOTHING),
                note.role().inWords().styled(style(note.role())),
                note.change().map(change -> Phrase.of("sing {0}", change.to())).orElse(Phrase.NOTHING));
    }

    /** {@code F5:3}; with a dot before it where the same note goes on over the next chord. */
    private static Phrase pitch(FitNote note) {
        Phrase written = note.beats().equals(Beats.ONE)
                ? Phrase.of("{0}", note.pitch())
                : Phrase.of("{0}:{1}", note.pitch(), Phrase.typed(note.beats().toString()));
        return note.held() ? Phrase.of(".{0}", written) : written;
    }

    private static Style style(NoteRole role) {
        return role == NoteRole.CLASH ? Style.WRONG : role == NoteRole.CHORD_TONE ? Style.RIGHT : Style.PLAIN;
    }

    @Override
    public void json(Json json) {
        json.put("kind", "fit")
                .put("key", fit.progression().key().toString())
                .objects(
                        "notes",
                        fit.notes(),
                        (object, note) -> object.put("pitch", note.pitch().toString())
                                .put("beat", beat(note))
                                .put("beats", number(note.beats()))
                                .put("chord", note.chord().map(Chord::toString).orElse(null))
                                .put("role", note.role().toString())
                                .put("weight", note.weight())
                                .put("held", note.held())
                                .put(
                                        "change",
                                        note.change()
                                                .map(NoteChange::to)
                                                .map(Object::toString)
                                                .orElse(null)));
        json.put("friction", fit.friction()).put("weight", fit.weight()).put("remarks", remarks);
    }

    /** Beats from the first chord, from 0; below 0 in the pick-up. */
    private double beat(FitNote note) {
        return number(note.start()) - number(fit.melody().pickup());
    }

    private static double number(Beats beats) {
        return (double) beats.numerator() / beats.denominator();
    }
}
