package monochord.practice.skill.ear;

import java.util.List;
import java.util.Optional;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Excerpt;
import monochord.practice.Excerpt.Moment;
import monochord.practice.Listening;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.EarRubric;
import monochord.practice.teaching.Derivation;
import monochord.text.MusicWords;
import monochord.text.Phrase;
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
    public Phrase title() {
        return Phrase.of("Qualities by ear");
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
        ChordLayout layout = ChordLayout.of(about, key, chance);
        HeardQuality task = new HeardQuality(layout.chord(), about.positionInWords());
        Listening listening = new Listening(
                () -> heard(layout, about),
                answer -> read(task, answer).map(about::with).map(other -> heard(layout.with(other), other)));
        return Question.of(
                        new Topic(id(), about.toString(), key),
                        AnswerForm.QUALITY,
                        Phrase.sentence("One chord. Which quality has it?"),
                        new EarRubric<>(layout.chord(), task, () -> errors(layout.chord())),
                        coaching(layout.chord(), about))
                .byEar(listening)
                .withSeed(seed);
    }

    private static Optional<ChordKind> read(HeardQuality task, String answer) {
        try {
            return Optional.of(task.read(answer).kind());
        } catch (Unreadable unreadable) {
            return Optional.empty();
        }
    }

    private static Excerpt heard(ChordLayout layout, QualitySubject about) {
        return Excerpt.of(List.of(new Moment(layout.pitches(about.spread()), HELD)));
    }

    private static List<Chord> errors(Chord chord) {
        return KindNames.kinds().stream()
                .filter(kind -> !kind.equals(chord.kind()))
                .map(kind -> new Chord(chord.root(), kind))
                .toList();
    }

    private static Coaching coaching(Chord chord, QualitySubject about) {
        List<NoteName> tones = chord.tones();
        Phrase second = chord.isInverted()
                ? Phrase.sentence(
                        "Sing from the lowest note up. Somewhere it is a fourth, not a third: the upper note of it is the root.")
                : Phrase.sentence(
                        "Sing from the lowest note up: first the third, or what stands for it, then the fifth, then what is left.");
        Chord most = chord.over(chord.root());
        Phrase steps = Derivation.stack(most);
        return Coaching.of(
                Phrase.sentence("Hear it again, and listen downwards: the lowest note first, then what lies above it."),
                second,
                Phrase.sentence(
                        "The root is {0}, and {1} lies {2} above it.",
                        chord.root(),
                        tones.get(1),
                        MusicWords.halfStepsInWords(
                                chord.kind().intervals().get(1).semitones())),
                Phrase.sentence("The tones are {0}.", Phrase.row(tones))
                        .then(steps)
                        .then(Phrase.sentence("That is {0}.", KindNames.say(chord.kind())))
                        .then(
                                chord.isInverted()
                                        ? Phrase.sentence(
                                                "{0} lies lowest: {1}.", chord.bass(), about.positionInWords())
                                        : Phrase.NOTHING));
    }
}
