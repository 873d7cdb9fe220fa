package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.QUALITY_OF_THE_KEY;

import java.util.List;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.QualityRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.teaching.Own;
import monochord.practice.teaching.Walk;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.TriadQuality;

/** The quality of the key's own chord on a degree. */
final class DegreeQuality implements Skill {
    @Override
    public String id() {
        return "degree-quality";
    }

    @Override
    public String title() {
        return "Qualities of the degrees";
    }

    @Override
    public List<String> subjects(Key key) {
        return DegreeChord.DEGREES;
    }

    @Override
    public Question question(Key key, String subject) {
        int number = Own.degree(subject, key);
        Chord chord = Own.triad(number, key);
        String prompt =
                "In " + Say.key(key) + ", what quality has the triad on the " + Walk.ordinal(number) + " degree?";
        String way = way(number, key);
        QualityRubric judge = new QualityRubric(chord, Own.alternative(number, key), way, () -> slips(number, key));
        return Question.of(
                new Topic(id(), "" + number, key), Form.QUALITY, prompt, judge, coaching(number, chord, key));
    }

    private static String reason(int number, Key key) {
        Chord chord = Own.triad(number, key);
        return Own.gathered(number, key) + " " + Walk.thirds(chord) + ", and that is "
                + chord.kind().quality() + ".";
    }

    private static String way(int number, Key key) {
        return Own.gathered(number, key) + " Which third lies below, which above?";
    }

    private static List<Slip<TriadQuality>> slips(int number, Key key) {
        Chord chord = Own.triad(number, key);
        TriadQuality ofKey = Own.triad(1, key).kind().quality();
        Chord next = Own.next(number, key);
        return List.of(
                new Slip<>(
                        QUALITY_OF_THE_KEY,
                        ofKey,
                        () -> "The key is " + ofKey + "; its chord on " + number + " need not be. " + way(number, key)),
                new Slip<>(
                        COUNTED_FROM_ZERO,
                        next.kind().quality(),
                        () -> "That would be " + Say.chord(next) + ", one degree further: the tonic counts as 1."));
    }

    private static Coaching coaching(int number, Chord chord, Key key) {
        return Coaching.of(
                "Take every other note of the scale from that degree, and listen for the half steps you pass over.",
                Walk.count(number, key),
                "The notes are " + Say.row(chord.tones()) + ". Measure the lower third, then the upper one.",
                Walk.count(number, key) + " " + reason(number, key));
    }
}
