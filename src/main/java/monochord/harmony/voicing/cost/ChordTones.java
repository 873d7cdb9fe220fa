package monochord.harmony.voicing.cost;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * The tones of one chord as a voicing sees them: which must sound, which may be doubled, which want to move on. Each has
 * a number from 0, the root's; sets of tones are the bits of an int.
 *
 * <p>What must sound: root, third or what is suspended in its place, seventh, every altered and added tone, and the bass, as
 * {@link ToneSelection} has it.
 *
 * <p>What may be doubled: root, third and perfect fifth, whether they belong to the key or not, but neither the leading
 * note of the key where it leads nor the third of a dominant seventh chord (Open Music Theory, 2014; Integrated Music
 * Theory, lessons 10a and 16a).
 */
public final class ChordTones {
    public static final int NONE = -1;

    private static final int ENOUGH_WITHOUT_ROOT = 4;

    private final Chord chord;
    private final ToneChoice choice;
    private final ToneSelection selection;
    private final List<NoteName> names = new ArrayList<>();
    private final int[] atKey = new int[12];
    private final int own;
    private final int bass;
    private final boolean diminished;
    private int must;
    private int alternatives;
    private int doubles;
    private int dissonances;
    private int guides;
    private int third;
    private int fifth;

    /**
     * @param tune what lies on top, if a tune does
     * @param voices in which the chord is to be played
     */
    public ChordTones(Chord chord, Key key, ToneChoice choice, Optional<Pitch> tune, int voices) {
        this.chord = chord;
        this.choice = choice;
        selection = new ToneSelection(chord, choice, voices);
        diminished = chord.kind().holds(Interval.MINOR_THIRD) && chord.kind().holds(Interval.DIMINISHED_FIFTH);
        Arrays.fill(atKey, NONE);
        selection.kept().forEach(this::add);
        selection.addedNinth(key).ifPresent(this::put);
        own = names.size();
        bass = choice.hasBass() ? put(chord.bass()) : NONE;
        must |= choice.hasBass() ? 1 << bass : 0;
        int top = tune.map(pitch -> put(pitch.name())).orElse(NONE);
        doubles &= isLeadingNote(key) ? ~(1 << leading()) : ~0;
        doubles |= top == bass && bass != NONE ? 1 << bass : 0;
        int needed = Integer.bitCount(must) + (alternatives == 0 ? 0 : 1);
        must &= selection.isRootFree(needed) ? ~1 : ~0;
    }

    private void add(Interval interval) {
        NoteName name = chord.root().plus(interval);
        if (atKey[name.pitchClass()] != NONE) {
            return;
        }
        int bit = 1 << put(name);
        int number = interval.number();
        boolean perfectFifth = ToneSelection.isPerfectFifth(interval);
        alternatives |= selection.isAlternative(interval) ? bit : 0;
        must |= selection.isNeeded(interval) ? bit : 0;
        third |= number == 3 ? bit : 0;
        fifth |= perfectFifth ? bit : 0;
        dissonances |= number == 7 || number == 4 ? bit : 0;
        guides |= number == 3 || number == 4 || number == 6 || number == 7 ? bit : 0;
        doubles |= number == 1 || number == 3 && !selection.isDominant() || perfectFifth ? bit : 0;
    }

    /** The number of a tone, which is new if the chord does not have it yet. */
    private int put(NoteName name) {
        if (atKey[name.pitchClass()] == NONE) {
            atKey[name.pitchClass()] = names.size();
            names.add(name);
        }
        return atKey[name.pitchClass()];
    }

    /** The leading note of a key, whether a chord has it or not. */
    public static NoteName leadingNote(Key key) {
        return key.tonic().plus(Interval.MAJOR_SEVENTH);
    }

    /** The tone that can lead: the third above a major third, the root of a diminished chord; or −1. */
    int leading() {
        boolean major = chord.kind().holds(Interval.MAJOR_THIRD);
        return diminished
                ? 0
                : major ? atKey[chord.root().plus(Interval.MAJOR_THIRD).pitchClass()] : NONE;
    }

    private boolean isLeadingNote(Key key) {
        return leading() != NONE && name(leading()).equals(leadingNote(key));
    }

    public Chord chord() {
        return chord;
    }

    public int count() {
        return names.size();
    }

    public NoteName name(int tone) {
        return names.get(tone);
    }

    /** The tone on that key of the keyboard, or −1. */
    public int at(int midiNumber) {
        return atKey[midiNumber % 12];
    }

    public Pitch pitch(int midiNumber) {
        NoteName name = name(at(midiNumber));
        int octave = (midiNumber - new Pitch(name, 0).midiNumber()) / 12;
        return new Pitch(name, octave);
    }

    /** Whether a tone may lie lowest: the bass of the chord, or above a bass player any. */
    public boolean mayBeLowest(int tone) {
        return !choice.hasBass() || tone == bass;
    }

    /** Whether the tone may lie anywhere: a note of the tune from outside the chord lies on top alone. */
    public boolean isOnTopOnly(int tone) {
        return tone >= own && tone != bass;
    }

    public int must() {
        return must;
    }

    /** Tones of which exactly one has to sound; none of them if the set is empty. */
    public int alternatives() {
        return alternatives;
    }

    /** Tones that may sound as often as one likes. */
    public int doubles() {
        return doubles;
    }

    /**
     * Units of thickness for a tone that sounds though the style would do without it: the root that a bass player has, less
     * where the chord has too few others for four voices.
     */
    int unwanted(int tone) {
        boolean root = tone == 0 && choice == ToneChoice.ROOTLESS && (must & 1) == 0;
        return !root ? 0 : own > ENOUGH_WITHOUT_ROOT ? 6 : 1;
    }

    /** Units of thickness for a tone that sounds again, over that lowest tone. */
    int doubled(int tone, int lowest) {
        int bit = 1 << tone;
        if (diminished && choice.hasBass()) {
            return tone == 0 ? 3 : 0;
        }
        int ofThird = tone == lowest ? 1 : 3;
        return (bit & third) != 0 ? ofThird : (bit & fifth) != 0 ? 1 : 0;
    }

    /** Units of thickness for a chord without its fifth, which a chord without its root may need less. */
    int hollow() {
        return choice == ToneChoice.ROOTLESS ? 1 : 2;
    }

    /** Whether the tone may lie lowest at no price: above a bass player and under a seventh a third or seventh. */
    boolean isGuide(int tone) {
        return choice != ToneChoice.ROOTLESS || (must & 1) != 0 || tone >= 0 && (guides & 1 << tone) != 0;
    }

    /** The seventh and the suspended fourth. */
    public int dissonances() {
        return dissonances;
    }

    /** The perfect fifth alone. */
    int fifth() {
        return fifth;
    }

    /** The keys of one octave that a listener waits for, as bits: 0 for C; a root that a bass player has is none. */
    int keys() {
        int keys = 0;
        for (int tone = 0; tone < names.size(); tone++) {
            keys |= unwanted(tone) > 0 ? 0 : 1 << name(tone).pitchClass();
        }
        return keys;
    }
}
