package monochord.harmony;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Clause;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Unreadable;

/** Reads progressions. */
final class ProgressionText {
    private static final String WHAT = "a progression";
    private static final String EXAMPLE = "IV I | V . bVI | V I";
    private static final int LONGEST = 2000;

    private final String text;
    private final Key key;
    private final List<Bar> bars = new ArrayList<>();
    private final List<Slot> slots = new ArrayList<>();
    private Slot last;
    private boolean barred;
    private int count;

    private ProgressionText(String text, Key key) {
        this.text = text;
        this.key = key;
    }

    static Progression parse(String text, Key key) {
        return new ProgressionText(text, key).read();
    }

    private Progression read() {
        barred = text.indexOf('|') >= 0 || text.indexOf('%') >= 0;
        int place = 0;
        while (place < text.length()) {
            int end = endOfToken(place);
            if (end > place) {
                token(text.substring(place, end), place);
            }
            place = Math.max(end, place + 1);
        }
        closeBar();
        if (bars.isEmpty()) {
            throw Unreadable.at(text, text.length(), WHAT, "a chord", EXAMPLE);
        }
        return new Progression(key, bars, barred);
    }

    private int endOfToken(int place) {
        int end = place;
        if (text.charAt(place) == '|') {
            return place + 1;
        }
        int depth = 0;
        while (end < text.length() && (depth > 0 || !separates(text.charAt(end)))) {
            depth += text.charAt(end) == '(' ? 1 : text.charAt(end) == ')' && depth > 0 ? -1 : 0;
            end++;
        }
        return end;
    }

    private static boolean separates(char c) {
        return Character.isWhitespace(c) || c == ',' || c == '|';
    }

    private void token(String token, int place) {
        switch (token) {
            case "|" -> closeBar();
            case "-", "–", "—", "→" -> {}
            case "." -> hold(place);
            case "%" -> repeat(place);
            default -> strike(chord(token, place), place);
        }
    }

    private void closeBar() {
        if (!slots.isEmpty()) {
            bars.add(new Bar(slots, false));
            slots.clear();
        }
    }

    private void hold(int place) {
        if (last == null) {
            throw Unreadable.at(text, place, WHAT, "a chord before the hold", EXAMPLE);
        }
        if (slots.isEmpty()) {
            slots.add(new Slot(last.chord(), last.numeral(), 1, true));
        } else {
            slots.set(slots.size() - 1, slots.get(slots.size() - 1).longer());
        }
        closeUnlessBarred();
        counted(place);
    }

    private void repeat(int place) {
        if (bars.isEmpty() || !slots.isEmpty()) {
            throw Unreadable.at(text, place, WHAT, "a bar before the repeat", EXAMPLE);
        }
        bars.add(new Bar(bars.get(bars.size() - 1).slots(), true));
        counted(place);
    }

    private void strike(Slot slot, int place) {
        last = slot;
        slots.add(slot);
        closeUnlessBarred();
        counted(place);
    }

    /** Without bar lines each chord and each hold is a bar of its own. */
    private void closeUnlessBarred() {
        if (!barred) {
            closeBar();
        }
    }

    private void counted(int place) {
        if (++count > LONGEST) {
            throw Unreadable.because(
                    text, place, WHAT, Clause.of("at most {0} chords are read at once", LONGEST), EXAMPLE);
        }
    }

    private Slot chord(String token, int place) {
        try {
            return switch (ChordWriting.of(token)) {
                case NUMERAL -> slot(Numeral.parse(token));
                case NUMBER -> slot(BandNumber.parse(token, key));
                case SYMBOL -> slot(Chord.parse(token));
            };
        } catch (Unreadable unreadable) {
            throw unreadable.within(text, place);
        }
    }

    private Slot slot(Numeral numeral) {
        return new Slot(numeral.in(key), numeral, 1, false);
    }

    private Slot slot(Chord chord) {
        return new Slot(chord, Numeral.of(chord, key), 1, false);
    }
}
