package monochord.practice.skill;

import static monochord.practice.Misconception.LETTERS_ONLY;
import static monochord.practice.Misconception.WRONG_QUALITY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ChordDifference;
import monochord.practice.answer.ChordRubric;
import monochord.practice.answer.ModelledError;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.Derivation;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** A triad spelled note by note, on the tonic ({@code minor}) or on a root of its own ({@code Abm}). */
final class TriadSpelling implements Skill {
    private static final Map<String, ChordKind> KINDS = Map.of(
            "major",
            ChordKind.MAJOR,
            "minor",
            ChordKind.MINOR,
            "diminished",
            ChordKind.DIMINISHED,
            "augmented",
            ChordKind.AUGMENTED);
    private static final List<String> SUBJECTS = List.of("major", "minor", "diminished", "augmented");

    @Override
    public String id() {
        return "triad-spelling";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Spelling triads");
    }

    @Override
    public List<String> subjects(Key key) {
        return SUBJECTS;
    }

    @Override
    public Question question(Key key, String subject) {
        String text = subject.strip();
        ChordKind kind = KINDS.get(text.toLowerCase(Locale.ROOT));
        Chord chord = kind != null ? new Chord(key.tonic(), kind) : named(text);
        Topic topic = kind != null
                ? new Topic(id(), text.toLowerCase(Locale.ROOT), key)
                : new Topic(id(), chord.toString(), keyOn(chord));
        Phrase prompt = Phrase.sentence("Spell the {0} triad, root first.", MusicWords.triad(chord));
        ChordRubric judge = ChordRubric.spelled(chord, () -> errors(chord));
        return Question.of(topic, AnswerForm.NOTES, prompt, judge, coaching(chord));
    }

    private static Chord named(String text) {
        String symbol = text.replaceAll("(?i) +major$", "")
                .replaceAll("(?i) +minor$", "m")
                .replaceAll("(?i) +diminished$", "dim")
                .replaceAll("(?i) +augmented$", "aug");
        Chord chord = Chord.parse(symbol);
        if (!KINDS.containsValue(chord.kind()) || chord.isInverted()) {
            throw Unreadable.because(
                    text, 0, "a triad", "major, minor, diminished and augmented ones are asked", "Abm");
        }
        return chord;
    }

    private static Key keyOn(Chord chord) {
        boolean minor = chord.kind().equals(ChordKind.MINOR) || chord.kind().equals(ChordKind.DIMINISHED);
        return minor ? Key.minor(chord.root()) : Key.major(chord.root());
    }

    private static List<ModelledError<Tones>> errors(Chord chord) {
        List<ModelledError<Tones>> errors = new ArrayList<>();
        for (String name : SUBJECTS) {
            Chord other = new Chord(chord.root(), KINDS.get(name));
            errors.add(new ModelledError<>(
                    WRONG_QUALITY,
                    Tones.of(other.tones()),
                    () -> Phrase.sentence("That is {0}.", MusicWords.triad(other))
                            .then(ChordDifference.firstOff(chord, other))));
        }
        errors.add(new ModelledError<>(
                LETTERS_ONLY,
                bare(chord),
                () -> Phrase.sentence("The letters are right; now the sizes.").then(Derivation.sizes(chord))));
        errors.add(new ModelledError<>(
                LETTERS_ONLY,
                Tones.of(DiatonicTriads.bare(chord.tones())),
                () -> Phrase.sentence(
                        "The letters are right, the root has lost its accidental. Begin on {0}.", chord.root())));
        return errors;
    }

    private static Tones bare(Chord chord) {
        List<NoteName> notes = new ArrayList<>(DiatonicTriads.bare(chord.tones()));
        notes.set(0, chord.root());
        return Tones.of(notes);
    }

    private static Coaching coaching(Chord chord) {
        List<NoteName> letters = DiatonicTriads.bare(chord.tones());
        return Coaching.of(
                Phrase.sentence("Three letters first: take one, leave one out, take the next."),
                Phrase.sentence(
                        "The root keeps its name, {0}. The next letter but one carries the third.", chord.root()),
                Derivation.allButLast(chord).then(Derivation.sizes(chord)),
                Phrase.sentence("The letters are {0}. {1}.", Phrase.row(letters), Derivation.thirds(chord))
                        .then(Derivation.chord(chord)));
    }
}
