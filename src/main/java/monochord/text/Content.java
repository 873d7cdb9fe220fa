package monochord.text;

import java.util.List;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.IntervalNumber;
import monochord.theory.note.Notated;

/** What a {@link Phrase} is made of. */
sealed interface Content {
    /** @param isSentence whether it begins with a capital */
    record Template(String english, List<Phrase> parts, boolean isSentence) implements Content {}

    /** @param english templates for one, for many, and perhaps for none */
    record Counted(int count, List<String> english, List<Phrase> parts) implements Content {}

    /** @param english templates for English, German and Latin note names */
    record ByNaming(List<String> english) implements Content {}

    /** Items with a conjunction before the last. */
    record Listed(Conjunction conjunction, List<Phrase> items) implements Content {}

    /** Items with the same signs between them. */
    record Joined(String between, List<Phrase> items) implements Content {}

    /** A phrase in a style of its own. */
    record Styled(Phrase phrase, Style style) implements Content {}

    /** Text that no language changes. */
    record Typed(String text) implements Content {}

    /** Music and verbs as they are typed; only notes change. */
    record ToBeTyped(String english) implements Content {}

    /** A whole number in words. */
    record Number(int number) implements Content {}

    /** Notes, chords, numerals, degrees in figures. */
    record Music(Notated value) implements Content {}

    /** A key or a scale: its tonic and its kind. */
    record ScaleName(Scale scale) implements Content {}

    /** The kind of a scale alone. */
    record KindOfScale(ScaleKind kind) implements Content {}

    /** An interval without its article. */
    record IntervalName(Interval interval) implements Content {}

    /** An interval with its article. */
    record OneInterval(Interval interval) implements Content {}

    /** The number of an interval with its article. */
    record IntervalNumberInWords(IntervalNumber number) implements Content {}

    /** A degree in words. */
    record DegreeInWords(Degree degree) implements Content {}
}
