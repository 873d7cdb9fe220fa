package monochord.practice.teaching;

import java.util.List;
import java.util.stream.IntStream;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** The sentences of a derivation: how a teacher walks to a note and builds a chord on it, at the keyboard. */
public final class Derivation {
    private Derivation() {}

    /** Along the key's own scale to one of its degrees, and from there to the altered one if the degree is none of them. */
    public static Phrase to(Degree degree, Key key) {
        int number = degree.number();
        int change = degree.alteration() - key.mode().degree(number).alteration();
        return change == 0 ? count(number, key) : count(number, key).then(altered(degree, key, change));
    }

    /** The same way, stopped before the last half step. */
    public static Phrase toward(Degree degree, Key key) {
        int change = degree.alteration() - key.mode().degree(degree.number()).alteration();
        Phrase last = change == 0
                ? Phrase.NOTHING
                : change < 0
                        ? Phrase.sentence("Lowered, it stands a half step down, on the same letter.")
                        : Phrase.sentence("Raised, it stands a half step up, on the same letter.");
        return count(degree.number(), key).then(last);
    }

    public static Phrase count(int number, Key key) {
        NoteName there = key.note(number);
        return number == 1
                ? Phrase.sentence("The first degree is the tonic itself, {0}.", there)
                : Phrase.sentence(
                        "Count up {0}: {1} is the {2}.", letters(number, key), there, MusicWords.ordinal(number));
    }

    private static Phrase letters(int number, Key key) {
        return Phrase.row(IntStream.rangeClosed(1, number).mapToObj(key::note).toList());
    }

    private static Phrase altered(Degree degree, Key key, int change) {
        NoteName there = key.note(degree);
        boolean one = Math.abs(change) == 1;
        return change < 0
                ? one
                        ? Phrase.sentence("A half step down, same letter, is {0}.", there)
                        : Phrase.sentence("Two half steps down, same letter, is {0}.", there)
                : one
                        ? Phrase.sentence("A half step up, same letter, is {0}.", there)
                        : Phrase.sentence("Two half steps up, same letter, is {0}.", there);
    }

    /** {@code From F, four half steps up is A and seven is C.} */
    public static Phrase stack(Chord chord) {
        List<Phrase> moves = chord.kind().intervals().stream()
                .skip(1)
                .map(interval -> move(chord, interval))
                .toList();
        return Phrase.sentence("From {0} up, {1}.", chord.root(), Phrase.list(moves));
    }

    /** {@code From F up count four and seven half steps}: how the chord is measured, and no tone but its root. */
    public static Phrase sizes(Chord chord) {
        List<Phrase> sizes = chord.kind().intervals().stream()
                .skip(1)
                .map(interval -> Phrase.number(interval.semitones()))
                .toList();
        return Phrase.sentence("From {0} up count {1} half steps.", chord.root(), Phrase.list(sizes));
    }

    /** A chord but for its last tone: {@code F and A, then leave out a letter and take the next.} */
    public static Phrase allButLast(Chord chord) {
        return Phrase.sentence(
                "{0}, then leave out a letter and take the next.",
                Phrase.list(chord.tones().subList(0, chord.tones().size() - 1)));
    }

    private static Phrase move(Chord chord, Interval interval) {
        return Phrase.of(
                "{0} give {1}",
                MusicWords.halfStepsInWords(interval.semitones()), chord.root().plus(interval));
    }

    /** {@code So the chord is F: F A C.} */
    public static Phrase chord(Chord chord) {
        return Phrase.sentence("The chord is {0}: {1}.", chord, Phrase.row(chord.tones()));
    }

    /** {@code C to E is a major third, E to G a minor third}. */
    public static Phrase thirds(Chord chord) {
        List<NoteName> tones = chord.tones();
        return Phrase.of(
                "{0} to {1} is {2}, {3} to {4} {5}",
                tones.get(0), tones.get(1), third(tones, 0), tones.get(1), tones.get(2), third(tones, 1));
    }

    private static Phrase third(List<NoteName> tones, int from) {
        return Phrase.one(tones.get(from).to(tones.get(from + 1)));
    }
}
