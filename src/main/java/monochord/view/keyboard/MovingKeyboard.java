package monochord.view.keyboard;

import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.StyledText;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;

/**
 * A stretch of keyboard that stays where it is while the keys on it go down and up: always four lines, or, where there is
 * no room to draw, always one line in words.
 *
 * @param lowest the lowest key that will ever be down, as a MIDI note number
 * @param highest the highest
 */
public record MovingKeyboard(int lowest, int highest) {
    private static final int WIDEST = 80;
    private static final Phrase NOTHING_DOWN = Phrase.of("no key down");

    /**
     * The keys that are down, each role beside its key.
     *
     * @param down within the stretch; of two on one key the later is drawn
     * @param width columns
     */
    public StyledText draw(List<MarkedKey> down, Reader reader, int width) {
        return stretch(reader.signs(), width)
                .flatMap(keys -> new KeyboardDrawing(keys, reader, down).drawStill())
                .filter(drawn -> drawn.columns() <= width)
                .orElseGet(() -> StyledText.of(words(down), reader));
    }

    /** The best stretch that has room, whatever is down, so that it is the same from picture to picture. */
    private Optional<KeyboardRange> stretch(Signs signs, int width) {
        return width < KeyboardPicture.NARROWEST
                ? Optional.empty()
                : KeyboardPicture.stretches(lowest, highest, signs).stream()
                        .filter(keys -> keys.columns() <= Math.min(width, WIDEST))
                        .findFirst();
    }

    /** The keys of one role together, such as {@code lh A2  rh E4 C5}. */
    private static Phrase words(List<MarkedKey> down) {
        return down.isEmpty()
                ? NOTHING_DOWN
                : Phrase.joined(
                        "  ",
                        down.stream()
                                .map(mark -> mark.role().label())
                                .distinct()
                                .map(label -> words(label, down))
                                .toList());
    }

    private static Phrase words(Phrase label, List<MarkedKey> down) {
        List<Pitch> pitches = down.stream()
                .filter(mark -> mark.role().label().equals(label))
                .map(MarkedKey::pitch)
                .toList();
        return label.then(Phrase.row(pitches));
    }
}
