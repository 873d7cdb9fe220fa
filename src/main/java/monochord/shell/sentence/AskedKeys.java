package monochord.shell.sentence;

import monochord.lesson.Keys;
import monochord.theory.note.Unreadable;

/** The keys in which a sentence has something asked. */
public final class AskedKeys {
    private AskedKeys() {}

    /**
     * Keys as lessons write them, with commas, or with spaces between.
     *
     * @throws Unreadable if a key or word is none
     */
    public static Keys parse(String text) {
        try {
            return Keys.parse(text);
        } catch (Unreadable withCommas) {
            return Keys.parse(text.replace(' ', ','));
        }
    }
}
