package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.ChordEvent;
import monochord.harmony.ChordFunction;
import monochord.harmony.Progression;
import monochord.harmony.melody.ChordSpan;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Beats;

/**
 * The chords of a progression as they are struck, how long each lasts, and the form they make.
 *
 * <p>A row that is marked as a loop, or does not end on its tonic, leads back to its start. Where a row of two to sixteen
 * chords comes twice running, the first time is told from the second.
 */
final class PlainRow {
    private static final int SHORTEST_REPEAT = 2;
    private static final int LONGEST_REPEAT = 16;
    private static final int SEVENTH_CHORD = 4;

    final Progression progression;
    final Key key;
    /** The major or minor key on the tonic, by which the patterns are read. */
    final Key home;

    final boolean isLoop;
    /** The share of a bar that falls into three, and so is shared two to one; nothing where none does. */
    final Beats threes;

    private final List<ChordEvent> struck = new ArrayList<>();
    private final List<ChordSpan> spans;
    private final List<ChordFunction> functions;
    private final boolean[] isFirstTime;
    private final boolean[] isSecondTime;
    private final boolean isOfSevenths;

    /**
     * @param marked whether the row is said to be a loop
     * @param threes the share of a bar that falls into three, or nothing
     */
    PlainRow(Progression progression, boolean marked, Beats threes) {
        this.progression = progression;
        this.key = progression.key();
        this.home = key.isMinor() ? Key.minor(key.tonic()) : Key.major(key.tonic());
        for (ChordEvent slot : progression.slots()) {
            if (!slot.held() || struck.isEmpty()) {
                struck.add(slot);
            }
        }
        this.spans = ChordSpan.of(progression, Beats.ONE);
        this.functions =
                struck.stream().map(slot -> ChordFunction.of(slot.chord(), key)).toList();
        this.isLoop = marked || !endsOnTonic();
        this.threes = progression.barred() ? threes : Beats.ZERO;
        this.isFirstTime = new boolean[size()];
        this.isSecondTime = new boolean[size()];
        findRepeats();
        this.isOfSevenths = 2 * struck.stream().filter(PlainRow::isSeventh).count() > size();
    }

    private static boolean isSeventh(ChordEvent slot) {
        return slot.chord().kind().intervals().size() >= SEVENTH_CHORD;
    }

    private boolean endsOnTonic() {
        Chord last = chord(size() - 1);
        ChordKind triad = last.kind().triad();
        return last.root().equals(key.tonic()) && (triad.equals(ChordKind.MAJOR) || triad.equals(ChordKind.MINOR));
    }

    private void findRepeats() {
        for (int length = SHORTEST_REPEAT; length <= Math.min(LONGEST_REPEAT, size() / 2); length++) {
            int alike = 0;
            for (int at = 0; at + length < size(); at++) {
                alike = chord(at).equals(chord(at + length)) ? alike + 1 : 0;
                if (alike >= length && chordsDiffer(at - length + 1, length)) {
                    for (int i = at - length + 1; i <= at; i++) {
                        isFirstTime[i] = true;
                        isSecondTime[i + length] = true;
                    }
                }
            }
        }
    }

    private boolean chordsDiffer(int from, int length) {
        for (int i = from + 1; i < from + length; i++) {
            if (!chord(i).equals(chord(from))) {
                return true;
            }
        }
        return false;
    }

    int size() {
        return struck.size();
    }

    ChordEvent event(int at) {
        return struck.get(at);
    }

    Chord chord(int at) {
        return struck.get(at).chord();
    }

    ChordFunction function(int at) {
        return functions.get(at);
    }

    /** Where the last chord is first struck, if it is struck several times running. */
    int startOfEnding() {
        int at = size() - 1;
        while (at > 0 && chord(at - 1).equals(chord(size() - 1))) {
            at--;
        }
        return at;
    }

    /** Whether a chord stands there, round the loop where there is one. */
    boolean has(int at) {
        return isLoop && size() > 1 ? at >= -1 && at <= size() : at >= 0 && at < size();
    }

    /** The chord there; behind the last and before the first, round the loop, or null where the row ends. */
    Chord around(int at) {
        return has(at) ? chord(Math.floorMod(at, size())) : null;
    }

    /** The chord's start and length in bars. */
    ChordSpan span(int at) {
        return spans.get(at);
    }

    Beats beats(int at) {
        return spans.get(at).beats().times(progression.beatsPerBar());
    }

    /** Whether the same chords come again behind this one. */
    boolean isFirstTime(int at) {
        return isFirstTime[at] && !isSecondTime[at];
    }

    boolean isSecondTime(int at) {
        return isSecondTime[at];
    }

    /** Whether more than half of the chords have a seventh. */
    boolean isOfSevenths() {
        return isOfSevenths;
    }

    /** The numeral as the key has it; patterns are read in major or minor. */
    ChordEvent event(Numeral numeral) {
        Chord chord = numeral.in(home);
        return new ChordEvent(chord, home.equals(key) ? numeral : Numeral.onDegree(chord, key), 1, false);
    }
}
