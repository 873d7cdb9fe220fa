package monochord.shell.keyboard;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;

/** An answer that was played, as it can be written. */
record PlayedLine(Function<Signs, String> text) {
    /** One after another, a space between. */
    static <T> PlayedLine row(List<T> parts, BiFunction<T, Signs, String> write) {
        List<T> all = List.copyOf(parts);
        return new PlayedLine(
                signs -> all.stream().map(part -> write.apply(part, signs)).collect(Collectors.joining(" ")));
    }

    /** As the engine reads it. */
    String english() {
        return text.apply(Signs.ASCII);
    }

    /** As somebody would type it who calls notes so. */
    String typed(NoteNaming naming) {
        return text.apply(Signs.ASCII.with(naming));
    }
}
