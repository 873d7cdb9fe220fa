package monochord.song.abc;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.song.BarDraft;
import monochord.song.SongFault;
import monochord.song.SongMetre;
import monochord.text.Phrase;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** What holds while the notes of a tune are read: unit, metre, key, accidentals of the bar, ties, rhythm; and the bars. */
final class AbcState {
    static final int MOST_SOUNDS = 20_000;
    private static final int MOST_IN_A_BAR = 256;
    private static final int SMALLEST_PART = 32;

    final List<BarDraft> bars = new ArrayList<>();
    final List<SongFault> faults = new ArrayList<>();
    /** For each note of the line whether it goes on from the one before. */
    final List<Boolean> held = new ArrayList<>();

    BarDraft bar = new BarDraft();
    Beats unit;
    SongMetre metre;
    AbcKey key;
    int line;
    private final Map<Character, Integer> accidentals = new HashMap<>();
    private BarDraft.Sound last;
    private Beats broken = Beats.ONE;
    private Beats tuplet = Beats.ONE;
    private int inTuplet;
    private int count;

    AbcState(Beats unit, SongMetre metre, AbcKey key) {
        this.unit = unit;
        this.metre = metre;
        this.key = key;
    }

    void fault(int column, Phrase what, Phrase instead) {
        faults.add(new SongFault(line, column + 1, what, instead));
    }

    /** @param units lengths of the unit; a note by itself or the length of a stack */
    void sound(Optional<Pitch> pitch, Beats units, int column) {
        if (++count > MOST_SOUNDS) {
            return;
        }
        Beats beats = times(times(times(units, unit), broken), inTuplet > 0 ? tuplet : Beats.ONE);
        broken = Beats.ONE;
        inTuplet = Math.max(0, inTuplet - 1);
        if (beats.denominator() > SMALLEST_PART || beats.isZero() || beats.numerator() > 999 * beats.denominator()) {
            fault(column, Phrase.of("this length cannot be counted"), Phrase.of("write a longer or a simpler one"));
            return;
        }
        boolean held =
                pitch.isPresent() && last != null && last.ties && pitch.get().equals(last.pitch);
        last = new BarDraft.Sound(pitch.orElse(null), beats, held);
        bar.sounds.add(last);
        if (pitch.isPresent()) {
            this.held.add(held);
        }
        if (bar.sounds.size() >= MOST_IN_A_BAR) {
            closeBar();
        }
    }

    boolean isFull() {
        return count >= MOST_SOUNDS;
    }

    static Beats times(Beats one, Beats other) {
        return Beats.of(
                Math.multiplyExact(one.numerator(), other.numerator()),
                Math.multiplyExact(one.denominator(), other.denominator()));
    }

    void tie() {
        if (last != null) {
            last.ties = true;
        }
    }

    /** {@code >} and {@code <}: so many signs, the note before longer or shorter. Source: section 4.4. */
    void broken(int signs, boolean isFirstLonger) {
        if (last == null || signs > 3) {
            return;
        }
        long parts = 1L << signs;
        Beats longer = Beats.of(2 * parts - 1, parts);
        Beats shorter = Beats.of(1, parts);
        last.beats = times(last.beats, isFirstLonger ? longer : shorter);
        broken = isFirstLonger ? shorter : longer;
    }

    /** {@code (p:q:r}; q and r are 0 where they are not said. Source: section 4.13. */
    void tuplet(int p, int q, int r) {
        boolean isCompound = metre.isCompound();
        int time = switch (p) {
            case 2, 4, 8 -> 3;
            case 3, 6 -> 2;
            default -> isCompound ? 3 : 2;
        };
        if (p >= 2 && p <= 9 && q <= 32 && r <= 32) {
            tuplet = Beats.of(q > 0 ? q : time, p);
            inTuplet = r > 0 ? r : p;
        }
    }

    /** The pitch of a letter: by its own sign, by the bar's, by the tie, by the key. */
    Pitch pitch(char letter, String sign, int octaves, int column) {
        char upper = Character.toUpperCase(letter);
        int octave = (Character.isLowerCase(letter) ? 5 : 4) + octaves;
        if (octave < -1 || octave > 9) {
            fault(column, Phrase.of("no instrument has this note"), Phrase.of("write it some octaves nearer"));
            octave = 4;
        }
        if (!sign.isEmpty()) {
            accidentals.put(upper, AbcKey.alteration(sign));
        } else if (last != null && last.ties && last.pitch != null && isTied(upper, octave)) {
            return last.pitch;
        }
        int alteration = accidentals.getOrDefault(upper, key.alterations().get(upper));
        return new Pitch(NoteName.of(upper, alteration), octave);
    }

    private boolean isTied(char letter, int octave) {
        return last.pitch.name().letter() == letter && last.pitch.octave() == octave;
    }

    /** The bar ends here, if it has begun. */
    void closeBar() {
        accidentals.clear();
        if (!bar.isEmpty()) {
            bars.add(bar);
            bar = new BarDraft();
        }
    }

    /** The bar read last. */
    Optional<BarDraft> before() {
        return bars.isEmpty() ? Optional.empty() : Optional.of(bars.get(bars.size() - 1));
    }
}
