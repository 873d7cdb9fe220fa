package monochord.theory;

import java.util.List;

/**
 * What a refusal says, or a part of it: an English template with typed parts, not yet in words.
 *
 * <p>The template is always a literal in the source; <code>{0}</code> is the first part. A part is a value of music, a whole
 * number, another clause, or a text that is typed as it stands in every language. {@code text.Phrase} puts a clause into a
 * reader's language and note names; {@link #toString} is English in ASCII.
 */
public final class Clause {
    private static final Object[] NO_PARTS = {};

    private final List<String> templates;
    private final Object[] parts;

    private Clause(List<String> templates, Object[] parts) {
        this.templates = templates;
        this.parts = parts;
    }

    /** What reads the same whatever notes are called. */
    public static Clause of(String template, Object... parts) {
        return new Clause(List.of(template), parts);
    }

    static Clause of(String template) {
        return new Clause(List.of(template), NO_PARTS);
    }

    /** What reads otherwise where notes have other names: {@code a letter from A to G}, {@code a syllable from Do to Si}. */
    public static Clause byNaming(String english, String german, String latin) {
        return new Clause(List.of(english, german, latin), NO_PARTS);
    }

    /** One template, or one for each {@link NoteNaming} in its order. */
    public List<String> templates() {
        return templates;
    }

    public List<Object> parts() {
        return List.of(parts);
    }

    @Override
    public String toString() {
        StringBuilder said = new StringBuilder();
        String template = templates.get(0);
        for (int i = 0; i < template.length(); i++) {
            int place = placeAt(template, i);
            if (place >= 0 && place < parts.length) {
                said.append(parts[place]);
                i += 2;
            } else {
                said.append(template.charAt(i));
            }
        }
        return said.toString();
    }

    /** The number of the place that opens here, 0 to 9, or −1. */
    private static int placeAt(String template, int open) {
        boolean opens =
                template.charAt(open) == '{' && open + 2 < template.length() && template.charAt(open + 2) == '}';
        return opens ? Character.digit(template.charAt(open + 1), 10) : -1;
    }
}
