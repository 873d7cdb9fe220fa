package monochord.theory;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.note.Cursor;
import monochord.theory.note.Interval;
import monochord.theory.note.Notated;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * A chord with a root, such as A flat major seven over C.
 *
 * <p>Equal chords are spelled alike and have the same bass.
 *
 * <p>Text form: {@code root kind [ '/' bass ]}, such as {@code Abmaj7/C}. {@link #parse} reads all that {@link #toString}
 * writes and the customary writings beside it: {@code CM7 CΔ Cma7} for {@code Cmaj7}, {@code C-7 Cmin7} for {@code Cm7},
 * {@code C°7 Co7}, {@code Cø}, {@code C+}, {@code C7(b9,#11)}, {@code C69}, and small letters for the root. The letter
 * behind a slash is the bass note, in the chord or not.
 *
 * @param bass the lowest note; the root unless a slash names another
 */
public record Chord(NoteName root, ChordKind kind, NoteName bass) implements Notated {
    private static final String WHAT = "a chord";
    private static final String EXAMPLE = "Abmaj7";

    public Chord(NoteName root, ChordKind kind) {
        this(root, kind, root);
    }

    /** @throws Unreadable if the text is not a chord symbol */
    public static Chord parse(String text) {
        Cursor cursor = new Cursor(text, WHAT, EXAMPLE);
        NoteName root = NoteName.read(cursor);
        int slash = slashBeforeBass(text);
        ChordKind kind = ChordSuffix.read(cursor, slash < 0 ? text.length() : slash);
        if (slash < 0) {
            return new Chord(root, kind, root);
        }
        cursor.back(slash + 1);
        NoteName bass = NoteName.read(cursor);
        cursor.end("b, #");
        return new Chord(root, kind, bass);
    }

    /** The last slash, if a letter from A to G and nothing but accidentals follow it. */
    private static int slashBeforeBass(String text) {
        int slash = text.lastIndexOf('/');
        if (slash < 0 || slash + 1 >= text.length() || "ABCDEFGabcdefg".indexOf(text.charAt(slash + 1)) < 0) {
            return -1;
        }
        boolean bass = text.substring(slash + 2).codePoints().allMatch(c -> "b#x♭♯𝄪𝄫".indexOf(c) >= 0);
        return bass ? slash : -1;
    }

    /** The tones of the chord, the root first; a bass note from outside the chord is not among them. */
    public List<NoteName> tones() {
        List<Interval> intervals = kind.intervals();
        List<NoteName> tones = new ArrayList<>(intervals.size());
        for (Interval interval : intervals) {
            tones.add(root.plus(interval));
        }
        return tones;
    }

    /** The bass first, then the other tones from the one above it round the chord. */
    public List<NoteName> fromBass() {
        List<NoteName> tones = tones();
        List<NoteName> turned = new ArrayList<>();
        int from = Math.max(0, tones.indexOf(bass));
        turned.add(bass);
        for (int i = 0; i < tones.size(); i++) {
            NoteName tone = tones.get((from + i) % tones.size());
            if (!tone.equals(bass)) {
                turned.add(tone);
            }
        }
        return turned;
    }

    public boolean holds(NoteName name) {
        return kind.holds(Interval.simple(name.fifths() - root.fifths()));
    }

    public boolean isInverted() {
        return !bass.equals(root);
    }

    /** The same chord over another bass. */
    public Chord over(NoteName newBass) {
        return new Chord(root, kind, newBass);
    }

    public Chord plus(Interval interval) {
        return new Chord(root.plus(interval), kind, bass.plus(interval));
    }

    /** Whether both have the same keys of the keyboard and the same key lowest, whatever the spelling. */
    public boolean soundsLike(Chord other) {
        return bass.soundsLike(other.bass) && NoteName.keys(tones()) == NoteName.keys(other.tones());
    }

    // The methods a record is given are slow to link, and this one is asked on the way to the first answer.
    @Override
    public boolean equals(Object other) {
        return other instanceof Chord that
                && that.root.equals(root)
                && that.kind.equals(kind)
                && that.bass.equals(bass);
    }

    @Override
    public int hashCode() {
        return (root.hashCode() * 31 + kind.hashCode()) * 31 + bass.hashCode();
    }

    @Override
    public String write(Signs signs) {
        return root.write(signs) + kind.write(signs) + (isInverted() ? "/" + bass.write(signs) : "");
    }

    @Override
    public String toString() {
        return write(Signs.ASCII);
    }
}
