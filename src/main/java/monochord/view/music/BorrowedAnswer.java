package monochord.view.music;

import java.util.List;
import java.util.function.Function;
import monochord.harmony.Borrowing.Borrowed;
import monochord.harmony.after.BorrowedChordContext;
import monochord.harmony.after.Continuation;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Degree;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;

/** One borrowed chord: where it comes from, how it is reached and left, and what it does to the tune. */
public record BorrowedAnswer(Key key, Borrowed borrowed) implements Answer {
    @Override
    public StyledText text(Look look) {
        BorrowedChordContext setting = BorrowedChordContext.of(borrowed, key);
        StyledText.Builder text = StyledText.builder();
        text.line(StyledLine.of(borrowed.numeral().write(Signs.MUSIC), Style.STRONG)
                .plus(" in " + key.write(Signs.MUSIC) + " is ")
                .plus(borrowed.chord().write(Signs.MUSIC), Style.STRONG)
                .plus(", spelled " + Words.joined(borrowed.chord().tones(), " ", note -> note.write(Signs.MUSIC))
                        + "."));
        text.line(origin() + changes());
        ways(text, "Reached", setting.approach(), Continuation::start);
        ways(text, "Left", setting.exit(), Continuation::numeral);
        text.line(tune(setting));
        text.line(
                "The rule about the tune is common practice, no source. More ways on: after "
                        + borrowed.numeral().write(Signs.MUSIC) + ".",
                Style.QUIET);
        text.line("A changed chord is agreed with the band before anyone plays it.", Style.QUIET);
        return text.build().in(look.signs()).wrapped(look.width());
    }

    private String origin() {
        List<Scale> sources = borrowed.sources();
        return sources.isEmpty()
                ? "No parallel mode holds it; it"
                : "From " + Words.sources(sources, Signs.MUSIC) + ", " + Brightness.inWords(sources.get(0), key)
                        + "; it";
    }

    private String changes() {
        List<String> changes = borrowed.changed().stream()
                .map(degree -> key.note(degree.number()).write(Signs.MUSIC) + " into "
                        + key.note(degree).write(Signs.MUSIC))
                .toList();
        return " turns " + Words.listed(changes) + ".";
    }

    private static void ways(
            StyledText.Builder text, String label, List<Continuation> ways, Function<Continuation, Numeral> other) {
        for (Continuation way : ways) {
            String name = other.apply(way).write(Signs.MUSIC);
            boolean left = label.equals("Left");
            text.line((left ? "Left to " : "Reached from ") + name + ": " + way.reason() + ".");
        }
    }

    private String tune(BorrowedChordContext setting) {
        return "Under the tune: " + said(setting.rests(), "rests", "rest")
                + said(setting.colours(), "colours", "colour")
                + said(setting.fights(), "clashes on a strong beat", "clash on a strong beat")
                        .replace("; ", ".");
    }

    private String said(List<Degree> degrees, String one, String many) {
        List<String> notes = degrees.stream()
                .map(degree ->
                        degree.write(Signs.MUSIC) + " (" + key.note(degree).write(Signs.MUSIC) + ")")
                .toList();
        return notes.isEmpty() ? "" : Words.listed(notes) + " " + (notes.size() == 1 ? one : many) + "; ";
    }

    @Override
    public void json(Json json) {
        json.put("key", key.toString()).objects("chords", List.of(borrowed), (object, one) -> {
            new ChordRow(one.chord(), one.numeral(), key).json(object);
            object.put("changed", one.changed());
            setting(object, BorrowedChordContext.of(one, key));
        });
    }

    static void setting(Json object, BorrowedChordContext setting) {
        object.put(
                        "approach",
                        setting.approach().stream().map(Continuation::start).toList())
                .put("exit", setting.exit().stream().map(Continuation::numeral).toList())
                .put("welcomes", setting.welcomes())
                .put("fights", setting.fights());
    }
}
