package monochord.shell.verb.keeping;

import java.util.Arrays;
import monochord.shell.sitting.PlaybackState;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;

/** What can be settled for good: under which key it is kept, and what is so where nothing is. */
enum Setting {
    TEMPO("tempo", PlaybackState.TEMPO, "tempo", "96", Phrase.of("beats a minute")),
    RIGHT_PATCH("right patch", PlaybackState.RIGHT, "patch", "organ", Phrase.of("what the right hand sounds like")),
    LEFT_PATCH("left patch", PlaybackState.LEFT, "patch", "piano", Phrase.of("what the left hand sounds like")),
    BANK("bank", PlaybackState.BANK, "bank", "own", Phrase.of("where the instruments come from")),
    NOTES("notes", Sitting.NOTES, "notes", "german", Phrase.of("by which names notes go")),
    CODE_SECONDS(
            "code seconds", Sitting.CELL_SECONDS, "", "20", Phrase.of("how long a line of Java may take; 0 for none"));

    private final String word;
    private final String key;
    private final String verb;
    private final String usual;
    private final Phrase purpose;

    Setting(String word, String key, String verb, String example, Phrase purpose) {
        this.word = word;
        this.key = key;
        this.verb = verb;
        this.usual = example;
        this.purpose = purpose;
    }

    static String[] names() {
        return Arrays.stream(values()).map(Setting::word).toArray(String[]::new);
    }

    /** As it is typed. */
    String word() {
        return word;
    }

    /** The name under which it is kept. */
    String key() {
        return key;
    }

    /** The word of the verb that changes it, or nothing. */
    String verb() {
        return verb;
    }

    Phrase purpose() {
        return purpose;
    }

    String example() {
        return "settings " + word + " " + usual;
    }

    /** What its verb reads to settle this for good. */
    String sentence(String value) {
        return switch (this) {
            case TEMPO -> value + " --keep";
            case RIGHT_PATCH -> value + " right --keep";
            case LEFT_PATCH -> value + " left --keep";
            default -> value;
        };
    }
}
