package monochord.view.keyboard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.text.Reader;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Scale;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;

/**
 * A keyboard with marked keys, as text:
 *
 * <pre>
 *          R                   5
 *     ██   A♭   ██        ██   E♭        ██   ██   ██
 * ──┴────┴────┴────┴────C────┴────┴────┴────G────┴────┴──
 *                       3                   7
 * </pre>
 *
 * <p>Names are spelled as they are handed in, so C flat stands on the key of B. Where the width does not do, the keyboard
 * shrinks to the stretch that is needed and to narrower keys; where that does not do either, or two names share a key,
 * the same is said in words (see {@link KeyboardWords}).
 */
public final class KeyboardPicture {
    /** Columns below which words are used instead. */
    public static final int NARROWEST = 30;

    private static final int WIDEST = 80;
    private static final int[] PITCHES = {5, 4, 3};
    /** For names of four letters and more. */
    private static final int[] BROAD_PITCHES = {5, 6, 7, 4, 3};

    private KeyboardPicture() {}

    /**
     * The chord in close position from its bass, with the role of each tone.
     *
     * @param width columns; more than 80 are not used
     */
    public static StyledText chord(Chord chord, Reader reader, int width) {
        return draw(ToneRoles.close(chord), reader, width, false)
                .orElseGet(() -> KeyboardWords.chord(chord, reader, width));
    }

    /** The scale from its tonic to the octave, the degrees numbered. */
    public static StyledText scale(Scale scale, Reader reader, int width) {
        return draw(ToneRoles.marked(scale), reader, width, false)
                .orElseGet(() -> KeyboardWords.scale(scale, reader, width));
    }

    /** Keys at their heights, each C numbered. */
    public static StyledText pitches(List<MarkedKey> marks, Reader reader, int width) {
        return draw(marks, reader, width, true).orElseGet(() -> KeyboardWords.pitches(marks, reader, width));
    }

    /** What two hands play, with a line in words for each hand. */
    public static StyledText hands(List<MarkedKey> left, List<MarkedKey> right, Reader reader, int width) {
        List<MarkedKey> both = Stream.concat(left.stream(), right.stream()).toList();
        return draw(both, reader, width, true)
                .map(drawn -> drawn.plus(KeyboardWords.handLines(left, right, reader, width)))
                .orElseGet(() -> KeyboardWords.hands(left, right, reader, width));
    }

    private static Optional<StyledText> draw(List<MarkedKey> marks, Reader reader, int width, boolean octaves) {
        if (width < NARROWEST || marks.isEmpty() || sharesKey(marks)) {
            return Optional.empty();
        }
        return stretches(marks, reader.signs()).stream()
                .map(keys -> new KeyboardDrawing(keys, reader, marks).draw(octaves))
                .flatMap(Optional::stream)
                .filter(drawn -> drawn.columns() <= Math.min(width, WIDEST))
                .findFirst();
    }

    static boolean sharesKey(List<MarkedKey> marks) {
        return marks.stream().mapToInt(MarkedKey::key).distinct().count() < marks.size();
    }

    /** The best one first: whole groups of black keys before broad keys. */
    static List<KeyboardRange> stretches(List<MarkedKey> marks, Signs signs) {
        int lowest = marks.stream()
                .min(Comparator.comparingInt(MarkedKey::key))
                .orElseThrow()
                .key();
        int highest = marks.stream()
                .max(Comparator.comparingInt(MarkedKey::key))
                .orElseThrow()
                .key();
        return stretches(lowest, highest, signs);
    }

    static List<KeyboardRange> stretches(int lowest, int highest, Signs signs) {
        int[] pitches = signs.naming() == NoteNaming.ENGLISH ? PITCHES : BROAD_PITCHES;
        List<KeyboardRange> stretches = new ArrayList<>();
        for (int pitch : pitches) {
            stretches.add(KeyboardRange.grouped(lowest, highest, pitch));
        }
        for (int pitch : pitches) {
            stretches.add(KeyboardRange.tight(lowest, highest, pitch));
        }
        return stretches;
    }
}
