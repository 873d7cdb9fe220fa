package monochord.sound.keyboard;

/** A keyboard that cannot be listened to; the message is one sentence to the player. */
public final class KeyboardTrouble extends Exception {
    private static final long serialVersionUID = 1;

    KeyboardTrouble(String name, String reason) {
        super(name + " cannot be connected: " + reason + ".");
    }
}
