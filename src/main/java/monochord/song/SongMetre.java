package monochord.song;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.note.Beats;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * The metre of a song, such as 6/8.
 *
 * <p>Text form: {@code beats/value}; {@code C} is read as 4/4 and {@code C|} as 2/2, {@code none} is music without bars of
 * one length. {@link #parse} reads all that {@link #toString} writes.
 *
 * @param beats in a bar, 1 to 64; 0 where bars have no length in common
 * @param value of the note that is one beat: 1, 2, 4, 8, 16, 32
 */
public record SongMetre(int beats, int value) {
    public static final SongMetre COMMON = new SongMetre(4, 4);
    public static final SongMetre FREE = new SongMetre(0, 4);

    private static final Pattern SUM = Pattern.compile("\\(?(\\d{1,2}(?:\\+\\d{1,2}){0,7})\\)?/(\\d{1,2})");
    private static final int MOST = 64;
    private static final int SMALLEST = 32;
    private static final int WHOLE = 4;

    /** @throws IllegalArgumentException if the numbers are not in their ranges */
    public SongMetre {
        if (beats < 0 || beats > MOST || value < 1 || value > SMALLEST || Integer.bitCount(value) != 1) {
            throw new IllegalArgumentException("no metre has " + beats + " beats of value " + value);
        }
    }

    /** @throws Unreadable if the text is no metre */
    public static SongMetre parse(String text) {
        switch (text.strip()) {
            case "C", "c":
                return COMMON;
            case "C|", "c|":
                return new SongMetre(2, 2);
            case "none", "":
                return FREE;
            default:
        }
        Matcher sum = SUM.matcher(text.strip());
        if (!sum.matches()) {
            throw refused(text);
        }
        int beats = 0;
        for (String part : sum.group(1).split("\\+")) {
            beats += Integer.parseInt(part);
        }
        int value = Integer.parseInt(sum.group(2));
        if (beats < 1 || beats > MOST || value < 1 || value > SMALLEST || Integer.bitCount(value) != 1) {
            throw refused(text);
        }
        return new SongMetre(beats, value);
    }

    private static Unreadable refused(String text) {
        return Unreadable.because(
                text, 0, "a metre", Clause.of("expected beats and their value, such as 3/4 or 6/8"), "4/4");
    }

    public boolean isFree() {
        return beats == 0;
    }

    /** Quarters in a bar; none where it is free. */
    public Beats bar() {
        return Beats.of((long) beats * WHOLE, value);
    }

    /** Whether its beats fall into threes: 6/8, 9/8, 12/8. */
    public boolean isCompound() {
        return value == 8 && beats > 3 && beats % 3 == 0;
    }

    @Override
    public String toString() {
        return isFree() ? "none" : beats + "/" + value;
    }
}
