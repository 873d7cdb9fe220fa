package monochord.harmony.voicing;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import monochord.harmony.Progression;
import monochord.harmony.melody.ChordSpan;
import monochord.harmony.melody.Melody;
import monochord.harmony.motion.MotionStep;
import monochord.harmony.voicing.cost.ChordTones;
import monochord.harmony.voicing.cost.Cost;
import monochord.harmony.voicing.cost.CostFormula;
import monochord.harmony.voicing.cost.ToneChoice;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * What is to be voiced.
 *
 * @param chords at least one
 * @param tops for each chord the note that must lie on top, if there is one
 * @param voices how many notes each chord has at least; nothing where the style decides
 */
public record VoicingTask(
        List<Chord> chords, Key key, VoicingStyle style, Reach reach, List<Optional<Pitch>> tops, OptionalInt voices) {
    /**
     * @throws IllegalArgumentException if there are no chords, or not one top for each, or more voices than the style has
     *     room for or fewer than two hands should play
     */
    public VoicingTask {
        chords = List.copyOf(chords);
        tops = List.copyOf(tops);
        if (chords.isEmpty() || tops.size() != chords.size()) {
            throw new IllegalArgumentException(
                    "a task needs chords and a top for each, not " + chords.size() + " and " + tops.size());
        }
        int fewest = Layout.fewestVoices(style);
        if (voices.isPresent() && (voices.getAsInt() < fewest || voices.getAsInt() > style.most())) {
            throw new IllegalArgumentException("a task in this style, " + style + ", needs from " + fewest + " to "
                    + style.most() + " voices, not " + voices.getAsInt());
        }
    }

    /** With a reach of an octave and nothing said about the top. */
    public static VoicingTask of(List<Chord> chords, Key key, VoicingStyle style) {
        return new VoicingTask(
                chords,
                key,
                style,
                Reach.OCTAVE,
                Collections.nCopies(chords.size(), Optional.empty()),
                OptionalInt.empty());
    }

    public static VoicingTask of(Progression progression, VoicingStyle style) {
        return of(progression.chords(), progression.key(), style);
    }

    public VoicingTask within(Reach other) {
        return new VoicingTask(chords, key, style, other, tops, voices);
    }

    public VoicingTask under(List<Optional<Pitch>> line) {
        return new VoicingTask(chords, key, style, reach, line, voices);
    }

    /** With the note of the tune on top that sounds when a chord is struck; where none sounds, the top is free. */
    public static VoicingTask of(Progression progression, VoicingStyle style, Melody tune) {
        List<Optional<Pitch>> tops = ChordSpan.of(progression, Beats.of(progression.beatsPerBar())).stream()
                .map(span -> at(tune, span.start().plus(tune.pickup())))
                .toList();
        return of(progression, style).under(tops);
    }

    private static Optional<Pitch> at(Melody tune, Beats time) {
        return tune.notes().stream()
                .filter(note -> note.start().compareTo(time) <= 0 && note.end().compareTo(time) > 0)
                .map(Melody.MelodyNote::pitch)
                .findFirst();
    }

    /** In another style, with as many voices as that has by itself. */
    public VoicingTask in(VoicingStyle other) {
        return new VoicingTask(chords, key, other, reach, tops, OptionalInt.empty());
    }

    /** With so many notes in each chord. */
    public VoicingTask ofVoices(int count) {
        return new VoicingTask(chords, key, style, reach, tops, OptionalInt.of(count));
    }

    /** How many voices a chord has that needs no more. */
    int usualVoices() {
        boolean onTop = hasTune() && (style == VoicingStyle.SHELL || style == VoicingStyle.UNDER_TUNE);
        return voices.orElse(style.voices() + (onTop ? 1 : 0));
    }

    boolean hasTune() {
        return tops.stream().anyMatch(Optional::isPresent);
    }

    ChordTones tones(int index, int voices) {
        boolean few = style.choice() == ToneChoice.WHOLE && voices < style.voices();
        ToneChoice choice = few ? ToneChoice.SPARE : style.choice();
        return new ChordTones(chords.get(index), key, choice, tops.get(index), voices);
    }

    /** The formula for rows of so many voices. */
    CostFormula formula(int voices) {
        List<ChordTones> tones = IntStream.range(0, chords.size())
                .mapToObj(index -> tones(index, voices))
                .toList();
        return new CostFormula(tones, key, style.texture(voices), voices);
    }

    /**
     * What these voicings cost as a row. Chords of different fullness are joined as {@link MotionStep} joins them; a tone that
     * the style would leave out pays only for its movement.
     *
     * @param row one voicing for each chord
     */
    Cost cost(List<Voicing> row) {
        int[] last = row.get(row.size() - 1).keys();
        Cost cost = formula(last.length).closing(last);
        for (int i = 0; i < row.size(); i++) {
            int[] keys = row.get(i).keys();
            cost = cost.plus(formula(keys.length).alone(i, keys));
            cost = i == 0 ? cost : cost.plus(change(row, i));
        }
        return cost;
    }

    private Cost change(List<Voicing> row, int index) {
        MotionStep step =
                MotionStep.between(row.get(index - 1).pitches(), row.get(index).pitches());
        int[] from =
                step.moves().stream().mapToInt(move -> move.from().midiNumber()).toArray();
        int[] to =
                step.moves().stream().mapToInt(move -> move.to().midiNumber()).toArray();
        return formula(from.length).change(index - 1, from, to);
    }
}
