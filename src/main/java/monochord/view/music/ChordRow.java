package monochord.view.music;

import java.util.List;
import monochord.harmony.ChordOrigin;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.note.Signs;
import monochord.view.Json;

/** A chord in a key with all its names, as a row of a table or an answer of its own. */
public record ChordRow(Chord chord, Numeral numeral, Key key) {
    public static ChordRow of(Chord chord, Key key) {
        return new ChordRow(chord, Numeral.of(chord, key), key);
    }

    public static ChordRow of(Numeral numeral, Key key) {
        return new ChordRow(numeral.in(key), numeral, key);
    }

    public List<Scale> sources() {
        return ChordOrigin.sources(chord, key);
    }

    /** The degrees of its tones in the key: {@code ♭6 1 ♭3}. */
    Phrase degrees() {
        return Phrase.row(chord.tones().stream().map(key::degreeOf).toList());
    }

    /** Where the chord comes from, as the end of a sentence about it. */
    Phrase origin() {
        return ChordOrigin.of(chord, numeral, key);
    }

    void json(Json json) {
        json.put("numeral", numeral.toString())
                .put("number", BandNumber.write(chord, key, Signs.ASCII))
                .put("symbol", chord.toString())
                .put("root", chord.root().toString())
                .put("bass", chord.bass().toString())
                .put("tones", chord.tones())
                .put("borrowedFrom", sources())
                .put("key", key.toString());
    }
}
