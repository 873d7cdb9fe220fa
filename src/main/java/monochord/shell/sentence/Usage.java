package monochord.shell.sentence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import monochord.text.Phrase;

/**
 * How a verb is used. Its grammar is said here once: the form that help shows, the small words and options that are read, and
 * what completion offers follow from the same parts.
 */
public final class Usage {
    private final String word;
    private final VerbTopic topic;
    private final Phrase purpose;
    private final List<FormPart> parts;
    private final List<String> examples;
    private final Map<String, Value> clauses = new LinkedHashMap<>();
    private final Map<String, Value> options = new LinkedHashMap<>();

    /** What a verb is for. */
    public enum VerbTopic {
        EXPLORING("exploring"),
        SOUND("sound"),
        LEARNING("learning"),
        TEACHING("teaching"),
        WRITING("writing"),
        KEEPING("keeping"),
        LEAVING("leaving");

        private final String title;

        VerbTopic(String title) {
            this.title = title;
        }

        @Override
        public String toString() {
            return title;
        }
    }

    private Usage(String word, VerbTopic topic, Phrase purpose, List<FormPart> parts, List<String> examples) {
        this.word = word;
        this.topic = topic;
        this.purpose = purpose;
        this.parts = parts;
        this.examples = examples;
        parts.forEach(this::gather);
    }

    /**
     * A verb that stands alone.
     *
     * @param word the verb itself
     * @param topic the heading under which help lists it
     * @param purpose what it does, in one line without a full stop
     */
    public static Usage of(String word, VerbTopic topic, Phrase purpose) {
        return new Usage(word, topic, purpose, List.of(), List.of());
    }

    /** With these parts behind those that are there. */
    public Usage form(FormPart... more) {
        List<FormPart> all = new ArrayList<>(parts);
        all.addAll(List.of(more));
        return new Usage(word, topic, purpose, all, examples);
    }

    /** With sentences that work as they stand, in English note names. */
    public Usage examples(String... sentences) {
        return new Usage(word, topic, purpose, parts, List.of(sentences));
    }

    private void gather(FormPart part) {
        if (part instanceof FormPart.WordAndValue clause) {
            clauses.put(clause.word(), clause.value());
        } else if (part instanceof FormPart.OneOf either) {
            either.words().forEach(one -> clauses.put(one, either.value()));
        } else if (part instanceof FormPart.Option option) {
            options.put(option.name(), option.value());
        } else if (part instanceof FormPart.May may) {
            may.parts().forEach(this::gather);
        } else if (part instanceof FormPart.Unsaid unsaid) {
            unsaid.parts().forEach(this::gather);
        }
    }

    public String word() {
        return word;
    }

    public VerbTopic topic() {
        return topic;
    }

    public Phrase purpose() {
        return purpose;
    }

    public List<String> examples() {
        return examples;
    }

    /** The words that begin a clause, and what follows each. */
    public Map<String, Value> clauses() {
        return clauses;
    }

    public Set<String> smallWords() {
        return clauses.keySet();
    }

    /** Its own options without hyphens. */
    public Set<String> options() {
        return options.keySet();
    }

    /** What can stand behind the verb itself. */
    public Set<Value> values() {
        Set<Value> values = new LinkedHashSet<>();
        bodies(parts).forEach(body -> values.addAll(body.values()));
        return values;
    }

    /** The words that can stand behind the verb itself, and those with which what stands there begins. */
    public List<String> words() {
        return Stream.concat(
                        bodies(parts).stream().flatMap(body -> body.words().stream()),
                        parts.stream()
                                .filter(FormPart.Fixed.class::isInstance)
                                .map(part -> ((FormPart.Fixed) part).word()))
                .toList();
    }

    private static List<FormPart.BehindVerb> bodies(List<FormPart> parts) {
        List<FormPart.BehindVerb> bodies = new ArrayList<>();
        for (FormPart part : parts) {
            if (part instanceof FormPart.BehindVerb body) {
                bodies.add(body);
            } else if (part instanceof FormPart.May may) {
                bodies.addAll(bodies(may.parts()));
            }
        }
        return bodies;
    }

    /** The sentence it takes, what may be left out in brackets. */
    public Phrase form() {
        return written(Phrase.typed(word), parts);
    }

    /** @param before what stands in front of them, perhaps nothing */
    private Phrase written(Phrase before, List<FormPart> some) {
        Phrase form = before;
        for (FormPart part : some) {
            if (part instanceof FormPart.Or or) {
                form = or.withVerb() ? Phrase.of("{0}, or {1}", form, Phrase.typed(word)) : Phrase.of("{0}, or", form);
            } else {
                form = form.then(written(part));
            }
        }
        return form;
    }

    private Phrase written(FormPart part) {
        if (part instanceof FormPart.BehindVerb body) {
            List<String> either = new ArrayList<>();
            body.values().forEach(value -> either.add(value.toString()));
            either.addAll(body.words());
            return either(either);
        } else if (part instanceof FormPart.WordAndValue clause) {
            String value = clause.mayBeAlone()
                    ? "[" + clause.value() + "]"
                    : clause.value().toString();
            return Phrase.typed((clause.word() + " " + value).strip());
        } else if (part instanceof FormPart.Fixed fixed) {
            return Phrase.typed(fixed.word());
        } else if (part instanceof FormPart.OneOf one) {
            return either(one.words());
        } else if (part instanceof FormPart.Option option) {
            return Phrase.typed(("--" + option.name() + " " + option.value()).strip());
        } else if (part instanceof FormPart.May may) {
            Phrase within = written(Phrase.NOTHING, may.parts());
            return Phrase.joined("", List.of(Phrase.typed("["), within, Phrase.typed("]")));
        }
        return Phrase.NOTHING;
    }

    private static Phrase either(List<String> words) {
        return Phrase.either(words.stream().map(Phrase::typed).toList());
    }

    /** A line that shows the form, or nothing for a verb that stands alone. */
    public Phrase formIfAny() {
        return parts.isEmpty() ? Phrase.NOTHING : Phrase.of("Form: {0}", form());
    }
}
