package monochord.practice.skill;

import static monochord.practice.Misconception.LAST_SIGN_FOR_TONIC;
import static monochord.practice.Misconception.NOT_RAISED;
import static monochord.practice.Misconception.PARALLEL_FOR_RELATIVE;
import static monochord.practice.Misconception.SHARPS_FOR_FLATS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.Say;
import monochord.practice.answer.SignatureRubric;
import monochord.practice.answer.Slip;
import monochord.practice.reading.Signature;
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
    public String title() {
        return "Key signatures";
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
        String prompt = "What is the key signature of " + Say.key(asked) + "?";
        return Question.of(
                topic,
                Form.SIGNATURE,
                prompt,
                new SignatureRubric(asked, way(asked), () -> slips(asked)),
                coaching(asked));
    }

    private static Key parse(String subject, Key key) {
        try {
            return key.parallel(Mode.parse(subject));
        } catch (Unreadable unreadable) {
            return Key.parse(subject);
        }
    }

    private static List<Slip<Signature>> slips(Key key) {
        int count = key.signature();
        List<Slip<Signature>> slips = new ArrayList<>();
        slips.add(new Slip<>(
                SHARPS_FOR_FLATS,
                Signature.of(-count),
                () -> "The number is right, the kind of sign is not. " + way(key)));
        Key parallel = key.parallel();
        if (parallel.isInUse()) {
            slips.add(new Slip<>(
                    PARALLEL_FOR_RELATIVE,
                    Signature.of(parallel.signature()),
                    () -> "That is " + Say.key(parallel) + ". " + way(key)));
        }
        lastSignNamedLikeTonic(key).ifPresent(slips::add);
        if (key.isMinor() && key.note(Degree.of(7, 0)).alteration() != 0) {
            slips.add(leadingNoteAdded(key));
        }
        return slips;
    }

    private static Optional<Slip<Signature>> lastSignNamedLikeTonic(Key key) {
        NoteName tonic = key.tonic();
        for (int count = 1; count <= 7; count++) {
            Signature signature = Signature.of(tonic.alteration() < 0 ? -count : count);
            if (signature.notes().get(count - 1).equals(tonic)) {
                return Optional.of(new Slip<>(
                        LAST_SIGN_FOR_TONIC,
                        signature,
                        () -> "You stopped where the last sign is " + Say.note(tonic) + " itself. " + way(key)));
            }
        }
        return Optional.empty();
    }

    private static Slip<Signature> leadingNoteAdded(Key key) {
        NoteName leading = key.note(Degree.of(7, 0));
        List<NoteName> notes = new ArrayList<>(key.signatureNotes());
        notes.add(leading);
        return new Slip<>(
                NOT_RAISED,
                Signature.of(notes),
                () -> Say.note(leading)
                        + " is the raised seventh. It is written in where it comes and stays out of the signature.");
    }

    private static String reason(Key key) {
        if (key.mode() != Mode.IONIAN && key.mode() != Mode.AEOLIAN) {
            return "It has the notes of " + Say.key(majorOf(key)) + ": " + signs(key) + ".";
        } else if (key.isMinor()) {
            return "It shares its signature with " + Say.key(key.relative()) + ", a minor third up: " + signs(key)
                    + ".";
        }
        return inMajor(key);
    }

    /** Where to look, and none of the signs. */
    private static String way(Key key) {
        if (key.mode() != Mode.IONIAN && key.mode() != Mode.AEOLIAN) {
            return Say.key(key) + " has the notes of " + Say.key(majorOf(key)) + ".";
        } else if (key.isMinor()) {
            return Say.key(key) + " shares its signature with " + Say.key(key.relative()) + ", a minor third up.";
        }
        return key.signature() > 0
                ? "The last sharp is the seventh degree, a half step under the tonic."
                : key.signature() < 0
                        ? "The last flat is the fourth degree."
                        : "Play it on the white keys and listen for what is off.";
    }

    private static Key majorOf(Key key) {
        return Key.major(NoteName.at(key.signature()));
    }

    private static String inMajor(Key key) {
        List<NoteName> signs = key.signatureNotes();
        if (signs.isEmpty()) {
            return "C major is the white keys alone: no sharps and no flats.";
        }
        NoteName last = signs.get(signs.size() - 1);
        String rule = key.signature() > 0
                ? "The last sharp is the seventh degree, a half step under the tonic: " + Say.note(last)
                : "The last flat is the fourth degree: " + Say.note(last);
        return rule + ". That makes " + signs(key) + ".";
    }

    private static String signs(Key key) {
        return key.signature() == 0 ? "no sharps and no flats" : Say.row(key.signatureNotes());
    }

    private static Coaching coaching(Key key) {
        boolean flats = key.signature() < 0;
        List<NoteName> signs = key.signatureNotes();
        String nudge = key.isMinor()
                ? "Go to the relative major first: " + Say.note(majorOf(key).tonic()) + "."
                : "On the sharp side the last sign is the seventh degree, on the flat side the fourth.";
        String first = signs.isEmpty()
                ? "Play it on the white keys and listen for what is off."
                : "The order of the " + (flats ? "flats is B E A D G C F." : "sharps is F C G D A E B.");
        String most = signs.size() < 2
                ? "There is at most one sign."
                : "All but the last: " + Say.row(signs.subList(0, signs.size() - 1)) + ".";
        return Coaching.of(nudge, first, most, reason(key));
    }
}
