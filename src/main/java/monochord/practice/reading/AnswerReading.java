package monochord.practice.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * Reads an answer of any kind as a teacher would hear it: first the whole of it without the talk, then each part of it that
 * may be the answer, as {@link AnswerParts} finds them.
 */
public final class AnswerReading {
    private AnswerReading() {}

    /**
     * @param what what is asked for, with its article
     * @param reader reads plain text
     * @throws Unreadable if no part of the answer can be read; it quotes the answer as it was typed
     */
    public static <A> A read(String typed, String what, String example, Function<String, A> reader) {
        String plain = AnswerText.plain(typed, what, example);
        try {
            return reader.apply(plain);
        } catch (Unreadable whole) {
            for (String part : AnswerParts.of(typed)) {
                try {
                    return reader.apply(AnswerText.plain(part, what, example));
                } catch (Unreadable next) {
                    continue;
                }
            }
            throw literal(refusal(whole, plain, what, example), typed);
        }
    }

    private static Unreadable refusal(Unreadable whole, String plain, String what, String example) {
        return AnswerKind.of(plain)
                .filter(kind -> !kind.isAskedAs(what))
                .map(kind -> Unreadable.because(plain, 0, what, kind.reply(), example))
                .orElse(whole);
    }

    /** The same, quoting nothing but what was typed. */
    private static Unreadable literal(Unreadable refusal, String typed) {
        return refusal.part().isEmpty() || typed.contains(refusal.part()) ? refusal : refusal.quoting(typed.strip());
    }

    /** Kinds of answer that are told apart where another was asked for. */
    private enum AnswerKind {
        TWO(".*[^ ,].* or .*", Clause.of("two answers stand in it; give one")),
        HALF_STEPS(
                "(?:[0-9]+|[a-z]+) (?:half[ -]?steps?|semitones?)", Clause.of("it counts half steps; give the name")),
        STEPS("(?i)(?:(?:whole|half|[wh])[ ,-]*){3,}", Clause.of("those are steps"), "a row of steps"),
        DEGREES(
                "(?:[b#♭♯]?[1-7][ ,-]+){2,}[b#♭♯]?[1-7]",
                Clause.of("those are degrees of a scale"),
                "a row of numbers",
                "a row of chord names",
                "a row of chords"),
        INTERVAL(
                "(?i)(?:an? )?(?:minor|major|perfect|augmented|diminished) (?:second|third|fourth|fifth|sixth|seventh|octave)",
                Clause.of("it names an interval"),
                "an interval"),
        SIGNS("(?i)(?:[0-9]|[a-z]+) (?:sharps?|flats?)", Clause.of("it counts sharps or flats"), "a key signature");

        private final Pattern written;
        private final Clause reply;
        private final List<String> askedAs;

        AnswerKind(String written, Clause reply, String... askedAs) {
            this.written = Pattern.compile(written);
            this.reply = reply;
            this.askedAs = List.of(askedAs);
        }

        static Optional<AnswerKind> of(String plain) {
            return Arrays.stream(values())
                    .filter(kind -> kind.written.matcher(plain).matches())
                    .findFirst();
        }

        Clause reply() {
            return reply;
        }

        boolean isAskedAs(String what) {
            return askedAs.contains(what);
        }
    }
}
