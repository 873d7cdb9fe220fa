package monochord.practice.skill.ear;

import static monochord.practice.Misconception.BASS_WITHOUT_QUALITY;
import static monochord.practice.Misconception.NEIGHBOUR_FOR_BORROWED;
import static monochord.practice.Misconception.QUALITY_WITHOUT_BASS;
import static monochord.practice.Misconception.TONES_SHARED;

import java.util.List;
import java.util.Optional;
import monochord.harmony.motion.VoiceLeading;
import monochord.practice.Misconception;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;

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
        Chord own = DiatonicTriads.triad(number, key);
        return own.root().equals(given.root())
                && own.kind().equals(given.kind())
                && !own.root().equals(key.tonic());
    }

    /** Tones that both have, by sound. */
    private List<NoteName> shared() {
        return VoiceLeading.commonTones(wanted, given);
    }

    /** The bass, the quality, what stays, and what comes from outside the key. */
    Phrase inWords() {
        return wanted.root().soundsLike(given.root())
                ? Phrase.sentence("The bass is {0} in both.", wanted.root())
                        .then(KindDifference.of(wanted, given.kind()).inWords())
                        .then(outside())
                : bass().then(quality()).then(stays()).then(outside());
    }

    private Phrase bass() {
        int up = Math.floorMod(wanted.root().pitchClass() - given.root().pitchClass(), OCTAVE);
        boolean lower = up > OCTAVE / 2;
        Phrase size = MusicWords.halfStepsInWords(lower ? OCTAVE - up : up);
        return lower
                ? Phrase.sentence("The bass goes to {0}, {1} lower than {2}.", wanted.root(), size, given.root())
                : Phrase.sentence("The bass goes to {0}, {1} higher than {2}.", wanted.root(), size, given.root());
    }

    private Phrase quality() {
        Phrase due = KindNames.say(wanted.kind());
        return wanted.kind().equals(given.kind())
                ? Phrase.sentence("Both chords are {0}.", due)
                : Phrase.sentence("The chord is {0}, yours is {1}.", due, KindNames.say(given.kind()));
    }

    private Phrase stays() {
        List<NoteName> shared = shared();
        return shared.isEmpty()
                ? Phrase.sentence("They have no tone in common.")
                : Phrase.counted(
                        shared.size(),
                        "{0} is in both.",
                        "{0} are in both, so from above they are alike.",
                        Phrase.list(shared));
    }

    private Phrase outside() {
        List<NoteName> strange =
                wanted.tones().stream().filter(tone -> !key.holds(tone)).toList();
        return strange.isEmpty()
                ? Phrase.NOTHING
                : Phrase.counted(
                        strange.size(),
                        "{0} comes from outside {1}.",
                        "{0} come from outside {1}.",
                        Phrase.list(strange),
                        key);
    }

    /** {@code it was ♭VI, B♭; you heard vi, Bm}. */
    Phrase names() {
        return Phrase.of("it was {0}; you heard {1}", name(wanted), name(given));
    }

    private Phrase name(Chord chord) {
        return Phrase.of("{0}, {1}", Numeral.onDegree(chord, key), chord);
    }
}
