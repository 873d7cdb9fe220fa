package monochord.practice.skill.ear;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.voicing.Unvoiced;
import monochord.harmony.voicing.VoicedProgression;
import monochord.harmony.voicing.Voicing;
import monochord.harmony.voicing.VoicingSearch;
import monochord.harmony.voicing.VoicingStyle;
import monochord.harmony.voicing.VoicingTask;
import monochord.practice.Excerpt;
import monochord.practice.Excerpt.Moment;
import monochord.practice.teaching.DiatonicTriads;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * How a row of chords is layout out to be heard: smoothly, behind the tonic chord that sets the key.
 *
 * @param top what lies highest in the tonic chord, from where all else follows
 */
record Voices(Key key, VoicingStyle style, Pitch top) {
    private static final Pitch LOWEST_TOP = Pitch.parse("E4");
    private static final Beats LEAD = Beats.of(3);
    private static final Beats EACH = Beats.of(2);
    private static final int WAYS = 40;

    static Voices of(Key key, Chance chance) {
        Pitch top = Pitch.atOrAbove(chance.of(tonic(key).tones()), LOWEST_TOP);
        return new Voices(key, chance.of(List.of(VoicingStyle.CLOSE, VoicingStyle.CLOSE, VoicingStyle.SPREAD)), top);
    }

    private static Chord tonic(Key key) {
        return DiatonicTriads.triad(1, key);
    }

    /** @throws Unvoiced if a chord cannot be played by two hands */
    Excerpt heard(List<Chord> chords) {
        List<Chord> all = Stream.concat(Stream.of(tonic(key)), chords.stream()).toList();
        List<Moment> moments = new ArrayList<>();
        for (Voicing voicing : voiced(all)) {
            moments.add(new Moment(voicing.pitches(), moments.isEmpty() ? LEAD : EACH));
        }
        return new Excerpt(moments.subList(0, 1), moments.subList(1, moments.size()));
    }

    private List<Voicing> voiced(List<Chord> chords) {
        List<Optional<Pitch>> tops = new ArrayList<>(Collections.nCopies(chords.size(), Optional.empty()));
        tops.set(0, Optional.of(top));
        VoicingTask task = VoicingTask.of(chords, key, style);
        try {
            return whole(task.under(tops));
        } catch (Unvoiced underThatTop) {
            return whole(task.in(VoicingStyle.CLOSE));
        }
    }

    /** The smoothest way in which no chord leaves out a tone; the smoothest of all if there is none among the first. */
    private static List<Voicing> whole(VoicingTask task) {
        return VoicingSearch.inTurn(task, WAYS)
                .map(VoicedProgression::voicings)
                .filter(way -> IntStream.range(0, way.size())
                        .allMatch(i -> isWhole(way.get(i), task.chords().get(i))))
                .findFirst()
                .orElseGet(() -> VoicingSearch.best(task, WAYS).get(0).voicings());
    }

    private static boolean isWhole(Voicing voicing, Chord chord) {
        return chord.tones().stream()
                .allMatch(tone -> voicing.pitches().stream()
                        .anyMatch(pitch -> pitch.name().equals(tone)));
    }
}
