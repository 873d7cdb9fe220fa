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
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.Say;
import monochord.practice.answer.ShellRubric;
import monochord.practice.answer.Slip;
import monochord.practice.answer.VoicingRubric;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
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
    private static final Phrase AS_A_SHELL = Phrase.of("as a shell, at most four notes without the fifth,");

    @Override
    public String id() {
        return "voicing";
    }

    @Override
    public String title() {
        return "Voicing a chord for two hands";
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
        String prompt = "Lay " + Say.chord(chord) + ", " + numeral.write(Signs.MUSIC) + " in " + Say.key(key) + ", out "
                + (shell ? AS_A_SHELL + " " : "")
                + "for two hands, neither beyond an octave. Write the left hand, a bar and the right hand.";
        VoicingRubric judge = new VoicingRubric(chord, key, Reach.OCTAVE, wanted, () -> slips(chord, key, wanted));
        return Question.of(
                new Topic(id(), numeral + (shell ? SHELL : ""), key),
                Form.VOICING,
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

    private static List<Slip<Voicing>> slips(Chord chord, Key key, Voicing wanted) {
        List<Slip<Voicing>> slips = new ArrayList<>();
        suspended(chord).ifPresent(plain -> add(slips, THIRD_KEPT, voiced(plain, key)));
        chord.kind()
                .with(Interval.MAJOR_SIXTH)
                .filter(kind -> !kind.equals(chord.kind()))
                .ifPresent(kind -> add(slips, EXTRA_NOTE, voiced(new Chord(chord.root(), kind, chord.bass()), key)));
        add(slips, MISSING_NOTE, without(colour(chord), wanted));
        add(slips, WRONG_BASS, voiced(chord.over(otherBass(chord)), key));
        add(slips, HANDS_CROSSED, crossed(wanted));
        add(slips, OUT_OF_REACH, stretched(wanted));
        add(slips, TOO_LOW, lowered(wanted));
        Stream.of(colour(chord), key.tonic().plus(Interval.MAJOR_SEVENTH))
                .filter(tone -> chord.holds(tone) && !tone.equals(chord.bass()))
                .forEach(tone -> add(slips, DOUBLED_TENDENCY, doubled(tone, wanted)));
        return slips;
    }

    private static void add(List<Slip<Voicing>> slips, Misconception misconception, Voicing voicing) {
        slips.add(new Slip<>(misconception, voicing, () -> ""));
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
        String tones = Say.chord(chord) + " is " + Say.row(chord.tones()) + ".";
        String bass = Say.note(chord.bass()) + " goes to the left hand, below everything.";
        String needed = Say.note(colour(chord)) + " has to sound, and once is enough.";
        return Coaching.of(
                "Spell it first, then decide what is lowest.",
                tones + " " + bass,
                tones + " " + bass + " " + needed,
                tones + " " + bass + " " + needed + " The others lie close above in the right hand, as in "
                        + wanted.write(Signs.MUSIC) + ".");
    }
}
