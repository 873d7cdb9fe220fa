package monochord.harmony.bass;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;

/**
 * A bass that goes by half steps and whole steps, downward for choice. The first and the last chord stand on their roots, a
 * bass that was written stays, and a dominant before a closing tonic keeps its root. Of all ways that {@link BassChoice}
 * allows the smoothest is taken, by dynamic programming.
 *
 * <p>Sources: the stepping basses Open Music Theory 1, "popRockHarmony" (V6 under 7, I6 under 3, V42 under 4), and 2 on the
 * lament (i V6 i42 IV6 ♭VI V); the weights are ours.
 */
final class ChromaticBass {
    private static final int KEYS = 12;

    private final Progression progression;
    /** Whether a bar has three beats, so that a chord that is put in has the last of them. */
    private final boolean dividesInThree;

    private final List<TimedChord> slots = new ArrayList<>();
    private final List<List<BassChoice>> choices = new ArrayList<>();

    /** A chord that is struck, with all its held time. */
    private record TimedChord(Chord chord, Beats beats, boolean isHeldOn) {}

    ChromaticBass(Progression progression, Beats barLength, boolean inThrees) {
        this.progression = progression;
        this.dividesInThree = barLength.equals(Beats.of(3)) && !inThrees;
        for (Bar bar : progression.bars()) {
            Beats share = barLength.dividedInto(bar.shares());
            for (ChordEvent slot : bar.slots()) {
                TimedChord last = slot.held() ? slots.remove(slots.size() - 1) : null;
                Beats beats = share.times(slot.shares());
                slots.add(
                        last == null
                                ? new TimedChord(slot.chord(), beats, false)
                                : new TimedChord(last.chord(), last.beats().plus(beats), true));
            }
        }
        for (int i = 0; i < slots.size(); i++) {
            choices.add(choices(i));
        }
    }

    private List<BassChoice> choices(int i) {
        TimedChord slot = slots.get(i);
        boolean isEdge = i == 0 || i == slots.size() - 1;
        Chord next = i + 1 < slots.size() ? slots.get(i + 1).chord() : null;
        boolean closes = i == slots.size() - 2
                && Numeral.of(slot.chord(), progression.key()).degree() == 5
                && next.root().equals(progression.key().tonic());
        boolean mayTurn = !isEdge && !closes && !slot.chord().isInverted();
        boolean maySplit = next != null
                && !closes
                && !slot.isHeldOn()
                && slot.beats().compareTo(Beats.of(2)) >= 0
                && !slot.chord().equals(next);
        return BassChoice.of(slot.chord(), next, progression.key(), mayTurn, maySplit);
    }

    /** The best way up to one choice: what it costs, whether its last move was a step down or up, and how it came. */
    private record BassPath(double cost, int direction, int before) {}

    BassLine line() {
        List<BassPath[]> ways = new ArrayList<>();
        for (int i = 0; i < choices.size(); i++) {
            BassPath[] reached = new BassPath[choices.get(i).size()];
            for (int choice = 0; choice < reached.length; choice++) {
                reached[choice] = best(i, choices.get(i).get(choice), ways);
            }
            ways.add(reached);
        }
        return line(back(ways));
    }

    private BassPath best(int i, BassChoice choice, List<BassPath[]> ways) {
        if (i == 0) {
            return within(choice, new BassPath(choice.cost(), 0, 0));
        }
        BassPath best = null;
        BassPath[] before = ways.get(i - 1);
        for (int from = 0; from < before.length; from++) {
            BassChoice last = choices.get(i - 1).get(from);
            int move = move(last.lastBass(), choice.firstBass());
            double cost = before[from].cost() + choice.cost() + step(move, before[from].direction()) + last.owes(move);
            BassPath way = within(choice, new BassPath(cost, direction(move), from));
            best = best == null || way.cost() < best.cost() ? way : best;
        }
        return best;
    }

    /** With the step that a choice of two chords makes inside. */
    private static BassPath within(BassChoice choice, BassPath so) {
        if (choice.chords().size() == 1) {
            return so;
        }
        int move = move(choice.firstBass(), choice.lastBass());
        return new BassPath(so.cost() + step(move, so.direction()), direction(move), so.before());
    }

    /** Half steps, the shorter way round. */
    private static int move(NoteName from, NoteName to) {
        int up = Math.floorMod(to.pitchClass() - from.pitchClass(), KEYS);
        return up > KEYS / 2 ? up - KEYS : up;
    }

    private static int direction(int move) {
        return Math.abs(move) > 2 ? 0 : Integer.signum(move);
    }

    private static double step(int move, int direction) {
        int turn = direction * direction(move);
        double goesOn = turn > 0 ? -0.5 : turn < 0 ? 1.5 : 0;
        return goesOn
                + switch (move) {
                    case -1 -> -4;
                    case 1 -> -2.5;
                    case -2 -> -2;
                    case 2 -> -1;
                    case 0 -> 0.5;
                    case 6 -> 2;
                    default -> 1;
                };
    }

    private List<BassChoice> back(List<BassPath[]> ways) {
        int last = choices.size() - 1;
        int choice = 0;
        for (int i = 1; i < ways.get(last).length; i++) {
            choice = ways.get(last)[i].cost() < ways.get(last)[choice].cost() ? i : choice;
        }
        List<BassChoice> chosen = new ArrayList<>();
        for (int i = last; i >= 0; i--) {
            chosen.add(0, choices.get(i).get(choice));
            choice = ways.get(i)[choice].before();
        }
        return chosen;
    }

    private BassLine line(List<BassChoice> chosen) {
        boolean split = chosen.stream().anyMatch(choice -> choice.chords().size() > 1);
        Progression whole = split && !progression.barred() ? inBars() : progression;
        List<Bar> bars = new ArrayList<>();
        int next = 0;
        for (Bar bar : whole.bars()) {
            List<ChordEvent> events = new ArrayList<>();
            boolean halves = false;
            int from = next;
            for (ChordEvent slot : bar.slots()) {
                halves |= !slot.held() && chosen.get(next).chords().size() > 1;
                next += slot.held() ? 0 : 1;
            }
            add(bar, chosen, from, halves ? parts(bar) : 1, events);
            bars.add(new Bar(events, false));
        }
        Progression over = new Progression(progression.key(), bars, whole.barred());
        return new BassLine(BassLine.BassStyle.CHROMATIC, progression, over, reasons(chosen), List.of());
    }

    private void add(Bar bar, List<BassChoice> chosen, int from, int times, List<ChordEvent> events) {
        int next = from;
        for (ChordEvent slot : bar.slots()) {
            int shares = slot.shares() * times;
            if (slot.held()) {
                events.add(event(chosen.get(next - 1).chords().get(0), shares, true));
                continue;
            }
            List<Chord> parts = chosen.get(next++).chords();
            for (Chord part : parts) {
                boolean isFirst = part == parts.get(0);
                int share = parts.size() == 1 ? shares : times == 2 ? shares / 2 : isFirst ? 2 : 1;
                events.add(event(part, share, false));
            }
        }
    }

    /** Into how many parts each share is cut: two, or three where one chord has a bar of three beats. */
    private int parts(Bar bar) {
        return dividesInThree && bar.slots().size() == 1 ? 3 : 2;
    }

    private ChordEvent event(Chord chord, int shares, boolean held) {
        return new ChordEvent(chord, Numeral.of(chord, progression.key()), shares, held);
    }

    /** Chords without bars, of two beats each, two in a bar. */
    private Progression inBars() {
        List<Bar> bars = new ArrayList<>();
        List<ChordEvent> all = progression.slots();
        for (int i = 0; i < all.size(); i += 2) {
            bars.add(new Bar(all.subList(i, Math.min(i + 2, all.size())), false));
        }
        return new Progression(progression.key(), bars, true);
    }

    private List<Phrase> reasons(List<BassChoice> chosen) {
        List<Phrase> reasons = new ArrayList<>();
        for (int i = 0; i < chosen.size(); i++) {
            NoteName before = i == 0 ? null : chosen.get(i - 1).lastBass();
            NoteName next = i + 1 == chosen.size() ? null : chosen.get(i + 1).firstBass();
            reasons.addAll(chosen.get(i).reasons(before, next));
        }
        return reasons;
    }
}
