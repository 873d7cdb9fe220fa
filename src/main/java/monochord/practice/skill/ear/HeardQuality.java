package monochord.practice.skill.ear;

import java.util.List;
import java.util.Optional;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.answer.EarTask;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.note.NoteName;

/** The quality of a chord that was heard; its root is not asked. */
final class HeardQuality implements EarTask<Chord> {
    private static final int OCTAVE = 12;
    private static final int ALL_KEYS = (1 << OCTAVE) - 1;

    private final Chord wanted;
    private final Phrase position;

    /** @param position {@code first inversion} */
    HeardQuality(Chord wanted, Phrase position) {
        this.wanted = wanted;
        this.position = position;
    }

    @Override
    public Chord read(String text) {
        return KindNames.read(text, wanted, wanted.kind().equals(ChordKind.MINOR) ? "sus4" : "minor");
    }

    @Override
    public String write(Chord answer) {
        return KindNames.write(answer.kind());
    }

    @Override
    public boolean same(Chord one, Chord other) {
        return one.kind().equals(other.kind()) && one.root().equals(other.root());
    }

    /** The same kind on another root, or another name for the same keys. */
    @Override
    public boolean soundsRight(Chord given) {
        int sounding = keys(wanted.kind());
        return given.kind().equals(wanted.kind())
                || List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11).stream()
                        .anyMatch(by -> turned(keys(given.kind()), by) == sounding);
    }

    private static int keys(ChordKind kind) {
        return kind.intervals().stream()
                .mapToInt(interval -> 1 << interval.semitones() % OCTAVE)
                .reduce(0, (one, other) -> one | other);
    }

    private static int turned(int keys, int by) {
        return (keys << by | keys >> OCTAVE - by) & ALL_KEYS;
    }

    @Override
    public Phrase yes() {
        return Phrase.sentence("Yes, {0}: {1}.", KindNames.say(wanted.kind()), tones());
    }

    /** Its notes, and which lies lowest if it is not the root. */
    private Phrase tones() {
        Phrase row = Phrase.row(wanted.tones());
        return wanted.isInverted() ? Phrase.of("{0}, in {1} with {2} lowest", row, position, wanted.bass()) : row;
    }

    @Override
    public Phrase otherName(Chord given) {
        return given.kind().equals(wanted.kind())
                ? Phrase.sentence(
                        "Yes, {0}. Here it stood on {1}: {2}.", KindNames.say(wanted.kind()), wanted.root(), tones())
                : Phrase.sentence(
                        "Yes: those are the same keys, named from another of them. Named from {0} it is {1}: {2}.",
                        wanted.root(), KindNames.say(wanted.kind()), tones());
    }

    @Override
    public Phrase contrast(Chord given) {
        Phrase heard = Phrase.sentence(
                "You heard {0}; it was {1}: {2}.", KindNames.say(given.kind()), KindNames.say(wanted.kind()), tones());
        return heard.then(fromBass(given))
                .then(KindDifference.of(wanted, given.kind()).inWords())
                .then(feeling(wanted.kind()))
                .then(feeling(given.kind()));
    }

    /** Where the bass was taken for the root, what the ear measured from there. */
    private Phrase fromBass(Chord given) {
        return isFromBass(given)
                ? Phrase.sentence(
                        "You measured from {0}, the lowest; the root is {1}, above it.", wanted.bass(), wanted.root())
                : Phrase.NOTHING;
    }

    private static Phrase feeling(ChordKind kind) {
        return KindNames.feel(kind)
                .map(feel -> Phrase.sentence("{0} is {1}.", KindNames.say(kind), feel))
                .orElse(Phrase.NOTHING);
    }

    @Override
    public Grade grade(Chord given) {
        return KindDifference.of(wanted, given.kind()).misconception().isPresent() ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    public Optional<Misconception> misconception(Chord given) {
        return isFromBass(given)
                ? Optional.of(Misconception.BASS_FOR_ROOT)
                : KindDifference.of(wanted, given.kind()).misconception();
    }

    private boolean isFromBass(Chord given) {
        return wanted.isInverted() && given.kind().equals(seenFromBass());
    }

    /** What one hears who takes the lowest note for the root: a triad if there is one, else the lowest step of it. */
    private ChordKind seenFromBass() {
        List<NoteName> tones = wanted.fromBass();
        List<Integer> above = tones.stream()
                .map(tone -> wanted.bass().to(tone).withinOctave().semitones())
                .toList();
        return List.of(ChordKind.MAJOR, ChordKind.MINOR, ChordKind.DIMINISHED, ChordKind.AUGMENTED).stream()
                .filter(kind -> kind.intervals().stream().allMatch(tone -> above.contains(tone.semitones())))
                .findFirst()
                .orElse(
                        switch (above.get(1)) {
                            case 3 -> ChordKind.MINOR;
                            case 4 -> ChordKind.MAJOR;
                            case 5 -> KindNames.SUS4;
                            default -> KindNames.SUS2;
                        });
    }

    @Override
    public List<Phrase> help(Chord given) {
        KindDifference difference = KindDifference.of(wanted, given.kind());
        if (isFromBass(given)) {
            return List.of(
                    Phrase.sentence("From the lowest note that is so. But is the lowest note the root?"),
                    Phrase.sentence("Sing up from it: somewhere there is a fourth, and its upper note is the root."),
                    Phrase.sentence("Name the chord from there."));
        }
        return difference.help();
    }
}
