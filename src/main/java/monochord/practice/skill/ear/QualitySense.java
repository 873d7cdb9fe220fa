package monochord.practice.skill.ear;

import java.util.List;
import java.util.Optional;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.answer.Say;
import monochord.practice.answer.Sense;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.note.NoteName;

/** The quality of a chord that was heard; its root is not asked. */
final class QualitySense implements Sense<Chord> {
    private static final int OCTAVE = 12;
    private static final int ALL_KEYS = (1 << OCTAVE) - 1;

    private final Chord wanted;
    private final String position;

    /** @param position {@code first inversion} */
    QualitySense(Chord wanted, String position) {
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
    public String yes() {
        return "Yes, " + KindNames.say(wanted.kind()) + ": " + Say.row(wanted.tones()) + lowest() + ".";
    }

    private String lowest() {
        return wanted.isInverted() ? ", in " + position + " with " + Say.note(wanted.bass()) + " lowest" : "";
    }

    @Override
    public String otherName(Chord given) {
        return given.kind().equals(wanted.kind())
                ? "Yes, " + KindNames.say(wanted.kind()) + ". Here it stood on " + Say.note(wanted.root()) + ": "
                        + Say.row(wanted.tones()) + lowest() + "."
                : "Yes: those are the same keys, named from another of them. Named from " + Say.note(wanted.root())
                        + " it is " + KindNames.say(wanted.kind()) + ": " + Say.row(wanted.tones()) + lowest() + ".";
    }

    @Override
    public String contrast(Chord given) {
        KindDifference difference = KindDifference.of(wanted, given.kind());
        return "You heard " + KindNames.say(given.kind()) + "; it was " + KindNames.say(wanted.kind()) + ": "
                + Say.row(wanted.tones()) + lowest() + ". " + fromBass(given) + difference.inWords() + feelings(given);
    }

    /** Where the bass was taken for the root, what the ear measured from there. */
    private String fromBass(Chord given) {
        return isFromBass(given)
                ? "You measured from " + Say.note(wanted.bass()) + ", the lowest; the root is "
                        + Say.note(wanted.root()) + ", above it. "
                : "";
    }

    private String feelings(Chord given) {
        String due = KindNames.feel(wanted.kind()).orElseThrow();
        Optional<String> heard = KindNames.feel(given.kind());
        return " " + capital(KindNames.say(wanted.kind())) + " is " + due + "."
                + heard.map(feel -> " " + capital(KindNames.say(given.kind())) + " is " + feel + ".")
                        .orElse("");
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
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
}
