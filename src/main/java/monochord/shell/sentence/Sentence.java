package monochord.shell.sentence;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import monochord.text.Nearest;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * What follows a verb: a body, clauses that begin with small words ({@code in D}, {@code at 84}), and options that begin
 * with two hyphens ({@code --wav song.wav}). A part between double quotes is never searched for small words.
 *
 * <p>Text form: {@code body { word text } { --option text }}. The words and options are those of one verb.
 */
public final class Sentence {
    private static final String BODY = "";
    /** The clause in which a low and a high note stand with {@code to} between. */
    private static final String RANGE = "sing";

    /** The clause that is free text to the end. */
    private static final String REASON = "because";

    private static final int LONGEST_SMALL_WORD = 9;
    private static final String WHAT = "a sentence";

    private final String whole;
    private final Map<String, SentencePart> parts;

    /**
     * A part of a sentence and the place in the sentence at which it starts, from 0.
     *
     * @param text without the spaces around it and without quotes
     */
    public record SentencePart(String text, int place) {
        /** What {@code reader} makes of the text; a refusal tells its place in the whole sentence. */
        public <T> T read(Function<String, T> reader) {
            try {
                return reader.apply(text);
            } catch (Unreadable unreadable) {
                throw unreadable.within(text, place);
            }
        }

        public boolean isEmpty() {
            return text.isEmpty();
        }
    }

    private Sentence(String whole, Map<String, SentencePart> parts) {
        this.whole = whole;
        this.parts = parts;
    }

    /**
     * @param smallWords the words that begin a clause
     * @param options the options that are understood, without their hyphens
     * @throws Unreadable if a clause or an option comes twice, or an option is not known
     */
    public static Sentence parse(String text, Set<String> smallWords, Set<String> options) {
        return new WordScanner(text, smallWords, options).read();
    }

    /**
     * @param usage of the verb that stood before the text
     * @throws Unreadable as {@link #parse(String, Set, Set)} does
     */
    public static Sentence parse(String text, Usage usage) {
        return parse(text, usage.smallWords(), usage.options());
    }

    /** One that is all body. */
    public static Sentence whole(String text) {
        return new Sentence(text, Map.of(BODY, new SentencePart(text, 0)));
    }

    public String whole() {
        return whole;
    }

    /** What stands before the first clause, perhaps nothing. */
    public SentencePart body() {
        return parts.get(BODY);
    }

    public Optional<SentencePart> clause(String word) {
        return Optional.ofNullable(parts.get(word));
    }

    public Optional<SentencePart> option(String name) {
        return Optional.ofNullable(parts.get("--" + name));
    }

    public boolean has(String option) {
        return parts.containsKey("--" + option);
    }

    /** Goes through a sentence word by word and cuts it where a small word or an option begins. */
    private static final class WordScanner {
        private final String text;
        private final Set<String> smallWords;
        private final Set<String> options;
        private final Map<String, SentencePart> parts = new LinkedHashMap<>();
        private String current = BODY;
        private int start;

        WordScanner(String text, Set<String> smallWords, Set<String> options) {
            this.text = text;
            this.smallWords = smallWords;
            this.options = options;
        }

        Sentence read() {
            int place = 0;
            while (place < text.length()) {
                int end = endOfWord(place);
                beginPart(place, end);
                place = end;
                while (place < text.length() && Character.isWhitespace(text.charAt(place))) {
                    place++;
                }
            }
            close(text.length());
            return new Sentence(text, parts);
        }

        private int endOfWord(int place) {
            boolean quoted = false;
            int end = place;
            while (end < text.length() && (quoted || !Character.isWhitespace(text.charAt(end)))) {
                quoted ^= text.charAt(end) == '"' && text.indexOf('"', end + 1) * (quoted ? 0 : 1) >= 0;
                end++;
            }
            return end;
        }

        private void beginPart(int place, int end) {
            int length = end - place;
            if (length > 2 && text.startsWith("--", place)) {
                option(text.substring(place, end), place, end);
            } else if (length <= LONGEST_SMALL_WORD) {
                String word = text.substring(place, end).toLowerCase(Locale.ROOT);
                boolean isWithin = current.startsWith("--answer")
                        || current.equals(REASON)
                        || current.equals(RANGE) && word.equals("to");
                if (smallWords.contains(word) && !isWithin) {
                    open(word, place, end);
                }
            }
        }

        private void option(String word, int place, int end) {
            if (!options.contains(word.substring(2))) {
                Clause none = Nearest.to(word.substring(2), options)
                        .map(near -> Clause.of("there is no option {0} here, did you mean {1}", word, "--" + near))
                        .orElse(Clause.of("there is no option {0} here", word));
                throw Unreadable.because(text, place, WHAT, none, "show Abmaj7 --plain");
            }
            open(word, place, end);
        }

        private void open(String name, int place, int end) {
            close(place);
            if (parts.containsKey(name)) {
                throw Unreadable.because(
                        text, place, WHAT, Clause.of("\"{0}\" stands in it twice", name), "show bVI in D");
            }
            current = name;
            start = end;
        }

        private void close(int end) {
            int from = start;
            int to = end;
            while (from < to && Character.isWhitespace(text.charAt(from))) {
                from++;
            }
            while (to > from && Character.isWhitespace(text.charAt(to - 1))) {
                to--;
            }
            boolean quoted = to - from >= 2 && text.charAt(from) == '"' && text.indexOf('"', from + 1) == to - 1;
            parts.put(
                    current,
                    quoted
                            ? new SentencePart(text.substring(from + 1, to - 1), from + 1)
                            : new SentencePart(text.substring(from, to), from));
        }
    }
}
