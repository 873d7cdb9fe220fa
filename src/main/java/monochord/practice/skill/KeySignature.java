package monochord.practice.skill;

import static monochord.practice.Misconception.LAST_SIGN_FOR_TONIC;
import static monochord.practice.Misconception.NOT_RAISED;
import static monochord.practice.Misconception.PARALLEL_FOR_RELATIVE;
import static monochord.practice.Misconception.SHARPS_FOR_FLATS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.SignatureRubric;
import monochord.practice.reading.Signature;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.note.Clause;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** The sharps or flats of a key. */
final class KeySignature implements Skill {
    @Override
    public String id() {
        return "key-signature";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Key signatures");
    }

    @Override
    public List<String> subjects(Key key) {
        return List.of(key.mode().label());
    }

    @Override
    public Question question(Key key, String subject) {
        Key asked = subject.isBlank() ? key : parse(subject.strip(), key);
        if (!asked.isInUse()) {
            throw Unreadable.because(
                    subject,
                    0,
                    "a key with a signature",
                    Clause.of("{0} needs more than seven signs", asked),
                    "F# minor");
        }
        boolean same = asked.tonic().equals(key.tonic());
        Topic topic = new Topic(id(), same ? asked.mode().label() : asked.toString(), same ? key : asked);
        Phrase prompt = Phrase.sentence("What is the key signature of {0}?", asked);
        return Question.of(
                topic,
                AnswerForm.SIGNATURE,
                prompt,
                new SignatureRubric(asked, way(asked), () -> errors(asked)),
                coaching(asked));
    }

    private static Key parse(String subject, Key key) {
        try {
            return key.parallel(Mode.parse(subject));
        } catch (Unreadable unreadable) {
            return Key.parse(subject);
        }
    }

    private static List<ModelledError<Signature>> errors(Key key) {
        int count = key.signature();
        List<ModelledError<Signature>> errors = new ArrayList<>();
        errors.add(new ModelledError<>(
                SHARPS_FOR_FLATS,
                Signature.of(-count),
                () -> Phrase.sentence("The number is right, the kind of sign is not.")
                        .then(way(key))));
        Key parallel = key.parallel();
        if (parallel.isInUse()) {
            errors.add(new ModelledError<>(
                    PARALLEL_FOR_RELATIVE,
                    Signature.of(parallel.signature()),
                    () -> Phrase.sentence("That is {0}.", parallel).then(way(key))));
        }
        lastSignNamedLikeTonic(key).ifPresent(errors::add);
        if (key.isMinor() && key.note(Degree.of(7, 0)).alteration() != 0) {
            errors.add(leadingNoteAdded(key));
        }
        return errors;
    }

    private static Optional<ModelledError<Signature>> lastSignNamedLikeTonic(Key key) {
        NoteName tonic = key.tonic();
        for (int count = 1; count <= 7; count++) {
            Signature signature = Signature.of(tonic.alteration() < 0 ? -count : count);
            if (signature.notes().get(count - 1).equals(tonic)) {
                return Optional.of(new ModelledError<>(
                        LAST_SIGN_FOR_TONIC,
                        signature,
                        () -> Phrase.sentence("You stopped where the last sign is {0} itself.", tonic)
                                .then(way(key))));
            }
        }
        return Optional.empty();
    }

    private static ModelledError<Signature> leadingNoteAdded(Key key) {
        NoteName leading = key.note(Degree.of(7, 0));
        List<NoteName> notes = new ArrayList<>(key.signatureNotes());
        notes.add(leading);
        return new ModelledError<>(
                NOT_RAISED,
                Signature.of(notes),
                () -> Phrase.sentence(
                        "{0} is the raised seventh. It is written in where it comes and stays out of the signature.",
                        leading));
    }

    private static Phrase reason(Key key) {
        if (key.mode() != Mode.IONIAN && key.mode() != Mode.AEOLIAN) {
            return Phrase.sentence("It has the notes of {0}: {1}.", majorOf(key), signs(key));
        } else if (key.isMinor()) {
            return Phrase.sentence(
                    "It shares its signature with {0}, a minor third up: {1}.", key.relative(), signs(key));
        }
        return inMajor(key);
    }

    /** Where to look, and none of the signs. */
    private static Phrase way(Key key) {
        if (key.mode() != Mode.IONIAN && key.mode() != Mode.AEOLIAN) {
            return Phrase.sentence("{0} has the notes of {1}.", key, majorOf(key));
        } else if (key.isMinor()) {
            return Phrase.sentence("{0} shares its signature with {1}, a minor third up.", key, key.relative());
        }
        return key.signature() > 0
                ? Phrase.sentence("The last sharp is the seventh degree, a half step under the tonic.")
                : key.signature() < 0
                        ? Phrase.sentence("The last flat is the fourth degree.")
                        : Phrase.sentence("Play it on the white keys and listen for what is off.");
    }

    private static Key majorOf(Key key) {
        return Key.major(NoteName.at(key.signature()));
    }

    private static Phrase inMajor(Key key) {
        List<NoteName> signs = key.signatureNotes();
        if (signs.isEmpty()) {
            return Phrase.sentence("{0} is the white keys alone: no sharps and no flats.", key);
        }
        NoteName last = signs.get(signs.size() - 1);
        Phrase rule = key.signature() > 0
                ? Phrase.of("The last sharp is the seventh degree, a half step under the tonic: {0}", last)
                : Phrase.of("The last flat is the fourth degree: {0}", last);
        return Phrase.sentence("{0}. That makes {1}.", rule, signs(key));
    }

    private static Phrase signs(Key key) {
        return key.signature() == 0 ? Phrase.of("no sharps and no flats") : Phrase.row(key.signatureNotes());
    }

    private static Phrase order(boolean flats) {
        Phrase letters = Phrase.row(Key.major(NoteName.at(flats ? -7 : 7)).signatureNotes().stream()
                .map(DiatonicTriads::bare)
                .toList());
        return flats
                ? Phrase.sentence("The order of the flats is {0}.", letters)
                : Phrase.sentence("The order of the sharps is {0}.", letters);
    }

    private static Coaching coaching(Key key) {
        boolean flats = key.signature() < 0;
        List<NoteName> signs = key.signatureNotes();
        Phrase nudge = key.isMinor()
                ? Phrase.sentence(
                        "Go to the relative major first: {0}.", majorOf(key).tonic())
                : Phrase.sentence(
                        "On the sharp side the last sign is the seventh degree, on the flat side the fourth.");
        Phrase first = signs.isEmpty()
                ? Phrase.sentence("Play it on the white keys and listen for what is off.")
                : order(flats);
        Phrase most = signs.size() < 2
                ? Phrase.sentence("There is at most one sign.")
                : Phrase.sentence("All but the last: {0}.", Phrase.row(signs.subList(0, signs.size() - 1)));
        return Coaching.of(nudge, first, most, reason(key));
    }
}
