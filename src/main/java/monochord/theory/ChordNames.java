package monochord.theory;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.ToneSet;

/**
 * Finds the chords that a set of notes can be called, the best name first.
 *
 * <p>Spelling counts: C E♭ G is C minor, C D♯ G only sounds so. A name that fits the notes as they are spelled comes
 * before one that fits only their sound, unless it is far-fetched; a plain kind before an inversion of one, and that
 * before an altered one. In a key, a chord whose root belongs to the key comes before one whose root does not.
 */
public final class ChordNames {
    private static final int ODDEST = 4;
    private static final int ALTERED = 2;
    private static final int FAR_FETCHED = 3;
    private static final int INVERTED = 3;
    private static final int ROOT_OUTSIDE_KEY = 1;
    private static final List<String> COMMON = List.of(
            "",
            "m",
            "dim",
            "aug",
            "sus4",
            "sus2",
            "7",
            "m7",
            "maj7",
            "6",
            "m6",
            "m7b5",
            "dim7",
            "m(maj7)",
            "7sus4",
            "9",
            "m9",
            "maj9",
            "6/9",
            "m6/9",
            "add9",
            "m(add9)",
            "7b9",
            "7#9",
            "7#5",
            "7b5",
            "maj7#5",
            "9sus4",
            "13(no11)");
    private static final Map<Integer, ChordKind> BY_SOUND = bySound();

    /**
     * One name for the notes.
     *
     * @param bySound whether the name fits only the sound, so that the chord is spelled otherwise than the notes were
     */
    public record Name(Chord chord, boolean bySound) {}

    private record Candidate(Name name, int cost) {}

    private ChordNames() {}

    /** Names for notes of which the first is the lowest; empty if no chord symbol is written for them. */
    public static List<Name> of(List<NoteName> notes) {
        return of(notes, null);
    }

    /**
     * @param notes the lowest first; repeated names count once
     * @param key the key they are heard in, or null
     */
    public static List<Name> of(List<NoteName> notes, Key key) {
        List<Candidate> found = new ArrayList<>();
        if (!notes.isEmpty()) {
            addSpelled(found, notes, key);
            addBySound(found, notes, key);
        }
        found.sort(Comparator.comparingInt(ChordNames::group).thenComparingInt(Candidate::cost));
        return plainest(found);
    }

    /** Where the best name is a customary kind, no one wants to hear of far-fetched ones. */
    private static List<Name> plainest(List<Candidate> sorted) {
        boolean plain = !sorted.isEmpty() && oddity(sorted.get(0)) == 0;
        List<Name> names = new ArrayList<>(sorted.size());
        for (Candidate candidate : sorted) {
            if (!plain || oddity(candidate) <= FAR_FETCHED) {
                names.add(candidate.name);
            }
        }
        return names;
    }

    /** Names as spelled, then names by sound, then names as spelled that need more than an alteration. */
    private static int group(Candidate candidate) {
        return candidate.name.bySound ? 1 : oddity(candidate) <= ALTERED ? 0 : 2;
    }

    private static int oddity(Candidate candidate) {
        return candidate.name.chord().kind().oddity();
    }

    private static void addSpelled(List<Candidate> found, List<NoteName> notes, Key key) {
        addSpelled(found, notes, key, ODDEST);
        if (found.isEmpty()) {
            addSpelled(found, notes, key, Integer.MAX_VALUE);
        }
    }

    private static void addSpelled(List<Candidate> found, List<NoteName> notes, Key key, int oddest) {
        NoteName bass = notes.get(0);
        long tones = ToneSet.seenFrom(bass, notes);
        for (int fifths : ToneSet.fifths(tones)) {
            ChordKind kind = ChordKind.ofTones(ToneSet.shifted(tones, -fifths)).orElse(null);
            if (kind != null && kind.oddity() <= oddest) {
                Chord chord = new Chord(NoteName.at(bass.fifths() + fifths), kind, bass);
                found.add(new Candidate(new Name(chord, false), cost(chord, key)));
            }
        }
    }

    private static void addBySound(List<Candidate> found, List<NoteName> notes, Key key) {
        int spelled = found.size();
        int keys = NoteName.keys(notes);
        for (NoteName root : notes) {
            ChordKind kind = BY_SOUND.get(turned(keys, root.pitchClass()));
            if (kind != null && !isNamed(found, root, kind)) {
                Chord chord = new Chord(root, kind, spelledIn(root, kind, notes.get(0)));
                found.add(new Candidate(new Name(chord, true), cost(chord, key) + spelled));
            }
        }
    }

    private static boolean isNamed(List<Candidate> found, NoteName root, ChordKind kind) {
        for (Candidate candidate : found) {
            Chord chord = candidate.name.chord();
            if (chord.root().equals(root) && chord.kind().equals(kind)) {
                return true;
            }
        }
        return false;
    }

    /** The bass as the chord spells it, for a name by sound may need another letter. */
    private static NoteName spelledIn(NoteName root, ChordKind kind, NoteName bass) {
        for (Interval interval : kind.intervals()) {
            NoteName tone = root.plus(interval);
            if (tone.soundsLike(bass)) {
                return tone;
            }
        }
        return bass;
    }

    private static int cost(Chord chord, Key key) {
        int outside = key == null || key.holds(chord.root()) ? 0 : ROOT_OUTSIDE_KEY;
        return 2 * chord.kind().oddity() + (chord.isInverted() ? INVERTED : 0) + outside;
    }

    private static Map<Integer, ChordKind> bySound() {
        Map<Integer, ChordKind> kinds = new HashMap<>();
        for (String suffix : COMMON) {
            ChordKind kind = ChordKind.parse(suffix);
            List<NoteName> tones = new Chord(NoteName.C, kind).tones();
            kinds.putIfAbsent(NoteName.keys(tones), kind);
        }
        return kinds;
    }

    private static int turned(int keys, int by) {
        return (keys >> by | keys << 12 - by) & 0xFFF;
    }
}
