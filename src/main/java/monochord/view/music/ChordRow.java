package monochord.view.music;

import java.util.List;
import monochord.harmony.Borrowing;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Degree;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.Signs;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;

/** A chord in a key with all its names, as a row of a table or an answer of its own. */
public record ChordRow(Chord chord, Numeral numeral, Key key) {
    public static ChordRow of(Chord chord, Key key) {
        return new ChordRow(chord, Numeral.of(chord, key), key);
    }

    public static ChordRow of(Numeral numeral, Key key) {
        return new ChordRow(numeral.in(key), numeral, key);
    }

    public List<Scale> sources() {
        return Borrowing.borrowedFrom(chord, key);
    }

    String number(Signs signs) {
        return BandNumber.write(chord, key, signs);
    }

    /** The degrees of its tones in the key: {@code ♭6 1 ♭3}. */
    String degrees(Look look) {
        return Words.joined(chord.tones(), " ", tone -> key.degreeOf(tone).write(look.signs()));
    }

    /** Where the chord comes from, as the end of a sentence about it. */
    String origin(Look look) {
        if (key.isOwn(chord)) {
            return "one of the key's own chords";
        }
        if (numeral.target() != null) {
            return "it leads to " + numeral.target().in(key).write(look.signs());
        }
        List<Scale> sources = sources();
        return sources.isEmpty()
                ? "in no parallel mode: it brings the " + outside()
                : "borrowed from " + Words.sources(sources, look.signs());
    }

    private String outside() {
        List<String> words = Borrowing.borrowed(chord, key).changed().stream()
                .map(Degree::inWords)
                .map(word -> word.contains(" ") ? word : "raised " + word)
                .toList();
        return Words.listed(words);
    }

    void json(Json json) {
        json.put("numeral", numeral.toString())
                .put("number", number(Signs.ASCII))
                .put("symbol", chord.toString())
                .put("root", chord.root().toString())
                .put("bass", chord.bass().toString())
                .put("tones", chord.tones())
                .put("borrowedFrom", sources())
                .put("key", key.toString());
    }
}
