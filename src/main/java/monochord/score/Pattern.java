package monochord.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import monochord.theory.note.Beats;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * How the hands strike the chords they hold. Common practice, no source.
 *
 * <p>Text form: in small letters with hyphens, {@code bass-and-chord}; a space will do for a hyphen.
 */
public enum Pattern {
    /** All keys at once, held. */
    BLOCK,
    /** The bass held, the right hand's keys one after the other in eighths, up and down. */
    BROKEN,
    /** From the bottom up as fast as a hand turns, then held. */
    ROLLED,
    /** The bass on the strong beats, the chord short on the others. */
    BASS_AND_CHORD,
    /** The bass held, the chord again on every beat. */
    PULSE,
    /** In bars of three: the bass on the first beat, its fifth where the chord stays for another bar, the chord short behind. */
    WALTZ,
    /** The left hand in eighths over root, fifth and octave, the chord held. */
    BALLAD,
    /** The bass on the strong beats, the chord short between all beats. */
    OFF_BEATS,
    /** In bars of four: root and fifth in the left hand, the chord in a rhythm of two bars that goes across the beat. */
    BOSSA,
    /** In bars of four: the chord comes an eighth before its bar and is struck again against the beat. */
    PUSH,
    /** The bass walks in quarters from chord to chord, the right hand strikes on the first beat and before the third. */
    WALKING;

    /** Whether the sustain pedal carries each chord; what is to sound short goes without. */
    public boolean isPedalled() {
        return this == BLOCK || this == BROKEN || this == ROLLED || this == BALLAD;
    }

    /** Whether it can be played in these bars. */
    public boolean fits(BarGrid metre) {
        return switch (this) {
            case WALTZ -> metre.hasQuarters(3);
            case BOSSA, PUSH -> metre.hasQuarters(4);
            case OFF_BEATS, WALKING -> !metre.isCompound();
            default -> true;
        };
    }

    /** The bars it is played in where nobody names any. */
    public BarGrid usualMetre() {
        return this == WALTZ ? BarGrid.parse("3/4") : BarGrid.COMMON;
    }

    /**
     * The voicings one after another in this pattern.
     *
     * @param metre where the strong beats are; the first voicing begins a bar
     */
    public Score of(List<TimedVoicing> voicings, BarGrid metre) {
        return Groove.isMade(this) ? new Groove(this, voicings, metre).score() : figures(voicings, metre);
    }

    private Score figures(List<TimedVoicing> voicings, BarGrid metre) {
        List<Score> parts = new ArrayList<>();
        Beats now = Beats.ZERO;
        for (TimedVoicing voicing : voicings) {
            Score struck = struck(new Figure(voicing, now, metre));
            Score labelled = voicing.label().isEmpty() ? struck : struck.labelled(voicing.label());
            parts.add(isPedalled() ? labelled.pedalled() : labelled);
            now = now.plus(voicing.beats());
        }
        return new Score.InTurn(parts);
    }

    private Score struck(Figure figure) {
        return switch (this) {
            case BLOCK -> figure.block();
            case BROKEN -> figure.broken();
            case ROLLED -> figure.rolled();
            case BASS_AND_CHORD -> figure.bassAndChord();
            case PULSE -> figure.pulse();
            default -> throw new IllegalArgumentException(this + " is no figure of one chord");
        };
    }

    /** @throws Unreadable if there is no such pattern */
    public static Pattern parse(String text) {
        String wanted = text.toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "-");
        return Arrays.stream(values())
                .filter(pattern -> pattern.toString().equals(wanted))
                .findFirst()
                .orElseThrow(() -> Unreadable.because(
                        text,
                        0,
                        "a way to play chords",
                        Clause.of(
                                "expected one of {0}",
                                Arrays.stream(values()).map(Pattern::toString).collect(Collectors.joining(", "))),
                        "as broken"));
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
