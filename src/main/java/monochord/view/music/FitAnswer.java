package monochord.view.music;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.melody.Fit;
import monochord.harmony.melody.FitNote;
import monochord.harmony.melody.FitWords;
import monochord.harmony.melody.NoteChange;
import monochord.harmony.melody.NoteRole;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Beats;
import monochord.theory.Chord;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;

/**
 * A tune over chords, note by note, with a word on each that needs one.
 *
 * @param remarks what is to be known about how the tune was read
 */
public record FitAnswer(Fit fit, List<String> remarks) implements Answer {
    private static final int PLACE = 8;
    private static final int NOTE = 10;
    private static final int CHORD = 12;
    private static final int ROLE = 14;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        remarks.forEach(remark -> text.line(remark, Style.QUIET));
        if (look.plain()) {
            fit.notes().forEach(note -> text.line(place(note) + ": " + FitWords.say(note, fit)));
        } else {
            text.line(StyledLine.of(
                    "  " + pad(fit.progression().barred() ? "bar" : "beat", PLACE) + pad("note", NOTE)
                            + pad("chord", CHORD) + "role",
                    Style.QUIET));
            fit.notes().forEach(note -> text.line(row(note, look)));
            said().forEach(text::line);
        }
        text.line(summary());
        if (fit.goesRound()) {
            text.line("The tune is longer than the chords, so they go round again.");
        }
        text.line(FitWords.ADVICE, Style.QUIET);
        return text.build().in(look.signs()).wrapped(look.width());
    }

    private StyledLine row(FitNote note, Look look) {
        String chord = note.chord().map(one -> one.write(Signs.MUSIC)).orElse("");
        String pitch = (note.held() ? "." : "") + note.pitch().write(Signs.MUSIC) + length(note.beats());
        String change = note.change().map(to -> to.to().write(Signs.MUSIC)).orElse("");
        return StyledLine.of("  " + pad(place(note), PLACE) + pad(pitch, NOTE) + pad(chord, CHORD))
                .plus(pad(note.role().toString(), ROLE), style(note.role()))
                .plus(change.isEmpty() ? "" : "sing " + change)
                .stripTrailing();
    }

    private static Style style(NoteRole role) {
        return role == NoteRole.CLASH ? Style.WRONG : role == NoteRole.CHORD_TONE ? Style.RIGHT : Style.PLAIN;
    }

    private static String length(Beats beats) {
        return beats.equals(Beats.ONE) ? "" : ":" + beats;
    }

    /** The bar and the beat in it, from 1, the pick-up as bar 0; without bars the beat alone: {@code 2.1}, {@code 4+1/2}. */
    private String place(FitNote note) {
        Beats pickup = fit.melody().pickup();
        boolean early = note.start().compareTo(pickup) < 0;
        Beats bar = Fit.bar(fit.melody(), fit.progression());
        Beats here = early ? note.start().plus(bar).minus(pickup) : note.start().minus(pickup);
        if (!fit.progression().barred()) {
            return beat(here);
        }
        long number = early ? -1 : here.numerator() * bar.denominator() / (here.denominator() * bar.numerator());
        return number + 1 + "." + beat(early ? here : here.minus(bar.times(number)));
    }

    private static String beat(Beats time) {
        long whole = time.numerator() / time.denominator();
        Beats rest = time.minus(Beats.of(whole));
        return whole + 1 + (rest.isZero() ? "" : "+" + rest);
    }

    /** One sentence for each note that is more than a tone of its chord, each said once. */
    private List<String> said() {
        List<String> said = new ArrayList<>();
        for (FitNote note : fit.notes()) {
            String sentence = FitWords.say(note, fit);
            if (note.role() != NoteRole.CHORD_TONE && note.role() != NoteRole.FREE && !said.contains(sentence)) {
                said.add(sentence);
            }
        }
        return said;
    }

    private String summary() {
        int clashes = fit.clashes().size();
        if (clashes == 0) {
            return "Nothing clashes.";
        }
        String notes = clashes == 1 ? "One note clashes" : Words.number(clashes) + " notes clash";
        return Character.toUpperCase(notes.charAt(0)) + notes.substring(1) + "; by beat and length that is "
                + fit.friction() + " of " + fit.weight() + ".";
    }

    private static String pad(String text, int columns) {
        int width = text.codePointCount(0, text.length());
        return width < columns ? text + " ".repeat(columns - width) : text + " ";
    }

    @Override
    public void json(Json json) {
        json.put("key", fit.progression().key().toString())
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
