package monochord.view.music;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import monochord.harmony.Borrowing;
import monochord.harmony.Borrowing.Borrowed;
import monochord.harmony.after.BorrowedChordContext;
import monochord.harmony.melody.Standing;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;

/**
 * The chords a key can borrow.
 *
 * @param source the one parallel scale asked for, or null for all
 */
public record BorrowAnswer(Key key, ScaleKind source, List<Borrowed> chords) implements Answer {
    private static final int NUMERAL = 12;
    private static final int SYMBOL = 12;
    private static final int NOTES = 15;
    private static final int CHANGED = 7;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        if (chords.isEmpty()) {
            text.line(key.write(look.signs()) + " has nothing to borrow there: all its chords are the key's own.");
            return text.build().wrapped(look.width());
        }
        scales().forEach((scale, borrowed) -> {
            text.line("From " + scale.write(look.signs()) + ", " + Brightness.inWords(scale, key), Style.HEADING);
            borrowed.forEach(one -> text.line(row(one, look)));
        });
        text.line(
                "One in full: borrow " + example().write(look.signs()) + " in "
                        + key.tonic().write(look.signs()) + (key.isMinor() ? "m" : "")
                        + ". Agree on a changed chord with the band first.",
                Style.QUIET);
        return text.build().wrapped(look.width());
    }

    /** A chord on a root from outside the key, if there is one. */
    private Numeral example() {
        return chords.stream()
                .filter(one -> !key.holds(one.chord().root()))
                .findFirst()
                .orElse(chords.get(0))
                .numeral();
    }

    /** The chords under the scale they come from, the brightest first. */
    private Map<Scale, List<Borrowed>> scales() {
        Comparator<Scale> darker = Comparator.comparingInt(scale -> -Borrowing.brightness(scale, key));
        Map<Scale, List<Borrowed>> scales = new TreeMap<>(darker.thenComparing(Scale::toString));
        chords.forEach(one ->
                scales.computeIfAbsent(origin(one), scale -> new ArrayList<>()).add(one));
        return scales;
    }

    private Scale origin(Borrowed borrowed) {
        return source != null
                ? new Scale(key.tonic(), source)
                : borrowed.sources().contains(key.parallel().scale())
                        ? key.parallel().scale()
                        : borrowed.sources().get(0);
    }

    private StyledLine row(Borrowed borrowed, Look look) {
        String rests = Words.joined(
                Standing.degrees(borrowed.chord(), key, Standing.CHORD_TONE),
                " ",
                degree -> degree.write(look.signs()));
        String numeral = look.signs().isAscii()
                ? Signs.toAscii(borrowed.numeral().write(Signs.ASCII))
                : borrowed.numeral().write(Signs.MUSIC);
        String symbol = borrowed.chord().write(look.signs());
        String notes = Words.notes(borrowed.chord().tones(), look);
        String changed = Words.joined(borrowed.changed(), " ", degree -> degree.write(look.signs()));
        return look.plain()
                ? StyledLine.of(numeral + " is " + symbol + ", " + notes + "; it changes " + changed
                        + "; the tune may rest on " + (rests.isEmpty() ? "none of the key's notes" : rests) + ".")
                : StyledLine.of("  " + pad(numeral, NUMERAL))
                        .plus(pad(symbol, SYMBOL), Style.STRONG)
                        .plus(pad(notes, NOTES))
                        .plus("  changes " + pad(changed, CHANGED), Style.QUIET)
                        .plus(rests.isEmpty() ? "" : "tune on " + rests, Style.QUIET);
    }

    private static String pad(String text, int columns) {
        int width = text.codePointCount(0, text.length());
        return width < columns ? text + " ".repeat(columns - width) : text + " ";
    }

    @Override
    public void json(Json json) {
        json.put("key", key.toString()).objects("chords", chords, (object, borrowed) -> {
            new ChordRow(borrowed.chord(), borrowed.numeral(), key).json(object);
            object.put("changed", borrowed.changed());
            BorrowedAnswer.setting(object, BorrowedChordContext.of(borrowed, key));
        });
    }
}
