package monochord.practice.skill;

import static monochord.practice.Misconception.NOT_LOWERED;
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

/** Chord names into numbers. */
final class ProgressionNumbers implements Skill {
    @Override
    public String id() {
        return "progression-numbers";
    }

    @Override
    public String title() {
        return "Progressions as numbers";
    }

    @Override
    public List<String> subjects(Key key) {
        return ProgressionSubject.all(key);
    }

    @Override
    public Question question(Key key, String subject) {
        ProgressionSubject about = ProgressionSubject.parse(subject, key);
        String prompt = "Say these chords as numbers in " + Say.key(key) + ": " + about.names(Signs.MUSIC) + ".";
        ProgressionRubric judge = ProgressionRubric.numbers(about.chords(), key, () -> slips(about));
        Topic topic = new Topic(id(), about.numbers(Signs.ASCII), key);
        return Question.of(topic, Form.NUMBER, prompt, judge, coaching(about));
    }

    private static List<Slip<List<Chord>>> slips(ProgressionSubject about) {
        List<Slip<List<Chord>>> slips = new ArrayList<>();
        slips.add(new Slip<>(NOT_LOWERED, about.unaltered(), () -> notLowered(about)));
        slips.add(new Slip<>(NOT_LOWERED, about.unalteredRoots(), () -> notLowered(about)));
        if (!about.key().tonic().equals(NoteName.C)) {
            otherTonic(about, NoteName.C, slips);
        }
        otherTonic(about, about.key().relative().tonic(), slips);
        return slips;
    }

    private static String notLowered(ProgressionSubject about) {
        Chord chord = about.hardest();
        Key key = about.key();
        int number = about.degree(chord).number();
        return "The " + Walk.ordinal(number) + " of " + Say.key(key) + " is " + Say.note(key.note(number)) + ". "
                + Say.chord(chord) + " stands a half step below it, and the number has to say so.";
    }

    /** The numbers that come out when one counts from another tonic. */
    private static void otherTonic(ProgressionSubject about, NoteName tonic, List<Slip<List<Chord>>> slips) {
        Key key = about.key();
        String message =
                "You counted from " + Say.note(tonic) + ". In " + Say.key(key) + " 1 is " + Say.note(key.tonic()) + ".";
        List<Chord> moved = about.moved(tonic.to(key.tonic()));
        slips.add(new Slip<>(WRONG_KEY, moved, () -> message));
        slips.add(new Slip<>(WRONG_KEY, about.plain(moved), () -> message));
    }

    private static String derivation(Chord chord, ProgressionSubject about) {
        return Walk.to(about.degree(chord), about.key()) + " So " + Say.chord(chord) + " is "
                + BandNumber.write(chord, about.key(), Signs.MUSIC) + ".";
    }

    private static Coaching coaching(ProgressionSubject about) {
        Key key = about.key();
        String hardest = derivation(about.hardest(), about);
        List<Chord> most = about.chords().subList(0, about.chords().size() - 1);
        return Coaching.of(
                "Count the letters of the roots from " + Say.note(key.tonic()) + " as 1.",
                hardest,
                "All but the last: "
                        + String.join(
                                " ",
                                most.stream()
                                        .map(chord -> BandNumber.write(chord, key, Signs.MUSIC))
                                        .toList())
                        + ".",
                "The scale is " + Say.row(key.scale().tones()) + ". " + hardest + " The row: "
                        + about.numbers(Signs.MUSIC) + ".");
    }
}
