package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.NOT_LOWERED;
import static monochord.practice.Misconception.QUALITY_OF_THE_KEY;
import static monochord.practice.Misconception.RELATIVE_FOR_PARALLEL;
import static monochord.practice.Misconception.ROOT_LOWERED;
import static monochord.practice.Misconception.ROOT_ONLY;
import static monochord.practice.Misconception.SIGNATURE_FORGOTTEN;
import static monochord.practice.Misconception.WRONG_DEGREE;
import static monochord.practice.Misconception.WRONG_QUALITY;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ChordRubric;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.NoteDifference;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.Derivation;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.TriadQuality;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;

/** A borrowed chord, by name or by notes. */
final class BorrowedChord implements Skill {
    @Override
    public String id() {
        return "borrowed-chord";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Borrowed chords");
    }

    @Override
    public List<String> subjects(Key key) {
        return BorrowedSubject.all(key);
    }

    @Override
    public List<Key> keys() {
        return BorrowedSubject.keys();
    }

    @Override
    public Question question(Key key, String subject) {
        BorrowedSubject about = BorrowedSubject.parse(subject, key);
        Phrase prompt = Phrase.sentence("Which chord is {0}, {1}?", about.named(), about.inWords());
        Phrase root = Derivation.toward(about.degree(), key);
        ChordRubric judge = ChordRubric.named(about.chord(), root, () -> errors(about));
        return Question.of(new Topic(id(), about.text(), key), AnswerForm.CHORD, prompt, judge, coaching(about));
    }

    private static List<ModelledError<Tones>> errors(BorrowedSubject about) {
        List<ModelledError<Tones>> errors = new ArrayList<>();
        if (about.change() == 0) {
            keptFromKey(about, errors);
        } else {
            rootErrors(about, errors);
        }
        bareLetter(about, errors);
        relative(about, errors);
        otherKinds(about, errors);
        neighbour(about, errors);
        return errors;
    }

    private static void keptFromKey(BorrowedSubject about, List<ModelledError<Tones>> errors) {
        Chord own = about.own();
        NoteName root = about.chord().root();
        errors.add(new ModelledError<>(
                QUALITY_OF_THE_KEY,
                Tones.of(own),
                () -> Phrase.sentence("{0} is the key's own chord there. The root stays; {1}.", own, moved(about))));
        NoteName lowered = NoteName.at(root.fifths() - 7);
        errors.add(new ModelledError<>(
                ROOT_LOWERED,
                Tones.of(new Chord(lowered, about.chord().kind())),
                () -> Phrase.sentence("No flat stands in front, so the root stays {0}; {1}.", root, moved(about))));
    }

    /** The places in the chord that leave the key. */
    private static Phrase moved(BorrowedSubject about) {
        Key key = about.key();
        List<NoteName> moves = about.chord().tones().stream()
                .filter(tone -> !key.holds(tone))
                .map(tone -> key.note(key.degreeOf(tone).number()))
                .toList();
        return Phrase.counted(
                moves.size(),
                "inside the chord {0} moves a half step",
                "inside the chord {0} move a half step",
                Phrase.list(moves));
    }

    private static void rootErrors(BorrowedSubject about, List<ModelledError<Tones>> errors) {
        Chord natural = about.onNaturalRoot();
        Phrase walk = Derivation.toward(about.degree(), about.key());
        errors.add(new ModelledError<>(
                NOT_LOWERED,
                Tones.of(natural),
                () -> Phrase.sentence("The root of {0} stands where the key has it.", natural)
                        .then(walk)));
        errors.add(new ModelledError<>(
                NOT_LOWERED,
                Tones.of(about.own()),
                () -> Phrase.sentence("{0} is the key's own chord there.", about.own())
                        .then(walk)));
        errors.add(new ModelledError<>(ROOT_ONLY, Tones.of(about.rootOnly()), () -> rootOnly(about)));
    }

    private static Phrase rootOnly(BorrowedSubject about) {
        Chord chord = about.chord();
        List<NoteName> kept =
                chord.tones().stream().filter(about.rootOnly()::contains).toList();
        List<NoteName> left = about.rootOnly().stream()
                .filter(note -> !chord.tones().contains(note))
                .toList();
        return Phrase.sentence("{0}.", NoteDifference.areRight(kept))
                .then(Phrase.counted(
                        left.size(),
                        "{0} still belongs to {1}: measure it from the new root.",
                        "{0} still belong to {1}: measure them from the new root.",
                        Phrase.list(left),
                        about.key()));
    }

    private static void bareLetter(BorrowedSubject about, List<ModelledError<Tones>> errors) {
        Chord chord = about.chord();
        NoteName bare = NoteName.of(chord.root().letter(), Math.min(0, about.change()));
        NoteName own = about.key().note(about.degree().number());
        errors.add(new ModelledError<>(
                SIGNATURE_FORGOTTEN,
                Tones.of(new Chord(bare, chord.kind())),
                () -> Phrase.sentence(
                        "In {0} the {1} is {2}. Start from there.",
                        about.key(), MusicWords.ordinal(about.degree().number()), own)));
    }

    private static void relative(BorrowedSubject about, List<ModelledError<Tones>> errors) {
        Key relative = about.key().relative();
        Chord there = about.numeral().in(new Key(relative.tonic(), about.key().mode()));
        errors.add(new ModelledError<>(
                RELATIVE_FOR_PARALLEL,
                Tones.of(there),
                () -> Phrase.sentence(
                        "You counted from {0}, the tonic of the relative. Stay on {1} and count its {2}.",
                        relative.tonic(), about.key().tonic(), about.degreeInWords())));
    }

    private static void otherKinds(BorrowedSubject about, List<ModelledError<Tones>> errors) {
        Chord chord = about.chord();
        for (String suffix : List.of("", "m", "dim", "aug")) {
            Chord other = new Chord(chord.root(), ChordKind.parse(suffix));
            if (!about.isTriad() && other.kind().equals(chord.kind().triad())) {
                continue; // its seventh is missing, which is told by itself
            }
            errors.add(new ModelledError<>(
                    WRONG_QUALITY,
                    Tones.of(other),
                    () -> Phrase.sentence("The root is right.").then(asked(about))));
        }
    }

    private static Phrase asked(BorrowedSubject about) {
        return about.isTriad()
                ? Phrase.sentence(
                        "{0} asks for {1}.",
                        about.numeral(), one(about.chord().kind().quality()))
                : Phrase.sentence("{0} asks for the {1} chord.", about.numeral(), about.kind());
    }

    private static Phrase one(TriadQuality quality) {
        return quality == TriadQuality.AUGMENTED
                ? Phrase.of("an augmented chord")
                : Phrase.of("a {0} chord", MusicWords.quality(quality));
    }

    private static void neighbour(BorrowedSubject about, List<ModelledError<Tones>> errors) {
        for (String text : BorrowedSubject.all(about.key())) {
            Numeral other = Numeral.parse(text);
            Chord there = other.in(about.key());
            if (there.root().equals(about.chord().root())) {
                continue; // the degree is right, and what is off is its quality
            }
            Degree next = about.key().degreeOf(there.root());
            boolean following = next.number() == about.degree().number() % 7 + 1;
            errors.add(new ModelledError<>(
                    following ? COUNTED_FROM_ZERO : WRONG_DEGREE,
                    Tones.of(there),
                    () -> Phrase.sentence("{0} is {1}.", there, other)
                            .then(Derivation.toward(about.degree(), about.key()))));
        }
    }

    private static Coaching coaching(BorrowedSubject about) {
        Chord chord = about.chord();
        Phrase root = Derivation.to(about.degree(), about.key());
        return Coaching.of(
                Phrase.sentence("Root first, then the letters, then the quality."),
                Derivation.toward(about.degree(), about.key()),
                root.then(Derivation.allButLast(chord)).then(Phrase.sentence("The chord is {0}.", about.kindInWords())),
                root.then(Derivation.stack(chord)).then(Derivation.chord(chord)));
    }
}
