package monochord.harmony.key;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.NoteName;

/**
 * Rows of chords that go round and have a name in textbooks; any chord of them may come first.
 *
 * <p>Source: Open Music Theory, version 2 (Gotham and others), pages "4-chord-schemas", "modal-schemas" (M. Lavengood),
 * "puff-schemas" and "classical-schemas", CC BY-SA 4.0. The names are the textbook's.
 */
enum LoopSchema {
    DOO_WOP(Phrase.of("doo-wop"), "I-vi-IV-V", "I-vi-ii-V"),
    SINGER_SONGWRITER(Phrase.of("singer/songwriter"), "I-V-vi-IV"),
    HOPSCOTCH(Phrase.of("hopscotch"), "IV-V-vi-I", "IV-III-vi-I"),
    PUFF(Phrase.of("puff"), "I-iii-IV"),
    DOUBLE_PLAGAL(Phrase.of("double plagal"), "I-bVII-IV"),
    EXTENDED_PLAGAL(Phrase.of("extended plagal"), "I-bVI-bIII-bVII-IV"),
    CANON(Phrase.of("canon"), "I-V-vi-iii-IV-I-IV-V"),
    LAMENT(Phrase.of("lament"), "i-bVII-bVI-V", "i-bVII-bVI-v"),
    AEOLIAN_SHUTTLE(Phrase.of("aeolian shuttle"), "i-bVII-bVI-bVII"),
    AEOLIAN_CADENCE(Phrase.of("aeolian cadence"), "i-bVI-bVII", "I-bVI-bVII"),
    SUBTONIC_SHUTTLE(Phrase.of("subtonic shuttle"), "I-bVII", "i-bVII"),
    DORIAN_SHUTTLE(Phrase.of("dorian shuttle"), "i-IV"),
    CIRCLE_OF_FIFTHS(
            Phrase.of("circle of fifths"), "i-iv-bVII-bIII-bVI-iio-V", "I-IV-viio-iii-vi-ii-V", "I-IV-bVII-bIII");

    private static final Map<List<Integer>, LoopSchema> TURNED_IN_MAJOR = turned(false);
    private static final Map<List<Integer>, LoopSchema> TURNED_IN_MINOR = turned(true);

    private final Phrase title;
    private final List<String> rows;

    LoopSchema(Phrase title, String... rows) {
        this.title = title;
        this.rows = List.of(rows);
    }

    private static List<Integer> read(String row) {
        return Stream.of(row.split("-"))
                .map(numeral -> ChordTable.chord(Numeral.parse(numeral).in(Key.major(NoteName.C)), NoteName.C))
                .toList();
    }

    /** Every row in minor begins with its tonic, and none in major with a minor chord. */
    private static boolean isMinor(String row) {
        return row.startsWith("i");
    }

    Phrase title() {
        return title;
    }

    /** The schema of a row that is played once, seen from the key or from its relative, in which many hear it too. */
    static Optional<LoopSchema> of(List<Chord> once, Key key) {
        return seenFrom(key, once).or(() -> seenFrom(key.relative(), once));
    }

    private static Optional<LoopSchema> seenFrom(Key home, List<Chord> once) {
        return Optional.ofNullable((home.isMinor() ? TURNED_IN_MINOR : TURNED_IN_MAJOR)
                .get(once.stream()
                        .map(chord -> ChordTable.chord(chord, home.tonic()))
                        .toList()));
    }

    /** Every row of major or of minor from each of its chords on. */
    private static Map<List<Integer>, LoopSchema> turned(boolean isMinor) {
        Map<List<Integer>, LoopSchema> turned = new HashMap<>();
        for (LoopSchema schema : values()) {
            for (String numerals : schema.rows) {
                List<Integer> row = isMinor == isMinor(numerals) ? read(numerals) : List.of();
                for (int turn = 0; turn < row.size(); turn++) {
                    List<Integer> from = new ArrayList<>(row);
                    Collections.rotate(from, turn);
                    turned.putIfAbsent(List.copyOf(from), schema);
                }
            }
        }
        return turned;
    }
}
