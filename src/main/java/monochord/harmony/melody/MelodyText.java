package monochord.harmony.melody;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.melody.Melody.MelodyNote;
import monochord.theory.note.Beats;
import monochord.theory.note.Clause;
import monochord.theory.note.Cursor;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** Reads and writes tunes. */
final class MelodyText {
    private static final String WHAT = "a melody";
    private static final String EXAMPLE = "E4:1 D4:1/2 r:1 C4:2";
    /** Lengths in parts that share no smaller beat than this cannot be played together by anyone. */
    private static final long SMALLEST_SHARED_PART = 10_000;

    private final String text;
    private final Cursor cursor;
    private final List<MelodyNote> notes = new ArrayList<>();
    private final List<WrittenBarLength> bars = new ArrayList<>();
    private Beats now = Beats.ZERO;
    private Beats barStart = Beats.ZERO;
    private int barPlace;
    private boolean barred;
    private boolean lineFirst;
    private boolean resting;
    private int count;

    /** One bar as it was written, from its place in the text. */
    private record WrittenBarLength(Beats beats, int place) {}

    private MelodyText(String text) {
        this.text = text;
        this.cursor = new Cursor(text, WHAT, EXAMPLE);
    }

    static Melody parse(String text) {
        return new MelodyText(text).read();
    }

    private Melody read() {
        for (String word = cursor.nextWord(); !word.isEmpty(); word = cursor.nextWord()) {
            token(word, cursor.place() - word.length());
        }
        closeBar(text.length());
        if (notes.isEmpty()) {
            throw cursor.unexpected(text.length(), Clause.of("a note such as {0}", new Pitch(NoteName.parse("E"), 4)));
        }
        Optional<Beats> bar = bar();
        return new Melody(notes, now, bar, bar.map(this::pickup).orElse(Beats.ZERO));
    }

    private void token(String token, int place) {
        if (token.equals("|")) {
            barred = true;
            lineFirst |= count == 0;
            closeBar(place + 1);
            return;
        }
        if (++count > Melody.MOST) {
            throw cursor.because(place, Clause.of("at most {0} notes are read at once", Melody.MOST));
        }
        int colon = token.indexOf(':');
        String name = colon < 0 ? token : token.substring(0, colon);
        Beats beats = colon < 0 ? Beats.ONE : length(token.substring(colon + 1), place + colon + 1);
        add(name, beats, place);
    }

    private Beats length(String written, int place) {
        try {
            Beats beats = Beats.parse(written);
            if (beats.isZero()) {
                throw cursor.because(place, "a note must last longer than nothing");
            }
            return beats;
        } catch (Unreadable unreadable) {
            throw unreadable.text().equals(text) ? unreadable : unreadable.within(text, place);
        }
    }

    private void add(String name, Beats beats, int place) {
        switch (name) {
            case "r", "R" -> resting = true;
            case "." -> hold(beats, place);
            default -> {
                notes.add(new MelodyNote(pitch(name, place), now, beats));
                resting = false;
            }
        }
        now = now.plus(beats);
        if (now.denominator() > SMALLEST_SHARED_PART) {
            throw cursor.because(place, "the lengths up to here share no part of a beat that could be counted");
        }
    }

    private void hold(Beats beats, int place) {
        if (notes.isEmpty() || resting) {
            throw cursor.unexpected(place, "a note before the hold");
        }
        MelodyNote last = notes.remove(notes.size() - 1);
        notes.add(new MelodyNote(last.pitch(), last.start(), last.beats().plus(beats)));
    }

    private Pitch pitch(String name, int place) {
        boolean octave = !name.isEmpty() && Character.isDigit(name.charAt(name.length() - 1));
        try {
            return octave ? Pitch.parse(name) : nearest(NoteName.parse(name), place);
        } catch (Unreadable unreadable) {
            throw unreadable.text().equals(text) ? unreadable : unreadable.within(text, place);
        }
    }

    private Pitch nearest(NoteName name, int place) {
        Pitch before = notes.isEmpty()
                ? new Pitch(NoteName.C, 4)
                : notes.get(notes.size() - 1).pitch();
        try {
            return NearestOctave.to(before, name);
        } catch (IllegalArgumentException outOfReach) {
            throw cursor.because(place, Clause.of("the nearest {0} has no octave from -1 to 10", name));
        }
    }

    private void closeBar(int next) {
        if (!now.equals(barStart)) {
            bars.add(new WrittenBarLength(now.minus(barStart), barPlace));
        }
        barStart = now;
        barPlace = next;
    }

    private Optional<Beats> bar() {
        if (!barred) {
            return Optional.empty();
        }
        int last = bars.size() - 1;
        Beats bar = last >= 2
                ? bars.get(1).beats()
                : bars.get(0).beats().longerOf(bars.get(last).beats());
        for (int i = 0; i <= last; i++) {
            check(i, bar, i == 0 && !lineFirst || i == last);
        }
        return Optional.of(bar);
    }

    private void check(int index, Beats bar, boolean mayBeShort) {
        WrittenBarLength one = bars.get(index);
        int difference = one.beats().compareTo(bar);
        if (difference > 0 || difference < 0 && !mayBeShort) {
            int place = one.place();
            while (Character.isWhitespace(text.charAt(place))) {
                place++;
            }
            throw cursor.because(
                    place,
                    Clause.of(
                            "bar {0} has {1} beats where the others have {2}",
                            index + 1, one.beats().toString(), bar.toString()));
        }
    }

    private Beats pickup(Beats bar) {
        Beats first = bars.get(0).beats();
        boolean isShort = bars.size() > 1 && first.compareTo(bar) < 0;
        return isShort ? first : Beats.ZERO;
    }

    static String write(Melody melody, Signs signs) {
        return new MelodyWriting(melody, signs).write();
    }
}
