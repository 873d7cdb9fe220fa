package monochord.practice.skill;

import static monochord.practice.Misconception.LETTERS_ONLY;
import static monochord.practice.Misconception.WRONG_QUALITY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ChordRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.Own;
import monochord.practice.teaching.Walk;
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
    public String title() {
        return "Spelling triads";
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
        String prompt = "Spell the " + Say.inWords(chord) + " triad, root first.";
        ChordRubric judge = ChordRubric.spelled(chord, () -> slips(chord));
        return Question.of(topic, Form.NOTES, prompt, judge, coaching(chord));
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

    private static List<Slip<Tones>> slips(Chord chord) {
        List<Slip<Tones>> slips = new ArrayList<>();
        for (String name : SUBJECTS) {
            Chord other = new Chord(chord.root(), KINDS.get(name));
            slips.add(new Slip<>(
                    WRONG_QUALITY,
                    Tones.of(other.tones()),
                    () -> "That is " + Say.inWords(other) + ". " + off(chord, other)));
        }
        slips.add(new Slip<>(
                LETTERS_ONLY, bare(chord), () -> "The letters are right; now the sizes. " + Walk.sizes(chord)));
        slips.add(new Slip<>(
                LETTERS_ONLY,
                Tones.of(Own.bare(chord.tones())),
                () -> "The letters are right, the root has lost its accidental. Begin on " + Say.note(chord.root())
                        + "."));
        return slips;
    }

    /** Where the two part: {@code In C minor the third lies three half steps above the root.} */
    private static String off(Chord chord, Chord other) {
        int place = chord.tones().get(1).equals(other.tones().get(1)) ? 2 : 1;
        int size = chord.kind().intervals().get(place).semitones();
        return "In " + Say.inWords(chord) + " the " + (place == 1 ? "third" : "fifth") + " lies " + Say.halfSteps(size)
                + " above the root.";
    }

    private static Tones bare(Chord chord) {
        List<NoteName> notes = new ArrayList<>(Own.bare(chord.tones()));
        notes.set(0, chord.root());
        return Tones.of(notes);
    }

    private static Coaching coaching(Chord chord) {
        List<NoteName> letters = Own.bare(chord.tones());
        return Coaching.of(
                "Three letters first: take one, leave one out, take the next.",
                "The root keeps its name, " + Say.note(chord.root()) + ". The next letter but one carries the third.",
                Walk.allButLast(chord) + " " + Walk.sizes(chord),
                "The letters are " + Say.row(letters) + ". " + Walk.thirds(chord) + ". " + Walk.chord(chord));
    }
}
