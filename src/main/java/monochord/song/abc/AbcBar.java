package monochord.song.abc;

import java.util.ArrayList;
import java.util.List;
import monochord.song.WrittenBar;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/** A bar that is being read. */
final class AbcBar {
    private static final int MOST_SHARES = 64;

    final List<Sound> sounds = new ArrayList<>();
    final List<Symbol> symbols = new ArrayList<>();
    boolean opens;
    int times;
    String ending = "";
    boolean endsPart;
    boolean endsLine;

    /** A note or, without a pitch, a rest. */
    static final class Sound {
        final Pitch pitch;
        Beats beats;
        final boolean held;
        boolean ties;

        Sound(Pitch pitch, Beats beats, boolean held) {
            this.pitch = pitch;
            this.beats = beats;
            this.held = held;
        }

        private String text() {
            String name = pitch == null ? "r" : held ? "." : pitch.toString();
            return beats.equals(Beats.ONE) ? name : name + ":" + beats;
        }
    }

    /**
     * A chord symbol.
     *
     * @param before how many sounds stand before it
     */
    record Symbol(String chord, int before) {}

    boolean isEmpty() {
        return sounds.isEmpty();
    }

    Beats beats() {
        return start(sounds.size());
    }

    private Beats start(int sound) {
        Beats start = Beats.ZERO;
        for (Sound one : sounds.subList(0, sound)) {
            start = start.plus(one.beats);
        }
        return start;
    }

    WrittenBar tune() {
        return written(String.join(" ", sounds.stream().map(Sound::text).toList()));
    }

    /** @param isFirst whether no chord stands before it in its part */
    WrittenBar chords(boolean isFirst) {
        Beats length = beats();
        long shares = 1;
        for (Symbol symbol : symbols) {
            Beats at = start(symbol.before());
            Beats part = Beats.of(at.numerator() * length.denominator(), at.denominator() * length.numerator());
            shares = shares > MOST_SHARES ? shares : Beats.commonParts(shares, part.denominator());
        }
        return written(shares > MOST_SHARES ? first(isFirst) : shared((int) shares, length, isFirst));
    }

    private String first(boolean isFirst) {
        return symbols.isEmpty() ? isFirst ? "r" : "." : symbols.get(0).chord();
    }

    private String shared(int shares, Beats length, boolean isFirst) {
        List<String> slots = new ArrayList<>();
        boolean silent = isFirst;
        for (int i = 0; i < shares; i++) {
            Beats at = length.times(i).dividedInto(shares);
            String chord = null;
            for (Symbol symbol : symbols) {
                chord = start(symbol.before()).equals(at) ? symbol.chord() : chord;
            }
            slots.add(chord != null ? chord : i == 0 && silent ? "r" : ".");
        }
        return String.join(" ", slots);
    }

    private WrittenBar written(String text) {
        WrittenBar.Behind behind = endsPart
                ? endsLine ? WrittenBar.Behind.DOUBLE_BAR_AND_LINE_END : WrittenBar.Behind.DOUBLE_BAR
                : endsLine ? WrittenBar.Behind.LINE_END : WrittenBar.Behind.BAR_LINE;
        return new WrittenBar(text, WrittenBar.Place.NOWHERE, opens, times, ending, behind);
    }
}
