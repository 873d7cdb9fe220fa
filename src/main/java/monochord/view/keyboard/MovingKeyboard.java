package monochord.view.keyboard;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.text.StyledText;
import monochord.theory.Signs;

/**
 * A stretch of keyboard that stays where it is while the keys on it go down and up: always four lines, or, where there is
 * no room to draw, always one line in words.
 *
 * @param lowest the lowest key that will ever be down, as a MIDI note number
 * @param highest the highest
 */
public record MovingKeyboard(int lowest, int highest) {
    private static final int WIDEST = 80;
    private static final String NOTHING_DOWN = "no key down";

    /**
     * The keys that are down, each role beside its key.
     *
     * @param down within the stretch; of two on one key the later is drawn
     * @param width columns
     */
    public StyledText draw(List<Marked> down, Signs signs, int width) {
        return stretch(signs, width)
                .flatMap(keys -> new KeyboardDrawing(keys, signs, down).drawStill())
                .filter(drawn -> drawn.columns() <= width)
                .orElseGet(() -> StyledText.of(words(down, signs)));
    }

    /** The best stretch that has room, whatever is down, so that it is the same from picture to picture. */
    private Optional<Keys> stretch(Signs signs, int width) {
        return width < KeyboardPicture.NARROWEST
                ? Optional.empty()
                : KeyboardPicture.stretches(lowest, highest, signs).stream()
                        .filter(keys -> keys.columns() <= Math.min(width, WIDEST))
                        .findFirst();
    }

    /** The keys of one role together, such as {@code lh A2  rh E4 C5}. */
    private static String words(List<Marked> down, Signs signs) {
        return down.isEmpty()
                ? NOTHING_DOWN
                : down.stream()
                        .map(mark -> mark.role().label(signs))
                        .distinct()
                        .map(label -> words(label, down, signs))
                        .collect(Collectors.joining("  "));
    }

    private static String words(String label, List<Marked> down, Signs signs) {
        Stream<String> pitches = down.stream()
                .filter(mark -> mark.role().label(signs).equals(label))
                .map(mark -> mark.pitch().write(signs));
        return Stream.concat(Stream.of(label), pitches)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" "));
    }
}
