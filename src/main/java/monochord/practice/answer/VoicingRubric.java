package monochord.practice.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.harmony.voicing.BrokenRule;
import monochord.harmony.voicing.Reach;
import monochord.harmony.voicing.Voicing;
import monochord.harmony.voicing.VoicingRule;
import monochord.harmony.voicing.VoicingRules;
import monochord.practice.Grade;
import monochord.practice.Judge;
import monochord.practice.Misconception;
import monochord.practice.Mistake;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerReading;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/** Judges a voicing for two hands: any that keeps the rules is right, else the first rule that is broken is named. */
public final class VoicingRubric implements Judge {
    private static final String WHAT = "a voicing";
    /** {@code C3 Bb3 left, E4 A4 right}. */
    private static final Pattern HAND_BEHIND = Pattern.compile(
            "(?i)^([A-G][^|]*?)[ ,(]+(?:in )?(?:left|lh)(?: hand)?[ ,;)|]+(?:and )?([A-G][^|]*?)[ ,(]+(?:in )?(?:right|rh)(?: hand)?\\W*$");

    private final Chord chord;
    private final Key key;
    private final Reach reach;
    private final Voicing wanted;
    private final Supplier<List<ModelledError<Voicing>>> errors;

    /**
     * @param wanted one right answer of many
     * @param errors worked out only when they are asked for
     */
    public VoicingRubric(
            Chord chord, Key key, Reach reach, Voicing wanted, Supplier<List<ModelledError<Voicing>>> errors) {
        this.chord = chord;
        this.key = key;
        this.reach = reach;
        this.wanted = wanted;
        this.errors = errors;
    }

    @Override
    public Verdict judge(String answer) {
        try {
            return judge(read(answer));
        } catch (Unreadable unreadable) {
            return Verdict.unreadable(unreadable, expected());
        }
    }

    Voicing read(String answer) {
        String example = wanted.toString().equals("F2 C3 | A3 C4") ? "C3 G3 | E4 C5" : "F2 C3 | A3 C4";
        return AnswerReading.read(answer, WHAT, example, plain -> twoHands(plain, example));
    }

    private static Voicing twoHands(String plain, String example) {
        Voicing voicing = Voicing.parse(HAND_BEHIND
                .matcher(plain)
                .replaceFirst("$1 | $2")
                .replaceFirst("(?i)^\\s*(left|l\\.?h\\.?|l)( hand)?[ :]+", "")
                .replaceFirst("(?i)[,;/| ]+(?:and )?(right|r\\.?h\\.?|r)( hand)?[ :]+", " | ")
                .replaceFirst("^([^|]*)[;/]", "$1|"));
        if (voicing.pitches().isEmpty()) {
            throw Unreadable.because(plain, 0, WHAT, "no note stands in it", example);
        }
        return voicing;
    }

    private Verdict judge(Voicing given) {
        List<BrokenRule> broken = broken(given);
        if (broken.isEmpty()) {
            return isSpelled(given)
                    ? verdict(Grade.RIGHT, null, Phrase.sentence("Yes: {0} keeps every rule.", given))
                    : verdict(
                            Grade.NEARLY,
                            Misconception.SPELLED_BY_SOUND,
                            Phrase.sentence(
                                    "The keys are right; the names are not all the chord's. {0} is {1}.",
                                    chord, Phrase.row(chord.tones())));
        }
        BrokenRule first = broken.get(0);
        boolean near = broken.size() == 1 && first.rule() != VoicingRule.NO_STRANGERS;
        return verdict(near ? Grade.NEARLY : Grade.WRONG, misconception(first), said(first));
    }

    private boolean isSpelled(Voicing given) {
        return given.pitches().stream()
                .map(Pitch::name)
                .allMatch(name -> chord.holds(name) || name.equals(chord.bass()));
    }

    private Verdict verdict(Grade grade, Misconception misconception, Phrase said) {
        return Verdict.of(grade, misconception, said, expected());
    }

    private Misconception misconception(BrokenRule breach) {
        return switch (breach.rule()) {
            case NO_STRANGERS -> isThirdKept(breach) ? Misconception.THIRD_KEPT : Misconception.EXTRA_NOTE;
            case NOTHING_MISSING -> Misconception.MISSING_NOTE;
            case BASS_BELOW -> Misconception.WRONG_BASS;
            case HANDS_APART -> Misconception.HANDS_CROSSED;
            case FIVE_FINGERS, WITHIN_REACH -> Misconception.OUT_OF_REACH;
            case CLEAR_BELOW -> Misconception.TOO_LOW;
            case ONE_LEADING_NOTE, ONE_SEVENTH, ONE_COLOUR -> Misconception.DOUBLED_TENDENCY;
        };
    }

    private boolean isThirdKept(BrokenRule breach) {
        boolean third = chord.kind().interval(3).isPresent();
        return !third
                && breach.pitches().stream()
                        .map(pitch -> chord.root().to(pitch.name()))
                        .anyMatch(up -> up.equals(Interval.MAJOR_THIRD) || up.equals(Interval.MINOR_THIRD));
    }

    /** The rules that are broken; a doubled root or fifth is no colour that stands out. */
    private List<BrokenRule> broken(Voicing given) {
        return VoicingRules.broken(given, chord, key, reach).stream()
                .filter(breach -> breach.rule() != VoicingRule.ONE_COLOUR
                        || breach.names().stream().allMatch(this::isColour))
                .toList();
    }

    private boolean isColour(NoteName name) {
        return !name.equals(chord.root())
                && !chord.root().to(name).withinOctave().equals(Interval.PERFECT_FIFTH);
    }

    private Phrase said(BrokenRule breach) {
        Phrase pitches = Phrase.list(breach.pitches());
        Phrase names = Phrase.list(breach.names());
        return switch (breach.rule()) {
            case NO_STRANGERS -> stranger(breach, pitches);
            case NOTHING_MISSING ->
                Phrase.sentence(
                        "{0} is missing, and {1} is not itself without it. Only the perfect fifth may go.",
                        names, chord);
            case BASS_BELOW -> Phrase.sentence("Lowest has to be {0}; here it is {1}.", chord.bass(), pitches);
            case HANDS_APART -> Phrase.sentence("The hands cross: {0}. Keep the left hand under the right.", pitches);
            case FIVE_FINGERS -> Phrase.sentence("One hand has more notes than fingers. Five are the most.");
            case WITHIN_REACH ->
                Phrase.sentence(
                        "From {0} to {1} is further than {2}. Bring one of them an octave nearer.",
                        breach.pitches().get(0),
                        breach.pitches().get(breach.pitches().size() - 1),
                        reach.inWords());
            case CLEAR_BELOW ->
                Phrase.sentence(
                        "{0} are too close for so low a place and will sound muddy. Move them up, or apart.", pitches);
            case ONE_LEADING_NOTE, ONE_SEVENTH, ONE_COLOUR -> doubled(breach.rule(), names);
        };
    }

    private Phrase stranger(BrokenRule breach, Phrase pitches) {
        return isThirdKept(breach)
                ? Phrase.sentence("The suspended note stands in place of the third, so {0} has to go.", pitches)
                : Phrase.counted(
                        breach.pitches().size(),
                        "{0} is no part of {1}, which is {2}.",
                        "{0} are no part of {1}, which is {2}.",
                        pitches,
                        chord,
                        Phrase.row(chord.tones()));
    }

    private static Phrase doubled(VoicingRule rule, Phrase names) {
        return switch (rule) {
            case ONE_LEADING_NOTE ->
                Phrase.sentence(
                        "{0} is the leading note and wants to rise; doubled, two voices would rise in octaves. Double the root instead.",
                        names);
            case ONE_SEVENTH ->
                Phrase.sentence(
                        "{0} is the seventh and wants to fall; doubled, two voices would fall in octaves. Double the root instead.",
                        names);
            default ->
                Phrase.sentence(
                        "{0} colours the chord and stands out by itself. Double the root or the fifth instead.", names);
        };
    }

    @Override
    public String expected() {
        return wanted.toString();
    }

    /** What each wrong procedure gives, where the first rule it breaks is the one it stands for. */
    @Override
    public List<Mistake> mistakes() {
        List<Mistake> mistakes = new ArrayList<>();
        for (ModelledError<Voicing> error : errors.get()) {
            List<BrokenRule> broken = broken(error.answer());
            Stream.ofNullable(broken.isEmpty() ? null : broken.get(0))
                    .filter(first -> misconception(first) == error.misconception())
                    .forEach(first -> mistakes.add(
                            new Mistake(error.misconception(), error.answer().toString())));
        }
        return mistakes;
    }

    /** What is there and right, then the rule that is broken, then where to put the hand. */
    @Override
    public List<Phrase> help(String answer) {
        Voicing given;
        try {
            given = read(answer);
        } catch (Unreadable unreadable) {
            return List.of();
        }
        List<BrokenRule> broken = broken(given);
        if (broken.isEmpty()) {
            return List.of();
        }
        BrokenRule first = broken.get(0);
        Phrase count = broken.size() == 1
                ? Phrase.sentence("One thing is off.")
                : Phrase.sentence("More than one thing is off; begin with the first.");
        return List.of(standing(given).then(count), said(first), where(first));
    }

    /** The notes of the chord that it has. */
    private Phrase standing(Voicing given) {
        List<NoteName> there = chord.tones().stream()
                .filter(tone ->
                        given.pitches().stream().anyMatch(pitch -> pitch.name().equals(tone)))
                .toList();
        return there.isEmpty()
                ? Phrase.sentence("Begin with the notes: {0} is {1}.", chord, Phrase.row(chord.tones()))
                : there.size() == chord.tones().size()
                        ? Phrase.sentence("Every note of {0} is there.", chord)
                        : Phrase.sentence("{0}.", NoteDifference.areRight(there));
    }

    private Phrase where(BrokenRule broken) {
        return switch (broken.rule()) {
            case NO_STRANGERS, NOTHING_MISSING -> Phrase.sentence("{0} is {1}.", chord, Phrase.row(chord.tones()));
            case BASS_BELOW -> Phrase.sentence("Put {0} under all the others, in the left hand.", chord.bass());
            case HANDS_APART, FIVE_FINGERS, WITHIN_REACH ->
                Phrase.sentence("Two or three notes in each hand, and the hands an octave apart, lie well.");
            case CLEAR_BELOW -> Phrase.sentence("An octave or a fifth sounds clear down there; put thirds above C3.");
            case ONE_LEADING_NOTE, ONE_SEVENTH, ONE_COLOUR ->
                Phrase.sentence("One of the two gives way to the root, {0}.", chord.root());
        };
    }
}
