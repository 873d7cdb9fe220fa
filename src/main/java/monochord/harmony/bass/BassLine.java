package monochord.harmony.bass;

import java.util.List;
import java.util.Locale;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.text.Phrase;
import monochord.theory.note.Beats;

/**
 * A progression over a line of the bass.
 *
 * @param before as it was given
 * @param chords over their new basses, perhaps with chords put in
 * @param reasons what was done, in the order of the chords; none where the bass stays as it is
 * @param walked the notes under each chord where the bass walks, else nothing
 */
public record BassLine(
        BassStyle style,
        Progression before,
        Progression chords,
        List<Phrase> reasons,
        List<List<WalkingBass.WalkedNote>> walked) {
    /** How a bass goes. Its text form is in small letters. */
    public enum BassStyle {
        /** Down or up by half steps and whole steps: inversions, sevenths that pass, applied chords put in. */
        CHROMATIC,
        /** One note held under chords that bear it. */
        PEDAL,
        /** A note on every beat. */
        WALKING;

        public Phrase inWords() {
            return switch (this) {
                case CHROMATIC -> Phrase.of("by steps");
                case PEDAL -> Phrase.of("on a pedal");
                case WALKING -> Phrase.of("walking");
            };
        }

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public BassLine {
        reasons = List.copyOf(reasons);
        walked = List.copyOf(walked);
    }

    /** In bars of four beats. */
    public static BassLine of(Progression progression, BassStyle style) {
        return of(progression, style, Beats.of(progression.beatsPerBar()), false);
    }

    /**
     * In bars of any length.
     *
     * @param bar quarters in a bar of the progression
     * @param inThrees whether beats are dotted, as in 6/8
     */
    public static BassLine of(Progression progression, BassStyle style, Beats bar, boolean inThrees) {
        return switch (style) {
            case CHROMATIC -> new ChromaticBass(progression, bar, inThrees).line();
            case PEDAL -> PedalBass.under(progression);
            case WALKING -> walking(progression, bar);
        };
    }

    /** Whether the bass goes otherwise than it was written. */
    public boolean isNew() {
        return style == BassStyle.WALKING || !chords.chords().equals(before.chords());
    }

    private static BassLine walking(Progression progression, Beats barLength) {
        List<WalkingBass.Stretch> stretches = new java.util.ArrayList<>();
        for (Bar bar : progression.bars()) {
            Beats share = barLength.dividedInto(bar.shares());
            for (ChordEvent slot : bar.slots()) {
                Beats beats = share.times(slot.shares());
                int last = stretches.size() - 1;
                if (slot.held()) {
                    WalkingBass.Stretch held = stretches.remove(last);
                    stretches.add(new WalkingBass.Stretch(
                            held.bass(), held.tones(), held.beats().plus(beats)));
                } else {
                    stretches.add(new WalkingBass.Stretch(
                            slot.chord().bass(), slot.chord().tones(), beats));
                }
            }
        }
        return new BassLine(BassStyle.WALKING, progression, progression, List.of(), WalkingBass.under(stretches));
    }
}
