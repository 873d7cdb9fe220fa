package monochord.practice.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * Reads an answer of any kind as a teacher would hear it: first the whole of it without the talk, then what stands behind a
 * repeated subject ({@code E minor: E F# G}, {@code the third is Bb}), then without a remark in brackets.
 */
public final class AnswerReading {
    private static final Pattern SUBJECT =
            Pattern.compile("(?i)[:=]|,\\s*so(?![a-z])|(?<![a-z])(?:is|are|has|have|'s)(?![a-z])");
    /** What a subject is made of; brackets of code and the like are none. */
    private static final Pattern IN_WORDS = Pattern.compile("[\\p{L}\\p{N} #♭♯°'/,().:=-]*");

    /** What follows an answer to explain it. */
    private static final Pattern REASON = Pattern.compile(
            "(?i)[,;]?\\s+(?:because|since)(?![a-z])|[,;]\\s+(?=with\\s|(?:an?|no|the|which|but|as|if|that)\\s+[a-z]{2})");

    /** What is said of an answer before it: {@code the relative minor, Bm}. */
    private static final Pattern LEAD =
            Pattern.compile("(?:it's |its |it is |that's |that is )?the [a-z ]+, *(.+)", Pattern.CASE_INSENSITIVE);

    private static final Pattern REMARK = Pattern.compile("\\s\\([^()]*\\)");

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
            for (String part : parts(typed)) {
                try {
                    return reader.apply(AnswerText.plain(part, what, example));
                } catch (Unreadable next) {
                    continue;
                }
            }
            throw literal(refusal(whole, plain, what, example), typed);
        }
    }

    /** What may be the answer where the whole is none, the likeliest first. */
    private static List<String> parts(String typed) {
        List<String> parts = new ArrayList<>();
        Matcher subject = SUBJECT.matcher(typed);
        while (subject.find()) {
            if (IN_WORDS.matcher(typed.substring(0, subject.start())).matches()) {
                parts.add(0, typed.substring(subject.end()));
            }
        }
        Matcher reason = REASON.matcher(typed);
        if (reason.find() && reason.start() > 0) {
            parts.add(typed.substring(0, reason.start()));
        }
        Matcher lead = LEAD.matcher(typed.strip());
        if (lead.matches()) {
            parts.add(lead.group(1));
        }
        Matcher remark = REMARK.matcher(typed);
        if (remark.find()) {
            parts.add(remark.replaceAll(" "));
        }
        return parts;
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
