package monochord.sound.play;

import monochord.text.Phrase;

/** What came of an attempt to play. */
public enum Outcome {
    /** It sounds. */
    SOUNDING(Phrase.of("it sounds")),
    /** It was stopped, or replaced, before its first note. */
    STOPPED(Phrase.of("it was stopped before it began")),
    NO_CARD(Phrase.of("this machine has no sound output")),
    BUSY(Phrase.of("something else holds the sound output")),
    NO_SYNTHESIZER(Phrase.of("this Java has no synthesizer")),
    BROKEN(Phrase.of("the sound output failed")),
    BANK(Phrase.of("the sound bank failed"));

    private final Phrase reason;

    Outcome(Phrase reason) {
        this.reason = reason;
    }

    /** A clause without capital and full stop, to be put into a sentence. */
    public Phrase reason() {
        return reason;
    }

    /** Whether nothing can be heard, so that a file is the thing to offer. */
    public boolean isSilent() {
        return this != SOUNDING && this != STOPPED;
    }
}
