package monochord.sound.level;

/** The loudness that everything is brought to: {@value #LUFS} LUFS, so that nothing that comes next startles. */
public final class LoudnessTarget {
    /** Between the -23 of broadcasts (EBU R 128, 2020) and the -14 to -16 of music on the web; common practice. */
    public static final double LUFS = -18;

    private static final double MOST_DECIBELS = 50;

    private LoudnessTarget() {}

    /**
     * The factor that brings sound of this loudness there.
     *
     * @param lufs negative infinity for silence, which is left as it is
     */
    public static double gain(double lufs) {
        return Double.isFinite(lufs) ? Math.pow(10, Math.min(MOST_DECIBELS, LUFS - lufs) / 20) : 1;
    }
}
