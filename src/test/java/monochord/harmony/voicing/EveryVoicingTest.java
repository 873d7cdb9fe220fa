package monochord.harmony.voicing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.harmony.Progression;
import monochord.harmony.voicing.cost.Cost;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Laws that hold in all keys. The rules are worked out anew here.
 *
 * <p>Sources: doubling and ranges, Integrated Music Theory (open university course text), lesson 10a, and Open Music Theory
 * (2014); low limits, a trade rule as music shops print it; five fingers and an octave's reach, common practice.
 */
class EveryVoicingTest {
    private static final List<String> PROGRESSIONS = List.of(
            "IV I V bVI V I",
            "IV I Vsus4 bVImaj7 Vsus4 I",
            "I vi ii7 V7 I",
            "Imaj7 bIIImaj7 bVImaj7 iiø7 V7 I",
            "I V7/ii ii V7 I6 iv bVII I",
            "I bII viio7 i V9 Iadd9",
            "i VI III VII i");
    private static final Map<Integer, String> LOWEST = Map.ofEntries(
            Map.entry(1, "E3"),
            Map.entry(2, "Eb3"),
            Map.entry(3, "C3"),
            Map.entry(4, "B2"),
            Map.entry(5, "A2"),
            Map.entry(6, "B1"),
            Map.entry(7, "C#2"),
            Map.entry(8, "F2"),
            Map.entry(9, "F2"),
            Map.entry(10, "F2"),
            Map.entry(11, "F2"));

    private static Stream<Key> keys() {
        return Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream());
    }

    private static VoicingTask task(String progression, Key key, VoicingStyle style, int reach) {
        return VoicingTask.of(Progression.parse(progression, key), style).within(new Reach(reach));
    }

    @ParameterizedTest(name = "{0}: every voicing keeps every rule, in all keys, within an octave, a ninth and a tenth")
    @EnumSource(VoicingStyle.class)
    void everyRuleIsKept(VoicingStyle style) {
        List<String> faults = new ArrayList<>();
        Thorough.spread(keys().toList(), 5, style.ordinal()).forEach(key -> {
            for (String progression : PROGRESSIONS) {
                if (style == VoicingStyle.CHOIR && progression.contains("9")) {
                    continue;
                }
                for (int reach = 8; reach <= 10; reach++) {
                    VoicingTask task = task(progression, key, style, reach);
                    List<Voicing> voicings = VoicingSearch.best(task).voicings();
                    for (int i = 0; i < voicings.size(); i++) {
                        check(voicings.get(i), task, i, faults);
                    }
                }
            }
        });
        assertEquals(List.of(), faults.stream().limit(20).toList());
    }

    private static void check(Voicing voicing, VoicingTask task, int index, List<String> faults) {
        Chord chord = task.chords().get(index);
        String where = ": " + chord + " in " + task.key() + " as " + voicing;
        List<Pitch> pitches = voicing.pitches();
        List<Integer> keys = pitches.stream().map(Pitch::midiNumber).toList();
        boolean bassPlayer =
                List.of(VoicingStyle.WITH_BASS, VoicingStyle.DROP_TWO).contains(task.style());
        for (Pitch pitch : pitches) {
            boolean ninth = task.style() == VoicingStyle.WITH_BASS
                    && List.of(Interval.MAJOR_SECOND, Interval.MINOR_SECOND)
                            .contains(chord.root().to(pitch.name()))
                    && task.key().holds(pitch.name());
            if (!chord.holds(pitch.name()) && !(pitch.name().equals(chord.bass()) && !bassPlayer) && !ninth) {
                faults.add("stranger " + pitch + where);
            }
        }
        for (Interval interval : chord.kind().intervals()) {
            NoteName tone = chord.root().plus(interval);
            if (!mayGo(interval, task.style(), chord)
                    && pitches.stream().noneMatch(pitch -> pitch.name().equals(tone))) {
                faults.add("missing " + tone + where);
            }
        }
        if (!bassPlayer && !pitches.get(0).name().equals(chord.bass())) {
            faults.add("bass" + where);
        }
        for (int i = 1; i < keys.size(); i++) {
            if (keys.get(i) <= keys.get(i - 1)) {
                faults.add("crossing" + where);
            }
            for (int j = 0; j < i; j++) {
                int interval = keys.get(i) - keys.get(j);
                if (interval < 12
                        && keys.get(j) < Pitch.parse(LOWEST.get(interval)).midiNumber()) {
                    faults.add("mud" + where);
                }
            }
        }
        int span = List.of(12, 14, 16).get(task.reach().steps() - 8);
        for (List<Pitch> hand : List.of(voicing.left(), voicing.right())) {
            int ends = hand.get(hand.size() - 1).midiNumber() - hand.get(0).midiNumber();
            if (ends > span || hand.size() > 5) {
                faults.add("hand" + where);
            }
        }
        if (keys.get(0) < 36 || keys.get(keys.size() - 1) > 79) {
            faults.add("range" + where);
        }
        doubled(pitches, chord, task.key(), faults, where);
    }

    /** Common practice, no source: see {@link VoicingStyle}. */
    private static boolean mayGo(Interval interval, VoicingStyle style, Chord chord) {
        boolean root = interval.number() == 1;
        boolean shell = List.of(VoicingStyle.SHELL, VoicingStyle.UNDER_TUNE).contains(style);
        boolean seventh = chord.kind().intervals().stream().anyMatch(one -> one.number() == 7);
        return interval.equals(Interval.PERFECT_FIFTH)
                || shell && (interval.number() > 7 || interval.number() == 5 && seventh)
                || root
                        && style == VoicingStyle.WITH_BASS
                        && chord.kind().intervals().size() > 3
                || root
                        && style == VoicingStyle.DROP_TWO
                        && chord.kind().intervals().size() > 4;
    }

    /**
     * Root, third and perfect fifth may be doubled, borrowed or not, but never the leading note of the key as the third of a
     * major chord or the root of a diminished one, nor the third of a dominant seventh chord.
     */
    private static void doubled(List<Pitch> pitches, Chord chord, Key key, List<String> faults, String where) {
        NoteName leading = key.tonic().plus(Interval.MAJOR_SEVENTH);
        boolean diminished = chord.kind().holds(Interval.DIMINISHED_FIFTH);
        boolean seventh = chord.kind().holds(Interval.MINOR_SEVENTH);
        for (NoteName name : pitches.stream().map(Pitch::name).distinct().toList()) {
            long times =
                    pitches.stream().filter(pitch -> pitch.name().equals(name)).count();
            Interval above = chord.root().to(name);
            boolean may = above.equals(Interval.UNISON) && !(diminished && name.equals(leading))
                    || above.equals(Interval.MINOR_THIRD)
                    || above.equals(Interval.MAJOR_THIRD) && !name.equals(leading) && !seventh
                    || above.equals(Interval.PERFECT_FIFTH);
            if (times > 1 && !may) {
                faults.add("doubled " + name + where);
            }
        }
    }

    @ParameterizedTest(
            name = "{0}: a progression moved to another key costs the same there, as far as the range lets it")
    @EnumSource(VoicingStyle.class)
    void transpositionMovesTheVoicing(VoicingStyle style) {
        Key home = Key.parse("C");
        int compared = 0;
        for (String progression : PROGRESSIONS.subList(0, 5)) {
            VoicedProgression way = VoicingSearch.best(task(progression, home, style, 8));
            for (Key key : Thorough.spread(Key.majorKeys(), 5, progression.length())) {
                Interval up = home.tonic().to(key.tonic());
                for (Interval by : List.of(up, up.minus(Interval.OCTAVE))) {
                    compared += compare(way, by, task(progression, key, style, 8));
                }
            }
        }
        assertTrue(compared > Thorough.times(5, 20), "only " + compared);
    }

    private static int withoutRegister(Cost cost) {
        return cost.total() - cost.mud() - cost.register();
    }

    /** The moved voicings cost what they did, but for how low or high they lie; so the best there costs no more. */
    private static int compare(VoicedProgression way, Interval by, VoicingTask there) {
        List<Voicing> moved = way.voicings().stream()
                .map(voicing -> new Voicing(
                        voicing.left().stream().map(pitch -> pitch.plus(by)).toList(),
                        voicing.right().stream().map(pitch -> pitch.plus(by)).toList()))
                .toList();
        Cost cost = there.cost(moved);
        assertEquals(withoutRegister(way.cost()), withoutRegister(cost), there::toString);
        int voices = moved.get(0).pitches().size();
        for (int i = 0; i < moved.size(); i++) {
            int[] keys = moved.get(i).keys();
            if (Candidates.of(there, i, voices).stream().noneMatch(one -> java.util.Arrays.equals(one, keys))) {
                return 0;
            }
        }
        assertTrue(VoicingSearch.best(there).cost().total() <= cost.total(), there::toString);
        return 1;
    }

    private static List<Chord> chords(String symbols) {
        return Stream.of(symbols.split(" ")).map(Chord::parse).toList();
    }

    /**
     * The same chords under the same hands, whatever the key is said to be; only where its leading note is the third of one
     * of them may they cost more. Common practice, no source.
     */
    @ParameterizedTest(name = "{0}: the same chords cost the same in every key, but for its leading note")
    @EnumSource(value = VoicingStyle.class, names = "WITH_BASS", mode = EnumSource.Mode.EXCLUDE)
    void theKeyCountsOnlyForItsLeadingNote(VoicingStyle style) {
        List<Chord> row = chords("C Eb Bb F");
        List<NoteName> thirds =
                Stream.of("E", "G", "D", "A").map(NoteName::parse).toList();
        int cost = VoicingSearch.best(VoicingTask.of(row, Key.parse("C"), style))
                .cost()
                .total();
        keys().forEach(key -> {
            int here =
                    VoicingSearch.best(VoicingTask.of(row, key, style)).cost().total();
            boolean leads = thirds.contains(key.tonic().plus(Interval.MAJOR_SEVENTH));
            assertTrue(leads ? here >= cost : here == cost, () -> key + ": " + here + " for " + cost);
        });
    }

    /** Only how low or high the same hands lie in another key makes a difference, and a small one. Ours, no source. */
    @Test
    @DisplayName("a row moved to another key costs nearly the same")
    void inEveryKeyARowCostsNearlyTheSame() {
        for (VoicingStyle style : List.of(VoicingStyle.CLOSE, VoicingStyle.SHELL, VoicingStyle.CHOIR)) {
            IntSummaryStatistics costs = Key.majorKeys().stream()
                    .map(key -> VoicingSearch.best(task("I bIII bVII IV", key, style, 8)))
                    .mapToInt(way -> way.cost().total())
                    .summaryStatistics();
            assertTrue(costs.getMax() - costs.getMin() <= 8, () -> style + " " + costs);
        }
    }

    /** Common practice, no source: what a player takes of an altered dominant, the third, the seventh and altered tones. */
    @ParameterizedTest(name = "{0}: an altered dominant is played with what a player takes of it")
    @EnumSource(VoicingStyle.class)
    void anAlteredDominantIsNotPlayedWhole(VoicingStyle style) {
        VoicingTask task = VoicingTask.of(chords("G7alt Cmaj7"), Key.parse("C"), style);
        List<String> names = VoicingSearch.best(task).voicings().get(0).pitches().stream()
                .map(pitch -> pitch.name().toString())
                .toList();
        assertTrue(names.containsAll(List.of("B", "F")), names::toString);
        long ninths = names.stream().filter(List.of("Ab", "A#")::contains).count();
        assertTrue(ninths <= 1 && !names.contains("Db"), names::toString);
        boolean few = List.of(VoicingStyle.SHELL, VoicingStyle.UNDER_TUNE, VoicingStyle.CHOIR)
                .contains(style);
        assertTrue(few || ninths == 1 && names.contains("D#"), names::toString);
    }

    /** Common practice, no source: over a bass player the left hand leaves the root alone. */
    @Test
    @DisplayName("above a bass player no root of a seventh chord sounds, and guide tones move by step")
    void aBassPlayerHasTheRoots() {
        for (Key key : Key.majorKeys()) {
            VoicedProgression way = VoicingSearch.best(task("ii7 V7 Imaj7", key, VoicingStyle.WITH_BASS, 8));
            for (int i = 0; i < way.voicings().size(); i++) {
                NoteName root = way.task().chords().get(i).root();
                assertTrue(
                        way.voicings().get(i).pitches().stream()
                                .noneMatch(pitch -> pitch.name().equals(root)),
                        () -> key + " " + way.voicings());
            }
            assertTrue(way.tally().moved() <= 12, () -> key + " " + way.voicings());
        }
    }

    /** Common practice, no source. */
    @Test
    @DisplayName("the bass does not climb away, and comes to rest low")
    void theBassStaysLow() {
        for (Key key : Key.majorKeys()) {
            for (VoicingStyle style : List.of(VoicingStyle.CLOSE, VoicingStyle.SPREAD, VoicingStyle.ALONE)) {
                List<Voicing> row = VoicingSearch.best(task("I vi ii V I vi ii V I IV V7 I", key, style, 8))
                        .voicings();
                int last = row.get(row.size() - 1).bass().midiNumber();
                assertTrue(last <= Pitch.parse("Eb3").midiNumber(), () -> key + " " + style + " " + row);
                int first = row.get(0).bass().midiNumber();
                assertTrue(last <= first, () -> key + " " + style + " " + row);
            }
        }
    }

    @Test
    @DisplayName("a longer reach never makes the best voicing dearer")
    void aLongerReachCostsNoMore() {
        for (VoicingStyle style : VoicingStyle.values()) {
            for (String progression : PROGRESSIONS.subList(0, 4)) {
                int before = Integer.MAX_VALUE;
                for (int reach = 8; reach <= 12; reach++) {
                    int cost = VoicingSearch.best(task(progression, Key.parse("C"), style, reach))
                            .cost()
                            .total();
                    assertTrue(cost <= before, style + " " + progression + " " + reach);
                    before = cost;
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}: suspended and with a major seventh the borrowed chord moves less and holds more")
    @EnumSource(VoicingStyle.class)
    void suspensionsAndSeventhsHoldThingsTogether(VoicingStyle style) {
        for (Key key : Key.majorKeys()) {
            VoicedProgression plain = VoicingSearch.best(task("IV I V bVI V I", key, style, 8));
            VoicedProgression dressed = VoicingSearch.best(task("IV I Vsus4 bVImaj7 Vsus4 I", key, style, 8));
            MovementCount blocks = RootPositionComparison.of(plain).plainTally();
            assertTrue(dressed.tally().moved() < plain.tally().moved(), key::toString);
            assertTrue(dressed.tally().held() > plain.tally().held(), key::toString);
            assertTrue(dressed.tally().parallels() < blocks.parallels(), key::toString);
            assertTrue(dressed.tally().moved() < blocks.moved(), key::toString);
        }
    }
}
