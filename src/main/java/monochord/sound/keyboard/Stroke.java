package monochord.sound.keyboard;

/** Something that happens on a keyboard. */
public sealed interface Stroke {
    /** @param key as a MIDI note number, 0 to 127 */
    record Down(int key) implements Stroke {}

    /** @param key as a MIDI note number, 0 to 127; it may not have been down */
    record Up(int key) implements Stroke {}

    /** The keyboard says that no key is down any more. */
    record AllUp() implements Stroke {}

    /** The keyboard itself is no longer there; nothing more will come from it. */
    record Gone() implements Stroke {}
}
