package monochord.sound.play;

/** What came of an attempt to play. */
public enum Outcome {
    /** It sounds. */
    SOUNDING("it sounds"),
    /** It was stopped, or replaced, before its first note. */
    STOPPED("it was stopped before it began"),
    NO_CARD("this machine has no sound output"),
    BUSY("something else holds the sound output"),
    NO_SYNTHESIZER("this Java has no synthesizer"),
    BROKEN("the sound output failed"),
    BANK("the sound bank failed");

    private final String reason;

    Outcome(String reason) {
        this.reason = reason;
    }

    /** A clause without capital and full stop, to be put into a sentence. */
    public String reason() {
        return reason;
    }

    /** Whether nothing can be heard, so that a file is the thing to offer. */
    public boolean isSilent() {
        return this != SOUNDING && this != STOPPED;
    }
}
