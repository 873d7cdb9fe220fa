package monochord.practice.skill.ear;

import java.util.List;
import java.util.Optional;
import monochord.practice.Coaching;
import monochord.practice.Excerpt;
import monochord.practice.Excerpt.Moment;
import monochord.practice.Form;
import monochord.practice.Listening;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.EarRubric;
import monochord.practice.answer.Say;
import monochord.practice.teaching.Walk;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** One chord: which quality has it? Root in the bass first, then inverted and spread. */
public final class EarQuality implements Skill {
    private static final Beats HELD = Beats.of(4);

    @Override
    public String id() {
        return "ear-quality";
    }

    @Override
    public String title() {
        return "Qualities by ear";
    }

    @Override
    public List<String> subjects(Key key) {
        return QualitySubject.ALL;
    }

    @Override
    public Question question(Key key, String subject) {
        return question(key, subject, 0);
    }

    @Override
    public Question question(Key key, String subject, long seed) {
        Chance chance = new Chance(seed);
        QualitySubject about = Alternatives.of(subject, QualitySubject::parse, chance);
        Laid laid = Laid.of(about, key, chance);
        QualitySense sense = new QualitySense(laid.chord(), about.position());
        Listening listening = new Listening(
                () -> heard(laid, about),
                answer -> read(sense, answer).map(about::with).map(other -> heard(laid.with(other), other)));
        return Question.of(
                        new Topic(id(), about.toString(), key),
                        Form.QUALITY,
                        "One chord. Which quality has it?",
                        new EarRubric<>(laid.chord(), sense, () -> slips(laid.chord())),
                        coaching(laid.chord(), about))
                .byEar(listening)
                .withSeed(seed);
    }

    private static Optional<ChordKind> read(QualitySense sense, String answer) {
        try {
            return Optional.of(sense.read(answer).kind());
        } catch (Unreadable unreadable) {
            return Optional.empty();
        }
    }

    private static Excerpt heard(Laid laid, QualitySubject about) {
        return Excerpt.of(List.of(new Moment(laid.pitches(about.spread()), HELD)));
    }

    private static List<Chord> slips(Chord chord) {
        return KindNames.kinds().stream()
                .filter(kind -> !kind.equals(chord.kind()))
                .map(kind -> new Chord(chord.root(), kind))
                .toList();
    }

    private static Coaching coaching(Chord chord, QualitySubject about) {
        List<NoteName> tones = chord.tones();
        String second = chord.isInverted()
                ? "Sing from the lowest note up. Somewhere it is a fourth, not a third: the upper note of it is the root."
                : "Sing from the lowest note up: first the third, or what stands for it, then the fifth, then what is left.";
        Chord most = chord.over(chord.root());
        String steps = Walk.stack(most);
        return Coaching.of(
                "Hear it again, and listen downwards: the lowest note first, then what lies above it.",
                second,
                "The root is " + Say.note(chord.root()) + ", and " + Say.note(tones.get(1)) + " lies "
                        + Say.halfSteps(chord.kind().intervals().get(1).semitones()) + " above it.",
                "The tones are " + Say.row(tones) + ". " + steps + " That is " + KindNames.say(chord.kind()) + "."
                        + (chord.isInverted()
                                ? " " + Say.note(chord.bass()) + " lies lowest: " + about.position() + "."
                                : ""));
    }
}
