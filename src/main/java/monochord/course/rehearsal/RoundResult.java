package monochord.course.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import monochord.text.Phrase;

/**
 * How a round went, by the keyboard or by the player's own word.
 *
 * @param faults bars in which a change was late or wrong, from 0, in order; none where it was clean
 * @param isWild whether more than half of it went astray
 * @param ease from 0, just in time, to 1, dead on the beat
 * @param said which note or beat it was, in a sentence; empty where nothing more is known
 */
public record RoundResult(List<Integer> faults, boolean isWild, double ease, Phrase said) {
    private static final int FEW = 3;
    private static final double USUAL_EASE = 0.5;

    public RoundResult {
        faults = List.copyOf(faults);
    }

    /** @param firstBar the number of the round's first bar, for words */
    public static RoundResult heard(HeardRound round, int firstBar) {
        List<HeardChange> wrong =
                round.changes().stream().filter(change -> !change.isClean()).toList();
        int all = round.changes().size();
        boolean wild = all >= FEW && wrong.size() * 2 > all;
        double off = round.changes().stream()
                .mapToDouble(change -> Math.abs(change.late()))
                .average()
                .orElse(0);
        List<Integer> bars =
                wrong.stream().map(change -> change.due().bar()).distinct().toList();
        Phrase said = wrong.isEmpty() ? Phrase.NOTHING : wrong.get(0).inWords(firstBar);
        return new RoundResult(bars, wild, Math.max(0, 1 - off / round.tolerance()), said);
    }

    /** The player says it was clean. */
    public static RoundResult clean() {
        return new RoundResult(List.of(), false, USUAL_EASE, Phrase.NOTHING);
    }

    /** The player says in which bar it stumbled, from 0 in the round. */
    public static RoundResult stumbled(int bar) {
        return new RoundResult(List.of(bar), false, 0, Phrase.NOTHING);
    }

    /** The player says that nothing stood. */
    public static RoundResult wild(int bars) {
        List<Integer> all = new ArrayList<>();
        IntStream.range(0, bars).forEach(all::add);
        return new RoundResult(all, true, 0, Phrase.NOTHING);
    }

    public boolean isClean() {
        return faults.isEmpty();
    }
}
