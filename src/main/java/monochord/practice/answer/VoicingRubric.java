package monochord.practice.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
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
import monochord.practice.reading.AnswerText;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** Judges a voicing for two hands: any that keeps the rules is right, else the first rule that is broken is named. */
public final class VoicingRubric implements Judge {
    private static final String WHAT = "a voicing";

    private final Chord chord;
    private final Key key;
    private final Reach reach;
    private final Voicing wanted;
    private final Supplier<List<Slip<Voicing>>> slips;

    /**
     * @param wanted one right answer of many
     * @param slips worked out only when they are asked for
     */
    public VoicingRubric(Chord chord, Key key, Reach reach, Voicing wanted, Supplier<List<Slip<Voicing>>> slips) {
        this.chord = chord;
        this.key = key;
        this.reach = reach;
        this.wanted = wanted;
        this.slips = slips;
    }

    @Override
    public Verdict judge(String answer) {
        try {
            return judge(read(answer));
        } catch (Unreadable unreadable) {
            return new Verdict(Grade.UNREADABLE, null, unreadable.getMessage() + ".", expected());
        }
    }

    Voicing read(String answer) {
        String example = wanted.toString().equals("F2 C3 | A3 C4") ? "C3 G3 | E4 C5" : "F2 C3 | A3 C4";
        String plain = AnswerText.plain(answer, WHAT, example)
                .replaceFirst("(?i)^(left|l)( hand)?[ :]+", "")
                .replaceFirst("(?i)[,;/| ]+(right|r)( hand)?[ :]+", " | ")
                .replaceFirst("^([^|]*)[;/]", "$1|");
        Voicing voicing = Voicing.parse(plain);
        if (voicing.pitches().isEmpty()) {
            throw Unreadable.because(plain, 0, WHAT, "no note stands in it", example);
        }
        return voicing;
    }

    private Verdict judge(Voicing given) {
        List<BrokenRule> broken = VoicingRules.broken(given, chord, key, reach);
        if (broken.isEmpty()) {
            return isSpelled(given)
                    ? verdict(Grade.RIGHT, null, "Yes: " + given.write(Signs.MUSIC) + " keeps every rule.")
                    : verdict(
                            Grade.NEARLY,
                            Misconception.SPELLED_BY_SOUND,
                            "The keys are right; the names are not all the chord's. " + Say.chord(chord) + " is "
                                    + Say.row(chord.tones()) + ".");
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

    private Verdict verdict(Grade grade, Misconception misconception, String message) {
        String opening = grade == Grade.NEARLY ? "Nearly. " : "";
        return new Verdict(grade, misconception == null ? null : misconception.id(), opening + message, expected());
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

    private String said(BrokenRule breach) {
        String pitches =
                breach.pitches().stream().map(pitch -> pitch.write(Signs.MUSIC)).collect(Collectors.joining(" and "));
        String names = Say.list(breach.names());
        return switch (breach.rule()) {
            case NO_STRANGERS ->
                isThirdKept(breach)
                        ? "The suspended note stands in place of the third, so " + pitches + " has to go."
                        : pitches + (breach.pitches().size() == 1 ? " is" : " are") + " no part of " + Say.chord(chord)
                                + ", which is " + Say.row(chord.tones()) + ".";
            case NOTHING_MISSING ->
                names + " is missing, and " + Say.chord(chord)
                        + " is not itself without it. Only the perfect fifth may go.";
            case BASS_BELOW -> "Lowest has to be " + Say.note(chord.bass()) + "; here it is " + pitches + ".";
            case HANDS_APART -> "The hands cross: " + pitches + ". Keep the left hand under the right.";
            case FIVE_FINGERS -> "One hand has more notes than fingers. Five are the most.";
            case WITHIN_REACH ->
                "From " + pitches.replace(" and ", " to ") + " is further than " + reach.inWords()
                        + ". Bring one of them an octave nearer.";
            case CLEAR_BELOW ->
                pitches + " are too close for so low a place and will sound muddy. Move them up, or apart.";
            case ONE_LEADING_NOTE ->
                names + " is the leading note and wants to rise; doubled, two voices would rise in "
                        + "octaves. Double the root instead.";
            case ONE_SEVENTH ->
                names + " is the seventh and wants to fall; doubled, two voices would fall in octaves. "
                        + "Double the root instead.";
            case ONE_COLOUR ->
                names + " colours the chord and stands out by itself. Double the root or the fifth " + "instead.";
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
        for (Slip<Voicing> slip : slips.get()) {
            List<BrokenRule> broken = VoicingRules.broken(slip.answer(), chord, key, reach);
            Stream.ofNullable(broken.isEmpty() ? null : broken.get(0))
                    .filter(first -> misconception(first) == slip.misconception())
                    .forEach(first -> mistakes.add(
                            new Mistake(slip.misconception(), slip.answer().toString())));
        }
        return mistakes;
    }
}
