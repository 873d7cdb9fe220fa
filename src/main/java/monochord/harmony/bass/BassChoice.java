package monochord.harmony.bass;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.TriadQuality;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * What may stand in the place of one chord of a progression, for a bass that goes by steps: the chord over one of its tones;
 * or the chord and behind it, in its second half, the same chord over a seventh that passes, or a dominant of the next chord.
 *
 * <p>A seventh in the bass goes down a step, the third of a dominant up a half step, a dominant a tritone away down one:
 * Integrated Music Theory, lessons 11b and 16b; Open Music Theory 2, "Substitutions". The tonic over the dominant's root before
 * it: Open Music Theory 1, "cadenceTypes". Weights are ours.
 *
 * @param chords one or two
 * @param bass what the last of them has lowest
 */
record BassChoice(List<Chord> chords, Bass bass, double cost) {
    private static final double OWED = 6;
    private static final double FORBIDDEN = 100;

    /** What lies lowest, and why it may. */
    enum Bass {
        AS_WRITTEN,
        THIRD,
        FIFTH,
        CADENTIAL_FIFTH,
        SEVENTH,
        PASSING,
        DOMINANT_THIRD,
        DOMINANT_FIFTH,
        DOMINANT_SEVENTH,
        TRITONE_AWAY
    }

    /**
     * All of them.
     *
     * @param next the chord behind, or null
     * @param key whose own sevenths pass more plainly than others
     * @param mayTurn whether the chord itself may stand over another tone
     * @param maySplit whether something may come in its second half
     */
    static List<BassChoice> of(Chord chord, Chord next, Key key, boolean mayTurn, boolean maySplit) {
        List<BassChoice> firsts = new ArrayList<>();
        firsts.add(new BassChoice(List.of(chord), Bass.AS_WRITTEN, 0));
        if (mayTurn) {
            tone(chord, 3).ifPresent(third -> firsts.add(over(chord, third, Bass.THIRD, 1)));
            tone(chord, 5)
                    .ifPresent(fifth -> firsts.add(
                            isCadential(chord, next, key)
                                    ? over(chord, fifth, Bass.CADENTIAL_FIFTH, 1)
                                    : over(chord, fifth, Bass.FIFTH, 3.5)));
            tone(chord, 7).ifPresent(seventh -> firsts.add(over(chord, seventh, Bass.SEVENTH, 1)));
        }
        List<BassChoice> all = new ArrayList<>(firsts);
        if (maySplit) {
            for (BassChoice first : firsts.subList(0, Math.min(2, firsts.size()))) {
                all.addAll(first.split(chord, next, key));
            }
        }
        return all;
    }

    /** A tonic triad before the dominant, over whose root it may stand already. */
    private static boolean isCadential(Chord chord, Chord next, Key key) {
        return next != null
                && chord.root().equals(key.tonic())
                && chord.kind().intervals().size() == 3
                && next.root().equals(key.note(5))
                && next.kind().quality() == TriadQuality.MAJOR;
    }

    private static BassChoice over(Chord chord, NoteName tone, Bass bass, double cost) {
        return new BassChoice(List.of(chord.over(tone)), bass, cost);
    }

    private static Optional<NoteName> tone(Chord chord, int number) {
        return chord.kind().interval(number).map(chord.root()::plus);
    }

    private List<BassChoice> split(Chord chord, Chord next, Key key) {
        List<BassChoice> found = new ArrayList<>();
        TriadQuality quality = chord.kind().quality();
        boolean isPlain = quality == TriadQuality.MAJOR || quality == TriadQuality.MINOR;
        if (isPlain && bass == Bass.AS_WRITTEN && !chord.isInverted()) {
            tone(chord, 7).ifPresentOrElse(seventh -> found.add(and(chord.over(seventh), Bass.PASSING, 1)), () -> {
                NoteName flat = chord.root().plus(Interval.MINOR_SEVENTH);
                NoteName sharp = chord.root().minus(Interval.MINOR_SECOND);
                boolean leads = next.root().equals(chord.root().plus(Interval.PERFECT_FOURTH));
                found.add(and(chord.over(flat), Bass.PASSING, leads || key.holds(flat) ? 1.5 : 2));
                found.add(and(chord.over(sharp), Bass.PASSING, key.holds(sharp) ? 1.5 : 2));
            });
        }
        TriadQuality goal = next.kind().quality();
        NoteName fifth = next.root().plus(Interval.PERFECT_FIFTH);
        boolean mayBeLedTo = goal == TriadQuality.MAJOR || goal == TriadQuality.MINOR;
        if (mayBeLedTo && !chord.root().equals(fifth) && !next.isInverted()) {
            Chord dominant = new Chord(fifth, ChordKind.DOMINANT_SEVENTH);
            found.add(and(dominant.over(tone(dominant, 3).orElseThrow()), Bass.DOMINANT_THIRD, 2.5));
            found.add(and(dominant.over(tone(dominant, 5).orElseThrow()), Bass.DOMINANT_FIFTH, 3));
            found.add(and(dominant.over(tone(dominant, 7).orElseThrow()), Bass.DOMINANT_SEVENTH, 3));
            Chord away = new Chord(next.root().plus(Interval.MINOR_SECOND), ChordKind.DOMINANT_SEVENTH);
            found.add(and(away, Bass.TRITONE_AWAY, 4));
        }
        return found;
    }

    private BassChoice and(Chord second, Bass lowest, double more) {
        return new BassChoice(List.of(chords.get(0), second), lowest, cost + more);
    }

    NoteName firstBass() {
        return chords.get(0).bass();
    }

    NoteName lastBass() {
        return chords.get(chords.size() - 1).bass();
    }

    /** What it costs if the next bass lies so many half steps away, and not where this one wants to go. */
    double owes(int move) {
        boolean goes = switch (bass) {
            case AS_WRITTEN -> true;
            case CADENTIAL_FIFTH -> move == 0;
            case THIRD, FIFTH, DOMINANT_FIFTH -> move != 0 && Math.abs(move) <= 2;
            case SEVENTH, PASSING, DOMINANT_SEVENTH -> move == -1 || move == -2;
            case DOMINANT_THIRD -> move == 1;
            case TRITONE_AWAY -> move == -1;
        };
        return goes ? 0 : bass == Bass.THIRD ? 1 : bass == Bass.CADENTIAL_FIFTH ? FORBIDDEN : OWED;
    }

    /** What was done here, in a sentence for each new chord. */
    List<Phrase> reasons(NoteName before, NoteName next) {
        if (bass == Bass.AS_WRITTEN) {
            return List.of();
        }
        List<Phrase> reasons = new ArrayList<>();
        boolean isTurned = chords.size() > 1 && chords.get(0).isInverted();
        if (isTurned) {
            reasons.add(Phrase.sentence(
                    "{0} has its third lowest: {1}.", chords.get(0), lies(before, firstBass(), lastBass())));
        }
        NoteName from = chords.size() > 1 ? firstBass() : before;
        reasons.add(reason(chords.get(chords.size() - 1), lies(from, lastBass(), next)));
        return reasons;
    }

    private Phrase reason(Chord chord, Phrase lies) {
        return switch (bass) {
            case THIRD -> Phrase.sentence("{0} has its third lowest: {1}.", chord, lies);
            case FIFTH -> Phrase.sentence("{0} has its fifth lowest, in passing: {1}.", chord, lies);
            case CADENTIAL_FIFTH ->
                Phrase.sentence("{0} has its fifth lowest, and the dominant keeps that bass: {1}.", chord, lies);
            case SEVENTH -> Phrase.sentence("{0} has its seventh lowest: {1}.", chord, lies);
            case PASSING -> Phrase.sentence("{0} is the same chord, and a seventh passes below it: {1}.", chord, lies);
            case DOMINANT_THIRD ->
                Phrase.sentence(
                        "{0} is put in, the dominant of the next chord with its third lowest: {1}.", chord, lies);
            case DOMINANT_FIFTH ->
                Phrase.sentence(
                        "{0} is put in, the dominant of the next chord with its fifth lowest: {1}.", chord, lies);
            case DOMINANT_SEVENTH ->
                Phrase.sentence(
                        "{0} is put in, the dominant of the next chord with its seventh lowest: {1}.", chord, lies);
            case TRITONE_AWAY ->
                Phrase.sentence("{0} is put in, for the dominant of the next chord, a tritone away: {1}.", chord, lies);
            case AS_WRITTEN -> Phrase.NOTHING;
        };
    }

    /** How a bass stands between its neighbours, as a clause. */
    private static Phrase lies(NoteName before, NoteName bass, NoteName next) {
        boolean from = before != null && isStep(before, bass);
        boolean to = next != null && isStep(bass, next);
        if (from && to) {
            return Phrase.of("{0} goes to {1} and on to {2}", before, bass, next);
        } else if (to) {
            return Phrase.of("{0} goes to {1}", bass, next);
        }
        return from ? Phrase.of("{0} goes to {1}", before, bass) : Phrase.of("{0} in the bass", bass);
    }

    private static boolean isStep(NoteName one, NoteName other) {
        int up = Math.floorMod(other.pitchClass() - one.pitchClass(), 12);
        return up == 1 || up == 2 || up == 10 || up == 11;
    }
}
