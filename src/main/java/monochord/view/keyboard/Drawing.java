package monochord.view.keyboard;

import java.util.List;
import java.util.stream.Stream;
import monochord.text.Phrase;

/**
 * What a picture of the keyboard shows, before it is known how it will be drawn.
 *
 * @param caption what stands over it, {@code IV  F}
 * @param left what the left hand holds; empty where no hands are told apart
 * @param right what the right hand holds, or all of it
 */
public record Drawing(Phrase caption, List<MarkedKey> left, List<MarkedKey> right) {
    public Drawing {
        left = List.copyOf(left);
        right = List.copyOf(right);
    }

    public static Drawing of(Phrase caption, List<MarkedKey> marks) {
        return new Drawing(caption, List.of(), marks);
    }

    public List<MarkedKey> marks() {
        return Stream.concat(left.stream(), right.stream()).toList();
    }
}
