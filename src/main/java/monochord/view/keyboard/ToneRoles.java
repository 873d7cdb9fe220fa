package monochord.view.keyboard;

import java.util.ArrayList;
import java.util.List;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.theory.Chord;
import monochord.theory.Scale;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;

/**
 * The roles of tones in chords and scales.
 *
 * <p>A third is a third and a seventh a seventh, whether large or small; any other tone shows its alteration, as chord
 * symbols do: 5, ♭5, ♯11. Degrees of a scale with seven notes are numbered from 1 to 7; those of any other scale are
 * counted from the major scale, for there the numbers alone would repeat or skip. Common practice, no source.
 */
public final class ToneRoles {
    private static final int NOTES_OF_A_FULL_SCALE = 7;

    private ToneRoles() {}

    /** The role of a name in the chord; none if the chord does not hold it. */
    public static ToneRole of(Chord chord, NoteName name) {
        return chord.kind().intervals().stream()
                .filter(interval -> chord.root().plus(interval).equals(name))
                .findFirst()
                .map(ToneRoles::of)
                .orElse(ToneRole.NONE);
    }

    private static ToneRole of(Interval interval) {
        int number = interval.number();
        int alteration = Degree.ofFifths(interval.fifths()).alteration();
        return switch (number) {
            case 1 -> new ToneRole(Phrase.of("R"), Phrase.of("root"), Style.ROOT);
            case 3 -> new ToneRole(Phrase.of("3"), MusicWords.number(number), Style.THIRD);
            case 7 -> new ToneRole(Phrase.of("7"), MusicWords.number(number), Style.SEVENTH);
            default ->
                new ToneRole(
                        Phrase.typed(Signs.MUSIC.accidental(alteration) + number),
                        MusicWords.altered(Integer.signum(alteration), number),
                        number == 5 ? Style.FIFTH : Style.OTHER_TONE);
        };
    }

    /** The role of a degree in this scale. */
    public static ToneRole of(Scale scale, Degree degree) {
        boolean full = scale.kind().degrees().size() == NOTES_OF_A_FULL_SCALE;
        Style style = degree.fifths() == 0 ? Style.ROOT : Style.OTHER_TONE;
        return full
                ? new ToneRole(Phrase.of("{0}", degree.number()), Phrase.inWords(Degree.of(degree.number(), 0)), style)
                : new ToneRole(Phrase.of("{0}", degree), Phrase.inWords(degree), style);
    }

    /** The pitches with the roles their names have in the chord. */
    public static List<MarkedKey> marked(List<Pitch> pitches, Chord chord) {
        return pitches.stream()
                .map(pitch -> new MarkedKey(pitch, of(chord, pitch.name())))
                .toList();
    }

    /**
     * The chord on the keyboard from its bass up, near middle C: on its root each tone where the stack of thirds has it,
     * inverted all within an octave, over a bass from outside the stack above that bass.
     */
    public static List<MarkedKey> close(Chord chord) {
        Pitch bass = Pitch.atOrAbove(chord.bass(), new Pitch(NoteName.C, 4));
        if (!chord.isInverted()) {
            return marked(stack(chord, bass), chord);
        }
        List<Pitch> upper =
                chord.holds(chord.bass()) ? within(chord, bass) : stack(chord, Pitch.atOrAbove(chord.root(), bass));
        List<MarkedKey> all = new ArrayList<>();
        all.add(new MarkedKey(bass, of(chord, chord.bass()).inBass()));
        all.addAll(marked(upper, chord));
        return all;
    }

    private static List<Pitch> stack(Chord chord, Pitch root) {
        return chord.kind().intervals().stream().map(root::plus).toList();
    }

    private static List<Pitch> within(Chord chord, Pitch bass) {
        return chord.tones().stream()
                .filter(tone -> !tone.equals(bass.name()))
                .map(tone -> Pitch.atOrAbove(tone, bass))
                .sorted()
                .toList();
    }

    /** The scale up from its tonic near middle C, with the octave at the top. */
    public static List<MarkedKey> marked(Scale scale) {
        List<Pitch> pitches = scale.pitches(new Pitch(NoteName.C, 4));
        List<Degree> degrees = scale.kind().degrees();
        List<MarkedKey> marked = new ArrayList<>();
        for (int i = 0; i < degrees.size(); i++) {
            marked.add(new MarkedKey(pitches.get(i), of(scale, degrees.get(i))));
        }
        marked.add(new MarkedKey(
                pitches.get(degrees.size()), new ToneRole(Phrase.of("1"), MusicWords.number(8), Style.ROOT)));
        return marked;
    }
}
