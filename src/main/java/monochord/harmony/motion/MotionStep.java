package monochord.harmony.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * One change of chord: what each voice does, and each pair of voices.
 *
 * <p>Chords of different fullness are matched to the nearest: each voice of the thinner one goes on as one voice of the
 * fuller, none across another, so that they move least in all; what is left over enters or falls silent and is in no pair.
 *
 * @param from the first chord, voice by voice from the bottom
 * @param to the second, likewise
 * @param moves each voice that sounds in both, from the bottom
 * @param pairs every two of those, in the order 0–1, 0–2 … 1–2 …
 */
public record MotionStep(List<Pitch> from, List<Pitch> to, List<VoiceMove> moves, List<VoicePair> pairs) {
    public MotionStep {
        from = List.copyOf(from);
        to = List.copyOf(to);
        moves = List.copyOf(moves);
        pairs = List.copyOf(pairs);
    }

    /**
     * @param from pitches by voice, from the bottom; a voice may cross the one above it
     * @param to the same for the second chord
     */
    public static MotionStep between(List<Pitch> from, List<Pitch> to) {
        List<VoiceMove> moves = VoiceMatching.of(from, to);
        List<VoicePair> pairs = new ArrayList<>(moves.size() * (moves.size() - 1) / 2);
        for (int i = 0; i < moves.size(); i++) {
            for (int j = i + 1; j < moves.size(); j++) {
                pairs.add(VoicePair.of(moves.get(i), moves.get(j)));
            }
        }
        return new MotionStep(from, to, moves, pairs);
    }

    /** The keys that stay down, as the first chord spells them, from the bottom, each once. */
    public List<Pitch> kept() {
        return from.stream()
                .filter(pitch -> to.stream().anyMatch(pitch::soundsLike))
                .distinct()
                .toList();
    }

    /** The notes that both chords have in some octave, as the first spells them, each once. */
    public List<NoteName> shared() {
        return VoiceLeading.commonTones(names(from), names(to));
    }

    private static List<NoteName> names(List<Pitch> chord) {
        return chord.stream().map(Pitch::name).toList();
    }

    /** Half steps moved by all voices together, whichever way they go. */
    public int moved() {
        int moved = 0;
        for (VoiceMove move : moves) {
            moved += Math.abs(move.semitones());
        }
        return moved;
    }

    /** Voices that stay on their key. */
    public int held() {
        return (int) moves.stream().filter(VoiceMove::isStill).count();
    }

    /** Pairs of voices that go the same way from fifth to fifth, or from octave or unison to octave. */
    public List<VoicePair> parallels() {
        return pairs.stream()
                .filter(pair -> pair.parallel() != PerfectInterval.NONE)
                .toList();
    }

    /** The lowest and the highest voice, if there are two and each is outermost in both chords. */
    public Optional<VoicePair> outer() {
        if (moves.size() < 2) {
            return Optional.empty();
        }
        VoicePair widest = pairs.get(moves.size() - 2);
        return isOutermost(widest.lower(), 0, 0) && isOutermost(widest.upper(), from.size() - 1, to.size() - 1)
                ? Optional.of(widest)
                : Optional.empty();
    }

    private boolean isOutermost(VoiceMove move, int first, int second) {
        return move.from().equals(from.get(first)) && move.to().equals(to.get(second));
    }

    /** How many voices the fuller chord has. */
    public int voices() {
        return Math.max(from.size(), to.size());
    }

    /** Pitches of the second chord that no voice of the first goes to. */
    public List<Pitch> entering() {
        return leftOver(to, moves.stream().map(VoiceMove::to).toList());
    }

    /** Pitches of the first chord from which no voice goes on. */
    public List<Pitch> ending() {
        return leftOver(from, moves.stream().map(VoiceMove::from).toList());
    }

    private static List<Pitch> leftOver(List<Pitch> chord, List<Pitch> joined) {
        List<Pitch> left = new ArrayList<>(chord);
        joined.forEach(left::remove);
        return left;
    }
}
