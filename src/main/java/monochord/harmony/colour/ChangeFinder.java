package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.harmony.ChordEvent;
import monochord.harmony.ChordFunction;
import monochord.theory.Chord;
import monochord.theory.TriadQuality;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** Finds each place of a row where an idiom fits. */
final class ChangeFinder {
    private static final Beats BAR = Beats.of(Recolour.BEATS_OF_A_BAR);
    private static final Beats SHORTEST = Beats.of(1, 2);

    private final PlainRow row;
    private final boolean mayStayOpen;
    private final boolean isStrict;

    /**
     * @param mayStayOpen whether the last cadence may go
     * @param isStrict whether lengths are looked at; not where somebody asks for one idiom at one place
     */
    ChangeFinder(PlainRow row, boolean mayStayOpen, boolean isStrict) {
        this.row = row;
        this.mayStayOpen = mayStayOpen;
        this.isStrict = isStrict;
    }

    List<Change> of(Idiom idiom) {
        List<Change> found = new ArrayList<>();
        for (MovePattern pattern : idiom.patterns(row.key.isMinor())) {
            for (int first = pattern.isInsertion() ? 1 : 0; first <= row.size(); first++) {
                int last = first + pattern.replaced().size() - 1;
                if (last < row.size()
                        && fits(pattern, first, last, idiom.conditions().contains(IdiomCondition.ANY_BASS))) {
                    add(found, idiom, pattern, first, last);
                }
            }
        }
        return found;
    }

    private void add(List<Change> found, Idiom idiom, MovePattern pattern, int first, int last) {
        Change change = new Change(idiom, row, first, last, put(pattern, first, last));
        if (isNew(change) && isInPlace(change) && (mayStayOpen || keepsCadence(change))) {
            found.add(change);
        }
    }

    private boolean fits(MovePattern pattern, int first, int last, boolean anyBass) {
        boolean isRoundTheLoop = first == row.size();
        if (isRoundTheLoop && !(pattern.isInsertion() && row.isLoop)) {
            return false;
        }
        return matches(pattern.before(), first - pattern.before().size(), true, anyBass)
                && matches(pattern.replaced(), first, false, false)
                && matches(pattern.after(), last + 1, true, anyBass);
    }

    private boolean matches(List<MovePattern.Token> tokens, int from, boolean beside, boolean anyBass) {
        for (int i = 0; i < tokens.size(); i++) {
            MovePattern.Token token = tokens.get(i);
            Chord chord = row.around(from + i);
            boolean isEnd = chord == null && from + i >= row.size();
            boolean stands = chord != null && (anyBass || !chord.isInverted());
            if (token.isEnd() ? !isEnd : !stands || !token.matches(chord, row.key.tonic(), beside)) {
                return false;
            }
        }
        return true;
    }

    private List<List<ChordEvent>> put(MovePattern pattern, int first, int last) {
        List<List<ChordEvent>> put = new ArrayList<>();
        for (int place = 0; place < pattern.put().size(); place++) {
            List<ChordEvent> here = new ArrayList<>();
            for (MovePattern.Replacement word : pattern.put().get(place)) {
                here.add(word.plain() == null ? row.event(first + place) : chosen(word, first, last));
            }
            put.add(here);
        }
        return put;
    }

    /** The fuller chord in a row of seventh chords, or where its further tones can be held from the chord before. */
    private ChordEvent chosen(MovePattern.Replacement word, int first, int last) {
        ChordEvent plain = row.event(word.plain());
        if (word.fuller() == null) {
            return plain;
        }
        ChordEvent fuller = row.event(word.fuller());
        Stream<NoteName> more =
                fuller.chord().tones().stream().filter(tone -> !plain.chord().holds(tone));
        Stream<Chord> around = Stream.of(row.around(first - 1), row.around(last + 1), replaced(first, last));
        List<Chord> beside = around.filter(chord -> chord != null).toList();
        boolean held = more.allMatch(tone -> beside.stream().anyMatch(chord -> chord.holds(tone)));
        return held || row.isOfSevenths() ? fuller : plain;
    }

    private Chord replaced(int first, int last) {
        return first <= last ? row.chord(first) : null;
    }

    /** Whether something changes, and neither neighbour comes twice. */
    private boolean isNew(Change change) {
        List<ChordEvent> chords = change.chords();
        Chord end = chords.get(chords.size() - 1).chord();
        boolean stays =
                !change.isInsertion() && change.put().get(0).get(0).chord().equals(change.old(0));
        boolean endStays = !change.isInsertion() && end.equals(row.chord(change.last()));
        boolean same = chords.size() == 1 && stays;
        boolean adds = change.idiom().colour() != Colour.ENRICHED || isAdded(change.old(0), change.now(0));
        return !same
                && adds
                && (stays || mayFollow(change, change.before(), change.now(0)))
                && (endStays || !isSameTriad(change.after(), end));
    }

    private static boolean isAdded(Chord old, Chord now) {
        return old.tones().stream().allMatch(now::holds)
                && now.kind().intervals().size() > old.kind().intervals().size();
    }

    /** A triad may become the dominant seventh on its own root. */
    private static boolean mayFollow(Change change, Chord before, Chord now) {
        return !isSameTriad(before, now)
                || change.idiom().colour() == Colour.APPLIED && !before.kind().holds(Interval.MINOR_SEVENTH);
    }

    private static boolean isSameTriad(Chord one, Chord other) {
        return one != null
                && one.root().equals(other.root())
                && one.kind().triad().equals(other.kind().triad())
                && one.bass().equals(other.bass());
    }

    private boolean isInPlace(Change change) {
        for (IdiomCondition place : change.idiom().conditions()) {
            boolean holds = switch (place) {
                case A_BAR -> !isStrict || row.beats(change.changedFrom()).compareTo(BAR) >= 0;
                case TWO_BARS -> !isStrict || row.beats(change.changedFrom()).compareTo(BAR.times(2)) >= 0;
                case AMONG_SEVENTHS -> !isStrict || row.isOfSevenths();
                case ANY_BASS -> true;
                case PREPARED ->
                    change.before() != null
                            && change.before().holds(change.now(0).root().plus(Interval.PERFECT_FOURTH));
                case NOT_LAST -> row.isLoop || change.last() + 1 < row.size();
            };
            if (!holds) {
                return false;
            }
        }
        return isLongEnough(change);
    }

    /** No chord lasts less than half a beat. */
    private boolean isLongEnough(Change change) {
        return !isStrict
                || change.spans().stream()
                        .allMatch(span -> span.beats()
                                        .times(row.progression.beatsPerBar())
                                        .compareTo(SHORTEST)
                                >= 0);
    }

    /**
     * Whether a row that ends keeps its last chord, and the dominant before it where there is one: a chord with the
     * leading note, or one that sounds like it a tritone away. A minor row may end in major.
     */
    private boolean keepsCadence(Change change) {
        int end = row.startOfEnding();
        if (row.isLoop || change.changedTo() < end - 1) {
            return true;
        }
        List<ChordEvent> chords = change.chords();
        ChordEvent last = chords.get(chords.size() - 1);
        if (change.last() >= end) {
            return change.idiom().name().equals(BorrowedIdioms.PICARDY)
                    || last.chord().equals(row.chord(change.last()));
        }
        boolean wasDominant = end > 0 && row.function(end - 1).isDominantOfKey();
        return change.first() > end || !wasDominant || isDominant(last);
    }

    private boolean isDominant(ChordEvent event) {
        boolean substitute = event.numeral().degree() == 2
                && event.numeral().alteration() == -1
                && event.chord().kind().holds(Interval.MINOR_SEVENTH);
        boolean suspended = event.chord().kind().quality() == TriadQuality.SUSPENDED;
        return substitute
                || !suspended && ChordFunction.of(event.chord(), row.key).isDominantOfKey();
    }
}
