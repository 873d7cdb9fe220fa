package monochord.sound.keyboard;

/** Something that happens on a keyboard. */
public sealed interface KeyEvent {
    /** @param key as a MIDI note number, 0 to 127 */
    record Down(int key) implements KeyEvent {}

    /** @param key as a MIDI note number, 0 to 127; it may not have been down */
    record Up(int key) implements KeyEvent {}

    /** The keyboard says that no key is down any more. */
    record AllUp() implements KeyEvent {}

    /** The keyboard itself is no longer there; nothing more will come from it. */
    record Gone() implements KeyEvent {}
}
