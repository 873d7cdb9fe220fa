package monochord.practice.skill.ear;

import static monochord.practice.Misconception.BASS_WITHOUT_QUALITY;
import static monochord.practice.Misconception.NEIGHBOUR_FOR_BORROWED;
import static monochord.practice.Misconception.QUALITY_WITHOUT_BASS;
import static monochord.practice.Misconception.TONES_SHARED;

import java.util.List;
import java.util.Optional;
import monochord.harmony.motion.VoiceLeading;
import monochord.practice.Misconception;
import monochord.practice.answer.Say;
import monochord.practice.teaching.Own;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/** What tells two chords in one place of a row apart, the one that sounded first. */
record PlaceDifference(Chord wanted, Chord given, Key key) {
    private static final int OCTAVE = 12;
    private static final int SUBTONIC = 7;

    Optional<Misconception> misconception() {
        if (isNeighbour()) {
            return Optional.of(NEIGHBOUR_FOR_BORROWED);
        } else if (wanted.root().soundsLike(given.root())) {
            return Optional.of(BASS_WITHOUT_QUALITY);
        } else if (shared().size() > 1) {
            return Optional.of(TONES_SHARED);
        }
        return wanted.kind().equals(given.kind()) ? Optional.of(QUALITY_WITHOUT_BASS) : Optional.empty();
    }

    /** Whether it was borrowed, and the key's own chord on that degree was heard; for ♭VII that is V as well. */
    private boolean isNeighbour() {
        if (key.isOwn(wanted)) {
            return false;
        }
        int number = key.degreeOf(wanted.root()).number();
        return isGiven(number) || key.degreeOf(wanted.root()).equals(Degree.of(SUBTONIC, -1)) && isGiven(5);
    }

    private boolean isGiven(int number) {
        Chord own = Own.triad(number, key);
        return own.root().equals(given.root())
                && own.kind().equals(given.kind())
                && !own.root().equals(key.tonic());
    }

    /** Tones that both have, by sound. */
    private List<NoteName> shared() {
        return VoiceLeading.commonTones(wanted, given);
    }

    /** The bass, the quality, what stays, and what comes from outside the key. */
    String inWords() {
        return wanted.root().soundsLike(given.root())
                ? "The bass is " + Say.note(wanted.root()) + " in both. "
                        + KindDifference.of(wanted, given.kind()).inWords() + outside()
                : bass() + quality() + stays() + outside();
    }

    private String bass() {
        int up = Math.floorMod(wanted.root().pitchClass() - given.root().pitchClass(), OCTAVE);
        boolean lower = up > OCTAVE / 2;
        return "The bass goes to " + Say.note(wanted.root()) + ", " + Say.halfSteps(lower ? OCTAVE - up : up)
                + (lower ? " lower than " : " higher than ") + Say.note(given.root()) + ".";
    }

    private String quality() {
        String due = KindNames.say(wanted.kind());
        String heard = KindNames.say(given.kind());
        return due.equals(heard)
                ? " Both chords are " + due + "."
                : " The chord is " + due + ", yours is " + heard + ".";
    }

    private String stays() {
        List<NoteName> shared = shared();
        return shared.isEmpty()
                ? " They have no tone in common."
                : " " + Say.list(shared)
                        + (shared.size() > 1 ? " are in both, so from above they are alike." : " is in both.");
    }

    private String outside() {
        List<NoteName> strange =
                wanted.tones().stream().filter(tone -> !key.holds(tone)).toList();
        return strange.isEmpty()
                ? ""
                : " " + Say.list(strange) + (strange.size() > 1 ? " come" : " comes") + " from outside " + Say.key(key)
                        + ".";
    }

    /** {@code it was ♭VI, B♭; you heard vi, Bm}. */
    String names() {
        return "it was " + name(wanted) + "; you heard " + name(given);
    }

    private String name(Chord chord) {
        return RowSubject.numeral(chord, key, Signs.MUSIC) + ", " + Say.chord(chord);
    }
}
