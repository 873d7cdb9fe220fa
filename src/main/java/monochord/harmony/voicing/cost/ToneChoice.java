package monochord.harmony.voicing.cost;

/** Which tones of a chord a style wants. Common practice, no source. */
public enum ToneChoice {
    /** Every tone that makes the chord what it is, over its bass. */
    WHOLE,
    /** The same in few voices: of an altered dominant one altered tone. */
    SPARE,
    /** Bass, third and seventh alone. */
    SHELL,
    /** Without the root where there is a seventh, for a bass player has it; a ninth of the key may stand in its place. */
    ROOTLESS,
    /** Four tones over whatever bass there is; where the chord has more, the root goes first. */
    FOUR;

    /** Whether the lowest voice has to be the bass of the chord. */
    public boolean hasBass() {
        return this != ROOTLESS && this != FOUR;
    }
}
