package monochord.sound.keyboard;

import monochord.text.Phrase;

/** A keyboard that cannot be listened to, and why. */
public final class KeyboardTrouble extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Phrase phrase;

    KeyboardTrouble(String name, Phrase reason) {
        this.phrase = Phrase.of("{0} cannot be connected: {1}.", Phrase.typed(name), reason);
    }

    /** A sentence to the player. */
    public Phrase phrase() {
        return phrase;
    }

    @Override
    public String getMessage() {
        return phrase.toString();
    }
}
