package monochord.theory;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import monochord.theory.note.Cursor;
import monochord.theory.note.ToneDraft;
import monochord.theory.note.Unreadable;

/**
 * Reads what stands behind the root of a chord symbol, in any customary writing.
 *
 * <p>Where customs differ: {@code C2} is read as C with an added second; {@code C4} as a suspension; {@code CΔ} as a
 * major seventh chord; {@code C-9} as a minor ninth chord but {@code C-5} and {@code C7-9} as a lowered fifth and ninth;
 * {@code C+9} as a ninth chord with a raised fifth but {@code C7+9} as a raised ninth.
 *
 * <p>Source: kinds, W3C MusicXML 4.0, type {@code kind-value}; letter suffixes, Open Music Theory (2014), page "triads";
 * the customs above are common practice, no source.
 */
final class ChordSuffix {
    private static final int MOST_KEPT = 1 << 12;
    private static final int LONGEST_KEPT = 24;
    private static final Map<String, ChordKind> KNOWN = new ConcurrentHashMap<>();

    private final Cursor cursor;
    private final int end;
    private final ToneDraft draft = new ToneDraft();
    private int seventh = -1;
    private boolean triangle;
    private int open;

    private ChordSuffix(Cursor cursor, int end) {
        this.cursor = cursor;
        this.end = end;
    }

    /** Reads from the cursor's place up to {@code end}. */
    static ChordKind read(Cursor cursor, int end) {
        String suffix = cursor.upTo(end);
        ChordKind known = KNOWN.get(suffix);
        if (known != null) {
            cursor.back(end);
            return known;
        }
        ChordKind kind = new ChordSuffix(cursor, end).readAll();
        if (KNOWN.size() < MOST_KEPT && suffix.length() <= LONGEST_KEPT) {
            KNOWN.put(suffix, kind);
        }
        return kind;
    }

    private ChordKind readAll() {
        third();
        boolean numbered = number();
        if (!numbered && triangle) {
            draft.stack(seventh, 7);
        }
        while (cursor.place() < end) {
            change();
        }
        if (open > 0) {
            throw cursor.unexpected("a closing bracket");
        }
        return ChordKind.ofTones(draft.tones())
                .orElseThrow(() -> cursor.because("these tones make no chord that has a symbol"));
    }

    private void third() {
        if (!cursor.ahead("Min") && !cursor.ahead("MIN") && !cursor.ahead("Mi") && major()) {
            return;
        }
        if (cursor.aheadThenDigit("dom") && cursor.take("dom")) {
            return;
        }
        if (cursor.ahead("-5") || cursor.ahead("+5")) {
            return;
        }
        if (cursor.takeAny("minor", "min", "Minor", "Min", "MIN", "mi", "Mi", "m", "-", "−")) {
            draft.replace(3, 0, -1);
            minorWithMajorSeventh();
        } else if (cursor.takeAny("dim", "Dim", "°", "º", "o")) {
            draft.replace(3, 0, -1);
            draft.replace(5, 0, -1);
            seventh = -2;
            minorWithMajorSeventh();
        } else if (cursor.takeAny("aug", "Aug", "+")) {
            draft.replace(5, 0, 1);
            major();
        } else if (cursor.takeAny("ø", "Ø", "/o")) {
            draft.replace(3, 0, -1);
            draft.replace(5, 0, -1);
            stackUnlessNumbered();
        }
    }

    private boolean major() {
        boolean triangleHere = cursor.takeAny("Δ", "△", "∆");
        boolean word = !triangleHere && majorWord();
        triangle |= triangleHere;
        seventh = triangleHere || word ? 0 : seventh;
        return triangleHere || word;
    }

    /** {@code ma} and {@code j} count only before a number, for {@code madd9} is a minor chord. */
    private boolean majorWord() {
        return (cursor.aheadThenDigit("ma") || cursor.aheadThenDigit("Ma")) && cursor.takeAny("ma", "Ma")
                || cursor.takeAny("major", "Major", "maj", "Maj", "MAJ", "MA", "M")
                || cursor.aheadThenDigit("j") && cursor.take('j');
    }

    /** {@code Cm(maj7)}, {@code Cm/maj7}, {@code CmM7}, {@code C-Δ7}. */
    private void minorWithMajorSeventh() {
        int before = cursor.place();
        boolean bracket = cursor.take('(');
        boolean slash = !bracket && cursor.take('/');
        if (!major()) {
            cursor.back(before);
            return;
        }
        open += bracket ? 1 : 0;
        if (slash && !cursor.aheadDigit()) {
            throw cursor.unexpected("7");
        }
    }

    private void stackUnlessNumbered() {
        if (!cursor.aheadDigit()) {
            draft.stack(seventh, 7);
        }
    }

    private boolean number() {
        if (cursor.takeAny("6/9", "69")) {
            draft.add(6, 0);
            draft.add(9, 0);
        } else if (cursor.take("13")) {
            draft.stack(seventh, 13);
        } else if (cursor.take("11")) {
            draft.stack(seventh, 11);
        } else if (cursor.take("9")) {
            draft.stack(seventh, 9);
        } else if (cursor.take("7")) {
            seventh = cursor.takeAny("M", "maj") ? 0 : seventh;
            draft.stack(seventh, 7);
        } else if (cursor.take("6")) {
            draft.add(6, 0);
        } else {
            return smallNumber();
        }
        return true;
    }

    private boolean smallNumber() {
        boolean plainTriad = draft.has(3, 0) && draft.has(5, 0);
        if (plainTriad && !triangle && cursor.take("5")) {
            draft.remove(3, 0);
        } else if (cursor.take("2")) {
            draft.add(2, 0);
        } else if (cursor.take("4")) {
            addOrSuspendFourth(plainTriad);
        } else {
            return false;
        }
        return true;
    }

    private void addOrSuspendFourth(boolean suspended) {
        if (suspended) {
            draft.suspend(4);
        } else {
            draft.add(4, 0);
        }
    }

    private void change() {
        if (cursor.take('(') || cursor.take('[')) {
            open++;
        } else if (open > 0 && (cursor.take(')') || cursor.take(']'))) {
            open--;
        } else if (open > 0 && (cursor.take(',') || cursor.take(' '))) {
            return;
        } else if (cursor.takeAny("add", "Add") || open > 0 && cursor.aheadDigit()) {
            addition();
        } else if (cursor.takeAny("sus", "Sus")) {
            suspension();
        } else if (cursor.takeAny("no", "omit")) {
            omission();
        } else if (cursor.take("alt")) {
            draft.alter();
        } else if (cursor.takeAny("/6", "/9", "/13")) {
            cursor.back(cursor.place() - (cursor.before('3') ? 2 : 1));
            addition();
        } else if (open > 0 && majorSeventhInBrackets()) {
            draft.stack(seventh, cursor.number(2, "7, 9, 11 or 13"));
        } else {
            alteration();
        }
    }

    private boolean majorSeventhInBrackets() {
        return (cursor.ahead("maj") || cursor.ahead("M")) && major();
    }

    private void addition() {
        cursor.take(' ');
        int alteration = alterationSign();
        int start = cursor.place();
        int number = cursor.number(2, "2, 4, 6, 9, 11 or 13");
        if (number != 2
                && number != 4
                && number != 6
                && number != 9
                && number != 11
                && number != 13
                && !(number == 5 && alteration != 0)) {
            cursor.back(start);
            throw cursor.unexpected("2, 4, 6, 9, 11 or 13");
        }
        draft.add(number, alteration);
    }

    private void suspension() {
        if (cursor.takeAny("24", "2sus4", "2/4", "42")) {
            draft.suspend(4);
            draft.add(2, 0);
        } else if (cursor.take('2')) {
            draft.suspend(2);
        } else {
            suspendFourth();
        }
    }

    /** {@code sus4}, {@code sus}, and {@code sus7}, {@code sus9}, {@code sus13} for the fourth in a fuller chord. */
    private void suspendFourth() {
        if (cursor.aheadDigit() && !cursor.take('4')) {
            int start = cursor.place();
            int top = cursor.number(2, "2, 4, 7, 9 or 13");
            if (top != 7 && top != 9 && top != 13) {
                cursor.back(start);
                throw cursor.unexpected("2, 4, 7, 9 or 13");
            }
            draft.stack(seventh, top);
        }
        draft.suspend(4);
    }

    private void omission() {
        int start = cursor.place();
        int number = cursor.number(2, "3, 5, 9 or 11");
        if (number != 3 && number != 5 && number != 9 && number != 11) {
            cursor.back(start);
            throw cursor.unexpected("3, 5, 9 or 11");
        }
        draft.leaveOut(number);
    }

    private void alteration() {
        boolean lonePlus = cursor.take('+');
        if (lonePlus && !cursor.aheadDigit()) {
            draft.replace(5, 0, 1);
            return;
        }
        int alteration = lonePlus ? 1 : alterationSign();
        if (alteration == 0) {
            throw unknown();
        }
        alter(alteration);
    }

    /** A slash stands here only where no bass note follows it; what is told to come is then the note, and no slash. */
    private Unreadable unknown() {
        if (!cursor.take('/')) {
            return cursor.unexpected("b5, #9, add9, sus4, no5, /bass");
        }
        boolean twice = "ABCDEFG".indexOf(cursor.peek()) >= 0 && cursor.place() < end;
        return twice ? cursor.because("a chord has one bass note") : cursor.unexpected("a bass note from A to G");
    }

    private void alter(int alteration) {
        int start = cursor.place();
        int number = cursor.number(2, "5, 9, 11 or 13");
        boolean known = number == 5
                || number == 9
                || alteration > 0 && (number == 11 || number == 4)
                || alteration < 0 && (number == 13 || number == 6);
        if (!known) {
            cursor.back(start);
            throw cursor.unexpected(alteration > 0 ? "5, 9 or 11" : "5, 9 or 13");
        }
        draft.replace(number, 0, alteration);
    }

    private int alterationSign() {
        if (cursor.takeAny("b", "♭", "-", "−")) {
            return -1;
        }
        return cursor.takeAny("#", "♯", "+") ? 1 : 0;
    }
}
