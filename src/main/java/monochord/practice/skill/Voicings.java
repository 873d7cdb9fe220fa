package monochord.practice.skill;

import static monochord.practice.Misconception.DOUBLED_TENDENCY;
import static monochord.practice.Misconception.EXTRA_NOTE;
import static monochord.practice.Misconception.HANDS_CROSSED;
import static monochord.practice.Misconception.MISSING_NOTE;
import static monochord.practice.Misconception.OUT_OF_REACH;
import static monochord.practice.Misconception.THIRD_KEPT;
import static monochord.practice.Misconception.TOO_LOW;
import static monochord.practice.Misconception.WRONG_BASS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.harmony.voicing.Reach;
import monochord.harmony.voicing.Voicing;
import monochord.harmony.voicing.VoicingSearch;
import monochord.harmony.voicing.VoicingStyle;
import monochord.harmony.voicing.VoicingTask;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.ShellRubric;
import monochord.practice.answer.VoicingRubric;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/**
 * A chord laid out for two hands. The subject is one chord; {@code shell} behind it asks for a {@link ShellRubric
 * shell}.
 */
final class Voicings implements Skill {
    private static final List<String> IN_MAJOR =
            List.of("I", "V7", "IVmaj7", "ii7", "I6", "Vsus4", "bVI", "bVImaj7", "iv");
    private static final List<String> IN_MINOR = List.of("i", "V7", "iv7", "VImaj7", "i6", "Vsus4");

    private static final String SHELL = " shell";

    @Override
    public String id() {
        return "voicing";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Voicing a chord for two hands");
    }

    @Override
    public List<String> subjects(Key key) {
        return key.isMinor() ? IN_MINOR : IN_MAJOR;
    }

    @Override
    public Question question(Key key, String subject) {
        boolean shell = subject.strip().endsWith(SHELL);
        Numeral numeral = numeral(shell ? subject.strip().replace(SHELL, "") : subject, key);
        Chord chord = numeral.in(key);
        Voicing wanted = shell ? shell(chord, key) : voiced(chord, key);
        Phrase prompt = shell
                ? Phrase.sentence(
                        "Lay {0}, {1} in {2}, out as a shell, at most four notes without the fifth, for two hands, neither beyond an octave. Write the left hand, a bar and the right hand.",
                        chord, numeral, key)
                : Phrase.sentence(
                        "Lay {0}, {1} in {2}, out for two hands, neither beyond an octave. Write the left hand, a bar and the right hand.",
                        chord, numeral, key);
        VoicingRubric judge = new VoicingRubric(chord, key, Reach.OCTAVE, wanted, () -> errors(chord, key, wanted));
        return Question.of(
                new Topic(id(), numeral + (shell ? SHELL : ""), key),
                AnswerForm.VOICING,
                prompt,
                shell ? new ShellRubric(chord, judge) : judge,
                coaching(chord, key, wanted));
    }

    /** Root, third, seventh and the highest tone that the chord's number names. */
    private static Voicing shell(Chord chord, Key key) {
        Voicing full = voiced(chord, key);
        NoteName highest = chord.tones().get(chord.tones().size() - 1);
        List<NoteName> dropped = chord.tones().stream()
                .filter(tone -> !tone.equals(highest)
                        && !isOfShell(chord.root().to(tone).number()))
                .toList();
        for (NoteName tone : dropped) {
            full = without(tone, full);
        }
        return full;
    }

    private static boolean isOfShell(int number) {
        return number == 1 || number == 3 || number == 7;
    }

    private static Numeral numeral(String subject, Key key) {
        Progression progression = Progression.parse(subject, key);
        if (progression.slots().size() != 1) {
            throw Unreadable.because(subject, 0, "a chord to voice", "one chord is asked at once", "bVImaj7");
        }
        return progression.slots().get(0).numeral();
    }

    private static Voicing voiced(Chord chord, Key key) {
        return VoicingSearch.best(VoicingTask.of(List.of(chord), key, VoicingStyle.CLOSE))
                .voicings()
                .get(0);
    }

    private static List<ModelledError<Voicing>> errors(Chord chord, Key key, Voicing wanted) {
        List<ModelledError<Voicing>> errors = new ArrayList<>();
        suspended(chord).ifPresent(plain -> add(errors, THIRD_KEPT, voiced(plain, key)));
        chord.kind()
                .with(Interval.MAJOR_SIXTH)
                .filter(kind -> !kind.equals(chord.kind()))
                .ifPresent(kind -> add(errors, EXTRA_NOTE, voiced(new Chord(chord.root(), kind, chord.bass()), key)));
        add(errors, MISSING_NOTE, without(colour(chord), wanted));
        add(errors, WRONG_BASS, voiced(chord.over(otherBass(chord)), key));
        add(errors, HANDS_CROSSED, crossed(wanted));
        add(errors, OUT_OF_REACH, stretched(wanted));
        add(errors, TOO_LOW, lowered(wanted));
        Stream.of(colour(chord), key.tonic().plus(Interval.MAJOR_SEVENTH))
                .filter(tone -> chord.holds(tone) && !tone.equals(chord.bass()))
                .forEach(tone -> add(errors, DOUBLED_TENDENCY, doubled(tone, wanted)));
        return errors;
    }

    private static void add(List<ModelledError<Voicing>> errors, Misconception misconception, Voicing voicing) {
        errors.add(new ModelledError<>(misconception, voicing, () -> Phrase.NOTHING));
    }

    /** The same chord with its third, where a fourth stands in its place. */
    private static Optional<Chord> suspended(Chord chord) {
        return chord.kind()
                .without(Interval.PERFECT_FOURTH)
                .filter(kind -> chord.kind().interval(3).isEmpty() && !kind.equals(chord.kind()))
                .map(kind -> new Chord(chord.root(), ChordKind.MAJOR));
    }

    /** The tone that makes the chord what it is: the seventh, else the third, else the suspended fourth. */
    private static NoteName colour(Chord chord) {
        return Stream.of(7, 3, 4)
                .flatMap(number -> chord.kind().interval(number).stream())
                .findFirst()
                .map(chord.root()::plus)
                .orElse(chord.bass());
    }

    private static NoteName otherBass(Chord chord) {
        return chord.tones().stream()
                .filter(tone -> !tone.equals(chord.bass()))
                .reduce((first, later) -> first.equals(chord.root()) || chord.isInverted() ? first : later)
                .orElseThrow();
    }

    private static Voicing without(NoteName tone, Voicing voicing) {
        return new Voicing(without(tone, voicing.left()), without(tone, voicing.right()));
    }

    private static List<Pitch> without(NoteName tone, List<Pitch> hand) {
        return hand.stream().filter(pitch -> !pitch.name().equals(tone)).toList();
    }

    /** The left hand takes the bass and the top, the right what lies between. */
    private static Voicing crossed(Voicing voicing) {
        List<Pitch> pitches = voicing.pitches();
        int last = pitches.size() - 1;
        return new Voicing(List.of(pitches.get(0), pitches.get(last)), pitches.subList(1, last));
    }

    private static Voicing stretched(Voicing voicing) {
        List<Pitch> right = new ArrayList<>(voicing.right());
        right.set(right.size() - 1, right.get(right.size() - 1).plus(Interval.OCTAVE));
        return new Voicing(voicing.left(), right);
    }

    private static Voicing lowered(Voicing voicing) {
        return new Voicing(lowered(voicing.left()), lowered(voicing.right()));
    }

    private static List<Pitch> lowered(List<Pitch> hand) {
        return hand.stream()
                .map(pitch -> pitch.minus(Interval.OCTAVE).minus(Interval.OCTAVE))
                .toList();
    }

    /** With that tone in the left hand as well. */
    private static Voicing doubled(NoteName tone, Voicing voicing) {
        List<Pitch> left = new ArrayList<>(voicing.left());
        left.add(Pitch.atOrAbove(tone, left.get(0)));
        return new Voicing(left, voicing.right());
    }

    private static Coaching coaching(Chord chord, Key key, Voicing wanted) {
        Phrase tones = Phrase.sentence("{0} is {1}.", chord, Phrase.row(chord.tones()));
        Phrase bass = Phrase.sentence("{0} goes to the left hand, below everything.", chord.bass());
        Phrase needed = Phrase.sentence("{0} has to sound, and once is enough.", colour(chord));
        return Coaching.of(
                Phrase.sentence("Spell it first, then decide what is lowest."),
                tones.then(bass),
                tones.then(bass).then(needed),
                Phrase.sentence(
                        "{0} {1} {2} The others lie close above in the right hand, as in {3}.",
                        tones, bass, needed, wanted));
    }
}
