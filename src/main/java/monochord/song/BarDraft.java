package monochord.song;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/** A bar that is being read from another format: its notes and rests, its chord symbols, the signs around it. */
public final class BarDraft {
    private static final int MOST_SHARES = 64;

    public final List<Sound> sounds = new ArrayList<>();
    public final List<Symbol> symbols = new ArrayList<>();
    /** Whether a repeat begins before it. */
    public boolean opens;
    /** How often what is repeated is played when a repeat ends behind it, else 0. */
    public int times;
    /** The numbers of the ending that begins with it, or nothing. */
    public String ending = "";
    /** Whether a double bar line comes behind it. */
    public boolean endsPart;
    /** Whether a line of text ends behind it. */
    public boolean endsLine;

    /** A note or, without a pitch, a rest. */
    public static final class Sound {
        public final Pitch pitch;
        public final boolean held;
        public Beats beats;
        public boolean ties;

        /**
         * @param pitch null for a rest
         * @param held whether it goes on from the note before
         */
        public Sound(Pitch pitch, Beats beats, boolean held) {
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
     * A chord symbol, or {@code r} where no chord sounds.
     *
     * @param start from the start of the bar
     */
    public record Symbol(String chord, Beats start) {}

    public boolean isEmpty() {
        return sounds.isEmpty();
    }

    public boolean hasNotes() {
        return sounds.stream().anyMatch(sound -> sound.pitch != null);
    }

    public Beats beats() {
        return sounds.stream().map(sound -> sound.beats).reduce(Beats.ZERO, Beats::plus);
    }

    public WrittenBar tune() {
        return written(String.join(" ", sounds.stream().map(Sound::text).toList()));
    }

    /** @param isFirst whether no chord stands before it in its section */
    public WrittenBar chords(boolean isFirst) {
        Beats length = beats();
        long shares = 1;
        for (Symbol symbol : symbols) {
            Beats at = symbol.start();
            Beats part = Beats.of(at.numerator() * length.denominator(), at.denominator() * length.numerator());
            shares = shares > MOST_SHARES ? shares : Beats.commonParts(shares, part.denominator());
        }
        return written(shares > MOST_SHARES ? first(isFirst) : shared((int) shares, length, isFirst));
    }

    /** A bar of chords to each of the tune; none to a pick-up without a chord. */
    public static List<WrittenBar> chords(List<BarDraft> bars, SongMetre metre) {
        Beats first = bars.get(0).beats();
        boolean isPickup = bars.size() > 1
                && bars.get(0).symbols.isEmpty()
                && first.compareTo(metre.bar()) < 0
                && first.compareTo(bars.get(1).beats()) < 0;
        List<WrittenBar> chords = new ArrayList<>();
        boolean isFirst = true;
        for (BarDraft bar : isPickup ? bars.subList(1, bars.size()) : bars) {
            chords.add(bar.chords(isFirst));
            isFirst &= bar.symbols.isEmpty();
        }
        return chords;
    }

    private String first(boolean isFirst) {
        return symbols.isEmpty() ? isFirst ? "r" : "." : symbols.get(0).chord();
    }

    private String shared(int shares, Beats length, boolean isFirst) {
        List<String> slots = new ArrayList<>();
        for (int i = 0; i < shares; i++) {
            Beats at = length.times(i).dividedInto(shares);
            String chord = symbols.stream()
                    .filter(symbol -> symbol.start().equals(at))
                    .map(Symbol::chord)
                    .reduce((one, next) -> next)
                    .orElse(null);
            slots.add(chord != null ? chord : i == 0 && isFirst ? "r" : ".");
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
