package monochord.shell.sentence;

import java.util.List;
import java.util.Set;
import monochord.text.Phrase;

/**
 * How a verb is used.
 *
 * @param word the verb itself
 * @param topic the heading under which help lists it
 * @param form the sentence it takes, what may be left out in brackets
 * @param purpose what it does, in one line
 * @param examples sentences that work as they stand
 * @param smallWords the words that begin a clause
 * @param options its own options, without hyphens
 */
public record Usage(
        String word,
        Topic topic,
        String form,
        String purpose,
        List<String> examples,
        Set<String> smallWords,
        Set<String> options) {
    /** What a verb is for. */
    public enum Topic {
        EXPLORING("exploring"),
        SOUND("sound"),
        LEARNING("learning"),
        TEACHING("teaching"),
        WRITING("writing"),
        LEAVING("leaving");

        private final String title;

        Topic(String title) {
            this.title = title;
        }

        @Override
        public String toString() {
            return title;
        }
    }

    public static Usage of(String word, Topic topic, String form, String purpose, String... examples) {
        return new Usage(word, topic, form, purpose, List.of(examples), Set.of("in"), Set.of());
    }

    /** A line that shows the form, or nothing for a verb that stands alone. */
    public Phrase formIfAny() {
        return form.equals(word) ? Phrase.NOTHING : Phrase.of("Form: {0}", Phrase.typed(form));
    }

    public Usage withSmallWords(String... words) {
        return new Usage(word, topic, form, purpose, examples, Set.of(words), options);
    }

    public Usage withOptions(String... names) {
        return new Usage(word, topic, form, purpose, examples, smallWords, Set.of(names));
    }
}
