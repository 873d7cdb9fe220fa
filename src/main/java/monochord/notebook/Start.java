package monochord.notebook;

import java.util.Optional;
import java.util.OptionalLong;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;

/**
 * How a notebook's sitting began: all that its answers hang on besides what was typed, so that they come back alike.
 *
 * <p>Text form: the fields {@code notebook title key seed screen lesson notes}, each optional, between two lines of three hyphens.
 *
 * @param written the head as it stands in the file, its hyphens included; empty where there is none
 * @param key in which everything is read that names no other
 * @param seed where chance began
 * @param screen on which lessons were laid out
 * @param lesson the slug of the lesson that Enter begins, empty for the first
 * @param notes by what names notes go, in what is typed and in what came back
 */
public record Start(
        String written,
        Optional<String> title,
        Key key,
        OptionalLong seed,
        Screen screen,
        String lesson,
        NoteNaming notes) {
    /** Of the format that is written here. */
    static final int VERSION = 1;

    /** The start of a notebook without a head. */
    public static final Start USUAL = new Start(
            "", Optional.empty(), Key.major(NoteName.C), OptionalLong.empty(), Screen.USUAL, "", NoteNaming.ENGLISH);

    /** A start with the head that says it. */
    public static Start of(Key key, OptionalLong seed, Screen screen, String lesson, NoteNaming notes) {
        StringBuilder head = new StringBuilder("---\nnotebook: " + VERSION + "\n");
        head.append(key.equals(USUAL.key) ? "" : "key: " + key + "\n");
        seed.ifPresent(number -> head.append("seed: ").append(number).append('\n'));
        head.append(screen.equals(USUAL.screen) ? "" : "screen: " + screen + "\n");
        head.append(lesson.isEmpty() ? "" : "lesson: " + lesson + "\n");
        head.append(notes == USUAL.notes ? "" : "notes: " + notes + "\n");
        return new Start(head.append("---\n").toString(), Optional.empty(), key, seed, screen, lesson, notes);
    }
}
