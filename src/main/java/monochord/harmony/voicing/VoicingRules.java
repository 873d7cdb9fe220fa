package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.voicing.cost.ChordTones;
import monochord.harmony.voicing.cost.LowIntervalLimits;
import monochord.harmony.voicing.cost.ToneChoice;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * Holds a voicing against the rules that all styles share. Which hand plays how many notes is free, and so is the register,
 * as far as the low limits let it.
 */
public final class VoicingRules {
    private static final int MOST_IN_A_HAND = 5;

    private final Voicing voicing;
    private final List<Pitch> pitches;
    private final ChordTones tones;
    private final Key key;
    private final Reach reach;

    private VoicingRules(Voicing voicing, Chord chord, Key key, Reach reach) {
        this.voicing = voicing;
        this.pitches = voicing.pitches().stream().sorted().toList();
        this.tones = new ChordTones(chord, key, ToneChoice.SPARE, Optional.empty(), pitches.size());
        this.key = key;
        this.reach = reach;
    }

    /** Every rule that is broken, each once, in the order of {@link VoicingRule}. */
    public static List<BrokenRule> broken(Voicing voicing, Chord chord, Key key, Reach reach) {
        return new VoicingRules(voicing, chord, key, reach).broken();
    }

    private List<BrokenRule> broken() {
        List<BrokenRule> broken = new ArrayList<>();
        add(broken, VoicingRule.NO_STRANGERS, List.of(), strangers());
        add(broken, VoicingRule.NOTHING_MISSING, missing(), List.of());
        add(broken, VoicingRule.BASS_BELOW, List.of(), wrongBass());
        add(broken, VoicingRule.HANDS_APART, List.of(), crossed());
        add(broken, VoicingRule.FIVE_FINGERS, List.of(), overfull());
        add(broken, VoicingRule.WITHIN_REACH, List.of(), stretched());
        add(broken, VoicingRule.CLEAR_BELOW, List.of(), muddy());
        for (VoicingRule rule :
                List.of(VoicingRule.ONE_LEADING_NOTE, VoicingRule.ONE_SEVENTH, VoicingRule.ONE_COLOUR)) {
            List<NoteName> twice = doubled(rule);
            add(broken, rule, twice, List.of());
        }
        return List.copyOf(broken);
    }

    private static void add(List<BrokenRule> broken, VoicingRule rule, List<NoteName> names, List<Pitch> pitches) {
        if (!names.isEmpty() || !pitches.isEmpty()) {
            broken.add(new BrokenRule(rule, names, pitches));
        }
    }

    private List<Pitch> strangers() {
        return pitches.stream().filter(pitch -> tone(pitch) < 0).toList();
    }

    private int tone(Pitch pitch) {
        return tones.at(pitch.midiNumber());
    }

    private List<NoteName> missing() {
        return names(tones.must() & ~sounding());
    }

    private List<NoteName> names(int set) {
        return IntStream.range(0, tones.count())
                .filter(tone -> (set >> tone & 1) != 0)
                .mapToObj(tones::name)
                .toList();
    }

    private int sounding() {
        return pitches.stream()
                .mapToInt(this::tone)
                .filter(tone -> tone >= 0)
                .map(tone -> 1 << tone)
                .reduce(0, (a, b) -> a | b);
    }

    private List<Pitch> wrongBass() {
        return pitches.stream()
                .limit(1)
                .filter(lowest -> tone(lowest) >= 0 && !tones.mayBeLowest(tone(lowest)))
                .toList();
    }

    /** The left hand's top and the right hand's bottom, if the one is not below the other; or a key struck twice. */
    private List<Pitch> crossed() {
        if (voicing.left().isEmpty() || voicing.right().isEmpty()) {
            return List.of();
        }
        Pitch left = voicing.left().get(voicing.left().size() - 1);
        Pitch right = voicing.right().get(0);
        return left.midiNumber() < right.midiNumber() ? List.of() : List.of(left, right);
    }

    private List<Pitch> overfull() {
        return hands().filter(hand -> hand.size() > MOST_IN_A_HAND).findFirst().orElse(List.of());
    }

    private List<Pitch> stretched() {
        return hands().filter(hand -> !hand.isEmpty())
                .map(hand -> List.of(hand.get(0), hand.get(hand.size() - 1)))
                .filter(ends ->
                        !reach.covers(ends.get(1).midiNumber() - ends.get(0).midiNumber()))
                .findFirst()
                .orElse(List.of());
    }

    private Stream<List<Pitch>> hands() {
        return Stream.of(voicing.left(), voicing.right());
    }

    /** The lowest pair of pitches that lies below its limit. */
    private List<Pitch> muddy() {
        for (Pitch lower : pitches) {
            for (Pitch upper : pitches) {
                if (!LowIntervalLimits.areKept(lower.midiNumber(), upper.midiNumber())) {
                    return List.of(lower, upper);
                }
            }
        }
        return List.of();
    }

    private List<NoteName> doubled(VoicingRule rule) {
        int once = 0;
        int twice = 0;
        for (Pitch pitch : pitches) {
            int bit = tone(pitch) < 0 ? 0 : 1 << tone(pitch);
            twice |= once & bit;
            once |= bit;
        }
        return names(twice & ~tones.doubles()).stream()
                .filter(name -> rule == ruleFor(name))
                .toList();
    }

    private VoicingRule ruleFor(NoteName name) {
        boolean seventh = tones.chord()
                .kind()
                .interval(7)
                .filter(interval -> tones.chord().root().plus(interval).equals(name))
                .isPresent();
        return seventh
                ? VoicingRule.ONE_SEVENTH
                : name.equals(ChordTones.leadingNote(key)) ? VoicingRule.ONE_LEADING_NOTE : VoicingRule.ONE_COLOUR;
    }
}
