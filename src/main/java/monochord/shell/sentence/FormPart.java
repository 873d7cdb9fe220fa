package monochord.shell.sentence;

import java.util.List;

/** A part of the form of a sentence, as its verb declares it: what help shows, what is read, what can be completed. */
public sealed interface FormPart {
    /**
     * What stands behind the verb itself: one of these values or words.
     *
     * @param words typed as they stand
     */
    record BehindVerb(List<Value> values, List<String> words) implements FormPart {}

    /** A small word and what follows it; {@link Value#NONE} where it stands alone. */
    record WordAndValue(String word, Value value, boolean mayBeAlone) implements FormPart {}

    /** One of several small words; mostly they stand alone, and a form shows no value behind them. */
    record OneOf(List<String> words, Value value) implements FormPart {}

    /** An option, named without its hyphens, and what follows it. */
    record Option(String name, Value value) implements FormPart {}

    /** What may be left out. */
    record May(List<FormPart> parts) implements FormPart {}

    /** What is read and not shown. */
    record Unsaid(List<FormPart> parts) implements FormPart {}

    /** A word that belongs to what is read behind the verb itself. */
    record Fixed(String word) implements FormPart {}

    /** Another form begins here. */
    record Or(boolean withVerb) implements FormPart {}

    static FormPart takes(Value... values) {
        return new BehindVerb(List.of(values), List.of());
    }

    static FormPart takes(List<Value> values, String... words) {
        return new BehindVerb(values, List.of(words));
    }

    static FormPart words(String... words) {
        return new BehindVerb(List.of(), List.of(words));
    }

    static FormPart clause(String word, Value value) {
        return new WordAndValue(word, value, false);
    }

    /** A small word that stands alone, too. */
    static FormPart clauseOrAlone(String word, Value value) {
        return new WordAndValue(word, value, true);
    }

    static FormPart alone(String word) {
        return new WordAndValue(word, Value.NONE, false);
    }

    static FormPart fixed(String word) {
        return new Fixed(word);
    }

    static FormPart oneOf(String... words) {
        return new OneOf(List.of(words), Value.NONE);
    }

    /** Words that a value may stand before or behind. */
    static FormPart oneOf(Value value, String... words) {
        return new OneOf(List.of(words), value);
    }

    static FormPart option(String name) {
        return new Option(name, Value.NONE);
    }

    static FormPart option(String name, Value value) {
        return new Option(name, value);
    }

    static FormPart may(FormPart... parts) {
        return new May(List.of(parts));
    }

    static FormPart unsaid(FormPart... parts) {
        return new Unsaid(List.of(parts));
    }

    /** A comma and {@code or}. */
    static FormPart or() {
        return new Or(false);
    }

    /** A comma, {@code or}, and the verb again. */
    static FormPart orAgain() {
        return new Or(true);
    }
}
