package monochord.shell.verb.sounding;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.score.Part;
import monochord.score.Pattern;
import monochord.sound.Patch;
import monochord.text.Nearest;
import monochord.theory.Clause;
import monochord.theory.Unreadable;

/** Reads the names that sounds, patterns and parts have; for a slip of the finger the nearest name is offered. */
final class Slips {
    private static final List<String> PATCHES =
            Patch.all().stream().map(Patch::toString).toList();

    private Slips() {}

    /** @throws Unreadable if there is none of this name */
    static Patch patch(String text) {
        return read(text, Patch::parse, Slips::nearestPatch, "a patch", "with electric piano 1");
    }

    /** @throws Unreadable if there is none of this name */
    static Pattern pattern(String text) {
        return read(
                text,
                Pattern::parse,
                slip -> Nearest.to(slip, Wishes.patterns()),
                "a way to play chords",
                "play F C G as broken");
    }

    /** @throws Unreadable if there is none of this name */
    static Part part(String text) {
        List<String> parts = Stream.of(Part.values()).map(Part::toString).toList();
        return Part.named(text)
                .orElseThrow(() -> Unreadable.because(
                        text,
                        0,
                        "a part",
                        Nearest.to(text, parts)
                                .map(Slips::didYouMean)
                                .orElseGet(() -> Clause.of("expected one of {0}", String.join(", ", parts))),
                        "play tenor of F C G"));
    }

    private static <T> T read(
            String text,
            Function<String, T> reader,
            Function<String, Optional<String>> nearest,
            String what,
            String example) {
        try {
            return reader.apply(text);
        } catch (Unreadable slip) {
            String near = nearest.apply(text).orElseThrow(() -> slip);
            throw Unreadable.because(text, 0, what, didYouMean(near), example);
        }
    }

    private static Clause didYouMean(String near) {
        return Clause.of("did you mean {0}", near);
    }

    /** The nearest whole name; else what is read when each word is put right by itself. */
    private static Optional<String> nearestPatch(String text) {
        return Nearest.to(text, PATCHES).or(() -> wordByWord(text));
    }

    private static Optional<String> wordByWord(String text) {
        List<String> words = PATCHES.stream()
                .flatMap(name -> Arrays.stream(name.split("[^A-Za-z0-9]+")))
                .distinct()
                .toList();
        String mended = Arrays.stream(text.strip().split("\\s+"))
                .map(word -> Nearest.to(word, words).orElse(word))
                .collect(Collectors.joining(" "));
        try {
            return Optional.of(Patch.parse(mended).toString());
        } catch (Unreadable still) {
            return Optional.empty();
        }
    }
}
