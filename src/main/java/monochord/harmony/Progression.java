package monochord.harmony;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Interval;
import monochord.theory.note.Notated;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * A progression of chords in a key.
 *
 * <p>Text form: chords by symbol, numeral or number, mixed as one likes, such as {@code F C | G . Ab | % |}. Bar lines
 * are free. The chords of a bar share it equally, {@code .} gives the chord before it another share, {@code %} repeats
 * the bar before. Without bar lines each chord has half a bar of four beats. {@link #parse} reads all that {@link
 * #toString} writes.
 *
 * @param barred whether bar lines were written
 */
public record Progression(Key key, List<Bar> bars, boolean barred) {
    /** Beats in a written bar. */
    public static final int BEATS_PER_BAR = 4;

    private static final int BEATS_PER_CHORD = 2;

    /** @throws IllegalArgumentException if there is no bar */
    public Progression {
        bars = List.copyOf(bars);
        if (bars.isEmpty()) {
            throw new IllegalArgumentException("a progression must hold a bar");
        }
    }

    /**
     * @param key the key in which numerals and numbers are read
     * @throws Unreadable if the text is not a progression
     */
    public static Progression parse(String text, Key key) {
        return ProgressionText.parse(text, key);
    }

    /** These chords one after the other, without bars. */
    public static Progression of(List<Chord> chords, Key key) {
        List<Bar> bars = chords.stream()
                .map(chord -> new Bar(List.of(new ChordEvent(chord, Numeral.of(chord, key), 1, false)), false))
                .toList();
        return new Progression(key, bars, false);
    }

    /** Every slot in order. */
    public List<ChordEvent> slots() {
        List<ChordEvent> slots = new ArrayList<>(bars.size());
        for (Bar bar : bars) {
            slots.addAll(bar.slots());
        }
        return Collections.unmodifiableList(slots);
    }

    /** The chords in order, a held chord once. */
    public List<Chord> chords() {
        return slots().stream()
                .filter(slot -> !slot.held())
                .map(ChordEvent::chord)
                .toList();
    }

    /** Beats in each bar: {@value #BEATS_PER_BAR} where bar lines are written, else half of that. */
    public int beatsPerBar() {
        return barred ? BEATS_PER_BAR : BEATS_PER_CHORD;
    }

    /** The same progression in another key; the numerals stay unless the mode changes. */
    public Progression in(Key other) {
        Interval up = key.tonic().to(other.tonic());
        boolean sameMode = key.mode() == other.mode();
        return map(other, slot -> {
            Chord chord = slot.chord().plus(up);
            Numeral numeral = sameMode ? slot.numeral() : Numeral.of(chord, other);
            return new ChordEvent(chord, numeral, slot.shares(), slot.held());
        });
    }

    private Progression map(Key newKey, UnaryOperator<ChordEvent> change) {
        return new Progression(
                newKey,
                bars.stream()
                        .map(bar -> new Bar(bar.slots().stream().map(change).toList(), bar.repeat()))
                        .toList(),
                barred);
    }

    public String symbols(Signs signs) {
        return write(symbols(), signs);
    }

    public String numerals(Signs signs) {
        return write(numerals(), signs);
    }

    public String numbers(Signs signs) {
        return write(tokens(slot -> BandNumber.of(slot.chord(), key)), signs);
    }

    private static String write(List<Notated> tokens, Signs signs) {
        return tokens.stream().map(token -> token.write(signs)).collect(Collectors.joining(" "));
    }

    /** The chord symbols and the signs between them, one by one as they are written. */
    public List<Notated> symbols() {
        return tokens(ChordEvent::chord);
    }

    /** The numerals and the same signs: as many, each where its chord stands in {@link #symbols()}. */
    public List<Notated> numerals() {
        return tokens(ChordEvent::numeral);
    }

    private List<Notated> tokens(Function<ChordEvent, Notated> name) {
        List<Notated> tokens = new ArrayList<>();
        for (Bar bar : bars) {
            if (bar.repeat()) {
                tokens.add(BarSign.REPEAT);
            } else {
                bar.slots().forEach(slot -> addTokens(slot, name, tokens));
            }
            if (barred) {
                tokens.add(BarSign.BAR_LINE);
            }
        }
        return tokens;
    }

    private static void addTokens(ChordEvent slot, Function<ChordEvent, Notated> name, List<Notated> tokens) {
        tokens.add(slot.held() ? BarSign.HOLD : name.apply(slot));
        for (int share = 1; share < slot.shares(); share++) {
            tokens.add(BarSign.HOLD);
        }
    }

    /** What is written between chords. */
    private enum BarSign implements Notated {
        BAR_LINE("|"),
        HOLD("."),
        REPEAT("%");

        private final String written;

        BarSign(String written) {
            this.written = written;
        }

        @Override
        public String write(Signs signs) {
            return written;
        }
    }

    /** The chord symbols, with the bars. */
    @Override
    public String toString() {
        return symbols(Signs.ASCII);
    }
}
