package monochord.text;

import java.util.List;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.IntervalNumber;
import monochord.theory.note.Notated;

/** What a {@link Phrase} is made of. */
sealed interface PhraseContent {
    /** @param isSentence whether it begins with a capital */
    record Template(String english, List<Phrase> parts, boolean isSentence) implements PhraseContent {}

    /** @param english templates for one, for many, and perhaps for none */
    record Counted(int count, List<String> english, List<Phrase> parts) implements PhraseContent {}

    /** @param english templates for English, German and Latin note names */
    record ByNaming(List<String> english) implements PhraseContent {}

    /** Items with a conjunction before the last. */
    record Listed(Conjunction conjunction, List<Phrase> items) implements PhraseContent {}

    /** Items with the same signs between them. */
    record Joined(String between, List<Phrase> items) implements PhraseContent {}

    /** A phrase in a style of its own. */
    record Styled(Phrase phrase, Style style) implements PhraseContent {}

    /** Text that no language changes. */
    record Typed(String text) implements PhraseContent {}

    /** Music and verbs as they are typed; only notes change. */
    record ToBeTyped(String english) implements PhraseContent {}

    /** A whole number in words. */
    record Number(int number) implements PhraseContent {}

    /** Notes, chords, numerals, degrees in figures. */
    record MusicSymbol(Notated value) implements PhraseContent {}

    /** A key or a scale: its tonic and its kind. */
    record ScaleName(Scale scale) implements PhraseContent {}

    /** The kind of a scale alone. */
    record KindOfScale(ScaleKind kind) implements PhraseContent {}

    /** An interval without its article. */
    record IntervalName(Interval interval) implements PhraseContent {}

    /** An interval with its article. */
    record OneInterval(Interval interval) implements PhraseContent {}

    /** The number of an interval with its article. */
    record IntervalNumberInWords(IntervalNumber number) implements PhraseContent {}

    /** A degree in words. */
    record DegreeInWords(Degree degree) implements PhraseContent {}
}
