package monochord.view.music;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import monochord.harmony.Progression;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.BandNumber;
import monochord.theory.Key;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;

/** A key: its signature, its notes, its own triads, its neighbours. */
public record KeyAnswer(Key key) implements Answer {
    private static final int DEGREES = 7;
    private static final int COLUMN = 8;

    @Override
    public StyledText text(Look look) {
        Signs signs = look.signs();
        Progression triads = triads();
        return StyledText.builder()
                .line(StyledLine.of(key.write(signs), Style.STRONG).plus(": " + signature(look)))
                .line("Scale:    " + Words.notes(key.scale().tones(), look))
                .line("Triads:   " + columns(triads.symbols(signs), look))
                .line("Numerals: " + columns(triads.numerals(signs), look))
                .line("Relative: " + key.relative().write(signs) + ", the same notes.")
                .line("Parallel: " + key.parallel().write(signs) + ", the same tonic; borrowed chords live there.")
                .build()
                .wrapped(look.width());
    }

    /** Words in columns, so that each triad stands over its numeral where the width allows. */
    private static String columns(String words, Look look) {
        int column = look.width() > (DEGREES + 1) * COLUMN && !look.plain() ? COLUMN : 0;
        return Arrays.stream(words.split(" "))
                .map(word -> word + " ".repeat(Math.max(1, column - word.codePointCount(0, word.length()))))
                .collect(Collectors.joining())
                .strip();
    }

    private String signature(Look look) {
        int count = Math.abs(key.signature());
        if (count == 0) {
            return "no sharps or flats.";
        }
        String kind = key.signature() > 0 ? "sharp" : "flat";
        List<String> notes = key.signatureNotes().stream()
                .map(note -> note.write(look.signs()))
                .toList();
        return key.isInUse()
                ? Words.number(count) + " " + kind + (count == 1 ? ", " : "s, ") + Words.listed(notes) + "."
                : "more than seven " + kind + "s, so no signature is printed for it.";
    }

    private Progression triads() {
        String numbers = String.join(
                " ",
                IntStream.rangeClosed(1, DEGREES).mapToObj(Integer::toString).toList());
        return Progression.parse(numbers, key);
    }

    @Override
    public void json(Json json) {
        Progression triads = triads();
        json.put("kind", "key")
                .put("key", key.toString())
                .put("signature", key.signature())
                .put("tones", key.scale().tones())
                .put("triads", triads.chords())
                .put(
                        "numbers",
                        triads.chords().stream()
                                .map(chord -> BandNumber.write(chord, key, Signs.ASCII))
                                .toList())
                .put("relative", key.relative().toString())
                .put("parallel", key.parallel().toString());
    }
}
