package monochord.theory.note;

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

    private final String english;
    /** For the namings after English; null where all read the same. */
    private final List<String> elsewhere;

    private final Object[] parts;

    private Clause(String english, List<String> elsewhere, Object[] parts) {
        this.english = english;
        this.elsewhere = elsewhere;
        this.parts = parts;
    }

    /** What reads the same whatever notes are called. */
    public static Clause of(String template, Object... parts) {
        return new Clause(template, null, parts);
    }

    static Clause of(String template) {
        return new Clause(template, null, NO_PARTS);
    }

    /** What reads otherwise where notes have other names: {@code a letter from A to G}, {@code a syllable from Do to Si}. */
    public static Clause byNaming(String english, String german, String latin) {
        return new Clause(english, List.of(german, latin), NO_PARTS);
    }

    /** One template, or one for each {@link NoteNaming} in its order. */
    public List<String> templates() {
        return elsewhere == null ? List.of(english) : List.of(english, elsewhere.get(0), elsewhere.get(1));
    }

    public List<Object> parts() {
        return List.of(parts);
    }

    @Override
    public String toString() {
        StringBuilder said = new StringBuilder();
        for (int i = 0; i < english.length(); i++) {
            int place = placeAt(english, i);
            if (place >= 0 && place < parts.length) {
                said.append(parts[place]);
                i += 2;
            } else {
                said.append(english.charAt(i));
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
