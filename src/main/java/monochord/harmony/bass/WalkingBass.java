package monochord.harmony.bass;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * A walking bass: a quarter on each beat. Each chord begins on its bass, its last beat leads into the next bass by a half
 * step, by a whole step that one of the two chords holds, or from its fifth; between stand tones of the chord. The last chord
 * is held. Of all such lines between E1 and E3 the smoothest is taken, by dynamic programming over every note.
 *
 * <p>Common practice, no source; the lowest string of a bass with four strings is E1.
 */
public final class WalkingBass {
    private static final int HIGHEST = 52;
    private static final double NEVER = 1e9;
    private static final double AGAIN = 2;

    /**
     * A chord to walk under.
     *
     * @param bass on which it begins
     * @param tones of the chord
     * @param beats quarters, more than none
     */
    public record Stretch(NoteName bass, List<NoteName> tones, Beats beats) {}

    /** A note of the line. */
    public record WalkedNote(Pitch pitch, Beats beats) {}

    /** One beat: which notes may stand there. */
    private record WalkedBeat(int chord, int at, int count, List<Pitch> notes) {
        boolean leads() {
            return count > 1 && at == count - 1;
        }
    }

    private final List<Stretch> chords;
    private final List<WalkedBeat> places = new ArrayList<>();

    private WalkingBass(List<Stretch> chords) {
        this.chords = chords;
        for (int i = 0; i < chords.size(); i++) {
            int count = i == chords.size() - 1 ? 1 : count(chords.get(i));
            for (int at = 0; at < count; at++) {
                places.add(new WalkedBeat(i, at, count, notes(i, at, count)));
            }
        }
    }

    /** The notes under each chord, in order. */
    public static List<List<WalkedNote>> under(List<Stretch> chords) {
        List<List<WalkedNote>> line = new ArrayList<>();
        if (chords.isEmpty()) {
            return line;
        }
        List<Pitch> pitches = new WalkingBass(List.copyOf(chords)).smoothest();
        int next = 0;
        for (int i = 0; i < chords.size(); i++) {
            int count = i == chords.size() - 1 ? 1 : count(chords.get(i));
            line.add(lengths(pitches.subList(next, next + count), chords.get(i).beats()));
            next += count;
        }
        return line;
    }

    /** A quarter each, the last as long as the chord. */
    private static List<WalkedNote> lengths(List<Pitch> pitches, Beats beats) {
        List<WalkedNote> notes = new ArrayList<>();
        int last = pitches.size() - 1;
        for (int i = 0; i < last; i++) {
            notes.add(new WalkedNote(pitches.get(i), Beats.ONE));
        }
        notes.add(new WalkedNote(pitches.get(last), beats.minus(Beats.of(last))));
        return notes;
    }

    private static int count(Stretch chord) {
        return (int) Math.max(1, chord.beats().numerator() / chord.beats().denominator());
    }

    private List<Pitch> notes(int chord, int at, int count) {
        List<NoteName> names = new ArrayList<>();
        if (at == 0) {
            names.add(chords.get(chord).bass());
        } else if (at == count - 1) {
            names.addAll(leading(chord));
        } else {
            names.addAll(chords.get(chord).tones());
        }
        List<Pitch> pitches = new ArrayList<>();
        for (NoteName name : names) {
            Pitch low = Pitch.atOrAbove(name, Pitch.parse("E1"));
            for (Pitch pitch = low; pitch.midiNumber() <= HIGHEST; pitch = pitch.plus(Interval.OCTAVE)) {
                pitches.add(pitch);
            }
        }
        return pitches;
    }

    /** Notes that lead into the next bass. */
    private List<NoteName> leading(int chord) {
        NoteName next = chords.get(chord + 1).bass();
        List<NoteName> names = new ArrayList<>();
        names.add(plain(next.minus(Interval.MINOR_SECOND)));
        names.add(plain(next.plus(Interval.MINOR_SECOND)));
        names.add(next.plus(Interval.PERFECT_FIFTH));
        for (NoteName step : List.of(next.minus(Interval.MAJOR_SECOND), next.plus(Interval.MAJOR_SECOND))) {
            boolean isHeld = chords.get(chord).tones().contains(step)
                    || chords.get(chord + 1).tones().contains(step);
            if (isHeld) {
                names.add(step);
            }
        }
        return names;
    }

    /** A white key by its own name, no double accidentals: the half steps into a note are for the fingers. */
    private static NoteName plain(NoteName name) {
        boolean isWhite = List.of(0, 2, 4, 5, 7, 9, 11).contains(name.pitchClass());
        return Math.abs(name.alteration()) > 1 || isWhite && name.alteration() != 0 ? name.simplest() : name;
    }

    /** By the cheapest way up to each two neighbouring notes, so that a note that comes back too soon can cost. */
    private List<Pitch> smoothest() {
        List<Pitch> first = places.get(0).notes();
        double[][] costs = {first.stream().mapToDouble(WalkingBass::register).toArray()};
        List<int[][]> ways = new ArrayList<>();
        for (int place = 1; place < places.size(); place++) {
            double[][] reached =
                    new double[costs[0].length][places.get(place).notes().size()];
            int[][] from = new int[reached.length][reached[0].length];
            for (int last = 0; last < reached.length; last++) {
                for (int note = 0; note < reached[last].length; note++) {
                    from[last][note] = cheapest(place, last, note, costs);
                    reached[last][note] = cost(place, from[last][note], last, note, costs);
                }
            }
            ways.add(from);
            costs = reached;
        }
        return back(costs, ways);
    }

    private int cheapest(int place, int last, int note, double[][] costs) {
        int best = 0;
        for (int before = 1; before < costs.length; before++) {
            boolean isBetter = cost(place, before, last, note, costs) < cost(place, best, last, note, costs);
            best = isBetter ? before : best;
        }
        return best;
    }

    private double cost(int place, int before, int last, int note, double[][] costs) {
        Pitch pitch = places.get(place).notes().get(note);
        boolean comesBack =
                place > 1 && places.get(place - 2).notes().get(before).equals(pitch);
        return costs[before][last] + step(place, last, note) + register(pitch) + (comesBack ? AGAIN : 0);
    }

    /** Near G2 it is at home: lower notes grow dull, higher ones come into the way of the chords. */
    private static double register(Pitch pitch) {
        int key = pitch.midiNumber();
        return Math.max(0, key - 48) * 0.5 + Math.max(0, 33 - key) * 0.5;
    }

    private double step(int place, int from, int to) {
        Pitch first = places.get(place - 1).notes().get(from);
        Pitch second = places.get(place).notes().get(to);
        int move = second.midiNumber() - first.midiNumber();
        return places.get(place - 1).leads() ? landing(move) : walk(Math.abs(move), place);
    }

    /** Into the next bass: half steps first, then whole steps, then the fall of a fifth or the rise of a fourth. */
    private static double landing(int move) {
        return switch (Math.abs(move)) {
            case 1 -> 0;
            case 2 -> 1;
            default -> move == -7 || move == 5 ? 2.5 : NEVER;
        };
    }

    private double walk(int size, int place) {
        if (size == 0) {
            return places.get(place).at() == 0 ? 3 : 8;
        }
        return switch (size) {
            case 1, 2 -> 0.5;
            case 3, 4 -> 0;
            case 5 -> 1.5;
            case 7 -> 2;
            case 6, 8, 9 -> 4;
            case 12 -> 4;
            default -> 12;
        };
    }

    private List<Pitch> back(double[][] costs, List<int[][]> ways) {
        int before = 0;
        int note = 0;
        for (int i = 0; i < costs.length; i++) {
            for (int j = 0; j < costs[i].length; j++) {
                boolean isBetter = costs[i][j] < costs[before][note];
                before = isBetter ? i : before;
                note = isBetter ? j : note;
            }
        }
        List<Pitch> line = new ArrayList<>();
        for (int place = places.size() - 1; place >= 0; place--) {
            line.add(places.get(place).notes().get(note));
            int earlier = place > 0 ? ways.get(place - 1)[before][note] : 0;
            note = before;
            before = earlier;
        }
        Collections.reverse(line);
        return line;
    }
}
