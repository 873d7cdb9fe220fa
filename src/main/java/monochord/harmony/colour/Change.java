package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.ChordEvent;
import monochord.harmony.melody.ChordSpan;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;

/**
 * An idiom at one place of a row, all other chords as they are.
 *
 * @param first the first chord that is replaced, from 0; where chords are put in between, the one behind them
 * @param last the last chord that is replaced; below {@code first} where chords are put in between
 * @param put the chords that come in the time of each replaced one; one list where they are put in between
 */
record Change(Idiom idiom, PlainRow row, int first, int last, List<List<ChordEvent>> put) {
    private static final int BEATS_IN_THREE = 3;

    boolean isInsertion() {
        return last < first;
    }

    Key key() {
        return row.key;
    }

    /** The chord before, which stays; null at the start of a row that is no loop. */
    Chord before() {
        return row.around(first - 1);
    }

    /** The chord behind, which stays; null at the end of a row that is no loop. */
    Chord after() {
        return row.around(last + 1);
    }

    /** One of the chords that are replaced. */
    Chord old(int index) {
        return row.chord(first + index);
    }

    /** One of the chords that come, counted through. */
    Chord now(int index) {
        return chords().get(index).chord();
    }

    /** All that come, in order. */
    List<ChordEvent> chords() {
        List<ChordEvent> all = new ArrayList<>();
        put.forEach(all::addAll);
        return all;
    }

    /** The note on the degree of the key's own scale. */
    NoteName degree(int number) {
        return row.key.note(number);
    }

    Phrase sentence() {
        return idiom.reason().apply(this);
    }

    /** The first chord whose sound or length it changes or leans on, round a loop below 0. */
    int reachesFrom() {
        return first - 1;
    }

    int reachesTo() {
        return last + 1;
    }

    /** The first chord that is shortened or replaced, and the last. */
    int changedFrom() {
        return isInsertion() ? first - 1 : first;
    }

    int changedTo() {
        return isInsertion() ? first - 1 : last;
    }

    /** The time of the chords that are changed, with what now sounds there, in bars. */
    List<ChordSpan> spans() {
        List<ChordSpan> spans = new ArrayList<>();
        List<List<ChordEvent>> places = places();
        for (int i = 0; i < places.size(); i++) {
            Beats start = row.span(changedFrom() + i).start();
            List<Beats> lengths =
                    lengths(row.span(changedFrom() + i).beats(), places.get(i).size());
            for (int k = 0; k < lengths.size(); k++) {
                spans.add(new ChordSpan(0, places.get(i).get(k).chord(), start, lengths.get(k)));
                start = start.plus(lengths.get(k));
            }
        }
        return spans;
    }

    /** For each changed chord what sounds in its time now; a chord that makes room comes first. */
    List<List<ChordEvent>> places() {
        if (!isInsertion()) {
            return put;
        }
        List<ChordEvent> shared = new ArrayList<>(List.of(row.event(first - 1)));
        shared.addAll(put.get(0));
        return List.of(shared);
    }

    /**
     * A chord that makes room keeps half of its time; chords that replace one share it equally. Of three beats the first two
     * go together, where they are not one each.
     */
    private List<Beats> lengths(Beats whole, int parts) {
        boolean isInThree = whole.equals(row.threes);
        if (isInThree && parts == 2) {
            Beats third = whole.dividedInto(BEATS_IN_THREE);
            return List.of(third.times(2), third);
        }
        boolean isShared = !isInsertion() || isInThree && parts == BEATS_IN_THREE;
        List<Beats> lengths = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            lengths.add(
                    isShared
                            ? whole.dividedInto(parts)
                            : i == 0
                                    ? whole.dividedInto(2)
                                    : whole.dividedInto(2).dividedInto(parts - 1));
        }
        return lengths;
    }
}
