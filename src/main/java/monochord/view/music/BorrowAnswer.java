package monochord.view.music;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import monochord.harmony.Borrowing;
import monochord.harmony.Borrowing.Borrowed;
import monochord.harmony.Brightness;
import monochord.harmony.after.BorrowedChordContext;
import monochord.harmony.melody.Standing;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;
import monochord.view.Table.Column;

/**
 * The chords a key can borrow.
 *
 * @param source the one parallel scale asked for, or null for all
 */
public record BorrowAnswer(Key key, ScaleKind source, List<Borrowed> chords) implements Answer {
    private static final Phrase LEFT_OUT = Phrase.sentence(
            "Left out: the sevenths and diminished chords of the farther modes, and what locrian alone gives; with a mode"
                    + " behind it, {0} lists that one whole.",
            Phrase.verb("borrow"));

    private static final int NUMERAL = 12;
    private static final int SYMBOL = 12;
    private static final int NOTES = 17;
    private static final int CHANGED = 15;
    private static final int INDENT = 2;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        if (chords.isEmpty()) {
            text.line(Phrase.sentence("{0} has nothing to borrow there: all its chords are the key's own.", key));
            return text.build().wrapped(look.width());
        }
        text.lines(look.plain() ? sentences(look) : table().text(look));
        if (source == null) {
            text.line(LEFT_OUT, Style.QUIET);
        }
        text.line(advice(), Style.QUIET);
        return text.build().wrapped(look.width());
    }

    /** What can be typed next stands as it is typed: a minor key by its short name. */
    private Phrase advice() {
        return key.isMinor()
                ? Phrase.sentence(
                        "One in full: borrow {0} in {1}m. Agree on a changed chord with the band first.",
                        example(), key.tonic())
                : Phrase.sentence(
                        "One in full: borrow {0} in {1}. Agree on a changed chord with the band first.",
                        example(), key.tonic());
    }

    private static Phrase heading(Scale scale, Key key) {
        return Phrase.of("From {0}, {1}", scale, Brightness.inWords(scale, key)).styled(Style.HEADING);
    }

    private Table table() {
        Table table = Table.of(
                        Column.left().atLeast(NUMERAL),
                        Column.left().atLeast(SYMBOL),
                        Column.left().atLeast(NOTES),
                        Column.left().atLeast(CHANGED),
                        Column.left())
                .indentedBy(INDENT);
        scales().forEach((scale, borrowed) -> {
            table.across(heading(scale, key));
            borrowed.forEach(one -> table.row(row(one)));
        });
        return table;
    }

    private List<Phrase> row(Borrowed borrowed) {
        List<Degree> rests = rests(borrowed);
        return List.of(
                Phrase.of("{0}", borrowed.numeral()),
                Phrase.of("{0}", borrowed.chord()).styled(Style.STRONG),
                Phrase.row(borrowed.chord().tones()),
                Phrase.of("changes {0}", Phrase.row(borrowed.changed())).styled(Style.QUIET),
                rests.isEmpty()
                        ? Phrase.NOTHING
                        : Phrase.of("tune on {0}", Phrase.row(rests)).styled(Style.QUIET));
    }

    private StyledText sentences(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        scales().forEach((scale, borrowed) -> {
            text.line(heading(scale, key));
            borrowed.forEach(one -> text.line(sentence(one)));
        });
        return text.build().wrapped(look.width());
    }

    private Phrase sentence(Borrowed borrowed) {
        List<Degree> rests = rests(borrowed);
        return Phrase.sentence(
                "{0} is {1}, {2}; it changes {3}; the tune may rest on {4}.",
                borrowed.numeral(),
                borrowed.chord(),
                Phrase.row(borrowed.chord().tones()),
                Phrase.row(borrowed.changed()),
                rests.isEmpty() ? Phrase.of("none of the key's notes") : Phrase.row(rests));
    }

    private List<Degree> rests(Borrowed borrowed) {
        return Standing.degrees(borrowed.chord(), key, Standing.CHORD_TONE);
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

    @Override
    public void json(Json json) {
        json.put("kind", "borrow").put("key", key.toString()).objects("chords", chords, (object, borrowed) -> {
            new ChordRow(borrowed.chord(), borrowed.numeral(), key).json(object);
            object.put("changed", borrowed.changed());
            BorrowedAnswer.setting(object, BorrowedChordContext.of(borrowed, key));
        });
        if (source == null) {
            json.put("remark", LEFT_OUT.toString());
        }
    }
}
