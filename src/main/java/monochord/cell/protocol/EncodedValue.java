package monochord.cell.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A value of the cell in words that the line can read.
 *
 * @param parts what {@link Shape} says; the first is how the value would be typed at the line
 */
public record EncodedValue(Shape shape, List<String> parts) {
    /** What kind of music a value is. */
    public enum Shape {
        /** None; the part is what the value prints. */
        PLAIN,
        /** {@code Abmaj7}; then a key, if it is to be seen in one. */
        CHORD,
        /** {@code E harmonic minor}; then a key, if it is to be seen in one. */
        SCALE,
        /** {@code D major} */
        KEY,
        /** {@code C, E, G} or {@code C4, E4, G4}; then a key, if they are to be seen in one. */
        NOTES,
        /** Chord symbols, the key, and the symbols or numerals that read back best. */
        PROGRESSION,
        /** Chord symbols, in whatever key the line is; then a key, if they are to be seen in one. */
        CHORDS,
        /** Chord symbols and the key that borrows them. */
        BORROWED,
        /**
         * Chord symbols, key, style, reach, the top notes that were asked for, {@code -} where none was, and how many
         * notes each chord has, if that was asked for.
         */
        VOICED
    }

    public EncodedValue {
        parts = List.copyOf(parts);
    }

    public static EncodedValue of(Shape shape, String... parts) {
        return new EncodedValue(shape, List.of(parts));
    }

    public String part(int index) {
        return index < parts.size() ? parts.get(index) : "";
    }

    /** The same as it is seen in a key, where it has none of its own. */
    public EncodedValue in(String key) {
        return switch (shape) {
            case CHORD, SCALE, NOTES, CHORDS -> of(shape, part(0), key);
            default -> this;
        };
    }

    public boolean isMusic() {
        return shape != Shape.PLAIN;
    }

    /** These texts, and behind them the value. */
    public Message message(MessageKind kind, String... before) {
        List<String> texts = new ArrayList<>(List.of(before));
        texts.add(shape.name());
        texts.addAll(parts);
        return new Message(kind, texts);
    }

    /** The value behind the first {@code from} texts of a message, or none where there is no value. */
    public static Optional<EncodedValue> in(Message message, int from) {
        List<String> texts = message.from(from);
        for (Shape shape : Shape.values()) {
            if (texts.size() > 1 && shape.name().equals(texts.get(0))) {
                return Optional.of(new EncodedValue(shape, texts.subList(1, texts.size())));
            }
        }
        return Optional.empty();
    }
}
