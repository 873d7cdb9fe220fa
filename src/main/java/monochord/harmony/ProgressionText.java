package monochord.harmony;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Clause;
import monochord.theory.note.Cursor;
import monochord.theory.note.Unreadable;

/** Reads progressions. */
final class ProgressionText {
    private static final Pattern CHANGES = Pattern.compile("\\((?:add|no|omit|sus|maj|[b#♭♯+-]?[0-9]).*\\)");
    private static final String WHAT = "a progression";
    private static final String EXAMPLE = "IV I | V . bVI | V I";
    private static final int LONGEST = 2000;

    private final String text;
    private final Cursor cursor;
    private final Key key;
    private final List<Bar> bars = new ArrayList<>();
    private final List<ChordEvent> slots = new ArrayList<>();
    private ChordEvent last;
    private boolean barred;
    private int count;

    private ProgressionText(String text, Key key) {
        this.text = text;
        this.cursor = new Cursor(text, WHAT, EXAMPLE);
        this.key = key;
    }

    static Progression parse(String text, Key key) {
        return new ProgressionText(text, key).read();
    }

    private Progression read() {
        barred = text.indexOf('|') >= 0 || text.indexOf('%') >= 0;
        for (String word = cursor.nextWord(); !word.isEmpty(); word = cursor.nextWord()) {
            int place = cursor.place() - word.length();
            token(word + changesBehind(), place);
        }
        closeBar();
        if (bars.isEmpty()) {
            throw cursor.unexpected(text.length(), "a chord");
        }
        return new Progression(key, bars, barred);
    }

    /** {@code Fmaj7 (add 2)}: brackets behind a space that hold no chord belong to the chord before them. */
    private String changesBehind() {
        int before = cursor.place();
        String word = cursor.nextWord();
        if (word.startsWith("(") && CHANGES.matcher(word).matches()) {
            return word;
        }
        cursor.back(before);
        return "";
    }

    private void token(String token, int place) {
        if (token.length() > 2 && token.startsWith("(") && token.endsWith(")")) {
            token(token.substring(1, token.length() - 1), place + 1);
            return;
        }
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
            throw cursor.unexpected(place, "a chord before the hold");
        }
        if (slots.isEmpty()) {
            slots.add(new ChordEvent(last.chord(), last.numeral(), 1, true));
        } else {
            slots.set(slots.size() - 1, slots.get(slots.size() - 1).longer());
        }
        closeUnlessBarred();
        counted(place);
    }

    private void repeat(int place) {
        if (bars.isEmpty() || !slots.isEmpty()) {
            throw cursor.unexpected(place, "a bar before the repeat");
        }
        bars.add(new Bar(bars.get(bars.size() - 1).slots(), true));
        counted(place);
    }

    private void strike(ChordEvent slot, int place) {
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
            throw cursor.because(place, Clause.of("at most {0} chords are read at once", LONGEST));
        }
    }

    private ChordEvent chord(String token, int place) {
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

    private ChordEvent slot(Numeral numeral) {
        return new ChordEvent(numeral.in(key), numeral, 1, false);
    }

    private ChordEvent slot(Chord chord) {
        return new ChordEvent(chord, Numeral.of(chord, key), 1, false);
    }
}
