package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.LOWERED_TOO_FAR;
import static monochord.practice.Misconception.NOT_LOWERED;
import static monochord.practice.Misconception.SIGNATURE_FORGOTTEN;
import static monochord.practice.Misconception.WRONG_WAY;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.NoteRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.teaching.Walk;
import monochord.theory.Key;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** The note on a lowered degree, counted from the major scale on the tonic. */
final class LoweredDegree implements Skill {
    @Override
    public String id() {
        return "lowered-degree";
    }

    @Override
    public String title() {
        return "Lowered degrees";
    }

    @Override
    public List<String> subjects(Key key) {
        return List.of("b7", "b6", "b3", "b2");
    }

    @Override
    public List<Key> keys() {
        return BorrowedSubject.keys();
    }

    @Override
    public Question question(Key key, String subject) {
        Degree degree = Degree.parse(subject.strip());
        Key major = Key.major(key.tonic());
        if (degree.alteration() == 0 || Math.abs(degree.alteration()) > 1) {
            throw Unreadable.because(subject, 0, "a lowered degree", "one flat or sharp stands in front", "b6");
        }
        String from = key.isMinor() ? ", counted from " + Say.key(major) : " of " + Say.key(major);
        String prompt = "Which note is the " + degree.inWords() + from + "?";
        NoteRubric judge =
                new NoteRubric(major.note(degree), key.tonic(), Walk.toward(degree, major), () -> slips(degree, major));
        return Question.of(new Topic(id(), degree.toString(), key), Form.NOTES, prompt, judge, coaching(degree, major));
    }

    private static List<Slip<NoteName>> slips(Degree degree, Key key) {
        int number = degree.number();
        int change = degree.alteration();
        String way = change < 0 ? "down" : "up";
        NoteName natural = key.note(number);
        NoteName next = key.note(Degree.of(number % 7 + 1, change));
        List<Slip<NoteName>> slips = new ArrayList<>();
        slips.add(new Slip<>(
                NOT_LOWERED,
                natural,
                () -> Say.note(natural) + " is the " + Walk.ordinal(number) + " as the major scale has it. "
                        + "Take it a half step " + way + ", same letter."));
        slips.add(new Slip<>(
                SIGNATURE_FORGOTTEN,
                NoteName.of(natural.letter(), change),
                () -> "That is the bare letter " + (change < 0 ? "lowered" : "raised") + ". In the key the "
                        + Walk.ordinal(number) + " is " + Say.note(natural) + "; start from there."));
        slips.add(new Slip<>(
                LOWERED_TOO_FAR,
                key.note(Degree.of(number, 2 * change)),
                () -> "A half step too far. One sign in front moves the plain degree by one half step."));
        slips.add(new Slip<>(
                WRONG_WAY,
                key.note(Degree.of(number, -change)),
                () -> "You went the other way: " + (change < 0 ? "lowered is" : "raised is") + " a half step " + way
                        + "."));
        if (number < 7) {
            slips.add(new Slip<>(
                    COUNTED_FROM_ZERO,
                    next,
                    () -> "That is the " + Degree.of(number % 7 + 1, change).inWords() + ": the tonic counts as 1."));
        }
        return slips;
    }

    private static Coaching coaching(Degree degree, Key key) {
        int number = degree.number();
        return Coaching.of(
                "Find the plain degree first, then move it a half step and keep its letter.",
                "Count from " + Say.note(key.tonic()) + " as 1 up to the " + Walk.ordinal(number) + ".",
                Walk.count(number, key) + " Now a half step " + (degree.alteration() < 0 ? "down" : "up")
                        + ", same letter.",
                Walk.to(degree, key));
    }
}
