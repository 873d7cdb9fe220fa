package monochord.shell.verb.sounding;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.score.HeardPart;
import monochord.score.Pattern;
import monochord.sound.Patch;
import monochord.text.Nearest;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/** Reads the names that sounds, patterns and parts have; for a slip of the finger the nearest name is offered. */
final class SoundNames {
    private static final List<String> PATCHES =
            Patch.all().stream().map(Patch::toString).toList();

    private SoundNames() {}

    /** @throws Unreadable if there is none of this name */
    static Patch patch(String text) {
        try {
            return Patch.parse(text);
        } catch (Unreadable slip) {
            throw nearestPatch(text)
                    .map(near -> Unreadable.because(text, 0, "a patch", didYouMean(near), "with electric piano 1"))
                    .orElse(slip);
        }
    }

    /** @throws Unreadable if there is none of this name */
    static Pattern pattern(String text) {
        try {
            return Pattern.parse(text);
        } catch (Unreadable slip) {
            throw Nearest.to(text, PlaybackOptions.patterns())
                    .map(near -> Unreadable.because(
                            text, 0, "a way to play chords", didYouMean(near), "play F C G as broken"))
                    .orElse(slip);
        }
    }

    /** @throws Unreadable if there is none of this name */
    static HeardPart part(String text) {
        List<String> parts =
                Stream.of(HeardPart.values()).map(HeardPart::toString).toList();
        return HeardPart.named(text)
                .orElseThrow(() -> Unreadable.because(
                        text,
                        0,
                        "a part",
                        Nearest.to(text, parts)
                                .map(SoundNames::didYouMean)
                                .orElseGet(() -> Clause.of("expected one of {0}", String.join(", ", parts))),
                        "play tenor of F C G"));
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
