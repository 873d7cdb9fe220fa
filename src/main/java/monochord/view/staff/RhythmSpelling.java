package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import monochord.song.SongMetre;
import monochord.theory.note.Beats;

/**
 * How a stretch of time in a bar is written: in one value, or in several that are tied, so that beats can be seen.
 *
 * <p>Common practice, no source: nothing but a half note from the second beat and a whole bar goes over the middle of a bar of
 * four; a note that begins off the beat ends at the next beat, or lasts a quarter; in 6/8 and its kin nothing but whole beats
 * goes over a beat. Lengths that no such value has are written as the nearest.
 */
public final class RhythmSpelling {
    /** Ticks in a quarter: 32nds and triplets of sixteenths can be counted. */
    private static final int QUARTER = 24;

    private static final int DOTTED_QUARTER = 36;
    private static final int HALF = 48;
    private static final int THIRTY_SECOND = 3;
    /** Lengths that are tried, longest first. */
    private static final int[] LENGTHS = {96, 72, 48, 36, 24, 18, 12, 9, 6, 3};

    private final boolean threes;
    private final int bar;

    /** A value from a moment on. */
    public record Spelled(Beats at, NoteLength length) {}

    private RhythmSpelling(SongMetre metre) {
        this.threes = metre.isCompound();
        this.bar = metre.isFree() ? 4 * QUARTER : ticks(metre.bar());
    }

    /** @param start quarters from the start of the bar */
    public static List<Spelled> of(Beats start, Beats end, SongMetre metre) {
        return new RhythmSpelling(metre).spelled(ticks(start), ticks(end));
    }

    private static int ticks(Beats beats) {
        return (int) beats.ticks(QUARTER);
    }

    private List<Spelled> spelled(int start, int end) {
        List<Spelled> all = new ArrayList<>();
        int now = start;
        while (now < end) {
            int beatEnds = now - now % QUARTER + QUARTER;
            int within = Math.min(end, beatEnds);
            if (now % THIRTY_SECOND != 0 || within % THIRTY_SECOND != 0) {
                all.add(new Spelled(Beats.of(now, QUARTER), inThree(within - now)));
                now = within;
            } else {
                int length = longest(now, end);
                all.add(new Spelled(Beats.of(now, QUARTER), plain(length)));
                now += Math.max(length, THIRTY_SECOND);
            }
        }
        return all;
    }

    private int longest(int now, int end) {
        for (int length : LENGTHS) {
            if (now + length <= end && (threes ? fitsThrees(now, length) : fits(now, length))) {
                return length;
            }
        }
        return THIRTY_SECOND;
    }

    private boolean fits(int now, int length) {
        boolean onBeat = now % QUARTER == 0;
        return switch (length) {
            case 96 -> now == 0 && bar >= length;
            case 72 -> onBeat && (now == 0 || bar == 4 * QUARTER && now == QUARTER);
            case HALF -> onBeat && (bar != 4 * QUARTER || now % HALF == 0 || now == QUARTER);
            case DOTTED_QUARTER -> onBeat && (bar != 4 * QUARTER || now % HALF == 0) || now % HALF == 12;
            case QUARTER -> onBeat || now % HALF == 12;
            case 18 -> onBeat || now % QUARTER == 6;
            case 12 -> now % 12 == 0 || now % QUARTER == 6;
            case 9 -> now % 12 == 0;
            case 6 -> now % 6 == 0;
            default -> true;
        };
    }

    private static boolean fitsThrees(int now, int length) {
        return switch (length) {
            case 72, DOTTED_QUARTER -> now % DOTTED_QUARTER == 0;
            case QUARTER -> now % DOTTED_QUARTER == 0 || now % DOTTED_QUARTER == 12;
            case 12 -> now % 12 == 0;
            case 6 -> now % 6 == 0;
            case THIRTY_SECOND -> true;
            default -> false;
        };
    }

    private static NoteLength plain(int length) {
        return switch (length) {
            case 96 -> NoteLength.of(NoteValue.WHOLE);
            case 72 -> new NoteLength(NoteValue.HALF, 1, 1, 1);
            case HALF -> NoteLength.of(NoteValue.HALF);
            case DOTTED_QUARTER -> new NoteLength(NoteValue.QUARTER, 1, 1, 1);
            case QUARTER -> NoteLength.of(NoteValue.QUARTER);
            case 18 -> new NoteLength(NoteValue.EIGHTH, 1, 1, 1);
            case 12 -> NoteLength.of(NoteValue.EIGHTH);
            case 9 -> new NoteLength(NoteValue.SIXTEENTH, 1, 1, 1);
            case 6 -> NoteLength.of(NoteValue.SIXTEENTH);
            default -> NoteLength.of(NoteValue.THIRTY_SECOND);
        };
    }

    /** Three in the time of two. */
    private static NoteLength inThree(int length) {
        NoteValue value = length >= 14 ? NoteValue.QUARTER : length >= 7 ? NoteValue.EIGHTH : NoteValue.SIXTEENTH;
        return new NoteLength(value, 0, 3, 2);
    }
}
