package monochord.text;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Clause;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.IntervalNumber;
import monochord.theory.note.Notated;
import monochord.theory.note.Unreadable;

/**
 * Something to be said, before it is put into a reader's language, signs and note names: an English template with typed
 * parts.
 *
 * <p>The template is always a literal in the source, so that the sources are the catalogue: <code>{0}</code> is the first
 * part, and each part has its place at least once. A part is a value of music, a whole number, or another phrase; text that
 * somebody typed goes through {@link #typed}. Nothing is put into words before {@link #in} or {@link #toString} is called.
 *
 * <p>{@code toString()} is English with the signs of print. Equal phrases say the same of the same values.
 */
public final class Phrase {
    private static final int LONGEST_QUOTE = 40;

    /** Nothing at all. */
    public static final Phrase NOTHING = new Phrase(new PhraseContent.Template("", List.of(), false));

    private final PhraseContent content;

    private Phrase(PhraseContent content) {
        this.content = content;
    }

    /**
     * Part of a sentence, a heading, a cell of a table: its first letter stays as it is.
     *
     * @param parts values of music, whole numbers, phrases
     * @throws IllegalArgumentException for a part of another kind
     */
    public static Phrase of(String template, Object... parts) {
        return new Phrase(new PhraseContent.Template(template, parts(parts), false));
    }

    /**
     * A whole sentence with its full stop. Where it begins with a part, a word there gets a capital; a note, a numeral and
     * what was typed stay as they are.
     *
     * @throws IllegalArgumentException for a part of a kind that {@link #of} does not take either
     */
    public static Phrase sentence(String template, Object... parts) {
        return new Phrase(new PhraseContent.Template(template, parts(parts), true));
    }

    /**
     * What goes with a count; the count itself is a part like any other, in figures or by {@link #number} in words.
     *
     * @param count 0 or more
     * @param one the template for one
     * @param many the template for any other count
     */
    public static Phrase counted(int count, String one, String many, Object... parts) {
        return new Phrase(new PhraseContent.Counted(count, List.of(one, many), parts(parts)));
    }

    /** The same where none at all reads otherwise. */
    public static Phrase counted(int count, Forms forms, Object... parts) {
        return new Phrase(new PhraseContent.Counted(count, List.of(forms.one, forms.many, forms.none), parts(parts)));
    }

    /** Three templates that go with a count. */
    public record Forms(String one, String many, String none) {}

    /** {@code A}, {@code A and B}, {@code A, B and C}; items in words bring their article. */
    public static Phrase list(List<?> items) {
        return list(Conjunction.AND, items);
    }

    /** {@code A}, {@code A or B}, {@code A, B or C}. */
    public static Phrase either(List<?> items) {
        return list(Conjunction.OR, items);
    }

    private static Phrase list(Conjunction conjunction, List<?> items) {
        return new Phrase(new PhraseContent.Listed(conjunction, parts(items.toArray())));
    }

    /** One after the other with a space between: the notes of a chord, the chords of a progression. */
    public static Phrase row(List<?> items) {
        return joined(" ", items);
    }

    /** One after the other with the same signs, no words, between them. */
    public static Phrase joined(String between, List<?> items) {
        return new Phrase(new PhraseContent.Joined(between, parts(items.toArray())));
    }

    /** What somebody typed, letter for letter, without control characters. */
    public static Phrase typed(String text) {
        return new Phrase(new PhraseContent.Typed(text));
    }

    /** The same out of somebody's file, for a message: of a long text the beginning, that the message stays bearable. */
    public static Phrase quoted(String text) {
        return typed(
                text.codePointCount(0, text.length()) <= LONGEST_QUOTE
                        ? text
                        : text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE)) + "…");
    }

    /** Something that is typed as it stands in every language: a verb, an option, a file name. */
    public static Phrase verb(String text) {
        return typed(text).styled(Style.TYPED);
    }

    /**
     * An example that would be typed: the notes in it go by the reader's names, in ASCII; verbs, options and the names of
     * scales stay.
     *
     * @param english as it is typed with English note names: {@code play F C G in D}
     */
    public static Phrase toType(String english) {
        return new Phrase(new PhraseContent.ToBeTyped(english));
    }

    /** What reads otherwise where notes have other names: {@code a letter from A to G}, {@code a syllable from Do to Si}. */
    public static Phrase byNaming(String english, String german, String latin) {
        return new Phrase(new PhraseContent.ByNaming(List.of(english, german, latin)));
    }

    /** What cannot be read, where and why, and an example: no whole sentence, for it ends in the example. */
    public static Phrase refusal(Unreadable unreadable) {
        return Phrase.of("{0}. Example: {1}", unreadable.trouble(), toType(unreadable.example()));
    }

    /** What a refusal says, or a part of it. */
    public static Phrase clause(Clause clause) {
        List<String> templates = clause.templates();
        List<Object> parts = new ArrayList<>(clause.parts().size());
        for (Object part : clause.parts()) {
            parts.add(part instanceof String text ? typed(text) : part);
        }
        return new Phrase(
                templates.size() == 1
                        ? new PhraseContent.Template(templates.get(0), parts(parts.toArray()), false)
                        : new PhraseContent.ByNaming(templates));
    }

    /** A whole number in words, as far as words go. */
    public static Phrase number(int number) {
        return new Phrase(new PhraseContent.Number(number));
    }

    /** {@code a minor third}, with its article; as a part by itself an interval goes without. */
    public static Phrase one(Interval interval) {
        return new Phrase(new PhraseContent.OneInterval(interval));
    }

    /** {@code lowered sixth}; as a part by itself a degree is a figure. */
    public static Phrase inWords(Degree degree) {
        return new Phrase(new PhraseContent.DegreeInWords(degree));
    }

    /** {@code harmonic minor}: the kind of a scale without its tonic. */
    public static Phrase kind(ScaleKind kind) {
        return new Phrase(new PhraseContent.KindOfScale(kind));
    }

    /** This phrase in a style. */
    public Phrase styled(Style style) {
        return new Phrase(new PhraseContent.Styled(this, style));
    }

    /** This and, after a space, the next; each keeps its own capital. */
    public Phrase then(Phrase next) {
        return isEmpty() ? next : next.isEmpty() ? this : joined(" ", List.of(this, next));
    }

    /** Told without the equality of records, which takes a JVM some thirty milliseconds when it is first asked for. */
    public boolean isEmpty() {
        return content instanceof PhraseContent.Template template
                && template.english().isEmpty();
    }

    /** This, put into words for a reader; not wrapped. */
    public StyledLine in(Reader reader) {
        return new Wording(reader).of(this);
    }

    private static List<Phrase> parts(Object... parts) {
        List<Phrase> phrases = new ArrayList<>(parts.length);
        for (Object part : parts) {
            phrases.add(
                    part instanceof Phrase phrase
                            ? phrase
                            : part instanceof Clause clause ? clause(clause) : new Phrase(content(part)));
        }
        return phrases;
    }

    private static PhraseContent content(Object part) {
        if (part instanceof Notated music) {
            return new PhraseContent.MusicSymbol(music);
        } else if (part instanceof Integer figures) {
            return new PhraseContent.Typed(figures.toString());
        } else if (part instanceof Key key) {
            return new PhraseContent.ScaleName(key.scale());
        } else if (part instanceof Scale scale) {
            return new PhraseContent.ScaleName(scale);
        } else if (part instanceof Interval interval) {
            return new PhraseContent.IntervalName(interval);
        } else if (part instanceof IntervalNumber number) {
            return new PhraseContent.IntervalNumberInWords(number);
        }
        throw new IllegalArgumentException(
                "a part of a phrase is music, a whole number or a phrase, not " + part.getClass());
    }

    PhraseContent content() {
        return content;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Phrase that && that.content.equals(content);
    }

    @Override
    public int hashCode() {
        return content.hashCode();
    }

    @Override
    public String toString() {
        return in(Reader.ENGLISH).plain();
    }
}
