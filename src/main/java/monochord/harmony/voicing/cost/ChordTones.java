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
 * <p>What must sound: root, third or what is suspended in its place, seventh, every altered and added tone, and the bass.
 * The perfect fifth may go; so may a ninth or eleventh under a higher tone of the stack. An eleventh and a major third
 * are never together: under a thirteenth the eleventh goes, else the third (common practice, no source).
 *
 * <p>What may be doubled: root, third and perfect fifth, but no leading note and no tone from outside the key (Open Music
 * Theory, 2014; Integrated Music Theory, lesson 10a). Where that leaves too few for so many voices, as in a chord that
 * lies wholly outside the key, its root may sound twice, then its fifth, then its third, but never the leading note.
 */
public final class ChordTones {
    private static final int NONE = -1;

    private final Chord chord;
    private final List<NoteName> names = new ArrayList<>();
    private final int[] atKey = new int[12];
    private final int own;
    private final int bass;
    private final int top;
    private int must;
    private int doubles;
    private int pinch;
    private int dissonances;
    private int third;
    private int fifth;
    private int fifths;

    public ChordTones(Chord chord, Key key, boolean shell, Optional<Pitch> tune, int voices) {
        this.chord = chord;
        Arrays.fill(atKey, NONE);
        List<Interval> kept = chord.kind().intervals().stream()
                .filter(interval -> isKept(interval, shell))
                .toList();
        kept.forEach(interval -> add(interval, key));
        own = names.size();
        bass = foreign(chord.bass());
        must |= 1 << bass;
        top = tune.map(pitch -> foreign(pitch.name())).orElse(NONE);
        allowDoubling(voices, key);
    }

    private boolean isKept(Interval interval, boolean shell) {
        int number = interval.number();
        boolean thirteenth = has(13);
        boolean clash = chord.kind().holds(Interval.MAJOR_THIRD) && chord.kind().holds(Interval.PERFECT_FOURTH);
        if (shell && (number >= 9 || number == 5 && has(7) && interval.equals(Interval.PERFECT_FIFTH))) {
            return false;
        }
        return !clash || !(number == 11 && thirteenth || number == 3 && !thirteenth && !shell);
    }

    private boolean has(int number) {
        return chord.kind().intervals().stream().anyMatch(interval -> interval.number() == number);
    }

    private void add(Interval interval, Key key) {
        NoteName name = chord.root().plus(interval);
        if (atKey[name.pitchClass()] != NONE) {
            return;
        }
        int bit = 1 << names.size();
        int number = interval.number();
        boolean perfectFifth = interval.equals(Interval.PERFECT_FIFTH);
        third |= number == 3 ? bit : 0;
        fifth |= perfectFifth ? bit : 0;
        fifths |= number == 5 ? bit : 0;
        must |= perfectFifth || mayGo(interval) ? 0 : bit;
        dissonances |= number == 7 || number == 4 ? bit : 0;
        boolean plain = number == 1 || number == 3 || perfectFifth;
        doubles |= plain && key.holds(name) && !name.equals(leadingNote(key)) ? bit : 0;
        put(name);
    }

    /** A plain ninth or eleventh with something above it in the stack. */
    private boolean mayGo(Interval interval) {
        boolean ninth = interval.number() == 9 && interval.fifths() == Interval.MAJOR_SECOND.fifths();
        boolean eleventh = interval.number() == 11 && interval.fifths() == Interval.PERFECT_FOURTH.fifths();
        return ninth && (has(11) || has(13)) || eleventh && has(13);
    }

    public static NoteName leadingNote(Key key) {
        return key.tonic().plus(Interval.MAJOR_SEVENTH);
    }

    private int put(NoteName name) {
        atKey[name.pitchClass()] = names.size();
        names.add(name);
        return names.size() - 1;
    }

    private int foreign(NoteName name) {
        int known = atKey[name.pitchClass()];
        return known != NONE ? known : put(name);
    }

    private void allowDoubling(int voices, Key key) {
        doubles |= top == bass ? 1 << bass : 0;
        int missing = voices - names.size();
        int leading = atKey[leadingNote(key).pitchClass()];
        for (int tone : new int[] {1, fifth, third}) {
            boolean leads = leading >= 0 && tone == 1 << leading;
            if (Integer.bitCount(doubles | pinch) < missing && !leads) {
                pinch |= tone & ~doubles;
            }
        }
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

    public boolean isBass(int tone) {
        return tone == bass;
    }

    /** Whether the tone may lie anywhere: a note of the tune from outside the chord lies on top alone. */
    public boolean isOnTopOnly(int tone) {
        return tone >= own && tone != bass;
    }

    public int must() {
        return must;
    }

    /** Tones that may sound as often as one likes. */
    public int doubles() {
        return doubles;
    }

    /** Tones that may sound twice, because there are too few others. */
    public int pinch() {
        return pinch;
    }

    /** The seventh and the suspended fourth. */
    int dissonances() {
        return dissonances;
    }

    public int third() {
        return third;
    }

    /** The perfect fifth alone. */
    int fifth() {
        return fifth;
    }

    /** The perfect fifth and the altered ones. */
    public int fifths() {
        return fifths;
    }

    /** The keys of one octave, as bits: 0 for C. */
    int keys() {
        return names.stream().mapToInt(name -> 1 << name.pitchClass()).reduce(0, (a, b) -> a | b);
    }
}
