package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.LETTERS_ONLY;
import static monochord.practice.Misconception.NOT_LOWERED;
import static monochord.practice.Misconception.QUALITY_OF_THE_KEY;
import static monochord.practice.Misconception.WRONG_KEY;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ProgressionRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.teaching.Walk;
import monochord.theory.BandNumber;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/** Numbers into chord names. */
final class ProgressionInKey implements Skill {
    @Override
    public String id() {
        return "progression-in-key";
    }

    @Override
    public String title() {
        return "Progressions in a key";
    }

    @Override
    public List<String> subjects(Key key) {
        return ProgressionSubject.all(key);
    }

    @Override
    public Question question(Key key, String subject) {
        ProgressionSubject about = ProgressionSubject.parse(subject, key);
        String prompt = "Name the chords in " + Say.key(key) + ": " + about.numbers(Signs.MUSIC) + ".";
        ProgressionRubric judge = ProgressionRubric.names(about.chords(), key, () -> slips(about));
        Topic topic = new Topic(id(), about.numbers(Signs.ASCII), key);
        return Question.of(topic, Form.PROGRESSION, prompt, judge, coaching(about));
    }

    private static List<Slip<List<Chord>>> slips(ProgressionSubject about) {
        List<Slip<List<Chord>>> slips = new ArrayList<>();
        Key key = about.key();
        slips.add(new Slip<>(
                LETTERS_ONLY,
                about.letters(),
                () -> "The letters are right and the accidentals are missing. The key has "
                        + (key.signature() == 0
                                ? "none of its own, the lowered degrees do."
                                : Say.list(key.signatureNotes()) + ".")));
        slips.add(new Slip<>(NOT_LOWERED, about.unaltered(), () -> notLowered(about)));
        slips.add(new Slip<>(NOT_LOWERED, about.unalteredRoots(), () -> notLowered(about)));
        slips.add(new Slip<>(
                QUALITY_OF_THE_KEY,
                about.alike(),
                () -> "The roots are right. Not every chord has the quality of the tonic: a minus says minor."));
        slips.add(new Slip<>(
                COUNTED_FROM_ZERO,
                about.oneFurther(),
                () -> "Every chord is one degree too far. The tonic counts as 1."));
        otherTonic(about, NoteName.C, slips);
        otherTonic(about, key.relative().tonic(), slips);
        return slips;
    }

    private static String notLowered(ProgressionSubject about) {
        Chord chord = about.hardest();
        Key key = about.key();
        int number = about.degree(chord).number();
        return "The flat in front has been passed over. The " + Walk.ordinal(number) + " of " + Say.key(key) + " is "
                + Say.note(key.note(number)) + "; the " + BandNumber.write(chord, key, Signs.MUSIC)
                + " stands a half step lower.";
    }

    private static void otherTonic(ProgressionSubject about, NoteName tonic, List<Slip<List<Chord>>> slips) {
        Key key = about.key();
        String message = "That is the same row in " + Say.key(new Key(tonic, key.mode())) + ". Here 1 is "
                + Say.note(key.tonic()) + ".";
        slips.add(new Slip<>(WRONG_KEY, about.moved(key.tonic().to(tonic)), () -> message));
    }

    private static Coaching coaching(ProgressionSubject about) {
        Key key = about.key();
        Chord chord = about.hardest();
        String hardest = Walk.to(about.degree(chord), key) + " So " + BandNumber.write(chord, key, Signs.MUSIC) + " is "
                + Say.chord(chord) + ".";
        List<Chord> most = about.chords().subList(0, about.chords().size() - 1);
        return Coaching.of(
                "Roots first, quality second. 1 is " + Say.note(key.tonic()) + ".",
                hardest,
                "All but the last: "
                        + String.join(" ", most.stream().map(Say::chord).toList()) + ".",
                "The scale is " + Say.row(key.scale().tones()) + ". " + hardest + " The row: "
                        + about.names(Signs.MUSIC) + ".");
    }
}
