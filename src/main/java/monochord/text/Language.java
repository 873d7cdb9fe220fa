package monochord.text;

import java.util.List;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.IntervalNumber;

/**
 * The language that sentences are in. Each method has English as its default, so that a language is one class that says
 * what it has; where it has nothing, English stands.
 *
 * <p>Note names are no part of it: they go by {@link monochord.theory.note.NoteNaming}, whatever the language.
 */
public interface Language {
    Language ENGLISH = new Language() {};

    /** Its tag, as a page says what language it is in (RFC 5646). */
    default String tag() {
        return "en";
    }

    /**
     * A sentence, or a part of one, with its places still open.
     *
     * @param english as it stands in the source: <code>{0} stays.</code>
     * @return the same in this language, with the same places in any order
     */
    default String template(String english) {
        return english;
    }

    /**
     * The template that goes with a count.
     *
     * @param count 0 or more
     * @param english for one, for many, and perhaps for none, in this order
     */
    default String counted(int count, List<String> english) {
        boolean none = count == 0 && english.size() > 2;
        return template(english.get(none ? 2 : count == 1 ? 0 : 1));
    }

    /** How a list is put together. */
    default ListPatterns list(Conjunction conjunction) {
        return conjunction == Conjunction.AND ? ListPatterns.ENGLISH_AND : ListPatterns.ENGLISH_OR;
    }

    /** A whole number in words as far as {@code twelve}, then in figures. */
    default String number(int number) {
        return EnglishNumbers.of(number);
    }

    /** {@code minor third}. */
    default String interval(Interval interval) {
        return interval.inWords();
    }

    /** {@code a minor third}, {@code an augmented fourth}. */
    default String oneInterval(Interval interval) {
        String name = interval(interval);
        return ("aeiou".indexOf(name.charAt(0)) >= 0 ? "an " : "a ") + name;
    }

    /** {@code a fifth}. */
    default String intervalNumber(IntervalNumber number) {
        return number.toString();
    }

    /** {@code lowered sixth}. */
    default String degree(Degree degree) {
        return degree.inWords();
    }

    /** {@code harmonic minor}; a mode is the kind of its scale. */
    default String scaleKind(ScaleKind kind) {
        return kind.toString();
    }

    /**
     * The three patterns of a list; <code>{0}</code> is what stands before, <code>{1}</code> what follows.
     *
     * @param pair for two items
     * @param more between the items of a longer list
     * @param last before the last item of a longer list
     */
    record ListPatterns(String pair, String more, String last) {
        static final ListPatterns ENGLISH_AND = new ListPatterns("{0} and {1}", "{0}, {1}", "{0} and {1}");
        static final ListPatterns ENGLISH_OR = new ListPatterns("{0} or {1}", "{0}, {1}", "{0} or {1}");
    }
}
